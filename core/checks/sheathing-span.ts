import { panelRatingSchema } from '../eave/structure.ts';
import {
  found,
  held,
  lacking,
  type Answer,
  type Check,
  type Place,
  source,
  step,
  wholeEave,
} from './answer.ts';
import { ratedPanels } from './data/panel-ratings.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { inches, length, plain } from './measured.ts';
import { widestGap } from './widest-gap.ts';

const what = 'Widest gap between tails against what the sheathing may span';
const panelSource = source('IRC Table R503.2.1.1(1)', 'from-memory');
/** Rafter spacing for planks, and the net thickness they then need. [in] */
const plankSpanIn = 24;
const plankThicknessIn = 5 / 8;

/**
 * The widest gap between tails, centre to centre, against the panel's span rating with or without edge support, or against
 * 24 in. for planks of 5/8 in. net or more. Source: IRC Tables R503.2.1.1(1) and R803.1, cells from memory.
 */
export const sheathingSpan: Check = {
  check: 'sheathing-span',
  group: 'Sheathing and roof edge',
  title: 'Span of the sheathing',
  run: (eave) => {
    const { gapIn, at } = widestGap(eave);
    switch (eave.cover.kind) {
      case 'panels':
        return panels(eave, gapIn, at);
      case 'planks': {
        const thin = eave.sheathingThicknessIn < plankThicknessIn - 1e-9;
        return held({
          what: thin ? 'Net thickness of the planks against 5/8 in.' : what,
          at: thin ? wholeEave : at,
          value: thin ? inches(eave.sheathingThicknessIn) : length(gapIn),
          limit: thin ? inches(plankThicknessIn) : length(plankSpanIn),
          worse: thin ? 'less' : 'more',
          source: [source('IRC R803.1, board sheathing', 'from-memory')],
          remedy: thin
            ? 'Choose planks of 5/8 in. net or more.'
            : 'Set a tail or a nailer in the gap so that no gap is over 24 in.',
          why: [
            step('Widest gap', 'centre to centre of neighbouring tails', at.where, length(gapIn).text),
            step('Planks', 'net thickness', 'as on the price list', inches(eave.sheathingThicknessIn).text),
          ],
        });
      }
      default:
        return found({
          what,
          at: wholeEave,
          source: [panelSource],
          why: [],
          verdict: 'not-covered',
          remedy: 'No sheathing is chosen for this eave. Choose panels or planks in Design.',
        });
    }
  },
};

function panels(eave: EaveToCheck, gapIn: number, at: Place): Answer {
  const { panelRating, edgeClips } = eave.design.structure;
  const steps = [step('Widest gap', 'centre to centre of neighbouring tails', at.where, length(gapIn).text)];
  if (panelRating === null)
    return lacking({
      what,
      at,
      source: [panelSource],
      why: steps,
      field: `design.eaves.${eave.designIndex}.structure.panelRating`,
      enter: 'Enter the span rating stamped on the panel, like 32/16, under Structure in Design.',
    });
  const rated = ratedPanels[panelRating];
  const limitIn = edgeClips ? rated.edgeSupportedIn : rated.unsupportedIn;
  const enough = panelRatingSchema.options.find((one) => ratedPanels[one].unsupportedIn >= gapIn);
  const clipped = !edgeClips && rated.edgeSupportedIn >= gapIn;
  return held({
    what,
    at,
    value: length(gapIn),
    limit: length(limitIn),
    worse: 'more',
    source: [panelSource],
    assumptions: ['Panels lie with their strength axis across the tails, over two spans or more.'],
    remedy: clipped
      ? 'Edge clips or blocking at the long edges would bring it within; so would a tail or a nailer in the gap.'
      : enough === undefined
        ? `Set a tail or a nailer in the gap so that no gap is over ${plain(limitIn)} in.`
        : `A ${enough} panel, or a tail or nailer so that no gap is over ${plain(limitIn)} in., would bring it within.`,
    why: [
      ...steps,
      step(
        'Span of the panel',
        edgeClips ? 'with edge support' : 'without edge support',
        panelRating,
        length(limitIn).text,
        {
          source: panelSource,
          ref: `design/${eave.layout.eaveId}/structure.panelRating`,
        },
      ),
    ],
  });
}
