import { Decimal } from 'decimal.js';
import type { BilledPart } from '../../core/billing/invoice.ts';
import type { PutInPlace } from '../../core/documents/invoice-sheet.ts';
import { costPhaseOf } from '../../core/jobcost/cost-phases.ts';
import type { JobCostSettings } from '../../core/pricing/shop-settings.ts';
import type { Takeoff } from '../../core/takeoff/takeoff-types.ts';
import { decimalText } from '../../core/units/money.ts';

/** What is put in place is told of things that stay in the house; nails and hours are not told to the client. */
const told: ReadonlySet<Takeoff['lines'][number]['kind']> = new Set([
  'lumber',
  'sheet',
  'plank',
  'edge',
  'vents',
]);

/**
 * The quantities that stand behind each part of a bill, from the takeoff of the accepted quote, as far as the part is done.
 * Lines of one wording and unit are added up.
 */
export function putInPlaceOf(
  parts: readonly BilledPart[],
  takeoff: Takeoff,
  settings: Pick<JobCostSettings, 'phases'>,
): readonly PutInPlace[] {
  return parts.map(({ key, percent, percentBefore }) => {
    const lines = takeoff.lines.filter(
      (line) => told.has(line.kind) && `phase/${costPhaseOf(settings, line.phase)}` === key,
    );
    const groups = Map.groupBy(lines, ({ clientWording, unit }) => `${clientWording}\n${unit}`);
    return {
      key,
      rows:
        Number(percent) === 0
          ? []
          : [...groups.values()].map((group) => {
              const total = decimalText(
                group.reduce((sum, { quantity }) => sum.plus(quantity), new Decimal(0)),
              );
              const unit = group[0]?.unit ?? '';
              const toDate = inPlace(total, percent, unit);
              return {
                what: group[0]?.clientWording ?? '',
                unit,
                total: inPlace(total, '100', unit),
                toDate,
                sinceLast: new Decimal(toDate)
                  .minus(inPlace(total, percentBefore, unit))
                  .toFixed(placesOf(unit)),
              };
            }),
    };
  });
}

/** How much of a quantity is in place: pieces to the whole piece, feet to tenths, half up. */
function inPlace(total: string, percent: string, unit: string): string {
  return new Decimal(total).times(percent).div(100).toFixed(placesOf(unit), Decimal.ROUND_HALF_UP);
}

function placesOf(unit: string): number {
  return unit === 'LF' || unit === 'SF' ? 1 : 0;
}
