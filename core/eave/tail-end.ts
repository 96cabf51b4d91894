import type { SectionInput } from './section-types.ts';

/** A face as good as whole: binary dust. [in] */
const dustIn = 1e-9;

/** The cut face of a tail and its lowest corner. [in] */
export type TailEnd = {
  /** Along the cut: plumb, or square to the slope. */
  readonly faceIn: number;
  /** Level distance by which the lowest corner lies further in than the top one; 0 of a plumb cut. */
  readonly setbackIn: number;
  readonly bottomAbovePlateIn: number;
  /** Length of the level cut, inward from the lowest corner; 0 where there is none. */
  readonly levelCutIn: number;
};

/**
 * The tail's end, its underside cut level where less of the face is kept than the board is deep. The level cut reaches in
 * to the wall line at most, so no less of the face is kept than that leaves. Source: geometry. Not rounded.
 * Worked: 6/12, HAP 5, d 5-1/2, P 16, plumb, 4 in. kept -> lowest corner at -7, level cut (6.149 - 4) / 0.5 = 4.298 long.
 * @param input - the section's input. [in]
 */
export function tailEndOf(
  input: Pick<
    SectionInput,
    'pitchRisePer12' | 'heightAbovePlateIn' | 'depthIn' | 'overhangLevelIn' | 'tailCut' | 'keptFaceIn'
  >,
): TailEnd {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const plumb = input.tailCut === 'plumb';
  const [downEach, inEach] = plumb ? [1, 0] : [1 / slopeFactor, m / slopeFactor];
  const topIn = input.heightAbovePlateIn - m * input.overhangLevelIn;
  const undersideAtWallIn = input.heightAbovePlateIn - input.depthIn * slopeFactor;
  const wholeIn = plumb ? input.depthIn * slopeFactor : input.depthIn;
  const leastIn = m > 0 ? Math.min(wholeIn, (topIn - undersideAtWallIn) / downEach) : wholeIn;
  const faceIn = Math.min(wholeIn, Math.max(leastIn, input.keptFaceIn ?? wholeIn));
  const setbackIn = faceIn * inEach;
  const bottomAbovePlateIn = topIn - faceIn * downEach;
  const lowestOutIn = input.overhangLevelIn - setbackIn;
  const cut = m > 0 && faceIn < wholeIn - dustIn;
  const levelCutIn = cut ? lowestOutIn - (undersideAtWallIn - bottomAbovePlateIn) / m : 0;
  return { faceIn, setbackIn, bottomAbovePlateIn, levelCutIn };
}
