import { found, held, source, step } from '../answer.ts';
import { inches, plain } from '../measured.ts';
import { wholeRake, type RakeCheck } from './rake-check.ts';

/** A notch in a rafter is no deeper than this share of it. [-] */
const share = 1 / 6;

/**
 * How deep lookouts are let into the gable rafter, against a sixth of its depth. Source: IRC R802.7.1, as a builders' forum
 * quotes it; it keeps notches out of the middle third of a span and no longer than a third of the depth (from memory), which
 * is for rafters that span. One that rests on the gable's studs spans no further than from stud to stud.
 * Worked: 1-1/2 in. into 5-5/8 in. -> a sixth is 0.94 in., beyond where no studs stand under it.
 */
export const rakeNotchRafter: RakeCheck = {
  check: 'rake-notch-rafter',
  group: 'Lumber',
  title: 'Lookouts let into the gable rafter',
  run: ({ rake, survey }) => {
    const { notch, gable } = rake;
    if (notch === null || !rake.lookouts.some(({ crosses }) => crosses.some(({ kind }) => kind === 'rafter')))
      return null;
    const limitIn = gable.depthIn * share;
    const told = {
      what: 'Depth of the notches in the gable rafter against a sixth of its depth',
      at: wholeRake(rake),
      source: [
        source('IRC R802.7.1', 'secondary'),
        source('No longer than a third of the depth, out of the middle third', 'from-memory'),
      ],
      why: [
        step('A sixth of the gable rafter', 'd / 6', `${plain(gable.depthIn, 2)} / 6`, inches(limitIn).text, {
          ref:
            survey.endRafterDepthIn === null
              ? `eave/${rake.eaveId}/rafterDepthIn`
              : `rake/${rake.rakeId}/survey/endRafterDepthIn`,
        }),
        step(
          'Left of it',
          'd - notch',
          `${plain(gable.depthIn, 2)} - ${plain(notch.depthIn, 2)}`,
          inches(Math.max(0, gable.depthIn - notch.depthIn)).text,
        ),
      ],
    };
    if (survey.studsUnder)
      return found({
        ...told,
        value: inches(notch.depthIn),
        limit: inches(limitIn),
        verdict: 'not-covered',
        assumptions: [
          'The rule is for rafters that span. This one is said to rest on the studs of the gable wall, from stud to stud.',
        ],
        remedy:
          'Look whether a stud stands under the gable rafter at each notch or close beside it; where none does, say so in Survey, or ask an engineer.',
      });
    return held({
      ...told,
      value: inches(notch.depthIn),
      limit: inches(limitIn),
      worse: 'more',
      assumptions: ['No studs of the gable wall stand under the rafter, so it spans from plate to ridge.'],
      remedy:
        'Studs under the gable rafter, lookouts butted to its faces, or a lower rafter set under lookouts that lie over it would bring it within.',
    });
  },
};
