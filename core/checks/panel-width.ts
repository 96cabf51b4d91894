import { courseWidthsIn } from '../takeoff/lay-cover.ts';
import { found, held, type Check, source, step, wholeEave } from './answer.ts';
import { leastPanelWidthIn } from './data/panel-ratings.ts';
import { atLeast, length } from './measured.ts';

const what = 'Width of the narrowest course of panels up the slope against 24 in.';

/**
 * Span tables hold for panels 24 in. wide or wider; a strip over a short overhang alone is narrower.
 * Source: IRC Table R503.2.1.1(1), note c, as seen quoted. Worked: 16 in. level at 6/12 -> 17.9 in. wide, beyond.
 */
export const panelWidth: Check = {
  check: 'panel-width',
  group: 'Sheathing and roof edge',
  title: 'Width of the panel strip',
  run: (eave) => {
    const { cover } = eave;
    if (cover.kind !== 'panels')
      return found({
        what,
        at: wholeEave,
        source: [],
        why: [],
        verdict: 'not-covered',
        remedy: 'There are no panels on this eave, so the rule says nothing of it.',
      });
    const courseWidths = courseWidthsIn(cover.boards);
    const narrowestIn = Math.min(cover.strip.widthIn, ...courseWidths);
    const shortIn = leastPanelWidthIn - cover.strip.widthIn;
    return held({
      what,
      at: wholeEave,
      value: length(narrowestIn),
      limit: length(leastPanelWidthIn),
      worse: 'less',
      source: [source('IRC Table R503.2.1.1(1), note c', 'published')],
      remedy:
        shortIn > 0
          ? `A tie-back ${atLeast(shortIn)} longer (Design, Sheathing) gives a strip of 24": strip the old deck back that far, to a rafter's joint.`
          : 'Rip the courses more evenly, so that none is narrower than 24", or lay the narrow one up the roof.',
      why: [
        step(
          'Strip',
          'overhang and fascia x slope factor + tie-back',
          'as taken off',
          length(cover.strip.widthIn).text,
          {
            ref: `design/${eave.layout.eaveId}/sheathing.tieBackIn`,
          },
        ),
        step(
          'Narrowest course',
          'panels of the price list, gaps at the edges',
          `${courseWidths.length} courses`,
          length(narrowestIn).text,
        ),
      ],
    });
  },
};
