import { fieldNames } from '../../../../core/pricing/import/field-names.ts';
import type { ImportLayout } from '../../../../core/pricing/import/layout.ts';
import { readWrittenDay } from '../../../../core/pricing/import/written-day.ts';
import { readNumber } from '../../../../core/pricing/table/written-number.ts';
import type { CommandOutput } from '../../../../core/contract/contract.ts';
import { Banner } from '../../../kit/banner.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { priceText } from '../price-text.ts';

export type Preview = CommandOutput<'prices.importPreview'>;
type Fault = Preview['faults'][number];
type Row = Preview['rows'][number];

/** What the file would do to the list: in numbers, cell by cell what cannot be read, and its first rows. */
export function ImportPreview(props: { readonly preview: Preview; readonly layout: ImportLayout }) {
  const { preview, layout } = props;
  const { counts, faults, rows } = preview;
  return (
    <>
      <TwoWays preview={preview} layout={layout} />
      {counts.faults === 0 ? null : (
        <>
          <Banner tone="problem">
            {`${counts.faults === 1 ? 'One cell' : `${counts.faults} cells`} cannot be read, so nothing can come in. Choose another meaning for the column, or mend the file and choose it again.`}
          </Banner>
          <Panel title="What cannot be read" look="flush">
            <div className="preview-table">
              <DataTable
                label="Cells that cannot be read"
                columns={faultColumns}
                rows={faults}
                rowsAtOnce={100}
                rowKey={(fault) => `${fault.row} ${fault.field}`}
              />
            </div>
          </Panel>
        </>
      )}
      <Panel title={`First rows${rows.length < counts.rows ? ` of ${counts.rows}` : ''}`} look="flush">
        {rows.length === 0 ? (
          <p className="panel-words">No row is read yet.</p>
        ) : (
          <div className="preview-table">
            <DataTable
              label="What the rows do"
              columns={rowColumns}
              rows={rows}
              rowsAtOnce={100}
              rowKey={({ row }) => String(row)}
            />
          </div>
        )}
      </Panel>
    </>
  );
}

/** What the file does, in one line. */
export function countsInWords({ counts }: Preview): string {
  const { found } = counts;
  const ways = [
    found.code === 0 ? '' : `${found.code} by item code`,
    found.size === 0 ? '' : `${found.size} by section, length, grade and supplier`,
    found.description === 0 ? '' : `${found.description} by description and supplier`,
  ].filter((way) => way !== '');
  return [
    `${amount(counts.rows, 'row')}: ${amount(counts.added, 'new item')}, ${amount(counts.changed, 'changed item')}, ${amount(counts.prices, 'price')}`,
    counts.unchanged === 0 ? '' : `; ${counts.unchanged} say what the list says already`,
    counts.skipped === 0 ? '' : `; ${amount(counts.skipped, 'row')} without a price left out`,
    ways.length === 0 ? '.' : `. Items were found ${ways.join(', ')}.`,
  ].join('');
}

function amount(number: number, word: string): string {
  return `${number.toLocaleString('en-US')} ${word}${number === 1 ? '' : 's'}`;
}

function TwoWays({ preview, layout }: { readonly preview: Preview; readonly layout: ImportLayout }) {
  const { day, number } = preview.twoWays;
  const readDay = day === null ? null : readWrittenDay(day, layout.dayOrder);
  const readAs = number === null ? null : readNumber(number, layout.decimalSign);
  if (readDay?.ok !== true && readAs?.ok !== true) return null;
  return (
    <Banner tone="caution">
      {day !== null && readDay?.ok === true
        ? `The day ${day} can be read two ways: here it is ${readDay.value}. `
        : ''}
      {number !== null && readAs?.ok === true
        ? `The number ${number} can be read two ways: here it is ${readAs.value}. `
        : ''}
      Check that this is how the supplier writes.
    </Banner>
  );
}

const faultColumns: readonly TableColumn<Fault>[] = [
  { id: 'row', title: 'Row', align: 'right', isRowHeader: true, cell: (fault) => fault.row },
  { id: 'field', title: 'Column', cell: (fault) => fieldNames[fault.field] },
  { id: 'detail', title: 'What is wrong', cell: (fault) => fault.detail },
];

const does: Readonly<Record<Row['does'], string>> = {
  adds: 'new item',
  changes: 'changes the item',
  prices: 'new price',
  nothing: 'says the same',
};

const rowColumns: readonly TableColumn<Row>[] = [
  { id: 'row', title: 'Row', align: 'right', cell: ({ row }) => row },
  { id: 'item', title: 'Item', isRowHeader: true, cell: ({ description }) => description },
  { id: 'supplier', title: 'Supplier', cell: ({ supplier }) => supplier },
  { id: 'does', title: 'Does', cell: (row) => does[row.does] },
  {
    id: 'from',
    title: 'Price now',
    align: 'right',
    cell: ({ fromUsd }) => (fromUsd === null ? 'none' : `$${priceText(fromUsd)}`),
  },
  {
    id: 'to',
    title: 'Then',
    align: 'right',
    cell: ({ toUsd }) => (toUsd === null ? 'none' : `$${priceText(toUsd)}`),
  },
  { id: 'unit', title: 'for', cell: ({ unit }) => unit },
  { id: 'day', title: 'Observed on', cell: ({ day }) => <span className="no-wrap">{day}</span> },
];
