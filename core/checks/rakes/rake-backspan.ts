import { held, source, step } from '../answer.ts';
import { atLeast, atMost, plain, toOne } from '../measured.ts';
import { atLookout, hangsOnNails, type RakeCheck } from './rake-check.ts';

/**
 * How far lookouts that run through reach back into the roof, against how far they stick out past the gable rafter. Source:
 * the wood frame manual's rule for outlookers, no more than half of their length out, as a page for coastal inspectors
 * tells it; the same 1 to 1 is asked for on site (common practice).
 * Worked: 12 in. out and 15-1/4 in. back -> 1.27 to 1.
 */
export const rakeBackspan: RakeCheck = {
  check: 'rake-backspan',
  group: 'Rules of thumb',
  title: "Lookouts' backspan to overhang",
  run: (of) => {
    if (hangsOnNails(of)) return null;
    const { rake } = of;
    const governing = rake.lookouts
      .flatMap((lookout) => {
        const { backspanIn, overhangIn } = lookout;
        return backspanIn === null || overhangIn === null
          ? []
          : [{ lookout, backspanIn, overhangIn, ratio: backspanIn / overhangIn }];
      })
      .toSorted((a, b) => a.ratio - b.ratio)[0];
    if (governing === undefined) return null;
    const { lookout, backspanIn, overhangIn, ratio } = governing;
    const inIn = overhangIn - rake.overhangIn;
    return held({
      what: 'Backspan of the lookouts to their overhang, level, against 1 to 1',
      at: atLookout(rake, lookout),
      value: toOne(ratio),
      limit: toOne(1),
      worse: 'less',
      source: [
        source('Wood frame manual: an outlooker sticks out no more than half its length', 'secondary'),
      ],
      assumptions: [
        'Both are level, from the outer face of the member that the lookout bears on: in to the face that its end meets, out to the barge rafter.',
        'The bending of the lookouts, and what holds their inner ends down, are not reckoned.',
      ],
      remedy: `An overhang of ${atMost(backspanIn - inIn)} at the rake, or lookouts that run back ${atLeast(overhangIn)}, to a member further in, would bring it within.`,
      why: [
        step(
          `Backspan to overhang of ${lookout.mark}`,
          'back / out',
          `${plain(backspanIn, 2)} / ${plain(overhangIn, 2)}`,
          toOne(ratio).text,
          { ref: `rake/${rake.rakeId}/lookout/${lookout.mark}` },
        ),
      ],
    });
  },
};
