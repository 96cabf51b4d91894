import type { Problem } from '../../../core/problems/problem.ts';
import { faultsCounted, faultSentence, problemSentence } from '../../../core/problems/sentence.ts';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';

/** Why a job file was not taken in; `problem` is `lost` where the host did not answer. */
export type RefusedFile = { readonly fileName: string; readonly problem: Problem | 'lost' };

/** Says why a job file was not taken in, each fault of it with the entry where it stands. */
export function ImportFault({
  refused,
  onClose,
}: {
  readonly refused: RefusedFile;
  readonly onClose: () => void;
}) {
  return (
    <Banner tone="problem" isLive actions={<Button onPress={onClose}>Put away</Button>}>
      <strong>{refused.fileName} was not imported.</strong> <Why problem={refused.problem} />
    </Banner>
  );
}

function Why({ problem }: { readonly problem: RefusedFile['problem'] }) {
  if (problem === 'lost') return 'Eavewright does not answer. Try again once it does.';
  if (problem.code !== 'file-faults') return problemSentence(problem);
  const left = problem.count - problem.faults.length;
  return (
    <>
      {faultsCounted(problem.count)} Mend them in the file, and import it again:
      <ul className="fault-list">
        {problem.faults.map((fault) => (
          <li key={fault.field}>{faultSentence(fault)}</li>
        ))}
        {left > 0 ? <li>and {left} more.</li> : null}
      </ul>
    </>
  );
}
