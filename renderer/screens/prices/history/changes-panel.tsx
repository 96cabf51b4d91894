import { useState } from 'react';
import { Link } from 'wouter';
import type { CommandOutput } from '../../../../core/contract/contract.ts';
import { addDays } from '../../../../core/units/civil-date.ts';
import { useAnswer } from '../../../host/queries.ts';
import { Answer } from '../../../kit/answer.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { TextField } from '../../../kit/text-field.tsx';
import { priceText } from '../price-text.ts';
import { percentWords } from './item-over-time.tsx';

type Change = CommandOutput<'prices.changesSince'>[number];

/** Which prices are others than on a day, those that rose most first. */
export function ChangesPanel({ today }: { readonly today: string }) {
  const [since, setSince] = useState(addDays(today, -90));
  const changes = useAnswer(
    'prices.changesSince',
    { since: since === '' ? today : since },
    since !== '',
    true,
  );
  return (
    <Panel title="What changed since a day" look="flush">
      <div className="history-tools panel-words">
        <TextField
          label="Since"
          type="date"
          value={since}
          onChange={setSince}
          problem={since === '' ? 'Give the day to look back to.' : null}
        />
      </div>
      <Answer query={changes}>
        {(rows) =>
          rows.length === 0 ? (
            <p className="muted panel-words">No price is another than on {since}.</p>
          ) : (
            <DataTable
              label={`Prices changed since ${since}`}
              columns={columns}
              rows={rows}
              rowKey={(row) => row.itemId}
              rowsAtOnce={50}
            />
          )
        }
      </Answer>
    </Panel>
  );
}

const columns: readonly TableColumn<Change>[] = [
  {
    id: 'item',
    title: 'Item',
    isRowHeader: true,
    sortBy: (row) => row.description,
    cell: (row) => (
      <Link href={`/prices-over-time/${encodeURIComponent(row.itemId)}`} className="row-link">
        {row.description}
      </Link>
    ),
  },
  { id: 'supplier', title: 'Supplier', sortBy: (row) => row.supplier, cell: (row) => row.supplier },
  {
    id: 'then',
    title: 'Then',
    align: 'right',
    cell: (row) => (row.before === null ? 'no price' : `$${priceText(row.before.priceUsd)}`),
  },
  { id: 'now', title: 'Now', align: 'right', cell: (row) => `$${priceText(row.after.priceUsd)}` },
  { id: 'unit', title: 'for', cell: (row) => row.unit },
  {
    id: 'percent',
    title: 'Change',
    align: 'right',
    sortBy: (row) => Number(row.percent ?? Number.NEGATIVE_INFINITY),
    cell: (row) => (
      <span className="no-wrap">{row.percent === null ? 'new' : percentWords(row.percent)}</span>
    ),
  },
  { id: 'on', title: 'Noted on', cell: (row) => <span className="no-wrap">{row.after.observedOn}</span> },
];
