import { EntryField, type EntryFieldProps } from './entry-field.tsx';
import { pitchKind } from './entry-kinds.ts';

/** A roof pitch as rise in 12. */
export function PitchField(props: EntryFieldProps<number>) {
  return <EntryField {...props} kind={pitchKind} />;
}
