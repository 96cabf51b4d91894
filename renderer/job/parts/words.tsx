import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { TextField } from '../../kit/text-field.tsx';
import { valueAt } from '../editor/documents.ts';
import { draftProblems } from '../editor/enter.ts';
import { useJob } from '../job-context.ts';

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
  const problem: Problem | undefined =
    draft === undefined ? undefined : draftProblems(documents).find((one) => one.field === props.path);
  return (
    <div className="job-entry" onBlur={editor.seal}>
      <TextField
        {...props}
        value={draft ?? (typeof value === 'string' ? value : '')}
        problem={problem === undefined ? null : problemSentence(problem)}
        onChange={(text) => editor.type(props.label, props.path, text)}
      />
    </div>
  );
}
