import { held, source, step } from '../answer.ts';
import { length, plain } from '../measured.ts';
import { hangsOnNails, wholeRake, type RakeCheck } from './rake-check.ts';

/** What lookouts that run through may stick out, and what hangs on its nails. [in] */
const throughIn = 24;
const hangingIn = 12;

/**
 * The rake's level overhang against 24 in. for lookouts that run through, 12 in. for a ladder or butted lookouts. Source: the
 * wood frame manual's 2 ft for outlookers and 1 ft for lookout blocks, from memory; public guidance whose first publisher is
 * not known has ladders for about 8 to 12 in., and lookouts beyond.
 */
export const rakeOverhang: RakeCheck = {
  check: 'rake-overhang',
  group: 'Rules of thumb',
  title: 'Length of the overhang at a rake',
  run: (of) => {
    const { rake } = of;
    const hanging = hangsOnNails(of);
    const limitIn = hanging ? hangingIn : throughIn;
    const what =
      rake.kind === 'ladder' ? 'a ladder' : hanging ? 'butted lookouts' : 'lookouts that run through';
    const answer = held({
      what: `Level overhang at the rake against ${limitIn} in. for ${what}`,
      at: wholeRake(rake),
      value: length(rake.overhangIn),
      limit: length(limitIn),
      worse: 'more',
      source: hanging
        ? [
            source('Wood frame manual, lookout blocks: 1 ft, 9 in. in some of its tables', 'from-memory'),
            source('Public guidance, first publisher not known: ladders for about 8 to 12 in.', 'secondary'),
          ]
        : [source('Wood frame manual, outlookers: 2 ft', 'from-memory')],
      assumptions: [
        'Wind uplift on the rake, the hardest-sucked edge of a roof, is not reckoned: neither lookouts nor nails nor ties are held against it.',
      ],
      remedy: hanging
        ? `An overhang of ${length(limitIn).text}, or lookouts that are let into the gable rafter and run through, would bring it within.`
        : `An overhang of ${length(limitIn).text} would bring it within; past that an engineer decides.`,
      why: [
        step(
          'Level overhang to the barge rafter’s outer face',
          'as entered',
          `${plain(rake.overhangIn, 2)} in.`,
          length(rake.overhangIn).text,
          { ref: `rake/${rake.rakeId}/design/overhangIn` },
        ),
      ],
    });
    return answer.verdict === 'beyond' && !hanging ? { ...answer, verdict: 'needs-engineer' } : answer;
  },
};
