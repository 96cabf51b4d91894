import { held, type Check, source, step } from './answer.ts';
import { greatestOverhang } from './greatest-overhang.ts';
import { length, plain } from './measured.ts';

/** Overhangs past this leave what published rules reach for a notched tail. [in] */
const longestIn = 24;

/**
 * The level overhang against 24 in. Source: IRC R802.7.1.1 (a notched, cantilevered portion), as seen in transcription; the
 * wood frame manual's 2 ft, from memory. There is no general limit in the code for a rafter that is not notched.
 */
export const overhangLength: Check = {
  check: 'overhang-length',
  group: 'Rules of thumb',
  title: 'Length of the overhang',
  run: (eave) => {
    const { overhangIn, at, ref } = greatestOverhang(eave);
    const answer = held({
      what: 'Level overhang against 24 in.',
      at,
      value: length(overhangIn),
      limit: length(longestIn),
      worse: 'more',
      source: [source('IRC R802.7.1.1', 'published'), source('Wood frame manual: 2 ft', 'from-memory')],
      assumptions: ['The code gives no general limit for an overhang that is not notched.'],
      remedy: `An overhang of 24 in. would bring it within; past that an engineer decides.`,
      why: [
        step(
          'Level overhang of the framing',
          "wall to the tail's top corner",
          `${plain(overhangIn, 2)} in.`,
          length(overhangIn).text,
          {
            ref,
          },
        ),
      ],
    });
    return answer.verdict === 'beyond' ? { ...answer, verdict: 'needs-engineer' } : answer;
  },
};
