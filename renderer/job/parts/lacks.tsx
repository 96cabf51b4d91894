import { lackSentences } from '../../../core/documents/lacks.ts';
import { Banner } from '../../kit/banner.tsx';
import { useJob } from '../job-context.ts';

/** What the figures leave out, by name, above everything else; nothing where they are complete. */
export function Lacks() {
  const { computation } = useJob();
  if (computation.good === null) return null;
  const sentences = lackSentences(computation.good.result);
  if (sentences.length === 0) return null;
  return (
    <Banner tone="problem">
      <strong>Not complete. These are missing from every sum:</strong>
      <ul className="lacks">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Banner>
  );
}
