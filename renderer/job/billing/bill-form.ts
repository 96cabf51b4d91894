import { Decimal } from 'decimal.js';
import { type BillAsk, billAskSchema } from '../../../core/billing/invoice.ts';
import { type Billing, type ShownPart, typedPercent } from './billing-words.ts';

/** A bill as it is typed. */
export type TypedBill = {
  readonly kind: BillAsk['kind'];
  /** Of a deposit or a stage. */
  readonly depositUsd: string;
  readonly stage: string;
  /** By part of the contract. */
  readonly percents: Readonly<Record<string, string>>;
  readonly retainagePercent: string;
  readonly showsQuantities: boolean;
  readonly note: string;
};

/** A new bill: a deposit where nothing is billed yet, else progress from where the last bill stood. */
export function blankBill(billing: Billing): TypedBill {
  return {
    kind: billing.invoices.length === 0 ? 'deposit' : 'progress',
    depositUsd: '',
    stage: '',
    percents: Object.fromEntries(billing.parts.map((part) => [part.key, firstPercent(part)])),
    retainagePercent: billing.settings.retainagePercent,
    showsQuantities: false,
    note: '',
  };
}

/** What takes something away comes off at once, so that no bill is larger than the contract; the rest stands as billed. */
export function firstPercent({ priceUsd, percentBilled }: ShownPart): string {
  return Number(priceUsd) < 0 ? '100' : percentBilled;
}

/** What is asked of the host. */
export function askOf(typed: TypedBill, parts: readonly ShownPart[]) {
  return {
    kind: typed.kind,
    depositUsd: typed.depositUsd.trim() === '' ? '0' : typed.depositUsd,
    stage: typed.stage,
    percents: Object.fromEntries(
      parts.map((part) => [part.key, typedPercent(typed.percents[part.key] ?? firstPercent(part))]),
    ),
    retainagePercent: typedPercent(typed.retainagePercent),
    showsQuantities: typed.showsQuantities,
    note: typed.note,
  };
}

/** The same where it reads, for the preview; null while it does not. */
export function readAsk(typed: TypedBill, parts: readonly ShownPart[]): BillAsk | null {
  const ask = billAskSchema.safeParse(askOf(typed, parts));
  return ask.success ? ask.data : null;
}

/** True where the bill is over a sum that is typed, not over how far the work is. */
export function asksForSum({ kind }: Pick<TypedBill, 'kind'>): boolean {
  return kind === 'deposit' || kind === 'stage';
}

/** Every part at one percentage. */
export function allAt(parts: readonly ShownPart[], percent: string): Readonly<Record<string, string>> {
  return Object.fromEntries(parts.map(({ key }) => [key, typedPercent(percent)]));
}

/** Parts as far as the job cost says they are; those that it does not know stay. */
export function fromJobCost(
  parts: readonly ShownPart[],
  percents: TypedBill['percents'],
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    parts.map((part) => [part.key, part.percentDone ?? percents[part.key] ?? firstPercent(part)]),
  );
}

/**
 * How far a part is when so much of it is in place, to hundredths of a percent half up.
 * @param typed - the quantity as typed. [unit]
 * @param total - all of it. [unit]
 * @returns 14 of 42 -> `33.33`; null where it does not read or is more than all.
 */
export function percentInPlace(typed: string, total: string): string | null {
  const bare = typed.trim();
  if (!/^(\d+\.?\d*|\.\d+)$/.test(bare) || new Decimal(bare).gt(total) || Number(total) === 0) return null;
  return new Decimal(bare).times(100).div(total).toDecimalPlaces(2, Decimal.ROUND_HALF_UP).toString();
}

/** What a percentage is of a quantity, to tenths: for the field beside it. */
export function inPlaceAt(percent: string, total: string): string {
  const bare = typedPercent(percent);
  if (!/^(\d+\.?\d*|\.\d+)$/.test(bare)) return '';
  return new Decimal(total).times(bare).div(100).toDecimalPlaces(1, Decimal.ROUND_HALF_UP).toString();
}
