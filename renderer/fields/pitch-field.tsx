import { EntryField, type EntryFieldProps } from './entry-field.tsx';
import { pitchKind, pitchLimitKind } from './entry-kinds.ts';

/** A roof pitch as rise in 12; `mayBeLevel` for a limit that a level roof may stand at. */
export function PitchField(props: EntryFieldProps<number> & { readonly mayBeLevel?: boolean }) {
  return <EntryField {...props} kind={props.mayBeLevel === true ? pitchLimitKind : pitchKind} />;
}
