import type { Bearing, SectionInput } from './section-types.ts';

type Corner = readonly [xIn: number, yIn: number];

/**
 * The extender's corners in the section's axes, from the back end's top corner along the top edge and clockwise: tail,
 * bottom edge with the notch, back end (square to the slope). Source: geometry. Not rounded.
 * @param input - the section's input. [in]
 * @param backspanIn - backspan as built, along the slope. [in]
 * @param bearing - how it meets the plate. [in]
 * @returns corners [x, y]. Worked: the tail's top corner at 6/12, HAP 5, P 16 is [16, -3]. [in]
 */
export function outlineOf(input: SectionInput, backspanIn: number, bearing: Bearing): readonly Corner[] {
  const m = input.pitchRisePer12 / 12;
  const slopeFactor = Math.hypot(1, m);
  const cos = 1 / slopeFactor;
  const sin = m / slopeFactor;
  const topEdgeAt = (xIn: number): number => input.heightAbovePlateIn - m * xIn;
  const squareBelow = ([xIn, yIn]: Corner): Corner => [xIn - input.depthIn * sin, yIn - input.depthIn * cos];

  const backLevelIn = backspanIn * cos;
  const backTop: Corner = [-backLevelIn, topEdgeAt(-backLevelIn)];
  const tailTop: Corner = [input.overhangLevelIn, topEdgeAt(input.overhangLevelIn)];
  const tailBottom: Corner =
    input.tailCut === 'square'
      ? squareBelow(tailTop)
      : [tailTop[0], tailTop[1] - input.depthIn * slopeFactor];
  const notch: readonly Corner[] =
    bearing.kind === 'notched'
      ? [
          [0, -bearing.heelCutIn],
          [0, 0],
          [-bearing.seatIn, 0],
        ]
      : [];
  const backBottom = squareBelow(backTop);
  // Where the seat runs out at the back end it has taken the bottom corner with it.
  const corners = [backTop, tailTop, tailBottom, ...notch];
  return bearing.kind === 'notched' && backBottom[1] < 0 ? corners : [...corners, backBottom];
}
