import type { Estimate } from '../../../core/pricing/estimate-types.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';

/** What is worth knowing of the prices and leaves the sum whole; nothing where there is nothing to say. */
export function EstimateNotes({ notes }: Pick<Estimate, 'notes'>) {
  if (notes.length === 0) return null;
  return (
    <section className="muted" aria-label="Worth knowing">
      <p>Worth knowing; the sum is whole without it:</p>
      <ul className="lacks">
        {[...new Set(notes.map(problemSentence))].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
