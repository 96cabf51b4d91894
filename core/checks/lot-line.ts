import { edgeBoards } from '../eave/edge-boards.ts';
import { held, lacking, type Check, source, step } from './answer.ts';
import { greatestOverhang } from './greatest-overhang.ts';
import { atMost, length, plain } from './measured.ts';

const what = 'Roof edge to the lot line against 5 ft';
const sources = [source('IRC Table R302.1(1), no sprinklers; older and local texts differ', 'secondary')];
/** From here no rating is asked for; nearer than the second no projection is allowed. [in] */
const freeIn = 60;
const nearestIn = 24;

/**
 * Distance of the new edge (fascia and gutter) to the lot line: no rating from 5 ft, a rated underside from 2 to 5 ft, and no
 * projection nearer than 2 ft. Put as a question to the building department. Source: IRC Table R302.1(1).
 * Worked: wall 6 ft 6 in. from the line, 24 in. of overhang -> 4 ft 6 in.: ask about a rated underside.
 */
export const lotLine: Check = {
  check: 'lot-line',
  group: 'House and lot',
  title: 'Lot line',
  run: (eave) => {
    const { lotLineIn, gutterWidthIn } = eave.survey;
    if (lotLineIn === null)
      return lacking({
        what,
        source: sources,
        field: `survey.eaves.${eave.surveyIndex}.lotLineIn`,
        enter:
          "Enter the level distance from the wall's framing face to the lot line it faces, in the survey.",
      });
    const { overhangIn, at } = greatestOverhang(eave);
    const fasciaIn = edgeBoards(eave.design).thicknessIn;
    const leftIn = lotLineIn - overhangIn - fasciaIn - gutterWidthIn;
    const freeOverhangIn = lotLineIn - freeIn - fasciaIn - gutterWidthIn;
    const shorter = freeOverhangIn >= 1 ? ` An overhang of ${atMost(freeOverhangIn)} would keep 5 ft.` : '';
    return held({
      what,
      at,
      value: length(leftIn),
      limit: length(freeIn),
      worse: 'less',
      source: sources,
      assumptions: ['Zoning may ask for more than the fire rule, and is not covered.'],
      remedy:
        leftIn < nearestIn
          ? `The table allows no projection nearer than 2 ft to the line. Ask the building department before anything else.${shorter}`
          : `Ask the building department: from 2 to 5 ft the underside wants a one-hour rating or one of the equals in its edition, and vents in it are limited.${shorter}`,
      why: [
        step(
          'Edge to the line',
          'wall to line - overhang - fascia - gutter',
          `${plain(lotLineIn, 2)} - ${plain(overhangIn, 2)} - ${plain(fasciaIn, 2)} - ${plain(gutterWidthIn, 2)}`,
          length(leftIn).text,
          { ref: `eave/${eave.layout.eaveId}/lotLineIn` },
        ),
        step(
          'Table',
          'none nearer than 2 ft; rated from 2 to 5 ft; free from 5 ft',
          '24 in., 60 in.',
          length(freeIn).text,
        ),
      ],
    });
  },
};
