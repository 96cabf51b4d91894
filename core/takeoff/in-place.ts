import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { Problem } from '../problems/problem.ts';
import { counted } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/** The pieces that are still to be cut and bought. */
export function piecesToCut(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.filter(({ inPlace }) => inPlace !== true);
}

/**
 * Says of each eave how much of it stands already, so that nobody takes what is left to do for the whole job.
 * @param input - for the eaves in the order of the survey.
 * @param eaves - laid out.
 * @returns one note for each eave with tails in place.
 */
export function inPlaceNotes(
  input: Pick<JobInput, 'design'>,
  eaves: readonly EaveLayout[],
): readonly Problem[] {
  return eaves.flatMap(({ eaveId, name, extenders }): readonly Problem[] => {
    const there = extenders.filter(({ inPlace }) => inPlace).length;
    if (there === 0) return [];
    const index = input.design.asBuilt.findIndex((entry) => entry.eaveId === eaveId);
    return [
      {
        code: 'entry-invalid',
        what: name,
        detail: `${counted(there, 'tail')} of ${extenders.length} ${there === 1 ? 'is' : 'are'} in place. What belongs to ${there === 1 ? 'it' : 'them'} is no longer counted, so the sums are of what is still to be done and not the price of the whole job; a saved estimate keeps that.`,
        field: `design.asBuilt.${index}.inPlace`,
      },
    ];
  });
}
