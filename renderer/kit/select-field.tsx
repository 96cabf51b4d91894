import { ChevronDown } from 'lucide-react';
import {
  Button,
  FieldError,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Text,
} from 'react-aria-components';

export type Choice<K extends string> = { readonly id: K; readonly label: string };

/** One of a few choices. */
export function SelectField<K extends string>(props: {
  readonly label: string;
  readonly labelHidden?: boolean | undefined;
  /** Null while nothing is chosen. */
  readonly value: K | null;
  readonly choices: readonly Choice<K>[];
  readonly onChange: (value: K) => void;
  readonly hint?: string | undefined;
  readonly problem?: string | null | undefined;
  readonly path?: string | undefined;
  readonly look?: 'field' | 'cell' | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Said while nothing is chosen. */
  readonly none?: string | undefined;
}) {
  const problem = props.problem ?? null;
  return (
    <Select
      className={`field select ${props.look === 'cell' ? 'entry-cell' : ''}`}
      value={props.value}
      onChange={(key) => {
        const choice = props.choices.find((one) => one.id === key);
        if (choice !== undefined) props.onChange(choice.id);
      }}
      isInvalid={problem !== null}
      isDisabled={props.isDisabled ?? false}
      placeholder={props.none ?? 'Choose'}
      {...(props.labelHidden === true ? { 'aria-label': props.label } : {})}
    >
      {props.labelHidden === true ? null : <Label className="field-label">{props.label}</Label>}
      <Button className="field-box select-button" data-path={props.path}>
        <SelectValue className="select-value" />
        <ChevronDown size={14} aria-hidden="true" />
      </Button>
      {props.hint === undefined ? null : (
        <Text slot="description" className="field-hint">
          {props.hint}
        </Text>
      )}
      <FieldError className="field-problem">{problem ?? ''}</FieldError>
      <Popover className="popover" offset={2}>
        <ListBox className="list-box" items={props.choices}>
          {(choice) => (
            <ListBoxItem className="list-box-item" id={choice.id}>
              {choice.label}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
