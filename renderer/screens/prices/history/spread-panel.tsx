import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { CommandOutput } from '../../../../core/contract/contract.ts';
import { useAnswer } from '../../../host/queries.ts';
import { Answer } from '../../../kit/answer.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { TextField } from '../../../kit/text-field.tsx';
import { priceText } from '../price-text.ts';

type Spread = CommandOutput<'prices.spread'>[number];
type OfferRow = Spread['offers'][number] & { readonly of: Spread; readonly at: number };

/** What several suppliers ask for the same thing on a day, and how far they are apart. */
export function SpreadPanel({ today }: { readonly today: string }) {
  const [on, setOn] = useState(today);
  const spreads = useAnswer('prices.spread', { on: on === '' ? today : on }, on !== '', true);
  const rows = useMemo(
    () => (spreads.data ?? []).flatMap((of) => of.offers.map((offer, at) => ({ ...offer, of, at }))),
    [spreads.data],
  );
  return (
    <Panel title="The same thing at several suppliers" look="flush">
      <div className="history-tools panel-words">
        <TextField
          label="On"
          type="date"
          value={on}
          onChange={setOn}
          problem={on === '' ? 'Give the day to compare on.' : null}
        />
      </div>
      <Answer query={spreads}>
        {() =>
          rows.length === 0 ? (
            <p className="muted panel-words">
              No thing has a price from two suppliers on that day. Boards count as the same by section, grade,
              species and length; nails by kind and package; anything else by its description and size.
            </p>
          ) : (
            <DataTable
              label="Offers of several suppliers"
              columns={columns}
              rows={rows}
              rowKey={(row) => row.itemId}
              rowsAtOnce={60}
            />
          )
        }
      </Answer>
    </Panel>
  );
}

const columns: readonly TableColumn<OfferRow>[] = [
  {
    id: 'what',
    title: 'Thing',
    isRowHeader: true,
    cell: (row) => (row.at === 0 ? row.of.what : <span className="visually-hidden">{row.of.what}</span>),
  },
  {
    id: 'supplier',
    title: 'Supplier',
    cell: (row) => (
      <Link href={`/prices-over-time/${encodeURIComponent(row.itemId)}`} className="row-link">
        {row.supplier === '' ? 'no supplier named' : row.supplier}
      </Link>
    ),
  },
  { id: 'each', title: 'Asked', align: 'right', cell: (row) => `$${priceText(row.eachUsd)}` },
  { id: 'unit', title: 'for', cell: (row) => row.of.unit },
  {
    id: 'spread',
    title: 'Apart',
    align: 'right',
    cell: (row) => (row.at === 0 ? <span className="no-wrap">{row.of.spreadPercent} %</span> : null),
  },
  {
    id: 'of',
    title: 'Price of',
    cell: (row) => (
      <span className="no-wrap">
        {row.priceOf} {row.stale ? <span className="tag tag-care">old</span> : null}
      </span>
    ),
  },
];
