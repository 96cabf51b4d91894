import { found, held, lacking, type Check, source, step } from './answer.ts';
import { formatLength } from '../units/format-length.ts';
import { plain, squareFeet } from './measured.ts';

const what = 'Painted area disturbed outside against 20 sq ft';
const sources = [source('40 CFR 745, subpart E', 'published')];
const allEaves = { where: 'All eaves', stationIn: null };
const ruleYear = 1978;
const limitSqFt = 20;

/**
 * Painted fascia and frieze that come off along all eaves of the job, on a house built before 1978, against the rule's 20 sq ft.
 * Source: 40 CFR 745, subpart E. Worked: 34 ft of 5-1/2 and 7-1/4 in. boards -> 36.1 sq ft.
 */
export const paintedArea: Check = {
  check: 'painted-area',
  group: 'House and lot',
  title: 'Paint of before 1978',
  run: (eave) => {
    const { survey } = eave.input;
    if (survey.yearBuilt === null)
      return lacking({
        what,
        at: allEaves,
        source: sources,
        field: 'survey.yearBuilt',
        enter: 'Enter the year the house was built, in the survey.',
      });
    if (survey.yearBuilt >= ruleYear)
      return found({
        what: 'Year built against 1978',
        at: allEaves,
        value: { text: String(survey.yearBuilt), number: survey.yearBuilt, unit: 'year' },
        limit: { text: '1978', number: ruleYear, unit: 'year' },
        source: sources,
        why: [
          step(
            'Year built',
            'as entered',
            String(survey.yearBuilt),
            'the rule is for houses built before 1978',
            { ref: 'survey/yearBuilt' },
          ),
        ],
        verdict: 'within',
        remedy: null,
      });
    const parts = survey.eaves.map((one) => {
      const known = one.paintedFasciaDepthIn !== null || one.paintedFriezeDepthIn !== null;
      const depthIn = (one.paintedFasciaDepthIn ?? 0) + (one.paintedFriezeDepthIn ?? 0);
      return { one, known, depthIn, sqFt: (one.lengthIn * depthIn) / 144 };
    });
    const sqFt = parts.reduce((sum, part) => sum + part.sqFt, 0);
    const why = parts.map(({ one, depthIn, sqFt: here, known }) =>
      step(
        one.name,
        'length x painted depths / 144',
        `${formatLength(one.lengthIn)} x ${plain(depthIn, 2)} in.`,
        known ? squareFeet(here).text : 'not entered',
        {
          ref: `eave/${one.id}/paintedFasciaDepthIn`,
        },
      ),
    );
    const unknown = parts.findIndex(({ known }) => !known);
    if (unknown >= 0 && sqFt <= limitSqFt)
      return lacking({
        what,
        at: allEaves,
        source: sources,
        why,
        field: `survey.eaves.${unknown}.paintedFasciaDepthIn`,
        enter: `Enter how deep the painted fascia and frieze are that come off along ${survey.eaves[unknown]?.name ?? 'this eave'}; 0 where nothing painted does.`,
      });
    return held({
      what,
      at: allEaves,
      value: squareFeet(sqFt),
      limit: squareFeet(limitSqFt),
      worse: 'more',
      source: sources,
      assumptions: [
        `The house is of ${survey.yearBuilt}; its paint is taken to hold lead until a test says otherwise.`,
        'Painted siding and soffit that come off are not counted.',
      ],
      remedy:
        'The federal lead paint rule applies: a certified firm, the pamphlet for the owner, ground cover, containment and records; or have the paint tested. Put the cost in the estimate.',
      why,
    });
  },
};
