import { Decimal } from 'decimal.js';
import type { TakeoffLine } from '../takeoff/takeoff-types.ts';
import { type Costed, nothingCosted } from './cost-draft.ts';
import { buyItem } from './cover-costs.ts';
import type { PriceQuestion } from './stock-lengths.ts';
import { ventUsd } from './unit-conversion.ts';

/** Cost line of soffit vents: so many of them, pieces of strip, or feet of a strip that is sold by the foot. */
export function ventCosts(input: PriceQuestion, line: TakeoffLine): Costed {
  const { need } = line;
  if (need.kind !== 'vents' || need.count <= 0 || need.itemId === '') return nothingCosted;
  return buyItem(input, line, need.itemId, (item, price) => {
    const each = ventUsd(item, price.observation.priceUsd);
    if (!each.ok) return each;
    const byFoot = item.unit === 'LF' && need.lengthFt !== null;
    return {
      ok: true,
      value: {
        quantity: new Decimal(byFoot ? (need.lengthFt ?? 0) : need.count),
        unit: byFoot ? 'LF' : 'each',
        unitCostUsd: each.value,
      },
    };
  });
}
