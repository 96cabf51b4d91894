import { X } from 'lucide-react';
import { IconButton } from '../../kit/icon-button.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { blanksOf, kindChoices, type TypedLine, typedLineUsd } from './change-form.ts';
import { dollars } from '../../kit/amounts.ts';

const entries = [
  { key: 'description', label: 'Work', maxLength: 300 },
  { key: 'quantity', label: 'Quantity', maxLength: 14 },
  { key: 'unit', label: 'Unit', maxLength: 20 },
  { key: 'unitPriceUsd', label: 'Price for one, $', maxLength: 16 },
  { key: 'unitCostUsd', label: 'Costs us, $', maxLength: 16 },
  { key: 'unitHours', label: 'Hours in one', maxLength: 10 },
] as const;

/** The paths of a line's entries, so that what is wrong with one is said there. */
export function lineFields(index: number): readonly string[] {
  return [...entries.map(({ key }) => key), 'phase'].map((key) => `order.lines.${index}.${key}`);
}

/** A line of a change order: what the client reads and pays, and what the shop keeps for its budget. */
export function ChangeLine(props: {
  readonly line: TypedLine;
  readonly index: number;
  readonly phases: readonly string[];
  /** Whether the client of this job pays sales tax at all. */
  readonly isTaxed: boolean;
  readonly problemAt: (path: string) => string | null;
  /** Entries that were left blank are told, once it was tried to save. */
  readonly tellsBlanks: boolean;
  readonly onChange: (part: Partial<TypedLine>) => void;
  readonly onRemove: () => void;
}) {
  const { line, index, phases, problemAt, onChange } = props;
  const amount = typedLineUsd(line);
  const blanks = props.tellsBlanks ? blanksOf(line) : [];
  const phaseChoices = (phases.includes(line.phase) ? phases : [...phases, line.phase]).map((phase) => ({
    id: phase,
    label: phase,
  }));
  return (
    <li className="change-line">
      <div className="change-line-row">
        {entries.map(({ key, label, maxLength }) => (
          <TextField
            key={key}
            label={label}
            value={line[key]}
            onChange={(text) => onChange({ [key]: text })}
            problem={blanks.includes(key) ? 'Enter it.' : problemAt(`order.lines.${index}.${key}`)}
            maxLength={maxLength}
          />
        ))}
        <p className="change-line-amount">{amount === null ? '–' : dollars(amount)}</p>
        <IconButton
          label={`Take line ${index + 1} out`}
          icon={<X size={16} aria-hidden="true" />}
          onPress={props.onRemove}
        />
      </div>
      <div className="change-line-row change-line-own">
        <SelectField
          label="Phase"
          value={line.phase}
          choices={phaseChoices}
          onChange={(phase) => onChange({ phase })}
        />
        <SelectField
          label="Kind of cost"
          value={line.kind}
          choices={kindChoices}
          onChange={(kind) => onChange({ kind })}
        />
        {props.isTaxed ? (
          <Switch isSelected={line.taxable} onChange={(taxable) => onChange({ taxable })}>
            Taxed
          </Switch>
        ) : null}
      </div>
    </li>
  );
}
