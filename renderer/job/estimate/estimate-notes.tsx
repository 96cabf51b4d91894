import type { Estimate } from '../../../core/pricing/estimate-types.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { ProblemLink } from '../parts/problem-link.tsx';

/** What is worth knowing of the prices and leaves the sum whole; nothing where there is nothing to say. */
export function EstimateNotes({ notes }: Pick<Estimate, 'notes'>) {
  if (notes.length === 0) return null;
  const bySentence = new Map(notes.map((note) => [problemSentence(note), note]));
  return (
    <section className="muted" aria-label="Worth knowing">
      <p>Worth knowing; the sum is whole without it:</p>
      <ul className="lacks">
        {[...bySentence].map(([sentence, note]) => (
          <li key={sentence}>
            <ProblemLink problem={note} />
          </li>
        ))}
      </ul>
    </section>
  );
}
