import type { JobResult } from '../../../core/job/job-result.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';

/** Everything that the sums leave out, none told twice. */
export function lackProblems(result: JobResult): readonly Problem[] {
  const problems = [
    ...result.takeoff.lacks,
    ...result.unplanned.map((stock) => stock.problem),
    ...result.estimate.lacks,
  ];
  const bySentence = new Map<string, Problem>();
  for (const problem of problems) {
    const sentence = problemSentence(problem);
    if (!bySentence.has(sentence)) bySentence.set(sentence, problem);
  }
  return [...bySentence.values()];
}

const priceCodes: ReadonlySet<Problem['code']> = new Set(['no-price', 'price-not-yet', 'price-of-nothing']);

/** How much is lacking, e.g. `2 prices`; null where the sums are complete. */
export function lackWords(result: JobResult): string | null {
  const problems = lackProblems(result);
  if (problems.length === 0) return null;
  const arePrices = problems.every(({ code }) => priceCodes.has(code));
  const what = arePrices ? 'price' : 'thing';
  return `${problems.length} ${problems.length === 1 ? what : `${what}s`}`;
}
