import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import type { FasciaPiece, FasciaRun, RunEnd } from './layout-types.ts';
import { pieceMark } from './marks.ts';

/** Usable fascia length where no price list says better: a 16 ft board. [in] */
export const assumedLongestFasciaIn = 192;

/** The boards of a run, and the stretches between neighbouring tails (or an end) that no board is long enough for. */
export type BrokenFascia = {
  readonly pieces: readonly FasciaPiece[];
  readonly gaps: readonly { readonly fromIn: number; readonly toIn: number }[];
};

/** How good the boards up to a support are: none too long first, no joint that is to be avoided, then few, then even. */
type Score = {
  readonly tooLong: number;
  readonly avoided: number;
  readonly boards: number;
  readonly squares: number;
};
type Best = Score & { readonly from: number };

/** Two stations nearer than this are one. [in] */
const sameStationIn = 1 / 64;

/**
 * Breaks a run of fascia or sub-fascia into boards whose joints land on tail centres: none on a joint of the board behind
 * it where that can be, fewest boards, and of those the most even (least sum of squares), found exactly by dynamic
 * programming. A bevelled end runs past its joint by half the thickness (45 degrees, long point). Where two tails stand
 * further apart than any board reaches, one board is asked for that is too long, and the gap is told. Lengths are rounded
 * up to a sixteenth.
 * Worked: 0 to 240 in. with tails every 16 in., butted boards of 192 -> two boards, joint at 112 or 128.
 * @param run - the run, its tails and the longest usable board. [in]
 * @param avoidIn - joints of the board it lies on or behind. [in]
 * @returns the boards from left to right, none where there is no tail; and the gaps. [in, 1/16 in]
 */
export function breakFascia(run: FasciaRun, avoidIn: readonly number[] = []): BrokenFascia {
  if (run.tailCentresIn.length === 0) return { pieces: [], gaps: [] };
  const supports = supportsOf(run);
  const longest = longestOf(run);
  const lastPlace = supports.length - 1;
  const overall = supports.map((_, to) => (from: number) => overallIn(run, supports, from, to));
  const avoided = supports.map((stationIn, place) =>
    place > 0 && place < lastPlace && avoidIn.some((joint) => Math.abs(joint - stationIn) < sameStationIn)
      ? 1
      : 0,
  );

  const best: Best[] = [{ tooLong: 0, avoided: 0, boards: 0, squares: 0, from: 0 }];
  for (let to = 1; to <= lastPlace; to += 1) {
    let found: Best | undefined;
    for (let from = to - 1; from >= 0; from -= 1) {
      const neighbour = from === to - 1;
      if (!neighbour && sixteenthsUp((supports[to] ?? 0) - (supports[from] ?? 0)) > longest) break;
      const lengthIn = overall[to]?.(from) ?? 0;
      const tooLong = sixteenthsUp(lengthIn) > longest;
      const before = best[from];
      if (before === undefined || (tooLong && !neighbour)) continue;
      const score = {
        tooLong: before.tooLong + (tooLong ? 1 : 0),
        avoided: before.avoided + (avoided[to] ?? 0),
        boards: before.boards + 1,
        squares: before.squares + lengthIn ** 2,
      };
      if (found === undefined || better(score, found)) found = { ...score, from };
    }
    if (found === undefined) throw new Error('a support without a board to it');
    best.push(found);
  }

  const places: number[] = [];
  for (let to = lastPlace; to > 0; to = best[to]?.from ?? 0) places.unshift(to);
  const joints = places.slice(0, -1).map((place) => supports[place] ?? 0);
  return { pieces: boardsOnJoints(run, joints), gaps: gapsOf(run, joints) };
}

/**
 * The boards of a run between chosen joints. Lengths are rounded up to a sixteenth: `lengthSixteenths` from tip to tip,
 * `shortSixteenths` between the short points of bevels and mitres.
 * Worked: a 3/4 in. board from a mitre (face -16.75, back -16) to a bevelled joint at 100 -> 117-1/8 long, 115-5/8 short.
 * @param run - the run. [in]
 * @param jointsIn - from left to right, between its ends. [in]
 */
export function boardsOnJoints(run: FasciaRun, jointsIn: readonly number[]): readonly FasciaPiece[] {
  const stops = [run.left.faceIn, ...jointsIn, run.right.faceIn];
  const last = stops.length - 2;
  const jointEnd = run.bevelJoints ? 'bevel' : 'butt';
  return stops.slice(1).map((toIn, index): FasciaPiece => {
    const fromIn = stops[index] ?? 0;
    const left = index === 0 ? pointsOf(run.left) : jointPoints(run, fromIn);
    const right = index === last ? pointsOf(run.right) : jointPoints(run, toIn);
    return {
      mark: pieceMark(run.letter, run.kind, index + 1),
      fromIn,
      toIn,
      lengthSixteenths: sixteenthsUp(right.most - left.least),
      shortSixteenths: sixteenthsUp(right.least - left.most),
      leftEnd: index === 0 ? endOf(run.left, 'left') : jointEnd,
      rightEnd: index === last ? endOf(run.right, 'right') : jointEnd,
    };
  });
}

/** The joints of boards that lie side by side. [in] */
export function jointsOf(pieces: readonly FasciaPiece[]): readonly number[] {
  return pieces.slice(1).map(({ fromIn }) => fromIn);
}

/** The stations that boards may end on: both ends of the run on its face, and every tail between. [in] */
export function supportsOf(run: FasciaRun): readonly number[] {
  const { left, right } = run;
  const between = run.tailCentresIn.filter(
    (stationIn) =>
      stationIn > Math.max(left.faceIn, left.backIn) && stationIn < Math.min(right.faceIn, right.backIn),
  );
  return [left.faceIn, ...between.toSorted((a, b) => a - b), right.faceIn];
}

/** Where a board is too long for any that can be bought. */
function gapsOf(run: FasciaRun, jointsIn: readonly number[]): BrokenFascia['gaps'] {
  const longest = longestOf(run);
  return boardsOnJoints(run, jointsIn)
    .filter(({ lengthSixteenths }) => lengthSixteenths > longest)
    .map(({ fromIn, toIn }) => ({ fromIn, toIn }));
}

function longestOf(run: FasciaRun): number {
  return sixteenthsDown(run.longestIn ?? assumedLongestFasciaIn);
}

/** From tip to tip of the board between two supports. [in] */
function overallIn(run: FasciaRun, supports: readonly number[], from: number, to: number): number {
  const left = from === 0 ? pointsOf(run.left) : jointPoints(run, supports[from] ?? 0);
  const right = to === supports.length - 1 ? pointsOf(run.right) : jointPoints(run, supports[to] ?? 0);
  return right.most - left.least;
}

/** Both points of an end, whichever side each is on. [in] */
type Points = { readonly least: number; readonly most: number };

function pointsOf({ faceIn, backIn }: RunEnd): Points {
  return { least: Math.min(faceIn, backIn), most: Math.max(faceIn, backIn) };
}

function jointPoints({ bevelJoints, thicknessIn }: FasciaRun, stationIn: number): Points {
  const halfIn = bevelJoints ? thicknessIn / 2 : 0;
  return { least: stationIn - halfIn, most: stationIn + halfIn };
}

/** A mitre at an outside corner has its long point on the face, at an inside corner on the back. */
function endOf({ kind, faceIn, backIn }: RunEnd, side: 'left' | 'right'): FasciaPiece['leftEnd'] {
  if (kind === 'square') return 'square';
  const faceIsLonger = side === 'left' ? faceIn < backIn : faceIn > backIn;
  return faceIsLonger ? 'mitre' : 'inside-mitre';
}

function better(one: Score, other: Score): boolean {
  if (one.tooLong !== other.tooLong) return one.tooLong < other.tooLong;
  if (one.avoided !== other.avoided) return one.avoided < other.avoided;
  if (one.boards !== other.boards) return one.boards < other.boards;
  return one.squares < other.squares - 1e-9;
}
