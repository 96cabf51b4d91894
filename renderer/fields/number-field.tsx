import { useMemo } from 'react';
import { EntryField, type EntryFieldProps } from './entry-field.tsx';
import { decimalKind, numberKind, type Range } from './entry-kinds.ts';

/** A plain number; `whole` for counts, `unit` stands after it. */
export function NumberField(
  props: EntryFieldProps<number> & {
    readonly range: Range;
    readonly whole?: boolean;
    readonly unit?: string;
  },
) {
  const { least, most } = props.range;
  const whole = props.whole ?? false;
  const unit = props.unit ?? '';
  const kind = useMemo(() => numberKind({ least, most }, whole, unit), [least, most, whole, unit]);
  return <EntryField {...props} kind={kind} after={props.unit} />;
}

/** An exact decimal kept as text: a percentage or a quantity. */
export function DecimalField(
  props: EntryFieldProps<string> & { readonly range: Range; readonly unit?: string },
) {
  const { least, most } = props.range;
  const unit = props.unit ?? '';
  const kind = useMemo(() => decimalKind({ least, most }, unit), [least, most, unit]);
  return <EntryField {...props} kind={kind} after={props.unit} />;
}
