import { type Choice, SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** A choice among a few, kept at a path of the job. */
export function JobChoice(props: {
  readonly path: string;
  readonly label: string;
  readonly choices: readonly Choice<string>[];
  readonly hint?: string | undefined;
}) {
  const { editor, documents } = useJob();
  return (
    <SelectField
      label={props.label}
      value={(valueAt(documents, props.path) as string | undefined) ?? null}
      choices={props.choices}
      hint={props.hint}
      path={props.path}
      onChange={(value) => editor.change(props.label, (now) => withValueAt(now, props.path, value))}
    />
  );
}

/** A yes or no, kept at a path of the job. */
export function JobSwitch(props: { readonly path: string; readonly label: string }) {
  const { editor, documents } = useJob();
  return (
    <Switch
      isSelected={valueAt(documents, props.path) === true}
      onChange={(value) => editor.change(props.label, (now) => withValueAt(now, props.path, value))}
    >
      {props.label}
    </Switch>
  );
}
