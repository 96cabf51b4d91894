import { slopeAngleDeg, slopeFactor, formatPitch } from '../units/pitch.ts';
import { formatLength } from '../units/format-length.ts';
import { type Answer, source, step } from './answer.ts';
import type { CheckSource, CheckStep } from './check-types.ts';
import { roofingWeights } from './data/dead-weights.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { Tail } from './tail-to-check.ts';
import { snowSlopeFactor } from './loads/snow-load.ts';
import { plain, pounds, psf } from './measured.ts';
import type { CaseForces } from './statics/reckon-tail.ts';

export const snowField = 'survey.site.groundSnowPsf';
export const enterSnow =
  'Enter the ground snow of the place under Snow, wind and roof in the survey; the building department knows it. Enter 0 where there is none.';

export const loadSource: CheckSource = source(
  'Loads and combinations: ASCE 7-16, chapters 2, 4 and 7, parts of it from memory; IRC Table R301.6',
  'from-memory',
);

export const loadAssumptions: readonly string[] = [
  'Allowable stress combinations: dead load with one short-term load at a time. Drifted, sliding and unbalanced snow is not reckoned.',
  'A worker with tools is 300 lb at the end of one tail, not shared with its neighbours.',
];

/** How the governing load on a tail was come by, step by step. */
export function loadSteps(
  eave: EaveToCheck,
  {
    tail,
    forces,
  }: { readonly tail: Pick<Tail, 'shape' | 'gapIn' | 'shapeRef'>; readonly forces: CaseForces },
): readonly CheckStep[] {
  const { loads } = eave;
  const { shape } = tail;
  const { loadCase } = forces;
  const p = shape.overhangLevelIn;
  const dead = step(
    'Dead load on level area',
    '(roofing + sheathing) x slope factor + soffit and trim',
    `(${plain(loads.dead.roofingPsf, 1)} + ${plain(loads.dead.sheathingPsf, 1)}) x ${plain(slopeFactor(eave.overhangRisePer12), 3)} + ${plain(eave.design.structure.soffitWeightPsf, 1)}`,
    psf(loads.dead.levelPsf).text,
    {
      source: source(
        `ASCE 7, Table C3.1-1 (${roofingWeights[eave.input.survey.site.roofing].name})`,
        roofingWeights[eave.input.survey.site.roofing].mark,
      ),
      ref: 'survey/site.roofing',
    },
  );
  return [
    dead,
    ...passingSteps(eave, loadCase.id),
    step(
      'Roof carried by the tail',
      'half the way to each neighbour, or to the roof edge',
      `tails up to ${formatLength(tail.gapIn)} apart`,
      formatLength(shape.tributaryIn),
      { ref: tail.shapeRef },
    ),
    step(
      `Load on the overhang, ${loadCase.name}`,
      'w_D P + short-term load (the tail itself counted)',
      `${plain(forces.deadLbPerIn, 2)} x ${plain(p, 2)} + ${plain(forces.loadLb - forces.deadLbPerIn * p, 1)}`,
      pounds(forces.loadLb).text,
    ),
    step(
      "Moment about the plate's outer edge",
      momentFormula(loadCase.pointLb, loadCase.outerWidthIn !== null && p > loadCase.outerWidthIn),
      loadCase.pointLb > 0
        ? `${plain(forces.deadLbPerIn, 2)} x ${plain(p, 2)}^2 / 2 + ${plain(loadCase.pointLb)} x ${plain(p, 2)}`
        : `(${plain(forces.deadLbPerIn, 2)} + ${plain(forces.transientLbPerIn, 2)}) lb/in. over ${plain(p, 2)} in.`,
      `${plain(forces.momentLbIn)} lb-in.`,
    ),
  ];
}

function momentFormula(pointLb: number, outer: boolean): string {
  if (pointLb > 0) return 'w_D P^2 / 2 + 300 P';
  return outer ? 'w_D P^2 / 2 + w (P - 30) 60: the load lies on the outer 5 ft' : '(w_D + w) P^2 / 2';
}

function passingSteps(eave: EaveToCheck, id: string): readonly CheckStep[] {
  const { loads } = eave;
  if (id === 'roof-live')
    return [
      step(
        'Roof live load',
        'larger of IRC Table R301.6 and 20 R_1 R_2 of ASCE 7',
        `at ${formatPitch(eave.overhangRisePer12)}`,
        psf(loads.roofLivePsf).text,
        { source: source('IRC Table R301.6; ASCE 7-16, Eq. 4.8-1', 'secondary') },
      ),
    ];
  if (id !== 'snow' && id !== 'iced-eave') return [];
  return snowSteps(eave).filter(({ label }) => (id === 'snow' ? label !== icedLabel : label !== slopedLabel));
}

const slopedLabel = 'Sloped roof snow';
const icedLabel = 'Iced eave';

/** Ground snow to flat roof, sloped roof and iced eave; empty where no ground snow is entered. */
export function snowSteps({ loads, overhangRisePer12 }: EaveToCheck): readonly CheckStep[] {
  const { snow } = loads;
  if (snow === null) return [];
  const { exposureFactor, thermalFactor, importanceFactor, groundSnowPsf } = snow.site;
  const asd = snow.asdFactor === 1 ? '' : `, x ${snow.asdFactor} for a strength-level map`;
  return [
    step(
      'Flat roof snow',
      'p_f = 0.7 Ce Ct Is p_g',
      `0.7 x ${exposureFactor} x ${thermalFactor} x ${importanceFactor} x ${groundSnowPsf}`,
      psf(snow.flatPsf).text,
      { source: source('ASCE 7-16, Eq. 7.3-1', 'published'), ref: 'survey/site.groundSnowPsf' },
    ),
    step(
      slopedLabel,
      'p_s = C_s p_f, not less than the least snow of a low roof',
      `${plain(snowSlopeFactor(slopeAngleDeg(overhangRisePer12), thermalFactor), 3)} x ${plain(snow.flatPsf, 1)}${asd}`,
      psf(snow.slopedPsf * snow.asdFactor).text,
      { source: source('ASCE 7-16, Eq. 7.4-1 and Fig. 7.4-1', 'from-memory') },
    ),
    ...(snow.icedPsf === null
      ? []
      : [
          step(
            icedLabel,
            '2 p_f on the overhang',
            `2 x ${plain(snow.flatPsf, 1)}${asd}`,
            psf(snow.icedPsf * snow.asdFactor).text,
            {
              source: source('ASCE 7-16, 7.4.5', 'from-memory'),
              ref: 'survey/site.icedEave',
            },
          ),
        ]),
  ];
}

/**
 * An answer that rests on loads cannot stand as within while the snow is not known; one that is beyond without snow
 * stays beyond.
 */
export function mindingSnow(eave: EaveToCheck, answer: Answer): Answer {
  if (eave.loads.snow !== null || answer.verdict !== 'within') return answer;
  return {
    ...answer,
    verdict: 'not-covered',
    remedy: enterSnow,
    missingField: snowField,
    assumptions: [...answer.assumptions, 'No ground snow is entered: the figures are without snow.'],
  };
}
