import { Decimal } from 'decimal.js';
import type { Problem } from '../problems/problem.ts';
import type { TakeoffLine } from '../takeoff/takeoff-types.ts';
import { usd, type Usd } from '../units/money.ts';
import { boughtDraft, type CostDraft, type Costed, lineTrace } from './cost-draft.ts';
import { cheapestPackages, type NailPackage } from './nail-packages.ts';
import type { PriceItem } from './price-list.ts';
import { type DatedPrice, priceOn } from './price-on.ts';
import type { PriceQuestion } from './stock-lengths.ts';
import { nailPackageUsd } from './unit-conversion.ts';

type Offer = {
  readonly item: PriceItem;
  readonly price: DatedPrice;
  /** The least that is sold: one package, or a pack of them. */
  readonly offer: NailPackage;
  /** Dollars for one package. [$] */
  readonly eachUsd: Usd;
};

/** Cost lines of one kind of nail: the cheapest packages that hold the count, one line a size of package. */
export function nailCosts(input: PriceQuestion, line: TakeoffLine): Costed {
  if (line.need.kind !== 'nails') return { drafts: [], lacks: [] };
  const { nail, count, pounds } = line.need;
  if (count <= 0) return { drafts: [], lacks: [] };
  const { offers, problems } = offersOf(input, nail);
  const choices = cheapestPackages(
    count,
    pounds,
    offers.map(({ offer }) => offer),
  );
  if (choices.length === 0)
    return { drafts: [], lacks: [problems[0] ?? { code: 'no-price', item: `${nail} nails` }] };
  const drafts = choices.flatMap(({ itemId, packages }): CostDraft[] => {
    const chosen = offers.find(({ item }) => item.id === itemId);
    return chosen === undefined
      ? []
      : [
          boughtDraft({
            id: `${line.id}-${itemId}`,
            line,
            item: chosen.item,
            price: chosen.price,
            description: chosen.item.description,
            quantity: packages * chosen.item.minimumPack,
            unit: 'package',
            unitCostUsd: chosen.eachUsd,
            parts: [lineTrace(line), { label: 'One package holds', value: packageText(chosen.item) }],
          }),
        ];
  });
  // A package at $0.00 was passed over; with its price the choice could be another.
  return { drafts, lacks: problems.filter(({ code }) => code === 'price-of-nothing') };
}

function offersOf(input: PriceQuestion, nail: string) {
  const offers: Offer[] = [];
  const problems: Problem[] = [];
  for (const item of input.priceList) {
    if (item.category !== 'nails' || item.retired || plain(item.nail) !== plain(nail)) continue;
    const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
    const each = price.ok ? nailPackageUsd(item, price.value.observation.priceUsd) : price;
    if (!price.ok || !each.ok) {
      if (!each.ok) problems.push(each.problem);
      continue;
    }
    // Nails sold by the pound without a package are weighed out in whole pounds.
    const packageLb = item.packageLb ?? (item.unit === 'lb' ? 1 : null);
    const pack = item.minimumPack;
    offers.push({
      item,
      price: price.value,
      offer: {
        itemId: item.id,
        packageLb: packageLb === null ? null : new Decimal(packageLb).times(pack).toNumber(),
        packageCount: item.packageCount === null ? null : item.packageCount * pack,
        priceUsd: usd(new Decimal(each.value).times(pack)),
      },
      eachUsd: each.value,
    });
  }
  return { offers, problems };
}

function packageText(item: PriceItem): string {
  if (item.packageLb !== null) return `${item.packageLb} lb`;
  return item.packageCount === null ? '1 lb' : `${item.packageCount} nails`;
}

function plain(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}
