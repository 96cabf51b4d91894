import { dressedSections } from '../lumber/dressed-sizes.ts';
import { formatLength } from '../units/format-length.ts';
import { atTail, held, type Check, source, step } from './answer.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { adjustedElasticity } from './lumber/adjusted-values.ts';
import { adjustedStep } from './lumber/factor-words.ts';
import { noValues, valuesSource } from './lumber/no-values.ts';
import { fine, plain } from './measured.ts';
import { noTailHeld, reckonedHolds, tailsHeldBy } from './tails-held.ts';
import { longestOverhang } from './shorter-overhang.ts';
import { tipSag } from './statics/overhang-beam.ts';
import type { CaseForces, ReckonedTail } from './statics/reckon-tail.ts';

const what = 'Sag of the tail under the short-term load against L/180';

/**
 * Sag of the tail's end, square to the slope, under roof live or snow load: w a^3 (4 b + 3 a) / (24 E I) with a along the
 * slope and b to where the nails' resultant pulls, against L/180 with L twice the overhang.
 * Source: IRC R301.7 and its note on cantilevers, as seen in transcription; beam formula as published.
 * Worked: a 17.9 in. -> limit 2 x 17.9 / 180 = 0.199 in.
 */
export const deflection: Check = {
  check: 'deflection',
  group: 'Lumber',
  title: "Sag of the tail's end",
  run: (eave) => {
    if (eave.values === undefined) return noValues(eave, what);
    const elastic = adjustedElasticity(eave.values, { wet: eave.design.structure.wetService });
    const inertia = (depthIn: number) => (eave.stock.thicknessIn * depthIn ** 3) / 12;
    const ratio = (tail: ReckonedTail, forces: CaseForces, depthIn = eave.stock.depthIn) =>
      sagOf(tail, forces, elastic.psi * inertia(depthIn)) / limitIn(tail);
    const reckoned = tailsHeldBy(eave, reckonedHolds);
    if (reckoned.tails.length === 0) return noTailHeld(what, eave, reckoned);
    const governing = governingCase(reckoned.tails, ratio);
    const { tail, forces } = governing;
    const stiffness = elastic.psi * inertia(eave.stock.depthIn);
    const { acrossLbPerIn, alongIn, backIn } = beamOf(tail, forces);
    const remedyOf = (): string => {
      const deeper = dressedSections.find(
        ({ nominalThicknessIn, depthIn }) =>
          nominalThicknessIn === 2 && depthIn > eave.stock.depthIn && ratio(tail, forces, depthIn) <= 1,
      );
      const overhangIn = longestOverhang(eave, tail, (changed) =>
        Math.max(...changed.cases.map((one) => ratio(changed, one))),
      );
      const ways = [
        ...(overhangIn === undefined ? [] : [`A level overhang of ${formatLength(overhangIn)}`]),
        ...(deeper === undefined
          ? []
          : [`${overhangIn === undefined ? 'A' : 'a'} ${deeper.section} at the same spacing`]),
      ];
      return ways.length === 0
        ? 'A tail on both faces of the rafter halves the sag; ask an engineer.'
        : `${ways.join(', or ')} would bring it within.`;
    };
    return mindingSnow(
      eave,
      held({
        what,
        at: atTail(tail.extender),
        value: fine(sagOf(tail, forces, stiffness)),
        limit: fine(limitIn(tail)),
        worse: 'more',
        source: [
          source('IRC R301.7: L/180 without a ceiling on the rafters, L twice the cantilever', 'published'),
          source('Beam with an overhang, even load on it: published formula', 'published'),
          valuesSource,
          loadSource,
        ],
        assumptions: [
          ...eave.taken.extender,
          'The whole section is counted; the notch over the plate and the give of the nails are not, and add to the sag.',
          "The back end is held where the nails' pulls have their resultant, or at its end by a block or at the ridge.",
          ...reckoned.leftOut,
          ...loadAssumptions.slice(0, 1),
        ],
        remedy: remedyOf,
        why: [
          ...loadSteps(eave, governing),
          step(
            'Short-term load square to the slope',
            'w cos^2 of the slope, along the slope',
            `${plain(forces.transientLbPerIn, 3)} lb/in. of level run`,
            `${plain(acrossLbPerIn, 3)} lb/in.`,
          ),
          adjustedStep(eave, 'Adjusted stiffness', 'E', elastic),
          step(
            'Sag of the end',
            'w a^3 (4 b + 3 a) / (24 E I)',
            `${plain(acrossLbPerIn, 3)} x ${plain(alongIn, 2)}^3 x (4 x ${plain(backIn, 2)} + 3 x ${plain(alongIn, 2)}) / (24 x ${plain(elastic.psi)} x ${plain(inertia(eave.stock.depthIn), 2)})`,
            fine(sagOf(tail, forces, stiffness)).text,
            { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
          ),
          step('Limit', '2 a / 180', `2 x ${plain(alongIn, 2)} / 180`, fine(limitIn(tail)).text),
        ],
      }),
    );
  },
};

function beamOf({ shape, unit }: ReckonedTail, { transientLbPerIn }: Pick<CaseForces, 'transientLbPerIn'>) {
  const factor = Math.hypot(1, shape.slope);
  return {
    acrossLbPerIn: transientLbPerIn / factor ** 2,
    alongIn: shape.overhangLevelIn * factor,
    backIn: Math.max(0, unit.armIn) * factor,
  };
}

function sagOf(tail: ReckonedTail, forces: CaseForces, stiffness: number): number {
  const { acrossLbPerIn, alongIn, backIn } = beamOf(tail, forces);
  return tipSag({ overhangIn: alongIn, backspanIn: backIn }, acrossLbPerIn, stiffness);
}

function limitIn({ shape }: ReckonedTail): number {
  return (2 * shape.overhangLevelIn * Math.hypot(1, shape.slope)) / 180;
}
