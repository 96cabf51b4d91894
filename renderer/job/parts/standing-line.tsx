import { Check, CircleAlert } from 'lucide-react';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { Menu } from '../../kit/menu.tsx';
import { useJob } from '../job-context.ts';

/** The line under every section: whether the figures follow from what is typed, and what to mend where they do not. */
export function StandingLine() {
  const { computation } = useJob();
  const { problems, current, good } = computation;
  const [first] = problems;
  return (
    <div className={problems.length === 0 ? 'standing' : 'standing standing-old'} role="status">
      {first === undefined ? (
        <>
          <Check size={15} aria-hidden="true" />
          <span>{current ? 'Figures follow from what is typed.' : 'Working out the figures.'}</span>
        </>
      ) : (
        <>
          <CircleAlert size={15} aria-hidden="true" />
          <strong>
            {good === null
              ? 'No figures yet.'
              : current
                ? 'Check:'
                : 'Figures are from before the last change.'}
          </strong>
          <ProblemLink problem={first} />
          {problems.length > 1 ? <OtherProblems problems={problems} /> : null}
        </>
      )}
    </div>
  );
}

function ProblemLink({ problem }: { readonly problem: Problem }) {
  const { goTo } = useJob();
  const { field } = problem;
  const sentence = problemSentence(problem);
  return field === undefined ? (
    <span>{sentence}</span>
  ) : (
    <button type="button" className="text-button standing-link" onClick={() => goTo(field)}>
      {sentence}
    </button>
  );
}

function OtherProblems({ problems }: { readonly problems: readonly Problem[] }) {
  const { goTo } = useJob();
  return (
    <Menu
      label="Entries to mend"
      groups={[
        {
          title: 'Go to the entry',
          choices: problems.slice(0, 30).map((problem, index) => ({
            id: String(index),
            label: problemSentence(problem),
            isDisabled: problem.field === undefined,
            run: () => {
              if (problem.field !== undefined) goTo(problem.field);
            },
          })),
        },
      ]}
    >
      {`${problems.length} to mend`}
    </Menu>
  );
}
