import { choiceWords } from '../../../core/trace/choice-words.ts';
import { SelectField } from '../../kit/select-field.tsx';
import { valueAt, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** A choice whose values are not all words: one of them may stand for "not known". */
export type Option = {
  readonly label: string;
  readonly value: string | boolean | number | null;
};

/** One of a few options, kept at a path of the job; the options may include "not known". */
export function JobOption(props: {
  readonly path: string;
  readonly label: string;
  readonly options: readonly Option[];
  readonly hint?: string | undefined;
}) {
  const { editor, documents } = useJob();
  const value = valueAt(documents, props.path) ?? null;
  const chosen = props.options.findIndex((option) => option.value === value);
  return (
    <SelectField
      label={props.label}
      value={chosen < 0 ? null : String(chosen)}
      choices={props.options.map((option, index) => ({ id: String(index), label: option.label }))}
      hint={props.hint}
      path={props.path}
      onChange={(id) =>
        editor.change(props.label, (now) =>
          withValueAt(now, props.path, props.options[Number(id)]?.value ?? null),
        )
      }
    />
  );
}

/** The options of an entry by its name, in the words that paper and walk back use; `unknown` stands first for "none". */
export function optionsOf(name: keyof typeof choiceWords, unknown?: string): readonly Option[] {
  const known = Object.entries(choiceWords[name]).map(([value, label]) => ({ label, value }));
  return unknown === undefined ? known : [{ label: unknown, value: null }, ...known];
}
