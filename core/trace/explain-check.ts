import { runChecks } from '../checks/run-checks.ts';
import { standingSentence, verdictWords } from '../documents/check-words.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Explanation } from './trace.ts';

/** An advisory check: its reckoning is its parts, and its entries lie behind them. `check/CHECK/EAVE` */
export function explainCheck(id: string, input: JobInput, result: JobResult): Explanation | undefined {
  const check = runChecks(input, result).find((one) => one.id === id);
  if (check === undefined) return undefined;
  return {
    ref: `check/${id}`,
    title: check.what,
    value: check.value?.text ?? verdictWords[check.verdict],
    how: `${check.where}. ${standingSentence(check)} Advisory: an engineer or the building department decides.`,
    parts: check.why.map(({ label, result: figure, ref }) => ({
      label,
      value: figure,
      ...(ref === undefined ? {} : { ref }),
    })),
  };
}
