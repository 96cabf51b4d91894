import type { JobInput } from '../job/job-file.ts';
import type { Bay } from '../layout/layout-types.ts';
import { slopeAngleDeg } from '../units/pitch.ts';
import { sixteenthsDown } from '../units/sixteenths.ts';
import { edgePieces } from './edge-pieces.ts';
import { soffitPieces } from './soffit-pieces.ts';
import { fillerPieces, headerPieces, shimPieces, tailPieces } from './tail-pieces.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/**
 * Lists every piece that is cut for one eave, kind by kind in the order of the wall: tails, header blocks, fillers, shims,
 * blocks, edge boards, and what carries the soffit. Tails and edge boards come in the sixteenths of the layout; what goes
 * between two faces is rounded down, so that it is never longer than its place.
 * @param eave - the eave as surveyed, designed and laid out.
 * @param input - for the items that fillers and soffit are cut from.
 * @returns pieces with length [1/16 in], station [in] and cuts in words.
 */
export function eavePieces(
  eave: EaveToTakeOff,
  input: Pick<JobInput, 'asOf' | 'priceList' | 'settings' | 'survey'>,
): readonly Piece[] {
  return [
    ...tailPieces(eave),
    ...headerPieces(eave),
    ...fillerPieces(eave, input),
    ...shimPieces(eave),
    ...blockPieces(eave),
    ...edgePieces(eave),
    ...soffitPieces(eave, input),
  ];
}

function blockPieces(eave: EaveToTakeOff): readonly Piece[] {
  const { layout, design } = eave;
  return layout.bays
    .filter((bay) => bay.block === 'block')
    .map(
      (bay): Piece => ({
        mark: bay.mark,
        use: 'block',
        stock: design.blocks.stock,
        lengthSixteenths: blockLength(bay),
        eaveId: layout.eaveId,
        stationIn: (bay.fromIn + bay.toIn) / 2,
        cuts: blockCuts(eave),
        ref: `bay/${layout.eaveId}/${bay.leftRafterId}`,
      }),
    );
}

/**
 * Length of the block that fills a bay.
 * @param bay - clear distance between the faces. [in]
 * @returns whole sixteenths, rounded down, e.g. 22.53 in. -> 360 (22-1/2 in.). [1/16 in]
 */
export function blockLength(bay: Pick<Bay, 'clearIn'>): ReturnType<typeof sixteenthsDown> {
  return sixteenthsDown(bay.clearIn);
}

function blockCuts({ survey, design }: EaveToTakeOff): string {
  return design.blocks.faces === 'plumb'
    ? `square ends; set plumb, top edge bevelled ${slopeAngleDeg(survey.pitchRisePer12).toFixed(1)} deg`
    : 'square ends; set square to the slope';
}
