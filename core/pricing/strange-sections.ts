import type { Problem } from '../problems/problem.ts';
import { shortened } from '../problems/shortened.ts';
import type { PriceList } from './price-list.ts';

/**
 * Lumber on the price list whose section no design can name, so that it is never bought: a slip that would otherwise
 * pass in silence. Sizes that the program does not work with, such as 4x4, are left alone.
 * @param priceList - every item of the shop; retired ones do not matter.
 */
export function strangeSections(priceList: PriceList): readonly Problem[] {
  return priceList.flatMap((item, index): readonly Problem[] => {
    if (item.category !== 'lumber' || item.retired || /^\d+(\/\d+)?x\d+$/.test(item.section)) return [];
    const why = item.section === '' ? 'it has no section' : `"${shortened(item.section)}" is no section`;
    return [
      {
        code: 'entry-invalid',
        what: item.description,
        detail: `${why}, so no piece is cut from it. Write one like 2x6 on the price list.`,
        field: `priceList.${index}.section`,
      },
    ];
  });
}
