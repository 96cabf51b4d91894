import type { JobResult } from '../job/job-result.ts';
import { problemSentence } from '../problems/sentence.ts';
import type { Block } from './sheet.ts';

/** Everything that the sums leave out, one sentence each, none twice. */
export function lackSentences(result: JobResult): readonly string[] {
  const problems = [
    ...result.takeoff.lacks,
    ...result.unplanned.map((stock) => stock.problem),
    ...result.estimate.lacks,
  ];
  return [...new Set(problems.map(problemSentence))];
}

/** What stands first on a paper whose sums leave something out; nothing on a complete one. */
export function lackBlocks(what: string, result: JobResult): readonly Block[] {
  const sentences = lackSentences(result);
  return sentences.length === 0
    ? []
    : [
        { kind: 'heading', text: `This ${what} is not complete` },
        { kind: 'paragraph', text: 'These are missing from every sum below:' },
        { kind: 'list', items: sentences },
      ];
}
