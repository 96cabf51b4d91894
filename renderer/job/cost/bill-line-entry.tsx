import { Trash2 } from 'lucide-react';
import { costKinds } from '../../../core/billing/change-order.ts';
import type { BillLine } from '../../../core/jobcost/cost-entries.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { kindWords } from './cost-words.ts';

/** One line of a receipt or an order. */
export function BillLineEntry(props: {
  readonly line: BillLine;
  readonly isFirst: boolean;
  readonly phases: readonly string[];
  /** The price of one can be noted on the price list. */
  readonly mayNotePrice: boolean;
  readonly problemAt: (key: string) => string | null;
  readonly onChange: (part: Partial<BillLine>) => void;
  /** Null for the only line. */
  readonly onRemove: (() => void) | null;
}) {
  const { line, problemAt, onChange } = props;
  const labelHidden = !props.isFirst;
  return (
    <li>
      <div className="bill-line">
        <TextField
          label="What it is"
          labelHidden={labelHidden}
          value={line.description}
          onChange={(description) => onChange({ description })}
          problem={problemAt('description')}
          maxLength={300}
        />
        <SelectField
          label="Phase"
          labelHidden={labelHidden}
          value={line.phase}
          choices={[...new Set([...props.phases, line.phase])].map((phase) => ({ id: phase, label: phase }))}
          onChange={(phase) => onChange({ phase })}
        />
        <SelectField
          label="Kind"
          labelHidden={labelHidden}
          value={line.kind}
          choices={costKinds.map((kind) => ({ id: kind, label: kindWords[kind] }))}
          onChange={(kind) => onChange({ kind })}
        />
        <TextField
          label="Quantity"
          labelHidden={labelHidden}
          value={line.quantity}
          onChange={(quantity) => onChange({ quantity })}
          problem={problemAt('quantity')}
          maxLength={14}
        />
        <TextField
          label="Unit"
          labelHidden={labelHidden}
          value={line.unit}
          onChange={(unit) => onChange({ unit })}
          maxLength={20}
        />
        <TextField
          label="Amount"
          labelHidden={labelHidden}
          value={line.amountUsd}
          onChange={(amountUsd) => onChange({ amountUsd })}
          problem={problemAt('amountUsd')}
          maxLength={14}
        />
        {props.onRemove === null ? null : (
          <IconButton
            label={`Take the line out${line.description === '' ? '' : `: ${line.description}`}`}
            icon={<Trash2 size={16} aria-hidden="true" />}
            onPress={props.onRemove}
          />
        )}
      </div>
      {props.mayNotePrice ? (
        <Switch isSelected={line.notesPrice} onChange={(notesPrice) => onChange({ notesPrice })}>
          Note the price of one on the price list
        </Switch>
      ) : null}
    </li>
  );
}
