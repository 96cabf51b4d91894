import { dripEdgeLapIn } from '../takeoff/drip-edge.ts';
import { found, held, type Check, source, step, wholeEave } from './answer.ts';
import { inches } from './measured.ts';

const what = 'Laps of the drip edge against 2 in.';
const sources = [source('IRC R905.2.8.5 (2012 and later)', 'published')];

/** Drip edge at the eave of a shingle roof, its pieces lapped 2 in. Source: IRC R905.2.8.5, as seen in transcription. */
export const dripEdge: Check = {
  check: 'drip-edge',
  group: 'Sheathing and roof edge',
  title: 'Drip edge',
  run: (eave) => {
    const shingles = ['asphalt-shingle', 'laminated-shingle'].includes(eave.input.survey.site.roofing);
    const ref = { ref: `design/${eave.layout.eaveId}/dripEdge` };
    if (!eave.design.dripEdge)
      return found({
        what: 'Drip edge at the eave of a shingle roof',
        at: wholeEave,
        source: sources,
        why: [step('Drip edge', 'as chosen', 'none', 'none', ref)],
        verdict: shingles ? 'beyond' : 'not-covered',
        remedy: shingles
          ? 'Asphalt shingles want drip edge at the eave. Switch it on in Design, or agree with the roofer that he brings it.'
          : 'The rule is for asphalt shingles. Ask what this roofing wants at its edge.',
      });
    return held({
      what,
      at: wholeEave,
      value: inches(dripEdgeLapIn),
      limit: inches(2),
      worse: 'less',
      source: sources,
      assumptions: [
        'It reaches 2 in. or more up the deck and 1/4 in. or more below it, with fasteners at 12 in. or closer; underlayment over it at the eave.',
      ],
      remedy: 'Lap the pieces 2 in. or more.',
      why: [step('Lap', 'as taken off', 'each joint of two pieces', inches(dripEdgeLapIn).text, ref)],
    });
  },
};
