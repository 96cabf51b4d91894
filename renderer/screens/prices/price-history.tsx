import { Decimal } from 'decimal.js';
import { Trash2 } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { PriceItem, PriceObservation } from '../../../core/pricing/price-list.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { priceText } from './price-text.ts';
import { labelOf, sourceChoices } from './price-words.ts';
import { TakeBackPrice } from './take-back-price.tsx';

type HistoryRow = {
  readonly key: string;
  readonly price: PriceObservation;
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
  const { item } = props;
  const [wrong, setWrong] = useState<HistoryRow | null>(null);
  const columns = useMemo(() => columnsFor(setWrong), []);
  const rows = historyOf(item, props.today, props.staleDays);
  if (rows.length === 0) {
    return <p className="panel-body">No price yet. An estimate that needs this item names it as lacking.</p>;
  }
  return (
    <>
      <DataTable
        label={`Prices of ${item.description}`}
        columns={columns}
        rows={rows}
        rowKey={(row) => row.key}
      />
      {wrong === null ? null : (
        <TakeBackPrice item={item} price={wrong.price} rowKey={wrong.key} onClose={() => setWrong(null)} />
      )}
    </>
  );
}

const columnsFor = (onTakeBack: (row: HistoryRow) => void): readonly TableColumn<HistoryRow>[] => [
  {
    id: 'observed',
    title: 'Observed on',
    isRowHeader: true,
    cell: (row) => (
      <span className="no-wrap">
        {row.price.observedOn}
        {row.isUsed ? (
          <>
            <br />
            <span className="tag">used today</span>
          </>
        ) : null}
      </span>
    ),
  },
  { id: 'price', title: 'Price', align: 'right', cell: (row) => `$${priceText(row.price.priceUsd)}` },
  {
    id: 'change',
    title: 'Change',
    align: 'right',
    cell: (row) => <span className="no-wrap">{row.change}</span>,
  },
  {
    id: 'source',
    title: 'From',
    cell: (row) => (
      <>
        {labelOf(sourceChoices, row.price.source)}
        {row.price.validUntil === null ? null : (
          <>
            {' '}
            <span className="no-wrap muted">valid until {row.price.validUntil}</span>
          </>
        )}
      </>
    ),
  },
  {
    id: 'take-back',
    title: 'Take the price back',
    titleHidden: true,
    align: 'right',
    cell: (row) => (
      <IconButton
        label={`Take back $${priceText(row.price.priceUsd)} of ${row.price.observedOn}`}
        icon={<Trash2 size={16} aria-hidden="true" />}
        onPress={() => onTakeBack(row)}
      />
    ),
  },
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
      price,
      key: `price ${index}`,
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
