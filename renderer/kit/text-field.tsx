import type { Ref } from 'react';
import { FieldError, Input, Label, Text, TextArea, TextField as AriaTextField } from 'react-aria-components';

/** A line or a paragraph of plain words. */
export function TextField(props: {
  readonly label: string;
  readonly labelHidden?: boolean | undefined;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  /** The sentence that says what is wrong. */
  readonly problem?: string | null | undefined;
  readonly multiline?: boolean | undefined;
  readonly rows?: number | undefined;
  readonly maxLength?: number | undefined;
  readonly placeholder?: string | undefined;
  readonly type?: 'text' | 'email' | 'tel' | 'date' | undefined;
  readonly path?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  readonly autoFocus?: boolean | undefined;
  readonly inputRef?: Ref<HTMLInputElement> | undefined;
}) {
  const problem = props.problem ?? null;
  return (
    <AriaTextField
      className="field"
      value={props.value}
      onChange={props.onChange}
      isInvalid={problem !== null}
      isDisabled={props.isDisabled ?? false}
      type={props.type ?? 'text'}
      {...(props.autoFocus === true ? { autoFocus: true } : {})}
      {...(props.maxLength === undefined ? {} : { maxLength: props.maxLength })}
      {...(props.labelHidden === true ? { 'aria-label': props.label } : {})}
    >
      {props.labelHidden === true ? null : <Label className="field-label">{props.label}</Label>}
      <div className="field-box">
        {props.multiline === true ? (
          <TextArea
            className="field-input"
            rows={props.rows ?? 3}
            placeholder={props.placeholder ?? ''}
            data-path={props.path}
          />
        ) : (
          <Input
            className="field-input"
            placeholder={props.placeholder ?? ''}
            autoComplete="off"
            data-path={props.path}
            {...(props.inputRef === undefined ? {} : { ref: props.inputRef })}
          />
        )}
      </div>
      {props.hint === undefined ? null : (
        <Text slot="description" className="field-hint">
          {props.hint}
        </Text>
      )}
      <FieldError className="field-problem">{problem ?? ''}</FieldError>
    </AriaTextField>
  );
}
