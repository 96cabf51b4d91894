import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import { slopeFactor } from '../units/pitch.ts';
import type { EaveDesign } from './design-document.ts';

/** Less framing than this is no overhang. [in] */
const leastOverhangIn = 1 / 16;

/**
 * The level overhang of the framing, from the wall's framing face to the plumb line of the tail's top corner, out of the
 * number as the person gives it: level or along the slope (P = O cos t), to the framing or to the fascia's outer face
 * (the fascia's thickness is taken off level). Source: geometry; trade.md 1. Not rounded.
 * Worked: 16 in. along a 6/12 slope to the fascia's face, fascia 3/4 -> 16 / 1.118 - 0.75 = 13.561 in.
 * @param design - the overhang as given. [in]
 * @param pitchRisePer12 - the eave's nominal pitch. [in/12 in]
 * @param fasciaThicknessIn - actual thickness of the fascia. [in]
 * @param eaveName - for the problem's sentence.
 * @returns P [in]; or a problem where the fascia leaves nothing.
 */
export function levelOverhang(
  design: Pick<EaveDesign, 'overhangIn' | 'overhangMeasured' | 'overhangTo'>,
  pitchRisePer12: number,
  fasciaThicknessIn: number,
  eaveName: string,
): Result<number, Problem> {
  const level =
    design.overhangMeasured === 'level' ? design.overhangIn : design.overhangIn / slopeFactor(pitchRisePer12);
  const framing = design.overhangTo === 'framing' ? level : level - fasciaThicknessIn;
  return framing < leastOverhangIn ? fail({ code: 'overhang-nothing-left', eave: eaveName }) : ok(framing);
}
