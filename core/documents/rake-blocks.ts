import { drawLookout } from '../drawings/draw-lookout.ts';
import { drawRake } from '../drawings/draw-rake.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { rakeSoffitThicknessIn } from '../takeoff/rake-soffit.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { pieceList } from './crew-lists.ts';
import type { EaveParts } from './eave-drawings.ts';
import type { Block } from './sheet.ts';

/** The rakes that rise from an eave: each with its elevation, a lookout in place and its pieces. */
export function rakeBlocks(input: JobInput, result: JobResult, parts: EaveParts): readonly Block[] {
  return result.rakes
    .filter(({ eaveId }) => eaveId === parts.layout.eaveId)
    .flatMap((rake) => blocksOf(input, result, parts, rake));
}

function blocksOf(input: JobInput, result: JobResult, parts: EaveParts, rake: RakeLayout): readonly Block[] {
  const pieces = result.takeoff.pieces.filter(({ rakeId }) => rakeId === rake.rakeId);
  const finishIn = input.survey.rakes.find(({ id }) => id === rake.rakeId)?.finishIn ?? 0;
  // A lookout over the house tells more than the first, which lies past the wall.
  const shown = rake.lookouts.find(({ levelIn }) => levelIn < 0) ?? rake.lookouts[0];
  const { large: _, ...table } = pieceList(pieces, 'Up the slope');
  return [
    { kind: 'heading', text: `Rake ${rake.mark}: ${rake.name}` },
    {
      kind: 'paragraph',
      text: `Rises from the ${rake.end} end of ${rake.eaveName} at ${formatPitch(rake.pitchRisePer12)}. Overhang ${formatLength(rake.overhangIn)} to the barge rafter's outer face, level. Places up the slope count from the tail's top corner along the barge rafter's top edge.`,
    },
    { kind: 'drawing', drawing: drawRake(rake, parts), heightShare: 0.55 },
    ...(shown === undefined
      ? []
      : [
          {
            kind: 'drawing' as const,
            drawing: drawLookout(
              rake,
              shown,
              parts.survey.deckThicknessIn,
              finishIn,
              rakeSoffitThicknessIn(input, rake.rakeId),
            ),
            heightShare: 0.3,
          },
        ]),
    table,
  ];
}
