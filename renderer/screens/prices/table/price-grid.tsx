import { defaultRangeExtractor, useVirtualizer } from '@tanstack/react-virtual';
import { ArrowDown, ArrowUp } from 'lucide-react';
import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import { useLocation } from 'wouter';
import { problemSentence } from '../../../../core/problems/sentence.ts';
import { entriesOf, type PriceChange } from '../../../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../../../core/pricing/price-list.ts';
import {
  heldPrice,
  readCell,
  typedPrice,
  writeCell,
  type CellColumn,
} from '../../../../core/pricing/table/table-cells.ts';
import { categoryChoices, unitChoices } from '../price-words.ts';
import { CellEditor } from './cell-editor.tsx';
import { movedBy, type Place } from './grid-moves.ts';
import { ShownCell } from './shown-cell.tsx';
import { priceTableColumns, titleOfCell, type TableSort } from './table-columns.ts';
import './prices-table.css';

const rowHeight = 30;

type Editing = {
  readonly item: PriceItem;
  readonly cell: CellColumn;
  readonly text: string;
  readonly problem: string | null;
};

/**
 * The items as a table that is typed into: arrow keys go from cell to cell, Enter, F2 or a letter begins, Enter and Tab
 * take what is typed, Escape leaves it, the space bar chooses the row. A block from a spreadsheet is pasted from the cell
 * on. Only the rows in sight are drawn.
 */
export function PriceGrid(props: {
  readonly rows: readonly PriceItem[];
  readonly today: string;
  readonly staleDays: number;
  readonly openId: string | undefined;
  readonly chosen: ReadonlySet<string>;
  readonly suppliers: readonly string[];
  readonly sort: TableSort | null;
  readonly onSort: (columnId: string) => void;
  readonly onChoose: (itemId: string) => void;
  readonly onChange: (label: string, changes: readonly PriceChange[]) => void;
  readonly onPaste: (
    text: string,
    rows: readonly PriceItem[],
    columns: readonly (CellColumn | null)[],
  ) => void;
}) {
  const { rows, today, openId } = props;
  const [, goTo] = useLocation();
  const box = useRef<HTMLDivElement>(null);
  const [place, setPlace] = useState<Place>({ row: 0, column: 2 });
  const [editing, setEditing] = useState<Editing | null>(null);
  // Said at once, unlike the state: the field hears that it loses the focus while it is being put away.
  const isTyping = useRef(false);
  const active = { row: Math.min(place.row, Math.max(0, rows.length - 1)), column: place.column };
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => box.current,
    estimateSize: () => rowHeight,
    overscan: 10,
    // The row with the focus is always there, so that its cell can be named as the active one.
    rangeExtractor: (range) =>
      [...new Set([...defaultRangeExtractor(range), active.row])]
        .filter((row) => row < rows.length)
        .sort((a, b) => a - b),
  });
  const shown = virtual.getVirtualItems();

  // An item that is come to from elsewhere is brought into sight, once.
  const openRow = rows.findIndex(({ id }) => id === openId);
  useEffect(() => {
    if (openRow >= 0) virtual.scrollToIndex(openRow, { align: 'auto' });
    // oxlint-disable-next-line react/exhaustive-deps -- only when another item is opened
  }, [openId]);

  const goToPlace = (next: Place): void => {
    setPlace(next);
    virtual.scrollToIndex(next.row);
    requestAnimationFrame(() =>
      document.getElementById(cellId(next))?.scrollIntoView({ block: 'nearest', inline: 'nearest' }),
    );
  };
  const begin = (at: Place, text?: string): void => {
    const item = rows[at.row];
    const cell = priceTableColumns[at.column]?.cell ?? null;
    if (item === undefined || cell === null) return;
    goToPlace(at);
    isTyping.current = true;
    setEditing({ item, cell, text: text ?? writeCell(cell, item, today), problem: null });
  };
  const leave = (): void => {
    isTyping.current = false;
    setEditing(null);
    box.current?.focus();
  };
  const take = (then: 'down' | 'right' | 'left' | 'stay'): void => {
    if (editing === null || !isTyping.current) return;
    const { cell, text } = editing;
    const item = rows.find(({ id }) => id === editing.item.id) ?? editing.item;
    const entries = entriesOf(item);
    const read = readCell(cell, text, entries, heldPrice(item, today)?.priceUsd ?? null);
    if (!read.ok) {
      setEditing({ ...editing, problem: problemSentence(read.problem) });
      return;
    }
    isTyping.current = false;
    setEditing(null);
    if (then !== 'stay') box.current?.focus();
    if (read.value !== null) {
      const label = `${titleOfCell(cell).toLowerCase()} of ${item.description}`;
      props.onChange(label, [
        read.value.kind === 'price'
          ? typedPrice(item.id, read.value.priceUsd, today)
          : { kind: 'entries', from: entries, to: read.value.to },
      ]);
    }
    if (then === 'down') goToPlace({ ...active, row: Math.min(active.row + 1, rows.length - 1) });
    if (then === 'right' || then === 'left') {
      const next = besideCell(active, then === 'right' ? 1 : -1, rows.length);
      if (next !== undefined) begin(next);
    }
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.target !== box.current || event.altKey) return;
    const withControl = event.ctrlKey || event.metaKey;
    const page = Math.max(1, Math.floor((box.current?.clientHeight ?? 0) / rowHeight) - 2);
    const size = { rows: rows.length, columns: priceTableColumns.length, page };
    const next = movedBy(event.key, withControl, active, size);
    const item = rows[active.row];
    if (next !== undefined) {
      event.preventDefault();
      goToPlace(next);
      return;
    }
    if (withControl || item === undefined) return;
    const column = priceTableColumns[active.column];
    if (event.key === ' ' && (column === undefined || column.cell === null || event.shiftKey)) {
      event.preventDefault();
      props.onChoose(item.id);
    } else if (event.key === 'Enter' && column?.id === 'open') {
      event.preventDefault();
      goTo(`/prices/${encodeURIComponent(item.id)}`);
    } else if (event.key === 'Enter' && column?.id === 'chosen') {
      event.preventDefault();
      props.onChoose(item.id);
    } else if (event.key === 'Enter' || event.key === 'F2') {
      event.preventDefault();
      begin(active);
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      begin(active, '');
    } else if (event.key.length === 1) {
      event.preventDefault();
      begin(active, event.key);
    }
  };

  return (
    <div
      ref={box}
      className="price-grid"
      role="grid"
      tabIndex={0}
      aria-label="Items of the price list"
      aria-rowcount={rows.length + 1}
      aria-colcount={priceTableColumns.length}
      {...(rows.length === 0 ? {} : { 'aria-activedescendant': cellId(active) })}
      onKeyDown={onKeyDown}
      onPaste={(event) => {
        if (event.target !== box.current) return;
        event.preventDefault();
        props.onPaste(
          event.clipboardData.getData('text/plain'),
          rows.slice(active.row),
          priceTableColumns.slice(active.column).map(({ cell }) => cell),
        );
      }}
      onCopy={(event) => {
        const item = rows[active.row];
        const cell = priceTableColumns[active.column]?.cell ?? null;
        if (event.target !== box.current || item === undefined || cell === null) return;
        event.preventDefault();
        event.clipboardData.setData('text/plain', writeCell(cell, item, today));
      }}
    >
      <div role="rowgroup" className="price-grid-head">
        <div role="row" aria-rowindex={1} className="price-grid-row">
          {priceTableColumns.map((column) => (
            <div
              key={column.id}
              role="columnheader"
              className={`price-cell price-cell-${column.id} ${column.align === 'right' ? 'align-right' : ''}`}
              {...(column.sortBy === undefined ? {} : { 'aria-sort': direction(props.sort, column.id) })}
            >
              {column.sortBy === undefined ? (
                <span
                  className={column.id === 'open' || column.id === 'chosen' ? 'visually-hidden' : undefined}
                >
                  {column.title}
                </span>
              ) : (
                <button type="button" className="sort-button" onClick={() => props.onSort(column.id)}>
                  {column.title}
                  {props.sort?.columnId !== column.id ? null : props.sort.descending ? (
                    <ArrowDown size={12} aria-hidden="true" />
                  ) : (
                    <ArrowUp size={12} aria-hidden="true" />
                  )}
                </button>
              )}
            </div>
          ))}
        </div>
      </div>
      <div role="rowgroup" className="price-grid-body" style={{ height: `${virtual.getTotalSize()}px` }}>
        {shown.map(({ index, start }) => {
          const item = rows[index];
          if (item === undefined) return null;
          return (
            <div
              key={item.id}
              role="row"
              aria-rowindex={index + 2}
              aria-selected={props.chosen.has(item.id)}
              className="price-grid-row price-grid-item"
              data-row={item.id}
              data-state={item.id === openId ? 'chosen' : item.retired ? 'faded' : undefined}
              data-editing={editing?.item.id === item.id ? 'yes' : undefined}
              style={{ transform: `translateY(${start}px)` }}
            >
              {priceTableColumns.map((column, columnIndex) => {
                const at = { row: index, column: columnIndex };
                const isActive = active.row === index && active.column === columnIndex;
                const isEdited = editing?.item.id === item.id && editing.cell === column.cell;
                return (
                  // oxlint-disable-next-line jsx-a11y/click-events-have-key-events -- keys are heard by the grid
                  <div
                    key={column.id}
                    id={cellId(at)}
                    role={column.id === 'item' ? 'rowheader' : 'gridcell'}
                    aria-colindex={columnIndex + 1}
                    className={`price-cell price-cell-${column.id} ${column.align === 'right' ? 'align-right' : ''}`}
                    data-active={isActive ? 'yes' : undefined}
                    onClick={() => {
                      if (editing === null) setPlace(at);
                    }}
                    onDoubleClick={() => begin(at)}
                  >
                    {isEdited && editing !== null ? (
                      <CellEditor
                        label={`${column.title} of ${item.description}`}
                        text={editing.text}
                        problem={editing.problem}
                        choices={choicesOf(editing.cell, props.suppliers)}
                        onText={(text) => setEditing({ ...editing, text, problem: null })}
                        onTake={take}
                        onLeave={leave}
                      />
                    ) : (
                      <ShownCell
                        column={column}
                        item={item}
                        today={today}
                        staleDays={props.staleDays}
                        isChecked={props.chosen.has(item.id)}
                        onCheck={() => props.onChoose(item.id)}
                      />
                    )}
                  </div>
                );
              })}
            </div>
          );
        })}
      </div>
    </div>
  );
}

function cellId({ row, column }: Place): string {
  return `price-cell-${row}-${column}`;
}

function direction(sort: TableSort | null, columnId: string): 'none' | 'ascending' | 'descending' {
  if (sort?.columnId !== columnId) return 'none';
  return sort.descending ? 'descending' : 'ascending';
}

/** The next cell that is typed into, in the row or in the one behind it. */
function besideCell(from: Place, step: 1 | -1, rows: number): Place | undefined {
  const columns = priceTableColumns.length;
  for (let at = from.row * columns + from.column + step; at >= 0 && at < rows * columns; at += step) {
    const place = { row: Math.floor(at / columns), column: at % columns };
    if (priceTableColumns[place.column]?.cell !== null) return place;
  }
  return undefined;
}

function choicesOf(cell: CellColumn, suppliers: readonly string[]): readonly string[] {
  if (cell === 'category') return categoryChoices.map(({ label }) => label);
  if (cell === 'unit') return unitChoices.map(({ id }) => id);
  if (cell === 'taxable') return ['yes', 'no'];
  return cell === 'supplier' ? suppliers : [];
}
