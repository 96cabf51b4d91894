import { Banner } from '../../kit/banner.tsx';
import { useJob } from '../job-context.ts';
import { lackProblems } from './lack-problems.ts';
import { ProblemLink } from './problem-link.tsx';

/** What the figures leave out, each a link to what mends it, above everything else; nothing where they are complete. */
export function Lacks() {
  const { computation } = useJob();
  if (computation.good === null) return null;
  const problems = lackProblems(computation.good.result);
  if (problems.length === 0) return null;
  return (
    <Banner tone="problem">
      <strong>Not complete. These are missing from every sum:</strong>
      <ul className="lacks">
        {problems.map((problem, index) => (
          <li key={index}>
            <ProblemLink problem={problem} />
          </li>
        ))}
      </ul>
    </Banner>
  );
}
