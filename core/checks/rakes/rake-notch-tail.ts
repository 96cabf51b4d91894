import type { Extender } from '../../layout/layout-types.ts';
import type { Lookout, RakeLayout } from '../../rake/rake-types.ts';
import { held, source, step } from '../answer.ts';
import { atLeast, inches, plain } from '../measured.ts';
import { atLookout, type RakeCheck } from './rake-check.ts';

/** Left of a cantilevered rafter under a notch, at least. [in] */
const leastLeftIn = 3.5;

/** A lookout let into a tail, and what is left of the tail there, square to the slope. [in] */
type Cut = {
  readonly lookout: Lookout;
  readonly tail: Extender;
  readonly wholeIn: number;
  readonly leftIn: number;
};

/**
 * What is left of the gable's tail where lookouts are let into its top edge: of its whole depth, or over the seat of the
 * throat. Source: IRC R802.7.1.1 for a notched, cantilevered portion: 3-1/2 in. left, and no more than 24 in. out.
 * Worked: a 2x6 tail and 2x4 lookouts laid flat -> 5-1/2 less 1-1/2 leaves 4 in.; over a throat of 4.47 it leaves 2.97 in.
 */
export const rakeNotchTail: RakeCheck = {
  check: 'rake-notch-tail',
  group: 'Lumber',
  title: 'Lookouts let into the tail at the gable',
  run: ({ rake, layout }) => {
    const { notch } = rake;
    const governing =
      notch === null
        ? undefined
        : cutsOf(rake, layout.extenders, notch.depthIn).toSorted((a, b) => a.leftIn - b.leftIn)[0];
    if (notch === null || governing === undefined) return null;
    const { lookout, tail, wholeIn, leftIn } = governing;
    return held({
      what: `What a lookout let into ${tail.mark} leaves of it, against 3-1/2 in.`,
      at: atLookout(rake, lookout),
      value: inches(Math.max(0, leftIn)),
      limit: inches(leastLeftIn),
      worse: 'less',
      source: [source('IRC R802.7.1.1', 'published')],
      assumptions: [
        'The notch is in the top edge, which is pulled where the tail sticks out; the rule is written for the lower edge, so it is lenient here.',
        'The old rafter beside the tail carries with it over the wall, and is not counted.',
      ],
      remedy: `A tail that leaves ${atLeast(leastLeftIn)} under a notch of ${inches(notch.depthIn).text} there, lookouts butted to the tail’s face, or none next to the wall would bring it within.`,
      why: [
        step(
          wholeIn < tail.section.plumbDepthIn / tail.section.slopeFactor - 1e-6
            ? `Throat of ${tail.mark} over its seat`
            : `Depth of ${tail.mark}`,
          'as cut',
          `${plain(wholeIn, 2)} in.`,
          inches(wholeIn).text,
          { ref: `section/${rake.eaveId}/${tail.id}` },
        ),
        step(
          `Left under ${lookout.mark}`,
          'depth - notch',
          `${plain(wholeIn, 2)} - ${plain(notch.depthIn, 2)}`,
          inches(Math.max(0, leftIn)).text,
          { ref: `rake/${rake.rakeId}/lookout/${lookout.mark}` },
        ),
      ],
    });
  },
};

function cutsOf(rake: RakeLayout, extenders: readonly Extender[], notchIn: number): readonly Cut[] {
  const halfIn = rake.lookoutWidthIn / 2 / rake.slopeFactor;
  return rake.lookouts.flatMap((lookout) =>
    lookout.crosses.flatMap((member) => {
      const tail = extenders.find(({ mark }) => mark === member.label);
      if (tail === undefined) return [];
      const { bearing, throatIn } = tail.section;
      const overSeat =
        bearing.kind === 'notched' &&
        lookout.levelIn + halfIn > -bearing.seatIn &&
        lookout.levelIn - halfIn < 0;
      const wholeIn = overSeat ? Math.min(member.depthIn, throatIn) : member.depthIn;
      return [{ lookout, tail, wholeIn, leftIn: wholeIn - notchIn }];
    }),
  );
}
