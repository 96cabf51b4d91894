import { useMemo } from 'react';
import { EntryField, type EntryFieldProps } from './entry-field.tsx';
import { moneyKind, type Range } from './entry-kinds.ts';

/** Dollars, kept as exact decimal text. */
export function MoneyField(
  props: EntryFieldProps<string> & { readonly range?: Range; readonly after?: string },
) {
  const { least, most } = props.range ?? { least: 0, most: 10_000_000 };
  const kind = useMemo(() => moneyKind({ least, most }), [least, most]);
  return <EntryField {...props} kind={kind} before="$" />;
}
