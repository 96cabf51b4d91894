import { formatInches, formatLength } from '../units/format-length.ts';
import { atTail, found, held, type Answer, type Check, source, step } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { adjustedBending, type Adjusted } from './lumber/adjusted-values.ts';
import { adjustedStep } from './lumber/factor-words.ts';
import { noValues, valuesSource } from './lumber/no-values.ts';
import { plain, psi } from './measured.ts';
import { longestOverhang } from './shorter-overhang.ts';

const what = 'Bending of the tail at the plate against the adjusted bending value';
/** Less wood than this above the notch is none. [in] */
const noThroatIn = 0.25;

/**
 * Bending at the plate's outer edge, where the wood left above the notch carries the overhang's moment: f_b = 6 M / (b h^2).
 * Source: NDS 2018, 3.3 and 4.3. Worked: 640 lb-in. on 1-1/2 x 4 in. -> 160 psi.
 */
export const bending: Check = {
  check: 'bending',
  group: 'Lumber',
  title: 'Bending at the plate',
  run: (eave) => {
    if (eave.values === undefined) return noValues(eave, what);
    const worst = eave.tails.reduce((least, tail) =>
      tail.extender.section.throatIn < least.extender.section.throatIn ? tail : least,
    );
    if (worst.extender.section.throatIn < noThroatIn) return nothingLeft(worst);
    const governing = governingCase(
      eave.tails,
      (tail, { momentLbIn, loadCase }) =>
        stressOf(eave, tail, momentLbIn) / limitOf(eave, tail, loadCase.duration).psi,
    );
    const { tail, forces } = governing;
    const { throatIn } = tail.extender.section;
    const adjusted = limitOf(eave, tail, forces.loadCase.duration);
    const stress = stressOf(eave, tail, forces.momentLbIn);
    return mindingSnow(
      eave,
      held({
        what,
        at: atTail(tail.extender),
        value: psi(stress),
        limit: psi(adjusted.psi),
        worse: 'more',
        source: [source('NDS 2018, 3.3 and 4.3', 'published'), valuesSource, loadSource],
        assumptions: [
          ...eave.taken.extender,
          'The tail is taken as whole, straight-grained lumber of the grade; the wood above the notch carries the moment alone.',
          ...loadAssumptions,
        ],
        remedy: () => remedyOf(eave, tail),
        why: [
          ...loadSteps(eave, governing),
          step(
            'Bending stress above the notch',
            'f_b = 6 M / (b h^2)',
            `6 x ${plain(forces.momentLbIn)} / (${plain(eave.stock.thicknessIn, 3)} x ${plain(throatIn, 3)}^2)`,
            psi(stress).text,
            { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
          ),
          adjustedStep(eave, 'Adjusted bending value', 'F_b', adjusted),
        ],
      }),
    );
  },
};

function stressOf({ stock }: EaveToCheck, tail: Tail, momentLbIn: number): number {
  return (6 * momentLbIn) / (stock.thicknessIn * tail.extender.section.throatIn ** 2);
}

function limitOf(eave: EaveToCheck, { repetitive }: Tail, duration: number): Adjusted {
  if (eave.values === undefined) throw new Error('bending without design values');
  return adjustedBending(eave.values, eave.lumber, {
    duration,
    wet: eave.design.structure.wetService,
    repetitive,
  });
}

function remedyOf(eave: EaveToCheck, tail: Tail): string {
  const overhangIn = longestOverhang(eave, tail, ({ cases }) =>
    Math.max(
      ...cases.map(
        ({ momentLbIn, loadCase }) =>
          stressOf(eave, tail, momentLbIn) / limitOf(eave, tail, loadCase.duration).psi,
      ),
    ),
  );
  const notched = tail.extender.section.bearing.kind === 'notched';
  const other = notched
    ? `the notch leaves ${formatInches(tail.extender.section.throatIn)} whatever the stock, so deeper lumber alone does not help; stronger lumber, or a tail on both faces of the rafter, does`
    : 'deeper or stronger lumber, or a tail on both faces of the rafter, helps too';
  return overhangIn === undefined
    ? `No overhang of 4" or more would bring it within: ${other}. Ask an engineer.`
    : `A level overhang of ${formatLength(overhangIn)} would bring it within; ${other}.`;
}

/** Where the plate stands as high as the rafter there is nothing to hold the tail up. */
export function nothingLeft(tail: Tail, whatIsHeld = what): Answer {
  const { throatIn } = tail.extender.section;
  return found({
    what: whatIsHeld,
    at: atTail(tail.extender),
    source: [source('Geometry of the section', 'entered')],
    why: [
      step(
        'Wood left above the notch',
        'height above plate x cos of the slope',
        `square to the slope`,
        formatInches(Math.max(0, throatIn)),
      ),
    ],
    value: { text: formatInches(Math.max(0, throatIn)), number: throatIn, unit: 'in' },
    verdict: 'beyond',
    remedy:
      'Next to nothing is left above the notch. Measure the height above plate again, or choose shallower stock or a packer on the rafter.',
  });
}
