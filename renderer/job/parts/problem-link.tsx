import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import type { Documents } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { fieldOfProblem, placeOfField } from './place-of-field.ts';
import { Said } from './said.tsx';

/** A problem's sentence, with the entry and where it stands before it where the sentence does not say so itself. */
export function placedSentence(problem: Problem, documents: Documents, prices: readonly PriceItem[]): string {
  const sentence = problemSentence(problem);
  const { field } = problem;
  // What an entry's own text does not read as says nothing of where the entry stands.
  const isNameless =
    field !== undefined && (documents.drafts[field] !== undefined || problem.code === 'margin-too-high');
  if (!isNameless) return sentence;
  const { name, screen } = placeOfField(field, documents, prices);
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
