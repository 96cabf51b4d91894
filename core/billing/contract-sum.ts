import { Decimal } from 'decimal.js';
import type { ApprovedChange } from '../jobcost/budget.ts';
import { costPhaseOf } from '../jobcost/cost-phases.ts';
import type { Estimate } from '../pricing/estimate-types.ts';
import type { JobCostSettings } from '../pricing/shop-settings.ts';
import { sumUsd, type Usd, usd } from '../units/money.ts';
import type { ChangeOrder, ChangeOrderLine } from './change-order.ts';

/** A part of the contract that is billed by how far it is. */
export type ContractPart = {
  /** `phase/Framing`, `change/2`. */
  readonly key: string;
  readonly label: string;
  /** Before tax to the client. [$] */
  readonly priceUsd: Usd;
  /** What of it is taxed. [$] */
  readonly taxableUsd: Usd;
};

/** What the client agreed to pay, before tax. [$] */
export type ContractSum = {
  readonly parts: readonly ContractPart[];
  readonly quotedUsd: Usd;
  readonly changes: readonly {
    readonly number: number;
    readonly description: string;
    readonly priceUsd: Usd;
  }[];
  readonly revisedUsd: Usd;
  readonly taxableUsd: Usd;
};

/** What one line of a change order comes to, rounded to cents half up. [$] */
export function changeLineUsd({ quantity, unitPriceUsd }: ChangeOrderLine): Usd {
  return usd(new Decimal(quantity).times(unitPriceUsd));
}

/** What a change order adds to the contract, the sum of its rounded lines. [$] */
export function changePriceUsd({ lines }: Pick<ChangeOrder, 'lines'>): Usd {
  return sumUsd(lines.map(changeLineUsd));
}

/**
 * The contract of a job in the parts it is billed by: one for each of the shop's phases in the accepted price, and one for
 * each approved change order. The parts add up to the revised sum to the cent.
 * @param estimate - as accepted: its lines' shares of the price. [$]
 * @param changes - approved change orders.
 */
export function contractSum(
  estimate: Pick<Estimate, 'lines' | 'priceUsd'>,
  changes: readonly ApprovedChange[],
  settings: Pick<JobCostSettings, 'phases'>,
): ContractSum {
  const byPhase = Map.groupBy(estimate.lines, ({ phase }) => costPhaseOf(settings, phase));
  const phaseParts = [...byPhase].map(
    ([phase, lines]): ContractPart => ({
      key: `phase/${phase}`,
      label: phase,
      priceUsd: sumUsd(lines.map(({ priceUsd }) => priceUsd)),
      taxableUsd: sumUsd(lines.filter(({ taxable }) => taxable).map(({ priceUsd }) => priceUsd)),
    }),
  );
  const changed = changes.map(({ number, order }) => ({
    number,
    description: changeName(number, order),
    priceUsd: changePriceUsd(order),
    taxableUsd: sumUsd(order.lines.filter(({ taxable }) => taxable).map(changeLineUsd)),
  }));
  const parts = [
    ...phaseParts,
    ...changed.map(
      ({ number, description, priceUsd, taxableUsd }): ContractPart => ({
        key: `change/${number}`,
        label: description,
        priceUsd,
        taxableUsd,
      }),
    ),
  ];
  return {
    parts,
    quotedUsd: estimate.priceUsd,
    changes: changed.map(({ number, description, priceUsd }) => ({ number, description, priceUsd })),
    revisedUsd: sumUsd(parts.map(({ priceUsd }) => priceUsd)),
    taxableUsd: sumUsd(parts.map(({ taxableUsd }) => taxableUsd)),
  };
}

/** What a change order is called on papers: `Change order 2: three rotted tails`. */
export function changeName(number: number, { description, lines }: ChangeOrder): string {
  const what = description.trim() === '' ? (lines[0]?.description ?? '') : description.trim();
  return `Change order ${number}: ${what}`;
}
