import { Decimal } from 'decimal.js';
import { costKindOf } from '../jobcost/budget.ts';
import { costPhaseOf } from '../jobcost/cost-phases.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import type { JobCostSettings } from '../pricing/shop-settings.ts';
import { decimalText } from '../units/money.ts';
import type { ChangeOrder, ChangeOrderLine } from './change-order.ts';

/**
 * The lines of a change order that brings a contract from one estimate to another, one for each phase and kind of cost that
 * differs: the difference of the shares of the price, and of cost and hours. Both are at the prices and rules of the accepted
 * quote, so that only the design makes the difference. What earlier approved changes of this kind brought is taken off, so
 * that nothing is counted twice. All of them together add up to the difference of the prices to the cent.
 * @param accepted - what was accepted. [$]
 * @param now - the job as it is designed now. [$]
 * @param earlier - approved change orders; those that came from the design count.
 * @returns null where nothing differs.
 */
export function changeFromDesign(
  accepted: Pick<Estimate, 'lines'>,
  now: Pick<Estimate, 'lines'>,
  earlier: readonly ChangeOrder[],
  settings: Pick<JobCostSettings, 'phases'>,
): ChangeOrder | null {
  const shares = [
    ...accepted.lines.map((line) => shareOf(line, -1, settings)),
    ...now.lines.map((line) => shareOf(line, 1, settings)),
    ...earlier.filter(({ fromDesign }) => fromDesign).flatMap(({ lines }) => lines.map(takenOff)),
  ];
  const groups = Map.groupBy(shares, ({ phase, kind, taxable }) => `${phase}/${kind}/${taxable}`);
  const lines = [...groups.values()].flatMap((group, index): readonly ChangeOrderLine[] => {
    const [first] = group;
    if (first === undefined) return [];
    const sum = (of: (share: Share) => Decimal) =>
      decimalText(group.reduce((total, share) => total.plus(of(share)), new Decimal(0)));
    const line = {
      id: `line-${index + 1}`,
      phase: first.phase,
      kind: first.kind,
      description: `${first.phase}, as it is designed now`,
      quantity: '1',
      unit: 'lump sum',
      unitPriceUsd: sum(({ price }) => price),
      unitCostUsd: sum(({ cost }) => cost),
      unitHours: sum(({ hours }) => hours),
      taxable: first.taxable,
    };
    return Number(line.unitPriceUsd) === 0 && Number(line.unitCostUsd) === 0 ? [] : [line];
  });
  return lines.length === 0
    ? null
    : {
        reason: 'owner',
        description: 'The work as it is designed now',
        days: 0,
        photo: null,
        fromDesign: true,
        lines,
      };
}

type Share = Pick<ChangeOrderLine, 'phase' | 'kind' | 'taxable'> & {
  readonly price: Decimal;
  readonly cost: Decimal;
  readonly hours: Decimal;
};

function shareOf(line: CostLine, sign: 1 | -1, settings: Pick<JobCostSettings, 'phases'>): Share {
  return {
    phase: costPhaseOf(settings, line.phase),
    kind: costKindOf(line.kind),
    taxable: line.taxable,
    price: new Decimal(line.priceUsd).times(sign),
    cost: new Decimal(line.costUsd).times(sign),
    hours: line.kind === 'labour' ? new Decimal(line.quantity).times(sign) : new Decimal(0),
  };
}

function takenOff(line: ChangeOrderLine): Share {
  const times = (each: string): Decimal => new Decimal(each).times(line.quantity).neg();
  return {
    phase: line.phase,
    kind: line.kind,
    taxable: line.taxable,
    price: times(line.unitPriceUsd).toDecimalPlaces(2, Decimal.ROUND_HALF_UP),
    cost: times(line.unitCostUsd).toDecimalPlaces(2, Decimal.ROUND_HALF_UP),
    hours: times(line.unitHours),
  };
}
