import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { valueAt } from '../editor/documents.ts';
import { readEntry } from '../editor/read-entry.ts';
import { useJob } from '../job-context.ts';
import { Said } from './said.tsx';
import { useFresh } from './use-fresh.ts';
import { useTypedText } from './use-typed-text.ts';

/** An entry of the job by its dotted path: reads, keeps half-typed text, shows its problem and takes part in undo. */
export function JobEntry(props: {
  readonly path: string;
  readonly label: string;
  readonly labelHidden?: boolean | undefined;
  /** A blank is allowed and means this; shown greyed in the empty field. */
  readonly blankMeans?: string | undefined;
  readonly hint?: string | undefined;
  /** What is odd about a value that reads, e.g. a cost of nothing. */
  readonly care?: string | undefined;
  readonly after?: string | undefined;
  readonly before?: string | undefined;
}) {
  const { path, label } = props;
  const { editor, documents, computation } = useJob();
  const draft = documents.drafts[path];
  const [isFresh, touch] = useFresh(path, documents);
  const entry = useTypedText(path, valueAt(documents, path), draft, (text) => {
    touch();
    editor.type(label, path, text);
  });
  const problem = isFresh ? null : entryProblem(path, draft, computation.problems);
  const care = problem === null ? props.care : undefined;
  return (
    <TextField
      className="field entry"
      value={entry.text}
      onChange={entry.type}
      onBlur={() => {
        touch();
        entry.leave();
        editor.seal();
      }}
      isInvalid={problem !== null}
      {...(props.labelHidden === true ? { 'aria-label': label } : {})}
    >
      {props.labelHidden === true ? null : <Label className="field-label">{label}</Label>}
      <div className="field-box">
        {props.before === undefined ? null : (
          <span className="field-unit" aria-hidden="true">
            {props.before}
          </span>
        )}
        <Input
          className="field-input numeric"
          placeholder={props.blankMeans ?? ''}
          autoComplete="off"
          spellCheck={false}
          maxLength={4000}
          data-path={path}
        />
        {props.after === undefined ? null : (
          <span className="field-unit" aria-hidden="true">
            {props.after}
          </span>
        )}
      </div>
      {care === undefined && props.hint === undefined ? null : (
        <Text slot="description" className={care === undefined ? 'field-hint' : 'field-care'}>
          {care ?? props.hint}
        </Text>
      )}
      <FieldError className="field-problem">
        {problem === null ? '' : <Said text={problemSentence(problem)} />}
      </FieldError>
    </TextField>
  );
}

/** What is wrong at an entry: its own text first, then what the computation says of it. */
export function entryProblem(
  path: string,
  draft: string | undefined,
  computed: readonly Problem[],
): Problem | null {
  if (draft !== undefined) {
    const read = readEntry(path, draft);
    if (!read.ok) return read.problem;
  }
  return computed.find((problem) => problem.field === path) ?? null;
}
