import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import type { FasciaPiece } from './layout-types.ts';
import { pieceMark } from './marks.ts';

/** Usable fascia length where no price list says better: a 16 ft board. [in] */
export const assumedLongestFasciaIn = 192;

/** A run of fascia and what it may be broken on. */
export type FasciaRun = {
  readonly eaveName: string;
  readonly letter: string;
  readonly fromIn: number;
  readonly toIn: number;
  readonly tailCentresIn: readonly number[];
  readonly thicknessIn: number;
  readonly bevelJoints: boolean;
  readonly longestIn: number | null;
};

type Best = { readonly pieces: number; readonly sumOfSquares: number; readonly from: number };

/**
 * Breaks a run of fascia into boards whose joints land on tail centres: fewest boards, and of those the most even
 * (least sum of squares), found exactly by dynamic programming. A bevelled end runs past its joint by half the fascia's
 * thickness (45 degrees, long point). Lengths are rounded up to a sixteenth.
 * Worked: 0 to 240 in. with tails every 16 in., boards of 192 -> two boards, joint at 112 or 128.
 * @param run - the run, its tails and the longest usable board. [in]
 * @returns the boards from left to right; none where there is no tail; a problem where no board spans two tails.
 */
export function breakFascia(run: FasciaRun): Result<readonly FasciaPiece[], Problem> {
  const joints = run.tailCentresIn.filter((stationIn) => stationIn > run.fromIn && stationIn < run.toIn);
  if (run.tailCentresIn.length === 0) return ok([]);
  const supports = [run.fromIn, ...joints.toSorted((a, b) => a - b), run.toIn];
  const longest = sixteenthsDown(run.longestIn ?? assumedLongestFasciaIn);
  const lastPlace = supports.length - 1;
  const spanIn = (from: number, to: number): number => (supports[to] ?? 0) - (supports[from] ?? 0);
  const bevelIn = run.bevelJoints ? run.thicknessIn / 2 : 0;
  const overallIn = (from: number, to: number): number =>
    spanIn(from, to) + (from === 0 ? 0 : bevelIn) + (to === lastPlace ? 0 : bevelIn);

  const best: (Best | undefined)[] = [{ pieces: 0, sumOfSquares: 0, from: 0 }];
  for (let to = 1; to <= lastPlace; to += 1) {
    let found: Best | undefined;
    for (let from = to - 1; from >= 0 && sixteenthsUp(spanIn(from, to)) <= longest; from -= 1) {
      const before = best[from];
      if (before === undefined || sixteenthsUp(overallIn(from, to)) > longest) continue;
      const pieces = before.pieces + 1;
      const sumOfSquares = before.sumOfSquares + overallIn(from, to) ** 2;
      const isBetter =
        found === undefined ||
        pieces < found.pieces ||
        (pieces === found.pieces && sumOfSquares < found.sumOfSquares - 1e-9);
      if (isBetter) found = { pieces, sumOfSquares, from };
    }
    if (found === undefined) {
      const gapIn = spanIn(to - 1, to);
      return fail({ code: 'fascia-gap-too-long', eave: run.eaveName, gapIn, longestIn: longest / 16 });
    }
    best[to] = found;
  }

  const ends: number[] = [];
  for (let to = lastPlace; to > 0; to = best[to]?.from ?? 0) ends.unshift(to);
  const jointEnd = run.bevelJoints ? 'bevel' : 'butt';
  return ok(
    ends.map((to, index): FasciaPiece => {
      const from = ends[index - 1] ?? 0;
      return {
        mark: pieceMark(run.letter, 'F', index + 1),
        fromIn: supports[from] ?? 0,
        toIn: supports[to] ?? 0,
        lengthSixteenths: sixteenthsUp(overallIn(from, to)),
        leftEnd: from === 0 ? 'square' : jointEnd,
        rightEnd: to === lastPlace ? 'square' : jointEnd,
      };
    }),
  );
}
