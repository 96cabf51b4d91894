import { lacking, source, step, type Answer } from './answer.ts';
import type { CheckStep } from './check-types.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { strengthWindFactor } from './loads/eave-loads.ts';
import type { Uplift } from './loads/uplift.ts';
import { formatLength } from '../units/format-length.ts';
import { plain, pounds, psf } from './measured.ts';

export const upliftSource = source('Combination 0.6 D + 0.6 W: ASCE 7-16, 2.4.1', 'from-memory');
export const upliftAssumptions: readonly string[] = [
  'The pressure is what the person entered, top and underside together; it is not worked out from a wind speed here.',
  'Of the weight, 0.6 is counted against it. What holds the old roof and wall down is not covered.',
];

const upliftField = 'survey.site.windUpliftPsf';
const enterUplift =
  'Enter the net wind uplift on roof overhangs of the place under Snow, wind and roof in the survey; the building department or an engineer knows it.';

/** What an uplift check says where no pressure is entered. */
export function noUplift(what: string): Answer {
  return lacking({
    what,
    source: [upliftSource],
    field: upliftField,
    enter: enterUplift,
  });
}

/** An answer that also rests on wind cannot stand as within while the uplift is not known. */
export function mindingWind(eave: EaveToCheck, answer: Answer): Answer {
  if (eave.loads.upliftPsf !== null || answer.verdict !== 'within') return answer;
  return {
    ...answer,
    verdict: 'not-covered',
    remedy: enterUplift,
    missingField: upliftField,
    assumptions: [...answer.assumptions, 'No wind uplift is entered: the figures are without wind.'],
  };
}

export function upliftSteps(
  eave: EaveToCheck,
  tail: Pick<Tail, 'shape' | 'shapeRef'>,
  uplift: Uplift,
): readonly CheckStep[] {
  const { site } = eave.input.survey;
  const factor = site.windUpliftBasis === 'strength' ? strengthWindFactor : 1;
  return [
    step(
      'Uplift at allowable stress level',
      site.windUpliftBasis === 'strength' ? '0.6 W' : 'W as entered',
      `${factor} x ${plain(site.windUpliftPsf ?? 0, 1)}`,
      psf(eave.loads.upliftPsf ?? 0).text,
      { source: upliftSource, ref: 'survey/site.windUpliftPsf' },
    ),
    step(
      'Uplift on the tail, square to the slope',
      'pressure x overhang along the slope x roof carried - 0.6 of the weight',
      `${plain(uplift.pressureLb, 1)} - 0.6 x ${plain(uplift.deadLb, 1)} (${formatLength(tail.shape.tributaryIn)} of roof)`,
      pounds(uplift.netLb).text,
      { ref: tail.shapeRef },
    ),
  ];
}
