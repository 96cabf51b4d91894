import { thingKey } from '../../../../core/pricing/same-thing.ts';
import type { PriceItem } from '../../../../core/pricing/price-list.ts';
import { heldPrice, type CellColumn } from '../../../../core/pricing/table/table-cells.ts';
import { categoryChoices, labelOf } from '../price-words.ts';

/** A column of the table of prices. */
export type PriceColumn = {
  readonly id: string;
  readonly title: string;
  /** What is typed into it; null where nothing is. */
  readonly cell: CellColumn | null;
  readonly align?: 'right';
  readonly sortBy?: (item: PriceItem, today: string) => string | number;
};

/** The columns of the table of prices. */
export const priceTableColumns: readonly PriceColumn[] = [
  { id: 'chosen', title: 'Chosen', cell: null },
  { id: 'open', title: 'Open', cell: null },
  { id: 'item', title: 'Item', cell: 'description', sortBy: (item) => item.description },
  {
    id: 'price',
    title: 'Price',
    cell: 'price',
    align: 'right',
    sortBy: (item, today) => Number(heldPrice(item, today)?.priceUsd ?? -1),
  },
  { id: 'unit', title: 'for', cell: 'unit' },
  {
    id: 'observed',
    title: 'Observed on',
    cell: null,
    sortBy: (item, today) => heldPrice(item, today)?.observedOn ?? '',
  },
  { id: 'supplier', title: 'Supplier', cell: 'supplier', sortBy: (item) => item.supplier },
  {
    id: 'kind',
    title: 'Kind',
    cell: 'category',
    // Of one kind the same things stand together, whoever sells them.
    sortBy: (item) => `${labelOf(categoryChoices, item.category)} ${thingKey(item)}`,
  },
  { id: 'section', title: 'Section', cell: 'section' },
  { id: 'grade', title: 'Grade', cell: 'grade' },
  { id: 'species', title: 'Species', cell: 'species' },
  { id: 'length', title: 'Length, ft', cell: 'lengthFt', align: 'right' },
  { id: 'pack', title: 'Pack', cell: 'minimumPack', align: 'right' },
  { id: 'taxable', title: 'Tax', cell: 'taxable' },
  { id: 'notes', title: 'Note', cell: 'notes' },
];

/** What a column that is typed into is called. */
export function titleOfCell(cell: CellColumn): string {
  return priceTableColumns.find((column) => column.cell === cell)?.title ?? 'Price';
}

export type TableSort = { readonly columnId: string; readonly descending: boolean };

/** Puts items in order by a column; of equal ones the order stays. */
export function sortedItems(
  items: readonly PriceItem[],
  sort: TableSort | null,
  today: string,
): readonly PriceItem[] {
  const by = priceTableColumns.find(({ id }) => id === sort?.columnId)?.sortBy;
  if (sort === null || by === undefined) return items;
  const order = new Intl.Collator('en', { numeric: true });
  const keyed = items.map((item) => ({ item, key: by(item, today) }));
  keyed.sort(({ key: a }, { key: b }) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : order.compare(String(a), String(b)),
  );
  const ascending = keyed.map(({ item }) => item);
  return sort.descending ? ascending.reverse() : ascending;
}
