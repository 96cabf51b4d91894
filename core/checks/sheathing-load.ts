import { panelRatingSchema } from '../eave/structure.ts';
import { found, held, lacking, type Check, source, step, wholeEave } from './answer.ts';
import { ratedPanels } from './data/panel-ratings.ts';
import { loadSource, mindingSnow, snowSteps } from './load-steps.ts';
import { plain, psf } from './measured.ts';
import { widestGap } from './widest-gap.ts';

const what = 'Load on the panels against what their span rating carries';
const panelSource = source('IRC Table R503.2.1.1(1), loads at the rated span', 'from-memory');

/**
 * Short-term load on the panels (roof live, snow or iced eave) against the live load of their rating. At a gap narrower than
 * the rated span the load is raised in proportion to span over gap, the least of what bending, sag and shear would give; at a
 * wider one it is lowered by the cube, which is what sag would give.
 * Source: IRC Table R503.2.1.1(1), cells from memory. Worked: 24/16 at 16 in. -> 40 x 24 / 16 = 60 psf.
 */
export const sheathingLoad: Check = {
  check: 'sheathing-load',
  group: 'Sheathing and roof edge',
  title: 'Load on the sheathing',
  run: (eave) => {
    const { panelRating } = eave.design.structure;
    if (eave.cover.kind !== 'panels')
      return found({
        what,
        at: wholeEave,
        source: [panelSource],
        why: [],
        verdict: 'not-covered',
        remedy: 'There are no rated panels on this eave. Loads on planks are not covered here.',
      });
    if (panelRating === null)
      return lacking({
        what,
        source: [panelSource],
        field: `design.eaves.${eave.designIndex}.structure.panelRating`,
        enter: 'Enter the span rating stamped on the panel, like 32/16, under Structure in Design.',
      });
    const { gapIn, at } = widestGap(eave);
    const most = eave.loads.cases.reduce((a, b) => (b.psf > a.psf ? b : a));
    const carries = (rating: (typeof panelRatingSchema.options)[number]) =>
      ratedPanels[rating].livePsf * spanShare(ratedPanels[rating].unsupportedIn, gapIn);
    const enough = panelRatingSchema.options.find(
      (one) => ratedPanels[one].unsupportedIn >= gapIn && carries(one) >= most.psf,
    );
    const rated = ratedPanels[panelRating];
    return mindingSnow(
      eave,
      held({
        what,
        at,
        value: psf(most.psf),
        limit: psf(carries(panelRating)),
        worse: 'more',
        source: [panelSource, loadSource],
        assumptions: ['The dead load of the roofing is within the 10 psf that the table allows for it.'],
        remedy: `${enough === undefined ? 'Closer tails' : `A ${enough} panel, or closer tails,`} would bring it within.`,
        why: [
          ...snowSteps(eave),
          step('Largest short-term load', most.name, 'of all load cases', psf(most.psf).text),
          step(
            'Load that the rating carries at this gap',
            'live load x (rated span / gap), its cube where the gap is wider',
            `${rated.livePsf} x ${rated.unsupportedIn} / ${plain(gapIn, 2)}`,
            psf(carries(panelRating)).text,
            { source: panelSource, ref: `design/${eave.layout.eaveId}/structure.panelRating` },
          ),
        ],
      }),
    );
  },
};

function spanShare(ratedIn: number, gapIn: number): number {
  if (gapIn <= 0) return 1;
  const share = ratedIn / gapIn;
  return share >= 1 ? share : share ** 3;
}
