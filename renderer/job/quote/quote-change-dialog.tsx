import { useState } from 'react';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import type { ShownQuote } from './quote-words.ts';

type Change = CommandOutput<'quotes.compare'>;
type LineChange = Change['lines'][number];

/** Stands for the job as it is now, beside the ids of quotes. */
const asItStands = '(now)';

/** What changed since a quote was made, line by line, and what it does to the margin if its price stays. */
export function QuoteChangeDialog(props: {
  readonly quote: ShownQuote;
  /** The job's other quotes, to hold it against. */
  readonly others: readonly ShownQuote[];
  /** What making a quote of the job as it stands is called, and does; null while it cannot be made. */
  readonly remake: { readonly label: string; readonly run: () => void } | null;
  readonly onClose: () => void;
}) {
  const [withId, setWithId] = useState<string>(asItStands);
  const change = useAnswer('quotes.compare', {
    id: props.quote.id,
    withId: withId === asItStands ? null : withId,
  });
  const name = quoteName(props.quote.number, props.quote.revision);
  const other = props.others.find(({ id }) => id === withId);
  const otherName = other === undefined ? null : quoteName(other.number, other.revision);
  return (
    <Dialog
      title={`What changed since ${name}`}
      isOpen
      size="large"
      onClose={props.onClose}
      actions={
        props.remake === null || withId !== asItStands ? undefined : (
          <Button tone="main" onPress={props.remake.run}>
            {props.remake.label}
          </Button>
        )
      }
    >
      {props.others.length === 0 ? null : (
        <div className="quote-compare">
          <SelectField
            label="Held against"
            value={withId}
            choices={[
              { id: asItStands, label: 'The job as it stands, at today’s prices' },
              ...props.others.map(({ id, number, revision }) => ({ id, label: quoteName(number, revision) })),
            ]}
            onChange={setWithId}
          />
        </div>
      )}
      {change.isPending ? <p className="muted">Reckoning the job at today’s prices</p> : null}
      <Answer query={change}>
        {(value) => <Changes name={name} otherName={otherName} change={value} />}
      </Answer>
    </Dialog>
  );
}

function Changes(props: {
  readonly name: string;
  /** Of the quote that it is held against; null for the job as it stands. */
  readonly otherName: string | null;
  readonly change: Change;
}) {
  const { name, otherName, change } = props;
  return (
    <>
      <p>
        {otherName ?? 'The job as it stands'}, at the prices of {change.asOf}, has a direct cost of{' '}
        <b>{formatUsd(change.directAfterUsd as Usd)}</b>; in {name} it was{' '}
        <b>{formatUsd(change.directBeforeUsd as Usd)}</b>. If the price stays as quoted, the margin over
        direct cost goes from <b>{change.marginBeforePercent} %</b> to{' '}
        <b>{change.marginIfPriceStaysPercent} %</b>.{' '}
        {otherName === null ? 'Made anew, the total would be' : 'Its total is'}{' '}
        {formatUsd(change.totalAfterUsd as Usd)} instead of {formatUsd(change.totalBeforeUsd as Usd)}.
      </p>
      {change.lines.length === 0 ? (
        <p>No line differs.</p>
      ) : (
        <DataTable
          label="Lines that differ"
          columns={columnsFor(name, otherName)}
          rows={change.lines}
          rowKey={(line) => line.id}
          rowsAtOnce={100}
        />
      )}
    </>
  );
}

function columnsFor(name: string, otherName: string | null): readonly TableColumn<LineChange>[] {
  return [
    { id: 'line', title: 'Line', isRowHeader: true, cell: (line) => line.description },
    {
      id: 'before',
      title: otherName === null ? 'In the quote' : name,
      align: 'right',
      cell: (line) => side(line.before, line.unit),
    },
    { id: 'after', title: otherName ?? 'Now', align: 'right', cell: (line) => side(line.after, line.unit) },
    {
      id: 'difference',
      title: 'Cost',
      align: 'right',
      sortBy: (line) => Number(line.costDifferenceUsd),
      cell: (line) => signed(line.costDifferenceUsd),
    },
  ];
}

function side(of: LineChange['before'], unit: string): string {
  return of === null ? 'not there' : `${of.quantity} ${unit}, ${formatUsd(of.costUsd as Usd)}`;
}

function signed(amount: string): string {
  return amount.startsWith('-') ? formatUsd(amount as Usd) : `+${formatUsd(amount as Usd)}`;
}
