import { useDeferredValue, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { priceOn } from '../../../core/pricing/price-on.ts';
import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SearchField } from '../../kit/search-field.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { priceText } from './price-text.ts';
import { categoryChoices, isWanted, labelOf, type Category } from './price-words.ts';

const anyCategory = { id: 'all', label: 'Every kind' } as const;

/** The list of items with its filters. */
export function PriceListPanel(props: {
  readonly items: readonly PriceItem[];
  readonly today: string;
  readonly staleDays: number;
  readonly chosenId: string | undefined;
  readonly onNew: () => void;
}) {
  const { items, today, staleDays } = props;
  const [search, setSearch] = useState('');
  const [category, setCategory] = useState<Category | 'all'>('all');
  const [showsRetired, setShowsRetired] = useState(false);
  const wanted = useDeferredValue(search.trim());
  const rows = useMemo(
    () =>
      items.filter(
        (item) =>
          (category === 'all' || item.category === category) &&
          (showsRetired || !item.retired) &&
          isWanted(item, wanted),
      ),
    [items, category, showsRetired, wanted],
  );
  const isNarrow = props.chosenId !== undefined;
  const columns = useMemo(
    () => columnsFor(today, staleDays).filter((column) => !(isNarrow && column.id === 'kind')),
    [today, staleDays, isNarrow],
  );
  return (
    <div className="price-list">
      <div className="filters">
        <SearchField label="Search item, section or supplier" value={search} onChange={setSearch} />
        <SelectField
          label="Kind of item"
          labelHidden
          value={category}
          choices={[anyCategory, ...categoryChoices]}
          onChange={setCategory}
        />
        <Switch isSelected={showsRetired} onChange={setShowsRetired}>
          Show retired
        </Switch>
      </div>
      <Panel
        title="Items"
        look="flush"
        actions={
          <span className="muted">
            {rows.length} of {items.length}
          </span>
        }
      >
        {items.length === 0 ? (
          <EmptyState
            title="The price list is empty."
            actions={<Button onPress={props.onNew}>Add the first item</Button>}
          >
            Add an item, import a CSV file, or open the sample job, which brings invented prices to try with.
            The export shows the columns that an import needs.
          </EmptyState>
        ) : rows.length === 0 ? (
          <EmptyState title="No item fits.">Take a word out of the search, or choose every kind.</EmptyState>
        ) : (
          <DataTable
            label="Items of the price list"
            columns={columns}
            rows={rows}
            rowsAtOnce={300}
            rowKey={(item) => item.id}
            rowState={(item) => (item.id === props.chosenId ? 'chosen' : item.retired ? 'faded' : undefined)}
          />
        )}
      </Panel>
    </div>
  );
}

function columnsFor(today: string, staleDays: number): readonly TableColumn<PriceItem>[] {
  const priced = (item: PriceItem) => priceOn(item, today, staleDays);
  return [
    {
      id: 'item',
      title: 'Item',
      isRowHeader: true,
      sortBy: (item) => item.description,
      cell: (item) => (
        <>
          <Link href={`/prices/${encodeURIComponent(item.id)}`} className="row-link">
            {item.description}
          </Link>
          {item.retired ? <span className="tag">retired</span> : null}
        </>
      ),
    },
    {
      id: 'kind',
      title: 'Kind',
      sortBy: (item) => labelOf(categoryChoices, item.category),
      cell: (item) => labelOf(categoryChoices, item.category),
    },
    {
      id: 'price',
      title: 'Price',
      align: 'right',
      sortBy: (item) => {
        const price = priced(item);
        return price.ok ? Number(price.value.observation.priceUsd) : -1;
      },
      cell: (item) => {
        const price = priced(item);
        return price.ok ? (
          `$${priceText(price.value.observation.priceUsd)}`
        ) : (
          <span className="tag tag-care">no price</span>
        );
      },
    },
    { id: 'unit', title: 'for', cell: (item) => item.unit },
    {
      id: 'observed',
      title: 'Observed on',
      sortBy: (item) => {
        const price = priced(item);
        return price.ok ? price.value.observation.observedOn : '';
      },
      cell: (item) => {
        const price = priced(item);
        return price.ok ? (
          <span className="no-wrap">
            {price.value.observation.observedOn}{' '}
            {price.value.stale ? <span className="tag tag-care">old</span> : null}
          </span>
        ) : null;
      },
    },
    { id: 'supplier', title: 'Supplier', sortBy: (item) => item.supplier, cell: (item) => item.supplier },
  ];
}
