import type { Stock } from '../eave/stock.ts';
import type { BoardEnd, FasciaPiece, FasciaRun, RunEnd } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/** The boards of the edge: sub-fascia first, since it goes on first, then fascia, each from left to right. */
export function edgePieces({ layout, design }: EaveToTakeOff): readonly Piece[] {
  const { fascia, subFascia, fasciaRun, subFasciaRun, eaveId } = layout;
  const piecesOf = (
    use: 'fascia' | 'sub-fascia',
    boards: readonly FasciaPiece[],
    stock: Stock,
    run: FasciaRun,
  ): readonly Piece[] =>
    boards.map(
      (board): Piece => ({
        mark: board.mark,
        use,
        stock,
        lengthSixteenths: board.lengthSixteenths,
        ...(board.shortSixteenths < board.lengthSixteenths ? { shortSixteenths: board.shortSixteenths } : {}),
        eaveId,
        stationIn: board.fromIn,
        cuts: edgeCuts(board, run),
        ...handOf(board),
        ref: `eave/${eaveId}/lengthIn`,
      }),
    );
  return [
    ...(subFasciaRun === null
      ? []
      : piecesOf('sub-fascia', subFascia, design.fascia.subFascia.stock, subFasciaRun)),
    ...piecesOf('fascia', fascia, design.fascia.stock, fasciaRun),
  ];
}

/** A board with a mitre at one end alone has a hand: that of the mitred end, its face toward the sawyer. */
function handOf({ leftEnd, rightEnd }: FasciaPiece): Pick<Piece, 'hand'> {
  if (isMitre(leftEnd) === isMitre(rightEnd)) return {};
  return { hand: isMitre(leftEnd) ? 'left' : 'right' };
}

function isMitre(end: BoardEnd): boolean {
  return end === 'mitre' || end === 'inside-mitre';
}

function edgeCuts(board: FasciaPiece, run: FasciaRun): string {
  const short = inchesOf(board.shortSixteenths);
  const points =
    board.shortSixteenths < board.lengthSixteenths
      ? `; long point to long point ${formatLength(inchesOf(board.lengthSixteenths))}, short to short ${formatLength(short)}`
      : '';
  return `left end ${endWords(board.leftEnd, run.left, run)}, right end ${endWords(board.rightEnd, run.right, run)}${points}`;
}

/**
 * How the end of an edge board is cut, e.g. `mitre 45 deg, long point on the face`.
 * @param end - of the board.
 * @param runEnd - of its run, on that side. [in]
 * @param run - for the thickness. [in]
 */
export function endWords(end: BoardEnd, { faceIn, backIn }: RunEnd, { thicknessIn }: FasciaRun): string {
  switch (end) {
    case 'bevel':
      return 'bevel 45 deg';
    case 'mitre':
    case 'inside-mitre': {
      const angle = (Math.atan(Math.abs(faceIn - backIn) / thicknessIn) * 180) / Math.PI;
      return `mitre ${Number(angle.toFixed(1))} deg, long point on the ${end === 'mitre' ? 'face' : 'back'}`;
    }
    default:
      return end;
  }
}
