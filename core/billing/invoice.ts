import { Decimal } from 'decimal.js';
import { z } from 'zod';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { decimalField } from '../survey/fields.ts';
import { decimalText, type DecimalText, sumUsd, type Usd, usd } from '../units/money.ts';
import type { ContractPart, ContractSum } from './contract-sum.ts';

/** Papers that ask for money, and the one that takes it back. */
export const invoiceKinds = ['deposit', 'stage', 'progress', 'final', 'credit'] as const;
export type InvoiceKind = (typeof invoiceKinds)[number];

/** What the person says for a bill. */
export const billAskSchema = z.strictObject({
  kind: z.enum(['deposit', 'stage', 'progress', 'final']),
  /** Of a deposit or of a stage of the payment plan, before tax. [$] */
  depositUsd: decimalField({ least: 0, most: 100_000_000 }).default('0'),
  /** When a stage is due, in words: `When the framing is in`. */
  stage: z.string().trim().max(120).default(''),
  /** Of a progress bill: how far each part of the contract is, by its key. [%] */
  percents: z.record(z.string().max(200), decimalField({ least: 0, most: 100 })).default({}),
  /** What the client holds back until the end. [%] */
  retainagePercent: decimalField({ least: 0, most: 50 }).default('0'),
  /** The paper tells the quantities put in place. */
  showsQuantities: z.boolean().default(false),
  note: z.string().max(2000).default(''),
});
export type BillAsk = z.infer<typeof billAskSchema>;

/** A part of the contract on a bill. */
export type BilledPart = ContractPart & {
  /** How far it is, and how far it was when it was billed last. [%] */
  readonly percent: DecimalText;
  readonly percentBefore: DecimalText;
  /** Work done to date. [$] */
  readonly doneUsd: Usd;
  /** Of it, what was done when it was billed last. [$] */
  readonly doneBeforeUsd: Usd;
};

/** The figures of an invoice. Amounts before tax unless they say otherwise. */
export type InvoiceFigures = {
  readonly kind: Exclude<InvoiceKind, 'credit'>;
  readonly quotedUsd: Usd;
  readonly changes: ContractSum['changes'];
  readonly revisedUsd: Usd;
  /** When a stage is due, in words; blank of the other kinds. */
  readonly stage: string;
  /** None on a deposit or a stage. */
  readonly parts: readonly BilledPart[];
  readonly workToDateUsd: Usd;
  readonly retainagePercent: DecimalText;
  /** Held back of the work to date; released by the final bill. */
  readonly retainedUsd: Usd;
  /** Billed by earlier papers, credits taken off: deposits, and the rest. */
  readonly depositBeforeUsd: Usd;
  readonly billedBeforeUsd: Usd;
  /** What this paper asks for. */
  readonly amountUsd: Usd;
  readonly taxUsd: Usd;
  readonly totalUsd: Usd;
  /** Contract less all that is billed with this paper. */
  readonly balanceToFinishUsd: Usd;
};

/** What went before on the same job. */
export type BilledBefore = {
  /** Amounts before tax, credits taken off. [$] */
  readonly depositUsd: Usd;
  readonly otherUsd: Usd;
  readonly taxUsd: Usd;
  /** Work done to date as the last paper said, by part; a credited paper still says how far the work was. */
  readonly done: Readonly<Record<string, { readonly usd: Usd; readonly percent: DecimalText }>>;
};

/**
 * Reckons a bill.
 *
 * A deposit or a stage asks for its sum. Else: work to date = each part x its percentage, rounded to cents half up. Less retainage (percent of the work to date, none on
 * the final bill), less all that was billed before, the deposit among it: what is left is asked for. Tax is reckoned on all
 * that is billed to date, at the taxed share of the contract, less the tax billed before, so that no rounding piles up: with
 * the final bill it comes to the rate on the taxed part of the contract to the cent. Where a change order has made that share
 * smaller than it was billed at, bills ask for no tax until it has evened out; the final bill gives back what is over.
 * Source: percentage-of-completion billing with retainage, from memory of public contract handbooks.
 * Worked: contract 10,000, deposit 1,000 billed; 40 % done, 10 % held: 4,000 - 400 - 1,000 = 2,600.
 * @param contract - in parts. [$]
 * @param ask - what the person says.
 * @param before - what was billed already. [$]
 * @param taxPercent - of the client's tax; 0 where the client pays none. [%]
 * @returns or `nothing-to-bill`, `more-than-contract`, `tax-over-billed`.
 */
export function makeInvoice(
  contract: ContractSum,
  ask: BillAsk,
  before: BilledBefore,
  taxPercent: string,
): Result<InvoiceFigures, Problem> {
  const billedBefore = sumUsd([before.depositUsd, before.otherUsd]);
  const isSum = ask.kind === 'deposit' || ask.kind === 'stage';
  const parts = isSum ? [] : contract.parts.map((part) => billedPart(part, ask, before));
  const workToDateUsd = sumUsd(parts.map(({ doneUsd }) => doneUsd));
  const held = ask.kind === 'progress' ? ask.retainagePercent : '0';
  const retainedUsd = usd(new Decimal(workToDateUsd).times(held).div(100));
  const amount = isSum
    ? new Decimal(usd(ask.depositUsd))
    : new Decimal(workToDateUsd).minus(retainedUsd).minus(billedBefore);
  const billed = amount.plus(billedBefore);
  if (billed.gt(contract.revisedUsd)) return fail(moreThanContract(ask, contract, billedBefore));
  const tax = taxToDate(contract, billed, taxPercent).minus(before.taxUsd);
  if (ask.kind === 'final' && amount.plus(tax).lt(0))
    return fail({ code: 'billing', fault: { what: 'tax-over-billed', overUsd: usd(tax.neg()) } });
  if (amount.lte(0)) return fail(nothingToBill(ask, contract, billedBefore, amount));
  const taxUsd = usd(ask.kind === 'final' ? tax : Decimal.max(0, tax));
  const amountUsd = usd(amount);
  return ok({
    kind: ask.kind,
    stage: ask.kind === 'stage' ? ask.stage : '',
    quotedUsd: contract.quotedUsd,
    changes: contract.changes,
    revisedUsd: contract.revisedUsd,
    parts,
    workToDateUsd,
    retainagePercent: decimalText(held),
    retainedUsd,
    depositBeforeUsd: before.depositUsd,
    billedBeforeUsd: before.otherUsd,
    amountUsd,
    taxUsd,
    totalUsd: sumUsd([amountUsd, taxUsd]),
    balanceToFinishUsd: usd(new Decimal(contract.revisedUsd).minus(billed)),
  });
}

function billedPart(part: ContractPart, ask: BillAsk, before: BilledBefore): BilledPart {
  const percent = ask.kind === 'final' ? '100' : (ask.percents[part.key] ?? '0');
  return {
    ...part,
    percent: decimalText(percent),
    doneUsd: usd(new Decimal(part.priceUsd).times(percent).div(100)),
    percentBefore: before.done[part.key]?.percent ?? decimalText(0),
    doneBeforeUsd: before.done[part.key]?.usd ?? usd(0),
  };
}

/** Tax on what is billed, at the taxed share of the contract, rounded to cents half up. [$] */
function taxToDate({ revisedUsd, taxableUsd }: ContractSum, billed: Decimal, taxPercent: string): Decimal {
  if (new Decimal(revisedUsd).isZero()) return new Decimal(0);
  return new Decimal(usd(billed.times(taxableUsd).div(revisedUsd).times(taxPercent).div(100)));
}

function moreThanContract(ask: BillAsk, contract: ContractSum, billedBefore: Usd): Problem {
  return {
    code: 'billing',
    fault: {
      what: 'more-than-contract',
      kind: ask.kind,
      leftUsd: usd(new Decimal(contract.revisedUsd).minus(billedBefore)),
    },
    ...(ask.kind === 'deposit' || ask.kind === 'stage' ? { field: 'depositUsd' } : {}),
  };
}

function nothingToBill(ask: BillAsk, contract: ContractSum, billedBefore: Usd, amount: Decimal): Problem {
  return {
    code: 'billing',
    fault: {
      what: 'nothing-to-bill',
      kind: ask.kind,
      billedUsd: billedBefore,
      contractUsd: contract.revisedUsd,
      aheadUsd: usd(amount.neg()),
    },
  };
}
