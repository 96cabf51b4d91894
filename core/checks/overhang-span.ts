import { formatLength } from '../units/format-length.ts';
import { held, lacking, type Check, source, step } from './answer.ts';
import { greatestOverhang } from './greatest-overhang.ts';
import { atMost, length, plain } from './measured.ts';

const what = "Level overhang against a third of the old rafter's span";
const sources = [
  source(
    'Wood frame manual: lesser of a third of the span and 2 ft (section from memory, rule on secondary pages)',
    'secondary',
  ),
];

/** The overhang against a third of the rafter's level span. Worked: 12 ft span -> 4 ft. */
export const overhangSpan: Check = {
  check: 'overhang-span',
  group: 'Rules of thumb',
  title: 'Overhang to rafter span',
  run: (eave) => {
    const spanIn = eave.survey.rafterSpanIn;
    if (spanIn === null)
      return lacking({
        what,
        source: sources,
        field: `survey.eaves.${eave.surveyIndex}.rafterSpanIn`,
        enter:
          "Enter the old rafter's level span, from the plate to the ridge or purlin it rests on, in the survey.",
      });
    const { overhangIn, at } = greatestOverhang(eave);
    return held({
      what,
      at,
      value: length(overhangIn),
      limit: length(spanIn / 3),
      worse: 'more',
      source: sources,
      assumptions: [
        `The deck rule of a quarter of the span would give ${formatLength(spanIn / 4)} (IRC R507, seen on secondary pages; for decks, not roofs).`,
      ],
      remedy: `An overhang of ${atMost(spanIn / 3)} would bring it within.`,
      why: [
        step('A third of the span', 'span / 3', `${plain(spanIn, 2)} / 3`, length(spanIn / 3).text, {
          ref: `eave/${eave.layout.eaveId}/rafterSpanIn`,
        }),
      ],
    });
  },
};
