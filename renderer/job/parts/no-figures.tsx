import { EmptyState } from '../../kit/empty-state.tsx';
import { useJob } from '../job-context.ts';
import { ProblemLink } from './problem-link.tsx';

/** What stands where figures would be while there are none: why, and where to go on. */
export function NoFigures() {
  const { computation } = useJob();
  return (
    <EmptyState title="No figures yet">
      {computation.problems.length === 0
        ? 'Working out the figures.'
        : 'They come as soon as these are filled or mended:'}
      <span className="no-figures">
        {computation.problems.slice(0, 12).map((problem, index) => (
          <ProblemLink key={index} problem={problem} />
        ))}
      </span>
    </EmptyState>
  );
}
