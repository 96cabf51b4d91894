import { problemSentence } from '../../../core/problems/sentence.ts';
import { EmptyState } from '../../kit/empty-state.tsx';
import { useJob } from '../job-context.ts';

/** What stands where figures would be while there are none: why, and where to go on. */
export function NoFigures() {
  const { computation, goTo } = useJob();
  return (
    <EmptyState title="No figures yet">
      {computation.problems.length === 0
        ? 'Working out the figures.'
        : 'They come as soon as these entries are filled or mended:'}
      <span className="no-figures">
        {computation.problems.slice(0, 12).map((problem, index) => {
          const { field } = problem;
          const sentence = problemSentence(problem);
          return field === undefined ? (
            <span key={index}>{sentence}</span>
          ) : (
            <button key={index} type="button" className="text-button" onClick={() => goTo(field)}>
              {entryName(field)}: {sentence}
            </button>
          );
        })}
      </span>
    </EmptyState>
  );
}

/** Says which entry a path means, as far as a list needs it. */
function entryName(path: string): string {
  const words: Readonly<Record<string, string>> = {
    lengthIn: 'Wall, corner to corner',
    pitchRisePer12: 'Pitch',
    heightAbovePlateIn: 'Height above plate',
    overhangIn: 'Overhang',
    readingIn: 'Reading',
  };
  const [root, , eave] = path.split('.');
  const name = words[path.split('.').at(-1) ?? ''] ?? 'Entry';
  const where = root === 'survey' || root === 'design' ? `eave ${Number(eave) + 1}, ` : '';
  return `${where}${name.toLowerCase()}`.replace(/^./, (first) => first.toUpperCase());
}
