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
 * quote, so that only the design makes the difference. The lines add up to the difference of the prices to the cent.
 * @param accepted - what was accepted. [$]
 * @param now - the job as it is designed now. [$]
 * @returns null where nothing differs.
 */
export function changeFromDesign(
  accepted: Pick<Estimate, 'lines'>,
  now: Pick<Estimate, 'lines'>,
  settings: Pick<JobCostSettings, 'phases'>,
): ChangeOrder | null {
  const groups = new Map<string, ChangeOrderLine>();
  const add = (line: CostLine, sign: 1 | -1): void => {
    const phase = costPhaseOf(settings, line.phase);
    const kind = costKindOf(line.kind);
    const key = `${phase}/${kind}/${line.taxable}`;
    const before = groups.get(key) ?? {
      id: `line-${groups.size + 1}`,
      phase,
      kind,
      description: `${phase}, ${kindWords[kind]}, as it is designed now`,
      quantity: '1',
      unit: 'lump sum',
      unitPriceUsd: '0',
      unitCostUsd: '0',
      unitHours: '0',
      taxable: line.taxable,
    };
    const plus = (sum: string, amount: string): string =>
      decimalText(new Decimal(sum).plus(new Decimal(amount).times(sign)));
    groups.set(key, {
      ...before,
      unitPriceUsd: plus(before.unitPriceUsd, line.priceUsd),
      unitCostUsd: plus(before.unitCostUsd, line.costUsd),
      unitHours: line.kind === 'labour' ? plus(before.unitHours, line.quantity) : before.unitHours,
    });
  };
  for (const line of accepted.lines) add(line, -1);
  for (const line of now.lines) add(line, 1);
  const lines = [...groups.values()].filter(
    ({ unitPriceUsd, unitCostUsd }) => Number(unitPriceUsd) !== 0 || Number(unitCostUsd) !== 0,
  );
  return lines.length === 0
    ? null
    : { reason: 'owner', description: 'The work as it is designed now', days: 0, photo: null, lines };
}

const kindWords: Readonly<Record<ChangeOrderLine['kind'], string>> = {
  labour: 'labour',
  material: 'material',
  equipment: 'equipment',
  sub: 'subcontract',
  other: 'other',
};
