import { Check, CircleAlert, CloudOff, LoaderCircle } from 'lucide-react';
import { useSyncExternalStore } from 'react';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { type Connection, useConnection } from '../../host/connection.ts';
import { Menu } from '../../kit/menu.tsx';
import type { SaveState } from '../editor/autosave.ts';
import { useJob } from '../job-context.ts';
import { fieldOfProblem } from './place-of-field.ts';
import { lackProblems, lackWords } from './lack-problems.ts';
import { placedSentence, ProblemLink } from './problem-link.tsx';

/**
 * The line under every section: what is not saved, whether the figures follow from what is typed, and what to mend where
 * they do not.
 */
export function StandingLine() {
  const { computation, isWorking } = useJob();
  const isOld = !isWorking && computation.problems.length > 0;
  return (
    <div className={isOld ? 'standing standing-old' : 'standing'} role="status" aria-busy={isWorking}>
      <NotSaved />
      {isWorking ? (
        <>
          <LoaderCircle size={15} aria-hidden="true" />
          <span>Working out the figures.</span>
        </>
      ) : isOld ? (
        <ToMend />
      ) : (
        <Follows />
      )}
    </div>
  );
}

function Follows() {
  const { computation } = useJob();
  if (computation.good === null) return null;
  const { result } = computation.good;
  const lacks = lackWords(result);
  const [first] = lackProblems(result);
  return lacks === null || first === undefined ? (
    <>
      <Check size={15} aria-hidden="true" />
      <span>Figures follow from what is typed.</span>
    </>
  ) : (
    <>
      <CircleAlert size={15} aria-hidden="true" />
      <span className="standing-words">Figures follow from what is typed; the estimate lacks {lacks}:</span>
      <ProblemLink problem={first} className="standing-link" />
    </>
  );
}

function ToMend() {
  const { computation } = useJob();
  const { problems, current, good } = computation;
  const [first] = problems;
  return first === undefined ? null : (
    <>
      <CircleAlert size={15} aria-hidden="true" />
      <strong>
        {good === null ? 'No figures yet.' : current ? 'Check:' : 'Figures are from before the last change.'}
      </strong>
      <ProblemLink problem={first} className="standing-link" />
      {problems.length > 1 ? <OtherProblems problems={problems} /> : null}
    </>
  );
}

/** Said here too, because the head of the screen may be out of sight. */
function NotSaved() {
  const { editor } = useJob();
  const saving = useSyncExternalStore(editor.subscribe, () => editor.read().saving);
  const words = notSavedWords(saving, useConnection());
  return words === null ? null : (
    <>
      <CloudOff size={15} aria-hidden="true" className="standing-unsaved" />
      <strong className="standing-unsaved">{words}</strong>
    </>
  );
}

function notSavedWords(saving: SaveState, connection: Connection): string | null {
  switch (saving.kind) {
    case 'refused':
      return `Not saved: ${problemSentence(saving.problem)}`;
    case 'changed-elsewhere':
      return 'Not saved: changed in another window. Choose above which to keep.';
    case 'host-lost':
      return 'Not saved: Eavewright does not answer.';
    case 'saving':
    case 'saved':
      return connection === 'here' ? null : 'Eavewright does not answer.';
    default:
      return saving satisfies never;
  }
}

function OtherProblems({ problems }: { readonly problems: readonly Problem[] }) {
  const { documents, surroundings, goTo } = useJob();
  return (
    <Menu
      label="Entries to mend"
      groups={[
        {
          title: 'Go to the entry',
          choices: problems.slice(0, 30).map((problem, index) => {
            const field = fieldOfProblem(problem, surroundings.prices);
            return {
              id: String(index),
              label: placedSentence(problem, documents, surroundings.prices),
              isDisabled: field === undefined,
              run: () => {
                if (field !== undefined) goTo(field);
              },
            };
          }),
        },
      ]}
    >
      {`${problems.length} to mend`}
    </Menu>
  );
}
