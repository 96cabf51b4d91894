import { waysOutSentence } from '../layout/ways-out-words.ts';
import { atTail, held, lacking, type Check, source, step } from './answer.ts';
import { governingTail } from './governing.ts';
import { inches, plain } from './measured.ts';

const what = 'Soffit or tail below the plate against the lowest window or door head';

/** How far the soffit, or the open tail, comes down at the wall, against the lowest head. Source: geometry of the section. */
export const windowHead: Check = {
  check: 'window-head',
  group: 'House and lot',
  title: 'Window and door heads',
  run: (eave) => {
    const headIn = eave.survey.windowHeadBelowPlateIn;
    const sources = [source('Geometry of the section', 'published')];
    if (headIn === null)
      return lacking({
        what,
        source: sources,
        field: `survey.eaves.${eave.surveyIndex}.windowHeadBelowPlateIn`,
        enter: "Enter how far the lowest window or door head is below the plate's top, in the survey.",
      });
    const roomOf = (clearance: number | null) => clearance ?? headIn;
    const tail = governingTail(eave.tails, ({ extender }) => -roomOf(extender.section.windowHeadClearanceIn));
    const roomIn = roomOf(tail.extender.section.windowHeadClearanceIn);
    return held({
      what,
      at: atTail(tail.extender),
      value: inches(headIn - roomIn),
      limit: inches(headIn),
      worse: 'more',
      source: sources,
      remedy: waysOutSentence(eave.layout.headRoom?.waysOut ?? []),
      why: [
        step(
          'Lowest part below the plate',
          'of the soffit or tail at the wall',
          `head ${plain(headIn, 2)} - room ${plain(roomIn, 2)}`,
          inches(headIn - roomIn).text,
          {
            ref: `section/${eave.layout.eaveId}/${tail.extender.id}`,
          },
        ),
      ],
    });
  },
};
