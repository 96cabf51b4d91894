import { edgeBoards } from '../eave/edge-boards.ts';
import { formatLength } from '../units/format-length.ts';
import { slopeFactor } from '../units/pitch.ts';
import { found, held, lacking, type Check, source, step, wholeEave } from './answer.ts';
import { greatestOverhang } from './greatest-overhang.ts';
import { length, plain } from './measured.ts';

const what = 'Ice barrier from the new edge to 24 in. inside the wall, along the slope, against one course';
const sources = [source('IRC R905.1.2, 24 in. inside the exterior wall line', 'secondary')];
/** How far inside the wall it reaches, level; and least along the slope on steep roofs. [in] */
const insideIn = 24;
const steepRisePer12 = 8;
const steepLeastIn = 36;
/** Width of a roll and lap of two courses. [in] Common practice, no source. */
const courseIn = 36;
const lapIn = 6;

/**
 * Width of ice barrier along the slope: (overhang + fascia + wall + 24) x slope factor, measured from the inside face of the
 * wall, the longer of two readings; at 8/12 and above at least 36 in. from the edge. Held against one course of 36 in.
 * Worked: 18 in. at 7/12, wall 4-1/2, fascia 3/4 -> 47.25 x 1.158 = 54.7 in.: two courses.
 */
export const iceBarrier: Check = {
  check: 'ice-barrier',
  group: 'Sheathing and roof edge',
  title: 'Ice barrier',
  run: (eave) => {
    const required = eave.input.survey.site.iceBarrierRequired;
    const { survey } = eave;
    const factor = slopeFactor(survey.pitchRisePer12);
    const greatest = greatestOverhang(eave);
    const outIn =
      greatest.overhangIn + (eave.design.sheathing.coversFascia ? edgeBoards(eave.design).thicknessIn : 0);
    const steep = survey.pitchRisePer12 >= steepRisePer12;
    const widthIn = Math.max((outIn + survey.wallThicknessIn + insideIn) * factor, steep ? steepLeastIn : 0);
    const fromFaceIn = Math.max((outIn + insideIn) * factor, steep ? steepLeastIn : 0);
    const courses = 1 + Math.max(0, Math.ceil((widthIn - courseIn) / (courseIn - lapIn) - 1e-9));
    const why = [
      step(
        'Width along the slope',
        '(overhang and fascia + wall + 24) x slope factor',
        `(${plain(outIn, 2)} + ${plain(survey.wallThicknessIn, 2)} + ${insideIn}) x ${plain(factor, 3)}`,
        length(widthIn).text,
        { ref: greatest.ref },
      ),
      step(
        'Read from the outside face instead',
        '(overhang and fascia + 24) x slope factor',
        `(${plain(outIn, 2)} + ${insideIn}) x ${plain(factor, 3)}`,
        length(fromFaceIn).text,
      ),
      step(
        'Courses of 36 in., lapped 6 in.',
        '1 + (width - 36) / 30, rounded up',
        `${plain(widthIn, 2)} in.`,
        `${courses}`,
      ),
    ];
    if (required === null)
      return lacking({
        what,
        source: sources,
        why,
        field: 'survey.site.iceBarrierRequired',
        enter:
          'Ask the building department whether the place wants an ice barrier, and say so under Snow, wind and roof in the survey.',
      });
    if (!required)
      return found({
        what,
        at: wholeEave,
        value: length(widthIn),
        source: sources,
        why,
        assumptions: ['The place asks for no ice barrier, as entered.'],
        verdict: 'within',
        remedy: null,
      });
    return held({
      what,
      at: wholeEave,
      value: length(widthIn),
      limit: length(courseIn),
      worse: 'more',
      source: [...sources, source('36 in. along the slope at 8/12 and above', 'from-memory')],
      assumptions: [
        'Measured from the inside face of the wall, the longer reading; editions differ.',
        'Rolls are 36 in. wide and courses lap 6 in. (common practice, no source).',
      ],
      remedy: `Order ${courses} courses, ${formatLength(widthIn)} up the slope in all. The old overhang wanted less, so the roofer has to know.`,
      why,
    });
  },
};
