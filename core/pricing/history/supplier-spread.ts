import { Decimal } from 'decimal.js';
import { plainWords } from '../plain-words.ts';
import type { PriceItem } from '../price-list.ts';
import { priceOn } from '../price-on.ts';
import { decimalText } from '../../units/money.ts';
import { changePercent } from './price-changes-since.ts';
import { nailPackageUsd, pieceUsd } from '../unit-conversion.ts';

/** What one supplier asks for a thing that others sell too. */
export type SupplierOffer = {
  readonly itemId: string;
  readonly supplier: string;
  readonly description: string;
  /** For one, in the unit of the comparison. [$/unit] */
  readonly eachUsd: string;
  readonly priceOf: string;
  readonly ageDays: number;
  readonly stale: boolean;
};

/** The same thing at two suppliers or more, cheapest first. */
export type SupplierSpread = {
  readonly what: string;
  readonly unit: string;
  readonly offers: readonly SupplierOffer[];
  /** By how much the dearest is over the cheapest, to tenths. [%] */
  readonly spreadPercent: string;
};

/**
 * How far suppliers are apart for the same thing on a day. Lumber and planks are the same where section, grade, species and
 * length are, compared by the board; nails where kind and package are, by the package; anything else where description,
 * unit and size are, by its unit of sale. Retired items and those without a price are left out.
 * @param items - the price list of the day.
 * @param day - the day.
 * @param staleDays - age above which a price is old. [d]
 * @returns the widest spread first.
 */
export function supplierSpreads(
  items: readonly PriceItem[],
  day: string,
  staleDays: number,
): readonly SupplierSpread[] {
  const byThing = new Map<string, { readonly thing: Thing; readonly offers: SupplierOffer[] }>();
  for (const item of items) {
    if (item.retired) continue;
    const price = priceOn(item, day, staleDays);
    if (!price.ok) continue;
    const thing = thingOf(item);
    const eachUsd = eachOf(item, price.value.observation.priceUsd);
    if (eachUsd === undefined) continue;
    const known = byThing.get(thing.key) ?? { thing, offers: [] };
    known.offers.push({
      itemId: item.id,
      supplier: item.supplier,
      description: item.description,
      eachUsd,
      priceOf: price.value.observation.observedOn,
      ageDays: price.value.ageDays,
      stale: price.value.stale,
    });
    byThing.set(thing.key, known);
  }
  return [...byThing.values()]
    .filter(({ offers }) => new Set(offers.map(({ supplier }) => plainWords(supplier))).size > 1)
    .map(({ thing, offers }): SupplierSpread => {
      const sorted = offers.toSorted((a, b) => new Decimal(a.eachUsd).comparedTo(b.eachUsd));
      const spread = changePercent(sorted[0]?.eachUsd ?? 0, sorted.at(-1)?.eachUsd ?? 0);
      return { what: thing.what, unit: thing.unit, offers: sorted, spreadPercent: spread ?? '0.0' };
    })
    .toSorted((a, b) => new Decimal(b.spreadPercent).comparedTo(a.spreadPercent));
}

type Thing = { readonly key: string; readonly what: string; readonly unit: string };

/** What an item is, whoever sells it: two items with the same key are the same thing. */
export function thingOf(item: PriceItem): Thing {
  if (isBoard(item)) {
    const what = [item.section, item.grade, item.species].filter((word) => word.trim() !== '').join(' ');
    return { key: keyOf('board', what, item.lengthFt), what: `${what}, ${item.lengthFt} ft`, unit: 'board' };
  }
  if (item.category === 'nails' && item.nail.trim() !== '') {
    const pack = item.packageLb === null ? [item.packageCount, 'nails'] : [item.packageLb, 'lb'];
    const what = `${item.nail}, ${pack[0] ?? 1} ${pack[1]}`;
    return { key: keyOf('nails', what), what, unit: 'package' };
  }
  return {
    key: keyOf('other', item.description, item.unit, item.widthIn, item.lengthIn, item.thicknessIn),
    what: item.description,
    unit: item.unit,
  };
}

function isBoard(item: PriceItem): boolean {
  return (
    (item.category === 'lumber' || item.category === 'plank') && item.lengthFt !== null && item.section !== ''
  );
}

function eachOf(item: PriceItem, priceUsd: string): string | undefined {
  const each = isBoard(item)
    ? pieceUsd(item, priceUsd)
    : item.category === 'nails' && item.nail.trim() !== ''
      ? nailPackageUsd(item, priceUsd)
      : ({ ok: true, value: priceUsd } as const);
  return each.ok ? decimalText(each.value) : undefined;
}

function keyOf(...parts: readonly (string | number | null)[]): string {
  return JSON.stringify(parts.map((part) => (typeof part === 'string' ? plainWords(part) : part)));
}
