import type { Bearing, SectionInput } from './section-types.ts';
import type { TailEnd } from './tail-end.ts';

type Corner = readonly [xIn: number, yIn: number];

/**
 * The extender's corners in the section's axes, from the back end's top corner along the top edge and clockwise: tail
 * with its level cut, bottom edge with the notch, back end. Source: geometry. Not rounded.
 * @param input - the section's input. [in]
 * @param backspanIn - backspan as built, along the slope. [in]
 * @param bearing - how it meets the plate. [in]
 * @param tail - its cut face. [in]
 * @returns corners [x, y]. Worked: the tail's top corner at 6/12, HAP 5, P 16 is [16, -3]. [in]
 */
export function outlineOf(
  input: SectionInput,
  backspanIn: number,
  bearing: Bearing,
  tail: TailEnd,
): readonly Corner[] {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const cos = 1 / slopeFactor;
  const sin = m / slopeFactor;
  const topEdgeAt = (xIn: number): number => input.heightAbovePlateIn - m * xIn;
  const backLevelIn = backspanIn * cos;
  const backTop: Corner = [-backLevelIn, topEdgeAt(-backLevelIn)];
  const tailTop: Corner = [input.overhangLevelIn, topEdgeAt(input.overhangLevelIn)];
  const tailBottom: Corner = [input.overhangLevelIn - tail.setbackIn, tail.bottomAbovePlateIn];
  const levelCut: readonly Corner[] =
    tail.levelCutIn > 0 ? [[tailBottom[0] - tail.levelCutIn, tailBottom[1]]] : [];
  const notch: readonly Corner[] =
    bearing.kind === 'notched'
      ? [
          [0, -bearing.heelCutIn],
          [0, 0],
          [-bearing.seatIn, 0],
        ]
      : [];
  const backBottom: Corner =
    input.backEnd === 'parallel'
      ? [backTop[0], backTop[1] - input.depthIn * slopeFactor]
      : [backTop[0] - input.depthIn * sin, backTop[1] - input.depthIn * cos];
  // Where the seat runs out at the back end it has taken the bottom corner with it.
  const corners = [backTop, tailTop, tailBottom, ...levelCut, ...notch];
  return bearing.kind === 'notched' && backBottom[1] < 0 ? corners : [...corners, backBottom];
}
