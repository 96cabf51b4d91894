import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import { plainMeans } from '../../core/layout/layout-means.ts';
import { placeTails } from '../../core/layout/place-tails.ts';
import { prepare } from '../../core/layout/solver/choices.ts';
import { solve } from '../../core/layout/solver/solve.ts';
import type { EaveDesign } from '../../core/eave/design-document.ts';
import type { EaveSurvey } from '../../core/survey/survey-document.ts';
import { makeDesign } from '../layout/make-layout.ts';
import { makeWall } from '../layout/make-wall.ts';
import { makeEave } from '../survey/make-eave.ts';
import { sideBySide } from './measure.ts';

/** Numbers of rafters that the layout is timed with. */
const sizes = [10, 30, 100, 1000];

const designs: Readonly<Record<string, EaveDesign>> = {
  'largest gap 24 in.': makeDesign({ layout: { largestGapIn: 24 } }),
  'largest gap 16 in.': makeDesign({ layout: { largestGapIn: 16 } }),
  'no fillers, whole panels': makeDesign({
    layout: { largestGapIn: 24, allowFiller: false, wholePanels: true },
  }),
};

/**
 * Times the layout of an old eave against its number of rafters: placing the tails alone, and the whole eave.
 * @returns medians of one run. [ms]
 */
export async function timeLayout(): Promise<readonly Readonly<Record<string, number | string>>[]> {
  const figures: Readonly<Record<string, number | string>>[] = [];
  for (const [name, design] of Object.entries(designs)) {
    for (const rafters of sizes) {
      const survey = oldEave(rafters);
      const wall = makeWall(survey, design);
      const { choices } = prepare(wall);
      const took = await sideBySide(
        {
          solve: () => solve(choices),
          place: () => placeTails(wall),
          layOut: () => layOutEave(survey, design, 'A', null, undefined, plainMeans),
        },
        rafters > 500 ? 3 : 15,
      );
      const of = (work: string): number => Number((took[work] ?? Number.NaN).toPrecision(3));
      figures.push({
        design: name,
        rafters,
        candidates: choices.bays.reduce((sum, { candidates }) => sum + candidates.length, 0),
        solveMs: of('solve'),
        placeMs: of('place'),
        layOutMs: of('layOut'),
      });
    }
  }
  return figures;
}

/** An eave whose rafters came as they came, 17 to 26 in. apart, a third of them with a joist on a side or on both. */
function oldEave(rafters: number): EaveSurvey {
  const spacings = [19.5, 24, 17.5, 24.75, 22.25, 22.5, 22, 24.75, 20.75, 25.5, 18.25];
  const joists = ['none', 'right', 'none', 'none', 'left', 'none', 'both', 'none', 'right'] as const;
  const survey = makeEave([1]);
  const [first] = survey.rafters;
  if (first === undefined) throw new Error('an eave without a rafter');
  // A thousand rafters stand on a longer wall than a survey takes; the layout does not mind.
  return {
    ...survey,
    lengthIn: rafters * 23 + 20,
    readingMode: 'bays-centres',
    rafters: Array.from({ length: rafters }, (_, index) => ({
      ...first,
      id: `r${index + 1}`,
      readingIn: index === 0 ? 1 : (spacings[index % spacings.length] ?? 24),
      joist: joists[index % joists.length] ?? 'none',
    })),
  };
}
