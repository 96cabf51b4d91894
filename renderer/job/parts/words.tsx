import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { TextField } from '../../kit/text-field.tsx';
import { valueAt } from '../editor/documents.ts';
import { draftProblems } from '../editor/enter.ts';
import { useJob } from '../job-context.ts';
import { useFresh } from './use-fresh.ts';

/** Plain words kept at a path of the job: a name, an address, notes. */
export function JobWords(props: {
  readonly path: string;
  readonly label: string;
  readonly labelHidden?: boolean | undefined;
  readonly hint?: string | undefined;
  readonly multiline?: boolean | undefined;
  readonly rows?: number | undefined;
  readonly maxLength?: number | undefined;
  readonly type?: 'text' | 'email' | 'tel' | 'date' | undefined;
}) {
  const { editor, documents } = useJob();
  const draft = documents.drafts[props.path];
  const value = valueAt(documents, props.path);
  const [isFresh, touch] = useFresh(props.path, documents);
  const problem: Problem | undefined =
    draft === undefined || isFresh
      ? undefined
      : draftProblems(documents).find((one) => one.field === props.path);
  const leave = (): void => {
    touch();
    editor.seal();
  };
  return (
    <div className="job-entry" onBlur={leave}>
      <TextField
        {...props}
        value={draft ?? (typeof value === 'string' ? value : '')}
        problem={problem === undefined ? null : problemSentence(problem)}
        onChange={(text) => {
          touch();
          editor.type(props.label, props.path, text);
        }}
      />
    </div>
  );
}
