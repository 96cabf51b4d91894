import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { stillToCut, stillToCutSentence } from '../job/still-to-cut.ts';
import type { Block } from './sheet.ts';

/** How far the work has come, on sheets that say what to cut and buy; nothing where nothing was typed back. */
export function inPlaceNote({ design }: JobInput, { eaves, takeoff }: JobResult): readonly Block[] {
  const left = stillToCut(eaves, takeoff.pieces, design);
  return left.inPlace.length === 0
    ? []
    : [
        {
          kind: 'paragraph',
          text: `${stillToCutSentence(left)} The boards here are for what is still to be cut.`,
        },
      ];
}
