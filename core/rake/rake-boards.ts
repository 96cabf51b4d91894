import { breakFascia } from '../layout/fascia-joints.ts';
import { pieceMark, type MarkKind } from '../layout/marks.ts';
import { sixteenthsUp } from '../units/sixteenths.ts';
import type { RakeBoard } from './rake-types.ts';

/** A board up the slope before it is broken: its top edge, and how its ends are cut. */
export type RakeRun = {
  readonly rakeMark: string;
  readonly kind: MarkKind;
  /** Ends of the top edge, along the slope. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly depthIn: number;
  readonly thicknessIn: number;
  /** Rise over run of the slope. [-] */
  readonly slope: number;
  readonly lowerCut: 'plumb' | 'square';
  /** Lookouts that it may be jointed on, along the slope. [in] */
  readonly lookoutsIn: readonly number[];
  readonly bevelJoints: boolean;
  /** Usable length of the longest board; null where the price list has none, and one board is asked for. [in] */
  readonly longestIn: number | null;
};

/**
 * The boards of a barge rafter, rail or rake fascia, with a plumb cut at the ridge. A plumb cut's bottom corner lies d m
 * further down the slope than its top corner, so a plumb lower end makes the board longer by d m; at the ridge the top
 * corner is the far one. Where no board is long enough, they are jointed square on lookouts as breakFascia does. Lengths
 * are rounded up to a sixteenth. Source: geometry, trade.md 1.
 * Worked: top edge 0 to 178 at 6/12, 7-1/4 deep, plumb tail -> 178 + 3.625 = 181-5/8 overall, slant 3-5/8.
 */
export function rakeBoards(run: RakeRun): readonly RakeBoard[] {
  const { rakeMark, fromIn, toIn, lowerCut } = run;
  const pastIn = lowerCut === 'plumb' ? run.depthIn * run.slope : 0;
  const lowestIn = fromIn - pastIn;
  const overallIn = toIn - lowestIn;
  if (run.longestIn === null || overallIn <= run.longestIn)
    return [
      {
        mark: pieceMark(rakeMark, run.kind, 1),
        fromIn,
        toIn,
        lengthSixteenths: sixteenthsUp(overallIn),
        ...(lowerCut === 'plumb' ? { slantSixteenths: sixteenthsUp(pastIn) } : {}),
        lowerEnd: lowerCut,
        upperEnd: 'plumb',
      },
    ];
  const { pieces } = breakFascia({
    letter: rakeMark,
    kind: 'F',
    left: { kind: 'square', faceIn: lowestIn, backIn: lowestIn },
    right: { kind: 'square', faceIn: toIn, backIn: toIn },
    tailCentresIn: run.lookoutsIn,
    thicknessIn: run.thicknessIn,
    bevelJoints: run.bevelJoints,
    longestIn: run.longestIn,
  });
  return pieces.map((piece, index): RakeBoard => {
    const lowest = index === 0;
    const highest = index === pieces.length - 1;
    return {
      mark: pieceMark(rakeMark, run.kind, index + 1),
      fromIn: lowest ? fromIn : piece.fromIn,
      toIn: piece.toIn,
      lengthSixteenths: piece.lengthSixteenths,
      lowerEnd: lowest ? lowerCut : 'joint',
      upperEnd: highest ? 'plumb' : 'joint',
    };
  });
}
