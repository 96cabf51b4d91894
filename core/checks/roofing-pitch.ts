import { formatPitch } from '../units/pitch.ts';
import { found, held, type Check, source, step, wholeEave } from './answer.ts';
import { roofingWeights } from './data/dead-weights.ts';

/** Least pitch of asphalt shingles, and the pitch below which they want two layers of underlayment. [in/12 in] */
const leastRisePer12 = 2;
const twoLayersRisePer12 = 4;
const what = 'Pitch of the new roof over the overhang against the least for asphalt shingles';
const sources = [
  source('IRC R905.2.2: no shingles below 2/12, two layers of underlayment below 4/12', 'from-memory'),
];

/**
 * Pitch of the overhang's roof, which a kick-up makes flatter than the rest, against 2/12 for asphalt shingles.
 * Source: IRC R905.2.2, from memory. Worked: kicked up to 3/12 -> not beyond, with two layers of underlayment.
 */
export const roofingPitch: Check = {
  check: 'roofing-pitch',
  group: 'Sheathing and roof edge',
  title: 'Pitch for the roofing',
  run: (eave) => {
    const { roofing } = eave.input.survey.site;
    const pitch = eave.overhangRisePer12;
    const kicked = eave.design.kickUpPitchRisePer12 !== null;
    const value = { text: formatPitch(pitch), number: pitch, unit: 'in/12 in' };
    const why = [
      step('Pitch over the overhang', kicked ? 'of the kick-up' : 'of the eave', '', formatPitch(pitch), {
        ref: kicked
          ? `design/${eave.layout.eaveId}/kickUpPitchRisePer12`
          : `eave/${eave.layout.eaveId}/pitchRisePer12`,
      }),
    ];
    if (roofing !== 'asphalt-shingle' && roofing !== 'laminated-shingle')
      return found({
        what,
        at: wholeEave,
        value,
        source: sources,
        why,
        verdict: 'not-covered',
        remedy: `Ask the maker of the ${roofingWeights[roofing].name} roofing for its least pitch; here it is ${formatPitch(pitch)}.`,
      });
    return held({
      what,
      at: wholeEave,
      value,
      limit: { text: formatPitch(leastRisePer12), number: leastRisePer12, unit: 'in/12 in' },
      worse: 'less',
      source: sources,
      assumptions: [
        ...(pitch < twoLayersRisePer12 ? ['Below 4/12 two layers of underlayment are asked for.'] : []),
        ...(kicked ? ['Where the pitch breaks, the shingles have to bend over it.'] : []),
      ],
      remedy: kicked
        ? `A kick-up of ${formatPitch(leastRisePer12)} or steeper would bring it within; or a roofing made for low pitches.`
        : 'Choose a roofing made for low pitches.',
      why,
    });
  },
};
