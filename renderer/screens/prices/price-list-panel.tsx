import { Redo2, Undo2 } from 'lucide-react';
import { useDeferredValue, useMemo, useState } from 'react';
import type { PriceChange } from '../../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { pasteBlock, type Paste } from '../../../core/pricing/table/paste-block.ts';
import { useCommand } from '../../commands/command-handlers.ts';
import { Button } from '../../kit/button.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { notify } from '../../kit/notices.tsx';
import { everyItem, filteredItems, PriceFilters } from './price-filters.tsx';
import { changePriceList, redoPrices, undoPrices, usePriceSteps } from './price-steps.ts';
import { BulkDialog } from './table/bulk-dialog.tsx';
import { PasteDialog } from './table/paste-dialog.tsx';
import { PriceGrid } from './table/price-grid.tsx';
import { sortedItems, type TableSort } from './table/table-columns.ts';

/** The list of items with its filters: a table that is typed into, pasted into, and changed as a whole. */
export function PriceListPanel(props: {
  readonly items: readonly PriceItem[];
  readonly today: string;
  readonly staleDays: number;
  readonly chosenId: string | undefined;
  readonly onNew: () => void;
}) {
  const { items, today, staleDays } = props;
  const [filter, setFilter] = useState(everyItem);
  const [sort, setSort] = useState<TableSort | null>(null);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [paste, setPaste] = useState<Paste | null>(null);
  const [isChangingAll, setChangingAll] = useState(false);
  const steps = usePriceSteps();
  useCommand('edit.undo', () => void undoPrices(), steps.undo !== null);
  useCommand('edit.redo', () => void redoPrices(), steps.redo !== null);

  const wanted = useDeferredValue(filter);
  const rows = useMemo(
    () => sortedItems(filteredItems(items, wanted, today, staleDays), sort, today),
    [items, wanted, today, staleDays, sort],
  );
  const suppliers = useMemo(
    () => [...new Set(items.map(({ supplier }) => supplier))].sort((a, b) => a.localeCompare(b)),
    [items],
  );
  const chosenRows = useMemo(() => rows.filter(({ id }) => chosen.has(id)), [rows, chosen]);
  const target = chosenRows.length > 0 ? chosenRows : rows;

  return (
    <div className="price-list">
      <PriceFilters filter={filter} suppliers={suppliers} onChange={setFilter} />
      <section className="panel" aria-label="Items">
        <header className="panel-head">
          <h2 className="panel-title">Items</h2>
          <div className="panel-actions price-tools">
            <span className="muted" role="status">
              {`${rows.length} of ${items.length}${chosenRows.length === 0 ? '' : `, ${chosenRows.length} chosen`}`}
            </span>
            {chosenRows.length === 0 ? null : (
              <Button tone="quiet" onPress={() => setChosen(new Set())}>
                Choose none
              </Button>
            )}
            <Button isDisabled={target.length === 0} onPress={() => setChangingAll(true)}>
              Change prices
            </Button>
            <IconButton
              label={steps.undo === null ? 'Undo' : `Undo ${steps.undo}`}
              icon={<Undo2 size={16} aria-hidden="true" />}
              isDisabled={steps.undo === null}
              onPress={() => void undoPrices()}
            />
            <IconButton
              label={steps.redo === null ? 'Redo' : `Redo ${steps.redo}`}
              icon={<Redo2 size={16} aria-hidden="true" />}
              isDisabled={steps.redo === null}
              onPress={() => void redoPrices()}
            />
          </div>
        </header>
        {items.length === 0 ? (
          <EmptyState
            title="The price list is empty."
            actions={<Button onPress={props.onNew}>Add the first item</Button>}
          >
            Add an item, import a supplier’s file, or open the sample job, which brings invented prices to try
            with.
          </EmptyState>
        ) : rows.length === 0 ? (
          <EmptyState title="No item fits.">
            Take a word out of the search, or choose every kind and supplier.
          </EmptyState>
        ) : (
          <PriceGrid
            rows={rows}
            today={today}
            staleDays={staleDays}
            openId={props.chosenId}
            chosen={chosen}
            suppliers={suppliers}
            sort={sort}
            onSort={(columnId) => setSort(nextSort(sort, columnId))}
            onChoose={(itemId) => setChosen(toggled(chosen, itemId))}
            onChange={(label, changes) => void save(label, changes)}
            onPaste={(text, from, columns) => setPaste(pasteBlock(text, from, columns, today))}
          />
        )}
      </section>
      {paste === null ? null : (
        <PasteDialog
          paste={paste}
          onClose={() => setPaste(null)}
          onTake={() => {
            const { length } = paste.cells;
            setPaste(null);
            const label = `paste of ${length} ${length === 1 ? 'cell' : 'cells'}`;
            void save(label, paste.changes);
          }}
        />
      )}
      {isChangingAll ? (
        <BulkDialog
          items={target}
          isOfChosen={chosenRows.length > 0}
          today={today}
          onClose={() => setChangingAll(false)}
          onTake={(label, changes) => {
            setChangingAll(false);
            void save(label, changes);
          }}
        />
      ) : null}
    </div>
  );
}

/** Every change says that it is on the disk, or why not. */
async function save(label: string, changes: readonly PriceChange[]): Promise<void> {
  if (await changePriceList(label, changes)) notify(`Saved: ${label}.`);
}

function nextSort(sort: TableSort | null, columnId: string): TableSort | null {
  if (sort?.columnId !== columnId) return { columnId, descending: false };
  return sort.descending ? null : { columnId, descending: true };
}

function toggled(chosen: ReadonlySet<string>, itemId: string): ReadonlySet<string> {
  const next = new Set(chosen);
  if (!next.delete(itemId)) next.add(itemId);
  return next;
}
