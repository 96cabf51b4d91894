import { formatLength } from '../units/format-length.ts';
import { atTail, found, held, type Check, source, step } from './answer.ts';
import type { CheckStep } from './check-types.ts';
import { type EaveToCheck } from './eave-to-check.ts';
import { reshaped, type Tail } from './tail-to-check.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { plain, pounds } from './measured.ts';
import { fillerAssumptions, fillerOf, tooShort } from './filler-words.ts';
import { adjustedNail, wetLateralFactor, type SisterNail } from './nails/sister-joint.ts';
import { nailSource } from './nails/unknown-nail.ts';
import { sisterTails } from './sister-tails.ts';
import type { ReckonedTail } from './statics/reckon-tail.ts';

const what = 'Worst nail of the sister joint against the adjusted lateral value of one nail';

/**
 * The sister joint under force and moment, by the elastic centre method: the tail bears on the plate's outer edge and turns
 * there, the nails hold the back end down, and the one furthest from the turning point takes the most.
 * Source: NDS 2018, chapters 11 and 12 (value of a nail); statics of nail groups.
 * Worked: nails 30, 22, 14 and 6 in. behind the plate, 1616 lb-in. -> 30 lb on the worst.
 */
export const sisterNails: Check = {
  check: 'sister-nails',
  group: 'Nails',
  title: 'Extender to rafter',
  run: (eave) => {
    const looked = sisterTails(eave, what);
    if ('instead' in looked) return looked.instead;
    const { sisters } = looked;
    const wet = eave.design.structure.wetService;
    const limitOf = (tail: Tail, duration: number) =>
      adjustedNail(sisters.jointOf(tail).value.lb, duration, wet);
    const governing = governingCase(
      sisters.tails,
      (tail, { worstNailLb, loadCase }) => worstNailLb / limitOf(tail, loadCase.duration),
    );
    const { tail, forces } = governing;
    const joint = sisters.jointOf(tail);
    const limit = limitOf(tail, forces.loadCase.duration);
    const told = {
      what,
      at: atTail(tail.extender),
      value: pounds(forces.worstNailLb),
      limit: pounds(limit),
      source: [nailSource, source('Elastic centre method: statics of nail groups', 'published'), loadSource],
      assumptions: [
        ...eave.taken.extender,
        ...eave.taken.oldWood,
        "The tail bears on the plate's outer edge and turns there; the give of all nails is alike.",
        ...fillerAssumptions(tail),
        ...sisters.leftOut,
        ...loadAssumptions,
      ],
      why: [
        ...loadSteps(eave, governing),
        ...groupSteps(tail, forces.momentLbIn, eave.layout.eaveId),
        ...nailSteps(eave, joint, forces.loadCase.duration, limit),
      ],
    };
    if (limit === 0)
      return found({
        ...told,
        verdict: 'beyond',
        remedy: tooShort(tail),
      });
    return mindingSnow(
      eave,
      held({
        ...told,
        worse: 'more',
        remedy: () =>
          remedyOf(eave, tail, ({ cases }) =>
            Math.max(...cases.map((one) => one.worstNailLb / limitOf(tail, one.loadCase.duration))),
          ),
      }),
    );
  },
};

/** How the moment comes to the worst nail. */
export function groupSteps(
  tail: ReckonedTail & Pick<Tail, 'extender'>,
  momentLbIn: number,
  eaveId: string,
): readonly CheckStep[] {
  const { unit, nails } = tail;
  const n = nails.length;
  const centroidIn = -unit.centroid[0];
  const about = unit.polar + n * centroidIn ** 2;
  return [
    step(
      'Nails in the joint',
      'rows staggered over the backspan',
      `backspan ${formatLength(tail.shape.backspanIn)}`,
      `${n} nails, centroid ${plain(centroidIn, 2)} in. in`,
      { ref: `section/${eaveId}/${tail.extender.id}` },
    ),
    step('Sum of squares about the turning point', 'J = sum r^2', `${n} nails`, `${plain(about, 1)} sq in.`),
    step(
      'Force through the centroid, down',
      'F = M n c / J',
      `${plain(momentLbIn)} x ${n} x ${plain(centroidIn, 2)} / ${plain(about, 1)}`,
      pounds(unit.holdDownLb * momentLbIn).text,
    ),
    step(
      'Moment about the centroid',
      'M_c = M (J - n c^2) / J',
      `${plain(momentLbIn)} x ${plain(unit.polar, 1)} / ${plain(about, 1)}`,
      `${plain(unit.load.moment * momentLbIn)} lb-in.`,
    ),
    step(
      'Worst nail',
      'F / n and M_c r / sum r_c^2, added as arrows',
      `${plain(unit.holdDownLb * momentLbIn, 1)} / ${n} and ${plain(unit.load.moment * momentLbIn)} r / ${plain(unit.polar, 1)}`,
      pounds(unit.worstLb * momentLbIn).text,
    ),
  ];
}

/** How the value of one nail comes about. */
export function nailSteps(
  eave: EaveToCheck,
  { nail, value, settingRef }: SisterNail,
  duration: number,
  adjusted: number,
): readonly CheckStep[] {
  const { tabulated } = value;
  return [
    step(
      `One ${nail.name} nail, six yield modes`,
      'least of I_m, I_s, II, III_m, III_s, IV',
      Object.entries(tabulated.modes)
        .map(([mode, lb]) => `${mode} ${plain(lb)}`)
        .join(', '),
      `${pounds(tabulated.lb).text}, mode ${tabulated.governing}`,
      { source: source('NDS 2018, Table 12.3.1A', 'published'), ref: settingRef },
    ),
    step(
      'Depth in the rafter',
      'p / 10 D, at most 1; also with the real bearing length, the lesser counts',
      `${plain(value.penetrationIn, 3)} / ${plain(value.fullPenetrationIn, 3)}; ${plain(value.actual.lb)} lb`,
      pounds(value.lb).text,
      { source: source('NDS 2018, 12.1.6.4 and Table 12N, note 3', 'published') },
    ),
    step(
      'Adjusted value of one nail',
      "Z' = Z C_D C_M",
      `${plain(value.lb, 1)} x ${duration} x ${eave.design.structure.wetService ? wetLateralFactor : 1}`,
      pounds(adjusted).text,
      { source: source('NDS 2018, Tables 11.3.1, 2.3.2 and 11.3.3', 'published') },
    ),
  ];
}

/** Longest backspan that is tried as a way out. [in] */
const furthestIn = 120;

function remedyOf(eave: EaveToCheck, tail: Tail, ratioOf: (changed: ReckonedTail) => number): string {
  const { sister } = eave.input.settings.fastening;
  const { shape, rafter } = tail;
  const nailName = fillerOf(tail) === null ? sister.nail : eave.input.settings.fastening.throughFillerNail;
  const mostIn = Math.min(rafter.clearBackspanIn ?? furthestIn, furthestIn);
  const ways: string[] = [];
  for (let backspanIn = Math.ceil((shape.backspanIn + 1) / 2) * 2; backspanIn <= mostIn; backspanIn += 2) {
    if (ratioOf(reshaped(eave, { ...shape, backspanIn }, sister)) > 1) continue;
    ways.push(`a backspan of ${formatLength(backspanIn)}`);
    break;
  }
  for (const spacingIn of [12, 10, 8, 6, 4, 3]) {
    if (spacingIn >= sister.spacingIn || ratioOf(reshaped(eave, shape, { ...sister, spacingIn })) > 1)
      continue;
    ways.push(`${nailName} nails at ${spacingIn} in. in each row`);
    break;
  }
  if (ways.length === 0)
    return 'Neither a longer backspan nor closer nails would bring it within here: less overhang, bolts, or an engineer.';
  const text = `${ways.join(', or ')}${ways.length > 1 ? ',' : ''} would bring it within.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
