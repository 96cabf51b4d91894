import type { JobInput } from '../job/job-file.ts';
import type { Estimate } from '../pricing/estimate-types.ts';
import { priceOn } from '../pricing/price-on.ts';
import { addDays } from '../units/civil-date.ts';

/** Until when a price is good, and what decides it. */
export type Validity = {
  readonly until: string;
  /** The shop's own days; or the suppliers' prices that run out first, by name. */
  readonly governs: 'shop' | 'suppliers' | 'past';
  readonly shopUntil: string;
  readonly items: readonly string[];
};

/**
 * What decides until when a quote's price is good: the shop's own days, or the first price of a supplier to run out.
 * @returns `past` where a supplier's price had run out on the day of the prices already. Worked: 15 days from 2026-04-20
 * are 2026-05-05; with lumber quoted until 2026-05-01 that governs.
 */
export function validityOf(input: JobInput, estimate: Estimate): Validity {
  const shopUntil = addDays(input.asOf, input.settings.money.quoteValidDays);
  const until = estimate.validUntil;
  if (until === shopUntil) return { until, governs: 'shop', shopUntil, items: [] };
  const used = new Set(
    estimate.lines.flatMap(({ madeOf }) =>
      madeOf.flatMap(({ ref }) => (ref !== undefined && ref.startsWith('price/') ? [ref.slice(6)] : [])),
    ),
  );
  const items = input.priceList.flatMap((item) => {
    if (!used.has(item.id)) return [];
    const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
    const ends = price.ok ? price.value.observation.validUntil : undefined;
    return ends !== undefined && ends !== null && ends <= until
      ? [item.supplier === '' ? item.description : `${item.description} (${item.supplier})`]
      : [];
  });
  return { until, governs: until === input.asOf ? 'past' : 'suppliers', shopUntil, items };
}
