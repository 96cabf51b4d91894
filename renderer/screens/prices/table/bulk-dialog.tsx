import { useMemo, useState } from 'react';
import type { PriceChange } from '../../../../core/pricing/price-changes.ts';
import type { PriceItem } from '../../../../core/pricing/price-list.ts';
import {
  bulkChange,
  type BulkChange,
  type BulkRow,
  type Rounding,
} from '../../../../core/pricing/table/bulk-change.ts';
import type { Entry } from '../../../fields/entry.ts';
import { EntryField } from '../../../fields/entry-field.tsx';
import { decimalKind } from '../../../fields/entry-kinds.ts';
import { Button } from '../../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Dialog } from '../../../kit/dialog.tsx';
import { ScrollBox } from '../../../kit/scroll-box.tsx';
import { SelectField } from '../../../kit/select-field.tsx';
import { priceText } from '../price-text.ts';

const byChoices = [
  { id: 'percent', label: 'Percent' },
  { id: 'amount', label: 'Dollars' },
] as const;
const roundingChoices = [
  { id: 'places', label: 'the places it has' },
  { id: 'cent', label: 'the cent' },
  { id: 'five-cents', label: '5 cents' },
  { id: 'quarter', label: '25 cents' },
  { id: 'dollar', label: 'the dollar' },
] as const satisfies readonly { id: Rounding; label: string }[];

/** Changes the prices of many items by a percentage or an amount, old and new shown before it is done. */
export function BulkDialog(props: {
  readonly items: readonly PriceItem[];
  readonly isOfChosen: boolean;
  readonly today: string;
  readonly onTake: (label: string, changes: readonly PriceChange[]) => void;
  readonly onClose: () => void;
}) {
  const { items, today } = props;
  const [by, setBy] = useState<'percent' | 'amount'>('percent');
  const [rounding, setRounding] = useState<Rounding>('places');
  const [value, setValue] = useState<string | null>(null);
  const [draft, setDraft] = useState<string | null>(null);
  const change = useMemo(
    () => (value === null ? null : bulkChange(items, { by, value, rounding }, today)),
    [items, by, value, rounding, today],
  );
  const rows = change?.rows ?? [];
  return (
    <Dialog
      title={`Change ${items.length} ${items.length === 1 ? 'price' : 'prices'}`}
      isOpen
      size="large"
      onClose={props.onClose}
      actions={
        <>
          <Button
            tone="main"
            isDisabled={rows.length === 0}
            onPress={() => {
              if (change !== null && value !== null)
                props.onTake(labelOfRule(by, value, rows.length), change.changes);
            }}
          >
            {rows.length === 0
              ? 'Change the prices'
              : `Change ${rows.length} ${rows.length === 1 ? 'price' : 'prices'}`}
          </Button>
          <Button onPress={props.onClose}>Cancel</Button>
        </>
      }
    >
      <p>
        {props.isOfChosen ? 'The chosen items' : 'All items that the filters show'} get a new price as of
        today. Earlier prices stay, and the change can be undone.
      </p>
      <div className="fields">
        <SelectField label="Change by" value={by} choices={byChoices} onChange={setBy} />
        <EntryField
          kind={by === 'percent' ? percents : dollars}
          label={by === 'percent' ? 'Percent, less with a minus' : 'Dollars a unit, less with a minus'}
          value={value}
          blankMeans=""
          after={by === 'percent' ? '%' : undefined}
          before={by === 'percent' ? undefined : '$'}
          draft={draft}
          onEntry={(entry: Entry<string>) => {
            setDraft(entry.problem === null ? null : entry.text);
            setValue(entry.problem === null ? entry.value : null);
          }}
        />
        <SelectField
          label="Rounded half up to"
          value={rounding}
          choices={roundingChoices}
          onChange={setRounding}
        />
      </div>
      {change === null ? null : (
        <>
          <p role="status">{summary(change)}</p>
          {rows.length === 0 ? null : (
            <ScrollBox label="Prices that change" className="preview-table">
              <DataTable
                label="Prices that change"
                columns={columns}
                rows={rows}
                rowsAtOnce={200}
                rowKey={({ itemId }) => itemId}
              />
            </ScrollBox>
          )}
        </>
      )}
    </Dialog>
  );
}

const percents = decimalKind({ least: -99, most: 1000 });
const dollars = decimalKind({ least: -100_000, most: 100_000 });

function labelOfRule(by: 'percent' | 'amount', value: string, count: number): string {
  return `${count} ${count === 1 ? 'price' : 'prices'} by ${by === 'percent' ? `${value} %` : `$${value}`}`;
}

function summary({ rows, left }: BulkChange): string {
  const count = (why: BulkChange['left'][number]['why']): number =>
    left.filter((one) => one.why === why).length;
  const told = [
    [count('no-price'), 'without a price'],
    [count('same'), 'that stay the same'],
    [count('below-zero'), 'that would fall below nothing'],
    [count('too-high'), 'that would pass $1,000,000'],
  ] as const;
  const stay = told.flatMap(([number, words]) => (number === 0 ? [] : [`${number} ${words}`]));
  const change = `${rows.length} ${rows.length === 1 ? 'price changes' : 'prices change'}.`;
  return stay.length === 0 ? change : `${change} Left as they are: ${stay.join(', ')}.`;
}

const columns: readonly TableColumn<BulkRow>[] = [
  { id: 'item', title: 'Item', isRowHeader: true, cell: (row) => row.description },
  { id: 'from', title: 'Now', align: 'right', cell: (row) => `$${priceText(row.fromUsd)}` },
  { id: 'to', title: 'Then', align: 'right', cell: (row) => `$${priceText(row.toUsd)}` },
  { id: 'unit', title: 'for', cell: (row) => row.unit },
];
