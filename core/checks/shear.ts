import { formatLength } from '../units/format-length.ts';
import { atTail, held, type Check, source, step } from './answer.ts';
import { nothingLeft } from './bending.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { adjustedShear, type Adjusted } from './lumber/adjusted-values.ts';
import { adjustedStep } from './lumber/factor-words.ts';
import { noValues, valuesSource } from './lumber/no-values.ts';
import { noTailHeld, reckonedHolds, tailsHeldBy } from './tails-held.ts';
import { plain, pounds, psi } from './measured.ts';
import { longestOverhang } from './shorter-overhang.ts';
import type { CaseForces } from './statics/reckon-tail.ts';

const what = 'Shear of the tail at the notch against the adjusted shear value';

/**
 * Shear where the tail is notched over the plate, by the rule for a notched end: f_v = 1.5 V / (b h) (d / h)^2, which is
 * the stricter reading of a notch that lies on the pressed side. V is the larger of the overhang's load and the back pull.
 * Source: NDS 2018, 3.4.3.2 (a), from memory. Worked: 100 lb on 1-1/2 x 4 of 5-1/2 -> 25 x 1.891 = 47.3 psi.
 */
export const shear: Check = {
  check: 'shear',
  group: 'Lumber',
  title: 'Shear at the notch',
  run: (eave) => {
    if (eave.values === undefined) return noValues(eave, what);
    const thin = eave.tails.find(({ extender }) => extender.section.throatIn < 0.25);
    if (thin !== undefined) return nothingLeft(thin, what);
    const reckoned = tailsHeldBy(eave, reckonedHolds);
    if (reckoned.tails.length === 0) return noTailHeld(what, eave, reckoned);
    const governing = governingCase(
      reckoned.tails,
      (tail, forces) => stressOf(eave, tail, forces) / limitOf(eave, forces.loadCase.duration).psi,
    );
    const { tail, forces } = governing;
    const { throatIn } = tail.extender.section;
    const adjusted = limitOf(eave, forces.loadCase.duration);
    const stress = stressOf(eave, tail, forces);
    return mindingSnow(
      eave,
      held({
        what,
        at: atTail(tail.extender),
        value: psi(stress),
        limit: psi(adjusted.psi),
        worse: 'more',
        source: [source('NDS 2018, 3.4.3.2 (a)', 'from-memory'), valuesSource, loadSource],
        assumptions: [
          ...eave.taken.extender,
          'The notch is taken as one on the pulled side of an end, the stricter reading.',
          ...reckoned.leftOut,
          ...loadAssumptions,
        ],
        remedy: () => remedyOf(eave, tail),
        why: [
          ...loadSteps(eave, governing),
          step(
            'Shear at the plate',
            'V: the larger of the load outside and the pull inside',
            `${plain(forces.loadLb, 1)} and ${plain(forces.holdDownLb, 1)}`,
            pounds(shearOf(forces)).text,
          ),
          step(
            'Shear stress at the notch',
            'f_v = 1.5 V / (b h) x (d / h)^2',
            `1.5 x ${plain(shearOf(forces), 1)} / (${plain(eave.stock.thicknessIn, 3)} x ${plain(throatIn, 3)}) x (${plain(eave.stock.depthIn, 3)} / ${plain(throatIn, 3)})^2`,
            psi(stress).text,
            { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
          ),
          adjustedStep(eave, 'Adjusted shear value', 'F_v', adjusted),
        ],
      }),
    );
  },
};

function shearOf({ loadLb, holdDownLb }: Pick<CaseForces, 'loadLb' | 'holdDownLb'>): number {
  return Math.max(loadLb, holdDownLb);
}

function stressOf({ stock }: EaveToCheck, tail: Tail, forces: CaseForces): number {
  const { throatIn } = tail.extender.section;
  return ((1.5 * shearOf(forces)) / (stock.thicknessIn * throatIn)) * (stock.depthIn / throatIn) ** 2;
}

function limitOf(eave: EaveToCheck, duration: number): Adjusted {
  if (eave.values === undefined) throw new Error('shear without design values');
  return adjustedShear(eave.values, { duration, wet: eave.design.structure.wetService, repetitive: false });
}

function remedyOf(eave: EaveToCheck, tail: Tail): string {
  const overhangIn = longestOverhang(eave, tail, ({ cases }) =>
    Math.max(...cases.map((one) => stressOf(eave, tail, one) / limitOf(eave, one.loadCase.duration).psi)),
  );
  const first =
    overhangIn === undefined
      ? 'No shorter overhang would bring it within'
      : `A level overhang of ${formatLength(overhangIn)} would bring it within`;
  return `${first}; shallower stock, which needs less notch, or a tail on both faces of the rafter helps too.`;
}
