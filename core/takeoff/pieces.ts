import { assertNever } from '../result.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { nearestSixteenth, sixteenthsDown } from '../units/sixteenths.ts';
import { slopeAngleDeg } from '../units/pitch.ts';
import type { Bay, Extender, FasciaPiece } from '../layout/layout-types.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/**
 * Lists every piece that is cut for one eave: extenders, blocks, fascia, in the order of the wall.
 * Extenders and fascia come in the sixteenths of the layout; a block is its bay rounded down, so that it is never
 * longer than the bay it goes into.
 * @param eave - the eave as surveyed, designed and laid out.
 * @returns pieces with length [1/16 in], station [in] and cuts in words.
 */
export function eavePieces(eave: EaveToTakeOff): readonly Piece[] {
  const { layout, design } = eave;
  const extenders = layout.extenders.map(
    (extender): Piece => ({
      mark: extender.mark,
      use: 'extender',
      stock: design.extender,
      lengthSixteenths: extender.blankSixteenths,
      eaveId: layout.eaveId,
      stationIn: extender.centreIn,
      cuts: extenderCuts(extender, eave),
      ref: `section/${layout.eaveId}/${extender.rafterId}`,
    }),
  );
  const blocks = layout.bays
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
  const fascia = layout.fascia.map(
    (piece): Piece => ({
      mark: piece.mark,
      use: 'fascia',
      stock: design.fascia.stock,
      lengthSixteenths: piece.lengthSixteenths,
      eaveId: layout.eaveId,
      stationIn: piece.fromIn,
      cuts: fasciaCuts(piece),
      ref: `eave/${layout.eaveId}/lengthIn`,
    }),
  );
  return [...extenders, ...blocks, ...fascia];
}

/**
 * Length of the block that fills a bay.
 * @param bay - clear distance between the faces. [in]
 * @returns whole sixteenths, rounded down, e.g. 22.53 in. -> 360 (22-1/2 in.). [1/16 in]
 */
export function blockLength(bay: Pick<Bay, 'clearIn'>): ReturnType<typeof sixteenthsDown> {
  return sixteenthsDown(bay.clearIn);
}

function extenderCuts(extender: Extender, { design }: EaveToTakeOff): string {
  const { section } = extender;
  const angle = slopeAngleDeg(extender.pitchRisePer12).toFixed(1);
  const tail = design.tailCut === 'plumb' ? `plumb tail ${angle} deg` : 'square tail';
  const long =
    design.trimAllowanceIn > 0
      ? `, left ${formatInches(design.trimAllowanceIn)} long and cut to the string`
      : '';
  return `${tail}${long}; ${bearingCuts(section.bearing)}, ${wallLine(section)}; on the ${extender.side} of rafter ${extender.rafterNumber}`;
}

function bearingCuts(bearing: Extender['section']['bearing']): string {
  switch (bearing.kind) {
    case 'notched':
      return `seat ${formatInches(bearing.seatIn)}, heel ${formatInches(bearing.heelCutIn)}`;
    case 'shimmed':
      return nearestSixteenth(bearing.shimIn) === 0
        ? 'no seat cut'
        : `no seat cut, ${formatInches(bearing.shimIn)} shim on the plate`;
    case 'on-corner':
      return 'no seat cut';
    default:
      return assertNever(bearing);
  }
}

/** Where the wall's plumb line is struck, which the seat and heel are marked from. */
function wallLine(section: Extender['section']): string {
  return `wall line ${formatLength(section.backspanIn)} from the back end on the top edge`;
}

function blockCuts({ survey, design }: EaveToTakeOff): string {
  return design.blocks.faces === 'plumb'
    ? `square ends; set plumb, top edge bevelled ${slopeAngleDeg(survey.pitchRisePer12).toFixed(1)} deg`
    : 'square ends; set square to the slope';
}

function fasciaCuts(piece: FasciaPiece): string {
  return `left end ${fasciaEnd(piece.leftEnd)}, right end ${fasciaEnd(piece.rightEnd)}`;
}

function fasciaEnd(end: FasciaPiece['leftEnd']): string {
  return end === 'bevel' ? 'bevel 45 deg' : end;
}
