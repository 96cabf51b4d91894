import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import type { FasciaPiece } from './layout-types.ts';
import { pieceMark } from './marks.ts';

/** Usable fascia length where no price list says better: a 16 ft board. [in] */
export const assumedLongestFasciaIn = 192;

/** A run of fascia and what it may be broken on. */
export type FasciaRun = {
  readonly letter: string;
  readonly fromIn: number;
  readonly toIn: number;
  readonly tailCentresIn: readonly number[];
  readonly thicknessIn: number;
  readonly bevelJoints: boolean;
  readonly longestIn: number | null;
};

/** The boards of a run, and the stretches between neighbouring tails (or an end) that no board is long enough for. */
export type BrokenFascia = {
  readonly pieces: readonly FasciaPiece[];
  readonly gaps: readonly { readonly fromIn: number; readonly toIn: number }[];
};

/** How good the boards up to a support are: none too long first, then few, then even. */
type Score = { readonly tooLong: number; readonly boards: number; readonly squares: number };
type Best = Score & { readonly from: number };

/**
 * Breaks a run of fascia into boards whose joints land on tail centres: fewest boards, and of those the most even
 * (least sum of squares), found exactly by dynamic programming. A bevelled end runs past its joint by half the fascia's
 * thickness (45 degrees, long point). Where two tails stand further apart than any board reaches, one board is asked for
 * that is too long, and the gap is told. Lengths are rounded up to a sixteenth.
 * Worked: 0 to 240 in. with tails every 16 in., butted boards of 192 -> two boards, joint at 112 or 128.
 * @param run - the run, its tails and the longest usable board. [in]
 * @returns the boards from left to right, none where there is no tail; and the gaps. [in, 1/16 in]
 */
export function breakFascia(run: FasciaRun): BrokenFascia {
  if (run.tailCentresIn.length === 0) return { pieces: [], gaps: [] };
  const joints = run.tailCentresIn.filter((stationIn) => stationIn > run.fromIn && stationIn < run.toIn);
  const supports = [run.fromIn, ...joints.toSorted((a, b) => a - b), run.toIn];
  const longest = sixteenthsDown(run.longestIn ?? assumedLongestFasciaIn);
  const lastPlace = supports.length - 1;
  const bevelIn = run.bevelJoints ? run.thicknessIn / 2 : 0;
  const spanIn = (from: number, to: number): number => (supports[to] ?? 0) - (supports[from] ?? 0);
  const overallIn = (from: number, to: number): number =>
    spanIn(from, to) + (from === 0 ? 0 : bevelIn) + (to === lastPlace ? 0 : bevelIn);

  const best: Best[] = [{ tooLong: 0, boards: 0, squares: 0, from: 0 }];
  for (let to = 1; to <= lastPlace; to += 1) {
    let found: Best | undefined;
    for (let from = to - 1; from >= 0; from -= 1) {
      const neighbour = from === to - 1;
      if (!neighbour && sixteenthsUp(spanIn(from, to)) > longest) break;
      const tooLong = sixteenthsUp(overallIn(from, to)) > longest;
      const before = best[from];
      if (before === undefined || (tooLong && !neighbour)) continue;
      const score = {
        tooLong: before.tooLong + (tooLong ? 1 : 0),
        boards: before.boards + 1,
        squares: before.squares + overallIn(from, to) ** 2,
      };
      if (found === undefined || better(score, found)) found = { ...score, from };
    }
    if (found === undefined) throw new Error('a support without a board to it');
    best.push(found);
  }

  const ends: number[] = [];
  for (let to = lastPlace; to > 0; to = best[to]?.from ?? 0) ends.push(to);
  const jointEnd = run.bevelJoints ? 'bevel' : 'butt';
  const pieces = ends.reverse().map((to, index): FasciaPiece => {
    const from = ends[index - 1] ?? 0;
    return {
      mark: pieceMark(run.letter, 'F', index + 1),
      fromIn: supports[from] ?? 0,
      toIn: supports[to] ?? 0,
      lengthSixteenths: sixteenthsUp(overallIn(from, to)),
      leftEnd: from === 0 ? 'square' : jointEnd,
      rightEnd: to === lastPlace ? 'square' : jointEnd,
    };
  });
  return { pieces, gaps: pieces.filter(({ lengthSixteenths }) => lengthSixteenths > longest) };
}

function better(one: Score, other: Score): boolean {
  if (one.tooLong !== other.tooLong) return one.tooLong < other.tooLong;
  if (one.boards !== other.boards) return one.boards < other.boards;
  return one.squares < other.squares - 1e-9;
}
