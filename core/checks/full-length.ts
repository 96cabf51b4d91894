import { atTail, held, lacking, found, type Check, source, step, wholeEave } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { governingCase } from './governing.ts';
import { loadAssumptions, loadSource, loadSteps, mindingSnow } from './load-steps.ts';
import { adjustedBending, type Adjusted } from './lumber/adjusted-values.ts';
import { adjustedStep } from './lumber/factor-words.ts';
import { noValues, valuesSource } from './lumber/no-values.ts';
import { plain, psi } from './measured.ts';
import { spanMoment } from './statics/span-with-overhang.ts';
import type { CaseForces } from './statics/reckon-tail.ts';
import type { Tail } from './tail-to-check.ts';

const what = 'Bending of a whole rafter in its span against the adjusted bending value';
const spanSource = source('Beam with an overhang, statics of its parts', 'published');

/**
 * A whole rafter from plate to ridge with its tail is a beam on two supports that runs out past one of them: the short-term
 * load on the span alone bends it most. f_b = 6 M / (b d^2) with the whole depth, away from the plate.
 * Source: NDS 2018, 3.3; statics. Worked: span 144 in., 16 out, 1.46 lb/in. dead and 2.67 short-term -> see
 * statics/span-with-overhang.ts.
 */
export const fullLength: Check = {
  check: 'full-length',
  group: 'Lumber',
  title: 'Whole rafters in their span',
  run: (eave) => {
    const whole = eave.tails.filter(({ extender }) => extender.method === 'full-length');
    if (whole.length === 0)
      return found({
        what,
        at: wholeEave,
        source: [spanSource],
        why: [step('Whole rafters', 'as laid out', `of ${eave.tails.length} tails`, 'none')],
        verdict: 'within',
        remedy: null,
      });
    const spanIn = eave.survey.rafterSpanIn;
    if (spanIn === null)
      return lacking({
        what,
        source: [spanSource],
        field: `survey.eaves.${eave.surveyIndex}.rafterSpanIn`,
        enter:
          "Enter the old rafter's level span, from the plate to the ridge or purlin it rests on, in the survey.",
      });
    if (eave.values === undefined) return noValues(eave, what);
    const governing = governingCase(
      whole,
      (tail, forces) =>
        stressOf(eave, tail, forces, spanIn) / limitOf(eave, tail, forces.loadCase.duration).psi,
    );
    const { tail, forces } = governing;
    const moment = momentOf(tail, forces, spanIn);
    const stress = stressOf(eave, tail, forces, spanIn);
    const adjusted = limitOf(eave, tail, forces.loadCase.duration);
    return mindingSnow(
      eave,
      held({
        what,
        at: atTail(tail.extender),
        value: psi(stress),
        limit: psi(adjusted.psi),
        worse: 'more',
        source: [spanSource, valuesSource, loadSource],
        assumptions: [
          ...eave.taken.extender,
          'The new rafter carries its width of roof alone, the old one beside it nothing: the harder reading.',
          'Not covered: the thrust of the roof, the joint at the ridge or purlin, sag within the span, and the ridge itself.',
          ...loadAssumptions,
        ],
        remedy:
          'Deeper or stronger lumber, or closer tails, would bring it down; or let an engineer count the old rafter in.',
        why: [
          ...loadSteps(eave, governing),
          step(
            'Moment in the span, the short-term load on it alone',
            'R = w L / 2 - w_D a^2 / (2 L); M = R^2 / (2 w)',
            `w ${plain(forces.deadLbPerIn + spanLoad(forces), 3)} lb/in., L ${plain(spanIn, 1)}, a ${plain(tail.shape.overhangLevelIn, 1)}`,
            `${plain(moment)} lb-in.`,
            { ref: `eave/${eave.layout.eaveId}/rafterSpanIn` },
          ),
          step(
            'Bending stress in the span',
            'f_b = 6 M / (b d^2)',
            `6 x ${plain(moment)} / (${plain(eave.stock.thicknessIn, 3)} x ${plain(eave.stock.depthIn, 3)}^2)`,
            psi(stress).text,
          ),
          adjustedStep(eave, 'Adjusted bending value', 'F_b', adjusted),
        ],
      }),
    );
  },
};

/** Short-term load that reaches the span: a worker at the tail and an iced eave do not. [lb/in] */
function spanLoad({ loadCase, transientLbPerIn }: CaseForces): number {
  return loadCase.id === 'iced-eave' || loadCase.pointLb > 0 ? 0 : transientLbPerIn;
}

function momentOf(tail: Tail, forces: CaseForces, spanIn: number): number {
  return spanMoment(
    { spanIn, overhangIn: tail.shape.overhangLevelIn },
    { deadLbPerIn: forces.deadLbPerIn, spanLbPerIn: spanLoad(forces) },
  );
}

function stressOf({ stock }: EaveToCheck, tail: Tail, forces: CaseForces, spanIn: number): number {
  return (6 * momentOf(tail, forces, spanIn)) / (stock.thicknessIn * stock.depthIn ** 2);
}

function limitOf(eave: EaveToCheck, { repetitive }: Tail, duration: number): Adjusted {
  if (eave.values === undefined) throw new Error('bending without design values');
  return adjustedBending(eave.values, eave.lumber, {
    duration,
    wet: eave.design.structure.wetService,
    repetitive,
  });
}
