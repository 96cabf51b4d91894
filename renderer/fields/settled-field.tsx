import { useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';
import type { Problem } from '../../core/problems/problem.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { Result } from '../../core/result.ts';

/**
 * An entry that is taken as it is left or Enter is pressed, for what should not follow each key: where a tail stands,
 * where a drawing is cut. What does not read stays as it was typed, with its problem; Escape lets go of it.
 */
export function SettledField<T>(props: {
  readonly label: string;
  readonly labelHidden?: boolean | undefined;
  /** What stands there while nothing is typed. */
  readonly text: string;
  /** What is typed and not taken yet, kept by the owner; null where nothing is. */
  readonly draft: string | null;
  readonly onDraft: (draft: string | null) => void;
  readonly read: (text: string) => Result<T, Problem>;
  readonly onTake: (value: T) => void;
  readonly look?: 'field' | 'cell' | undefined;
  readonly isDisabled?: boolean | undefined;
}) {
  const { draft, onDraft } = props;
  const [isTyping, setTyping] = useState(false);
  const entry = draft === null ? null : props.read(draft);
  const problem = entry === null || entry.ok || isTyping ? null : entry.problem;
  const settle = (): void => {
    setTyping(false);
    if (entry?.ok !== true) return;
    onDraft(null);
    props.onTake(entry.value);
  };
  return (
    <TextField
      className={`field entry settled-field ${props.look === 'cell' ? 'entry-cell' : ''}`}
      value={draft ?? props.text}
      onChange={(text) => {
        setTyping(true);
        onDraft(text);
      }}
      onBlur={settle}
      isInvalid={problem !== null}
      isDisabled={props.isDisabled ?? false}
      {...(props.labelHidden === true ? { 'aria-label': props.label } : {})}
    >
      {props.labelHidden === true ? null : <Label className="field-label">{props.label}</Label>}
      <div className="field-box">
        <Input
          className="field-input numeric"
          autoComplete="off"
          spellCheck={false}
          maxLength={200}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') onDraft(null);
          }}
        />
      </div>
      <FieldError className="field-problem">{problem === null ? '' : problemSentence(problem)}</FieldError>
    </TextField>
  );
}
