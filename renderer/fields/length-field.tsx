import { useMemo } from 'react';
import { EntryField, type EntryFieldProps } from './entry-field.tsx';
import { lengthKind, type Range } from './entry-kinds.ts';

/** A length in inches, typed and shown as a carpenter writes it. */
export function LengthField(props: EntryFieldProps<number> & { readonly range: Range }) {
  const { least, most } = props.range;
  const kind = useMemo(() => lengthKind({ least, most }), [least, most]);
  return <EntryField {...props} kind={kind} />;
}
