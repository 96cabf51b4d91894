import { ArrowDown, ArrowUp } from 'lucide-react';
import { useRowsInParts } from './rows-in-parts.tsx';
import { useMemo, useState, type ReactNode } from 'react';

export type TableColumn<R> = {
  readonly id: string;
  readonly title: string;
  /** Figures stand right, with tabular digits. */
  readonly align?: 'left' | 'right' | 'centre' | undefined;
  readonly cell: (row: R) => ReactNode;
  /** Makes the column sortable: what its rows are put in order by. */
  readonly sortBy?: ((row: R) => string | number) | undefined;
  /** Read as the row's name. */
  readonly isRowHeader?: boolean | undefined;
  /** The heading is read aloud and not shown. */
  readonly titleHidden?: boolean | undefined;
};

type Sort = { readonly columnId: string; readonly descending: boolean };

/** A plain table: headings that repeat in print, figures at the right, and sorting by the headings. */
export function DataTable<R>(props: {
  /** What the table lists, read aloud. */
  readonly label: string;
  readonly columns: readonly TableColumn<R>[];
  readonly rows: readonly R[];
  readonly rowKey: (row: R) => string;
  readonly rowState?: ((row: R) => 'chosen' | 'faded' | undefined) | undefined;
  readonly foot?: ReactNode;
  /** A long table is shown in parts of so many rows, so that typing beside it stays quick. */
  readonly rowsAtOnce?: number | undefined;
}) {
  const [sort, setSort] = useState<Sort | null>(null);
  const rows = useMemo(() => sorted(props.rows, props.columns, sort), [props.rows, props.columns, sort]);
  const { shown, more } = useRowsInParts(rows, props.rowsAtOnce ?? Number.POSITIVE_INFINITY);
  return (
    <>
      <table className="table">
        <caption className="visually-hidden">{props.label}</caption>
        <thead>
          <tr>
            {props.columns.map((column) => (
              <th
                key={column.id}
                scope="col"
                className={`align-${column.align ?? 'left'}`}
                {...(column.sortBy === undefined ? {} : { 'aria-sort': direction(sort, column.id) })}
              >
                {column.sortBy === undefined ? (
                  <span className={column.titleHidden === true ? 'visually-hidden' : undefined}>
                    {column.title}
                  </span>
                ) : (
                  <button
                    type="button"
                    className="sort-button"
                    onClick={() => setSort(nextSort(sort, column.id))}
                  >
                    {column.title}
                    {sort?.columnId !== column.id ? null : sort.descending ? (
                      <ArrowDown size={12} aria-hidden="true" />
                    ) : (
                      <ArrowUp size={12} aria-hidden="true" />
                    )}
                  </button>
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((row) => (
            <tr key={props.rowKey(row)} data-row={props.rowKey(row)} data-state={props.rowState?.(row)}>
              {props.columns.map((column) =>
                column.isRowHeader === true ? (
                  <th key={column.id} scope="row" className={`align-${column.align ?? 'left'}`}>
                    {column.cell(row)}
                  </th>
                ) : (
                  <td key={column.id} className={`align-${column.align ?? 'left'}`}>
                    {column.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
        {props.foot === undefined ? null : <tfoot>{props.foot}</tfoot>}
      </table>
      {more}
    </>
  );
}

function direction(sort: Sort | null, columnId: string): 'none' | 'ascending' | 'descending' {
  if (sort?.columnId !== columnId) return 'none';
  return sort.descending ? 'descending' : 'ascending';
}

function nextSort(sort: Sort | null, columnId: string): Sort | null {
  if (sort?.columnId !== columnId) return { columnId, descending: false };
  return sort.descending ? null : { columnId, descending: true };
}

function sorted<R>(rows: readonly R[], columns: readonly TableColumn<R>[], sort: Sort | null): readonly R[] {
  const by = columns.find((column) => column.id === sort?.columnId)?.sortBy;
  if (sort === null || by === undefined) return rows;
  const ascending = rows.toSorted((a, b) => compare(by(a), by(b)));
  return sort.descending ? ascending.reverse() : ascending;
}

function compare(a: string | number, b: string | number): number {
  return typeof a === 'number' && typeof b === 'number'
    ? a - b
    : String(a).localeCompare(String(b), 'en', { numeric: true });
}
