import type { EaveDesign } from '../eave/design-document.ts';
import type { FillerStock, LayoutMeans } from '../layout/layout-means.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import { ordinarySheet } from '../takeoff/sheathing-strip.ts';
import type { JobInput } from './job-file.ts';

/**
 * What the layout of an eave takes from settings and price list: the shop's rules, the length of the panel that the
 * design names (else 8 ft), and the thicknesses that a filler can be built from, and what of it was built already.
 * @param input - price list, settings and design. [in]
 * @param design - of the eave.
 */
export function meansOfLayout(
  { priceList, settings, design: { asBuilt } }: Pick<JobInput, 'priceList' | 'settings' | 'design'>,
  design: EaveDesign,
): LayoutMeans {
  const sheet = priceList.find(({ id, category }) => category === 'sheet' && id === design.sheathing.itemId);
  return {
    rules: settings.layout,
    sheetLengthIn: sheet?.lengthIn ?? ordinarySheet.lengthIn,
    fillers: fillerStocks(priceList, design),
    asBuilt: asBuilt.filter(({ eaveId }) => eaveId === design.eaveId),
  };
}

/**
 * Lumber and panels that a filler can be built from, of one thickness the first to be taken: lumber before panels, the
 * narrowest section that covers the extender's depth first.
 */
function fillerStocks(priceList: readonly PriceItem[], design: EaveDesign): readonly FillerStock[] {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const bought = priceList.filter(({ retired }) => !retired);
  const sections = bought
    .filter(({ category }) => category === 'lumber' || category === 'plank')
    .flatMap(({ section }) => dressedSection(section) ?? [])
    .filter((dressed) => dressed.depthIn >= depthIn)
    .toSorted((a, b) => a.depthIn - b.depthIn);
  const lumber = sections.map(
    ({ section, thicknessIn }): FillerStock => ({ name: section, itemId: null, thicknessIn }),
  );
  const panels = bought.flatMap(({ category, id, description, thicknessIn }): readonly FillerStock[] =>
    category === 'sheet' && thicknessIn !== null ? [{ name: description, itemId: id, thicknessIn }] : [],
  );
  return [...lumber, ...panels];
}
