import type { Lookout, RakeBoard, RakeLayout } from '../rake/rake-types.ts';
import { formatInches } from '../units/format-length.ts';
import type { Piece, PieceUse } from './takeoff-types.ts';

/**
 * Lists every piece that is cut for one rake: lookouts or rungs with the blocks behind them, rails, barge rafter, rake
 * fascia, from the eave up. Lengths come in the sixteenths of the layout; `stationIn` is along the slope from the tail's
 * top corner, as the rake's drawing counts.
 * @param rake - laid out.
 */
export function rakePieces(rake: RakeLayout): readonly Piece[] {
  const board =
    (use: PieceUse, stock: Piece['stock'], key: string, cuts: (board: RakeBoard) => string) =>
    (one: RakeBoard): Piece => ({
      mark: one.mark,
      use,
      stock,
      lengthSixteenths: one.lengthSixteenths,
      eaveId: rake.eaveId,
      rakeId: rake.rakeId,
      stationIn: one.fromIn,
      cuts: cuts(one),
      ...(one.slantSixteenths === undefined ? {} : { slantSixteenths: one.slantSixteenths }),
      ref: `rake/${rake.rakeId}/${key}`,
    });
  const plainCuts = (one: RakeBoard): string => boardCuts(rake, one);
  return [
    ...rake.lookouts.flatMap((lookout) => lookoutPieces(rake, lookout)),
    ...rake.rails.map(board('ladder', rake.lookoutStock, 'rail', plainCuts)),
    ...rake.barge.map(board('barge', rake.bargeStock, 'barge', plainCuts)),
    ...(rake.fasciaStock === null
      ? []
      : rake.fascia
          .map(board('rake-fascia', rake.fasciaStock, 'fascia', (one) => fasciaCuts(rake, one)))
          .map((piece): Piece => ({ ...piece, hand: handOf(rake) }))),
  ];
}

/** A rake fascia is bevelled, so it has a hand: that of its lower end, its face toward the sawyer. */
function handOf({ end }: RakeLayout): 'left' | 'right' {
  return end === 'left' ? 'right' : 'left';
}

function lookoutPieces(rake: RakeLayout, lookout: Lookout): readonly Piece[] {
  const shared = {
    use: rake.kind === 'ladder' ? ('ladder' as const) : ('lookout' as const),
    stock: rake.lookoutStock,
    eaveId: rake.eaveId,
    rakeId: rake.rakeId,
    stationIn: lookout.alongIn,
    ref: `rake/${rake.rakeId}/lookout/${lookout.mark}`,
  };
  return [
    {
      ...shared,
      mark: lookout.mark,
      lengthSixteenths: lookout.lengthSixteenths,
      cuts: lookoutCuts(rake, lookout),
    },
    ...(lookout.block === null
      ? []
      : [
          {
            ...shared,
            mark: lookout.block.mark,
            lengthSixteenths: lookout.block.lengthSixteenths,
            cuts: `square ends; block in line with ${lookout.mark}, to ${lookout.meets?.label ?? 'the first rafter inside'}`,
          },
        ]),
  ];
}

function lookoutCuts(rake: RakeLayout, lookout: Lookout): string {
  if (rake.kind === 'ladder') return 'square ends; rung on edge';
  const trimIn = lookout.lengthSixteenths / 16 - lookout.lengthIn;
  const long = trimIn < 1 / 8 ? '' : `, left ${formatInches(trimIn)} long and cut to the string`;
  const crossed = lookout.crosses.map(({ label }) => label).join(' and ');
  const how =
    crossed === ''
      ? ''
      : rake.notch === null
        ? `; on the outer face of ${crossed}`
        : `; let ${formatInches(rake.notch.depthIn)} into ${crossed}`;
  return `square ends${long}${how}`;
}

function boardCuts(rake: RakeLayout, board: RakeBoard): string {
  const angle = rake.slopeAngleDeg.toFixed(1);
  return `${lowerCut(board, angle)}; ${board.upperEnd === 'plumb' ? `plumb ridge cut ${angle} deg` : 'upper end square, butted over a lookout'}`;
}

function lowerCut(board: RakeBoard, angle: string): string {
  switch (board.lowerEnd) {
    case 'plumb':
      return `plumb tail ${angle} deg`;
    case 'square':
      return 'square tail';
    case 'joint':
      return 'lower end square, butted over a lookout';
    default:
      return board.lowerEnd satisfies never;
  }
}

/** The corner end is bevelled through its thickness, long point on the face; joints are bevelled 45 degrees. */
function fasciaCuts(rake: RakeLayout, board: RakeBoard): string {
  const angle = rake.slopeAngleDeg.toFixed(1);
  const { mitreDeg, rakeLongAlongIn, rakeShortAlongIn } = rake.corner;
  const lower =
    board.lowerEnd === 'joint'
      ? 'lower end bevel 45 deg over a lookout'
      : `${board.lowerEnd === 'plumb' ? `plumb corner cut ${angle} deg` : 'square corner cut'}, mitred ${mitreDeg.toFixed(0)} deg, long point ${formatInches(rakeLongAlongIn - rakeShortAlongIn)} past the short one on the face`;
  const upper =
    board.upperEnd === 'plumb' ? `plumb ridge cut ${angle} deg` : 'upper end bevel 45 deg over a lookout';
  return `${lower}; ${upper}`;
}
