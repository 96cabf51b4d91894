import { Decimal } from 'decimal.js';
import { Link } from 'wouter';
import { convertPrice } from '../../../core/pricing/convert-price.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { thingKey } from '../../../core/pricing/same-thing.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { Panel } from '../../kit/panel.tsx';
import { priceText } from './price-text.ts';

type Offer = {
  readonly item: PriceItem;
  /** In the unit of the item that is looked at; null where it cannot be turned into it, or there is none. [$/unit] */
  readonly priceUsd: string | null;
  readonly observedOn: string;
  readonly isOld: boolean;
  readonly isCheapest: boolean;
};

/** The same thing at all of its suppliers, each an item of its own, at prices for one unit; nothing where there is one. */
export function OtherSuppliers(props: {
  readonly item: PriceItem;
  readonly list: readonly PriceItem[];
  readonly today: string;
  readonly staleDays: number;
}) {
  const { item } = props;
  const offers = offersOf(item, props.list, props.today, props.staleDays);
  if (offers.length < 2) return null;
  return (
    <Panel title={`The same at ${offers.length} suppliers, for ${item.unit}`} look="flush">
      <DataTable
        label="The same thing at its suppliers"
        columns={columns}
        rows={offers}
        rowKey={(offer) => offer.item.id}
        rowState={(offer) => (offer.item.id === item.id ? 'chosen' : undefined)}
      />
    </Panel>
  );
}

function offersOf(
  item: PriceItem,
  list: readonly PriceItem[],
  today: string,
  staleDays: number,
): readonly Offer[] {
  const key = thingKey(item);
  const offers = list
    .filter((other) => other.id === item.id || (!other.retired && thingKey(other) === key))
    .map((other) => {
      const price = priceOn(other, today, staleDays);
      const priceUsd = price.ok
        ? (convertPrice(other, price.value.observation.priceUsd, other.unit, item.unit) ?? null)
        : null;
      return {
        item: other,
        priceUsd,
        observedOn: price.ok ? price.value.observation.observedOn : '',
        isOld: price.ok && price.value.stale,
      };
    });
  const prices = offers.flatMap(({ priceUsd }) => (priceUsd === null ? [] : [new Decimal(priceUsd)]));
  const least = prices.length < 2 ? null : Decimal.min(...prices);
  return offers.map((offer) => ({
    ...offer,
    isCheapest: least !== null && offer.priceUsd !== null && least.eq(offer.priceUsd),
  }));
}

const columns: readonly TableColumn<Offer>[] = [
  {
    id: 'supplier',
    title: 'Supplier',
    isRowHeader: true,
    cell: ({ item }) => (
      <Link href={`/prices/${encodeURIComponent(item.id)}`} className="row-link">
        {item.supplier === '' ? 'no supplier' : item.supplier}
      </Link>
    ),
  },
  {
    id: 'price',
    title: 'Price',
    align: 'right',
    cell: ({ priceUsd, isCheapest }) =>
      priceUsd === null ? (
        <span className="tag tag-care">no price</span>
      ) : (
        <>
          {isCheapest ? <span className="tag">least</span> : null} ${priceText(priceUsd)}
        </>
      ),
  },
  {
    id: 'observed',
    title: 'Observed on',
    cell: ({ observedOn, isOld }) => (
      <span className="no-wrap">
        {observedOn} {isOld ? <span className="tag tag-care">old</span> : null}
      </span>
    ),
  },
];
