import type { CommandOutput } from '../../../core/contract/contract.ts';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import type { ShownQuote } from './quote-words.ts';

type Change = CommandOutput<'quotes.compare'>;
type LineChange = Change['lines'][number];

/** What changed since a quote was made, line by line, and what it does to the margin if its price stays. */
export function QuoteChangeDialog(props: { readonly quote: ShownQuote; readonly onClose: () => void }) {
  const change = useAnswer('quotes.compare', { id: props.quote.id });
  const name = quoteName(props.quote.number, props.quote.revision);
  return (
    <Dialog title={`What changed since ${name}`} isOpen size="large" onClose={props.onClose}>
      {change.isPending ? <p className="muted">Reckoning the job at today’s prices</p> : null}
      <Answer query={change}>{(value) => <Changes name={name} change={value} />}</Answer>
    </Dialog>
  );
}

function Changes({ name, change }: { readonly name: string; readonly change: Change }) {
  return (
    <>
      <p>
        The job as it stands, at the prices of {change.asOf}, has a direct cost of{' '}
        <b>{formatUsd(change.directAfterUsd as Usd)}</b>; in {name} it was{' '}
        <b>{formatUsd(change.directBeforeUsd as Usd)}</b>. If the price stays as quoted, the margin over
        direct cost goes from <b>{change.marginBeforePercent} %</b> to{' '}
        <b>{change.marginIfPriceStaysPercent} %</b>. Made anew, the total would be{' '}
        {formatUsd(change.totalAfterUsd as Usd)} instead of {formatUsd(change.totalBeforeUsd as Usd)}.
      </p>
      {change.lines.length === 0 ? (
        <p>No line differs.</p>
      ) : (
        <DataTable
          label="Lines that differ"
          columns={columns}
          rows={change.lines}
          rowKey={(line) => line.id}
          rowsAtOnce={100}
        />
      )}
    </>
  );
}

const columns: readonly TableColumn<LineChange>[] = [
  { id: 'line', title: 'Line', isRowHeader: true, cell: (line) => line.description },
  { id: 'before', title: 'In the quote', align: 'right', cell: (line) => side(line.before, line.unit) },
  { id: 'after', title: 'Now', align: 'right', cell: (line) => side(line.after, line.unit) },
  {
    id: 'difference',
    title: 'Cost',
    align: 'right',
    sortBy: (line) => Number(line.costDifferenceUsd),
    cell: (line) => signed(line.costDifferenceUsd),
  },
];

function side(of: LineChange['before'], unit: string): string {
  return of === null ? 'not there' : `${of.quantity} ${unit}, ${formatUsd(of.costUsd as Usd)}`;
}

function signed(amount: string): string {
  return amount.startsWith('-') ? formatUsd(amount as Usd) : `+${formatUsd(amount as Usd)}`;
}
