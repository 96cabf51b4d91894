import { Decimal } from 'decimal.js';
import type { PriceItem, PriceObservation } from '../../../core/pricing/price-list.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { priceText } from './price-text.ts';
import { labelOf, sourceChoices } from './price-words.ts';

type HistoryRow = PriceObservation & {
  readonly key: string;
  /** Against the price before it, e.g. `+3.2 %`. */
  readonly change: string;
  readonly isUsed: boolean;
};

/** Every price of an item, newest first, and which one is used today. */
export function PriceHistory(props: {
  readonly item: PriceItem;
  readonly today: string;
  readonly staleDays: number;
}) {
  const rows = historyOf(props.item, props.today, props.staleDays);
  if (rows.length === 0) {
    return <p className="panel-body">No price yet. An estimate that needs this item names it as lacking.</p>;
  }
  return (
    <DataTable
      label={`Prices of ${props.item.description}`}
      columns={columns}
      rows={rows}
      rowKey={(row) => row.key}
    />
  );
}

const columns: readonly TableColumn<HistoryRow>[] = [
  {
    id: 'observed',
    title: 'Observed on',
    isRowHeader: true,
    cell: (row) => (
      <span className="no-wrap">
        {row.observedOn} {row.isUsed ? <span className="tag">used today</span> : null}
      </span>
    ),
  },
  { id: 'price', title: 'Price', align: 'right', cell: (row) => `$${priceText(row.priceUsd)}` },
  { id: 'change', title: 'Change', align: 'right', cell: (row) => row.change },
  { id: 'source', title: 'From', cell: (row) => labelOf(sourceChoices, row.source) },
  { id: 'until', title: 'Valid until', cell: (row) => row.validUntil ?? '' },
];

/**
 * Puts an item's prices in order, newest first; of one day, the later in the list first.
 * @param item - the item.
 * @param today - the day whose price is marked as used.
 * @param staleDays - age above which a price counts as old. [d]
 */
export function historyOf(item: PriceItem, today: string, staleDays: number): readonly HistoryRow[] {
  const used = priceOn(item, today, staleDays);
  const oldestFirst = item.prices
    .map((price, index) => ({ price, index }))
    .sort((a, b) => a.price.observedOn.localeCompare(b.price.observedOn) || a.index - b.index);
  return oldestFirst
    .map(({ price, index }, place) => ({
      ...price,
      key: String(index),
      change: changeBetween(oldestFirst[place - 1]?.price.priceUsd, price.priceUsd),
      isUsed: used.ok && used.value.observation === price,
    }))
    .reverse();
}

function changeBetween(before: string | undefined, after: string): string {
  if (before === undefined || new Decimal(before).isZero()) return '';
  const percent = new Decimal(after).minus(before).div(before).times(100);
  const text = percent.abs().toFixed(1, Decimal.ROUND_HALF_UP);
  if (text === '0.0') return 'same';
  return `${percent.isNegative() ? '-' : '+'}${text} %`;
}
