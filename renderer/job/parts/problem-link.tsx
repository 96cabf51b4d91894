import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import type { Documents } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { fieldOfProblem, placeOfField } from './place-of-field.ts';
import { Said } from './said.tsx';

/** Problems of one entry's own text: their sentence does not say which entry. */
const nameless: ReadonlySet<Problem['code']> = new Set([
  'length-unreadable',
  'pitch-unreadable',
  'pitch-out-of-range',
  'money-unreadable',
  'number-unreadable',
  'out-of-range',
  'entry-invalid',
  'margin-too-high',
]);

/** A problem's sentence, with the entry and where it stands before it where the sentence does not say so itself. */
export function placedSentence(problem: Problem, documents: Documents, prices: readonly PriceItem[]): string {
  const sentence = problemSentence(problem);
  if (problem.field === undefined || !nameless.has(problem.code)) return sentence;
  const { name, screen } = placeOfField(problem.field, documents, prices);
  return `${name}, on ${screen}: ${sentence}`;
}

/** What is wrong and where, as a link to the entry, setting or price that mends it. */
export function ProblemLink(props: {
  readonly problem: Problem;
  /** What it says, where another wording than the problem's own is wanted. */
  readonly text?: string | undefined;
  readonly className?: string | undefined;
}) {
  const { documents, surroundings, goTo } = useJob();
  const { problem } = props;
  const text = props.text ?? placedSentence(problem, documents, surroundings.prices);
  const field = fieldOfProblem(problem, surroundings.prices);
  return field === undefined ? (
    <span className={props.className}>
      <Said text={text} />
    </span>
  ) : (
    <button type="button" className={`text-button ${props.className ?? ''}`} onClick={() => goTo(field)}>
      <Said text={text} />
    </button>
  );
}
