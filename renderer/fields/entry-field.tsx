import type { KeyboardEvent, Ref } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import type { Problem } from '../../core/problems/problem.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { Entry, EntryKind } from './entry.ts';
import { useEntry } from './use-entry.ts';

/** What every field of this folder takes. */
export type EntryFieldProps<T> = {
  readonly label: string;
  /** For cells of a grid, whose heading says the name: the label is read aloud and not shown. */
  readonly labelHidden?: boolean | undefined;
  /** The last good value; null for a blank. */
  readonly value: T | null;
  /** Raw text that does not read, kept by the owner: text, or null for none. Leave out where the owner keeps none. */
  readonly draft?: string | null | undefined;
  readonly onEntry: (entry: Entry<T>) => void;
  /** A blank is allowed and means this; shown greyed in the empty field. */
  readonly blankMeans?: string | undefined;
  /** A problem that the owner found, such as rafters out of order. The field's own problem comes first. */
  readonly problem?: Problem | null | undefined;
  readonly hint?: string | undefined;
  /** Dotted path of the entry in the job document, so that a problem or a walk back can jump here. */
  readonly path?: string | undefined;
  /** `cell`: no frame of its own, problem read aloud and shown as a mark; the grid's owner shows the sentence. */
  readonly look?: 'field' | 'cell' | undefined;
  readonly isDisabled?: boolean | undefined;
  readonly inputRef?: Ref<HTMLInputElement> | undefined;
  readonly onKeyDown?: ((event: KeyboardEvent<HTMLInputElement>) => void) | undefined;
  readonly onFocus?: (() => void) | undefined;
};

/** A text entry that reads what is typed, says at the field what is wrong, and keeps the text as typed. */
export function EntryField<T>(
  props: EntryFieldProps<T> & {
    readonly kind: EntryKind<T>;
    readonly before?: string | undefined;
    readonly after?: string | undefined;
  },
) {
  const { kind, value, draft, onEntry, blankMeans, problem, hint, look = 'field' } = props;
  const state = useEntry({ kind, value, draft, onEntry, mayBeBlank: blankMeans !== undefined });
  const shown = state.entry.problem ?? problem ?? null;
  return (
    <TextField
      className={`field entry ${look === 'cell' ? 'entry-cell' : ''}`}
      value={state.text}
      onChange={state.type}
      isInvalid={shown !== null}
      isDisabled={props.isDisabled ?? false}
      {...(props.labelHidden === true ? { 'aria-label': props.label } : {})}
      onBlur={state.leave}
      {...(props.onFocus === undefined ? {} : { onFocus: props.onFocus })}
    >
      {props.labelHidden === true ? null : <Label className="field-label">{props.label}</Label>}
      <div className="field-box">
        {props.before === undefined ? null : (
          <span className="field-unit" aria-hidden="true">
            {props.before}
          </span>
        )}
        <Input
          className="field-input numeric"
          placeholder={blankMeans ?? ''}
          autoComplete="off"
          spellCheck={false}
          data-path={props.path}
          {...(props.inputRef === undefined ? {} : { ref: props.inputRef })}
          {...(props.onKeyDown === undefined ? {} : { onKeyDown: props.onKeyDown })}
        />
        {props.after === undefined ? null : (
          <span className="field-unit" aria-hidden="true">
            {props.after}
          </span>
        )}
      </div>
      {hint === undefined ? null : (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      <FieldError className={look === 'cell' ? 'visually-hidden' : 'field-problem'}>
        {shown === null ? '' : problemSentence(shown)}
      </FieldError>
    </TextField>
  );
}
