import { held, lacking, type Check, source, step, wholeEave } from './answer.ts';
import { length } from './measured.ts';
import { formatPitch } from '../units/pitch.ts';

const what = 'Power drop above the new roof edge against its least height';
const sources = [source('Electrical code, 230.24(A) and its exceptions', 'secondary')];

/**
 * Height of the power drop above the roof: 8 ft; 3 ft on a roof of 4/12 or steeper; 18 in. over the overhang where a drop of
 * no more than 6 ft of wire over no more than 4 ft of it comes to a mast. Source: electrical code 230.24(A).
 */
export const serviceDrop: Check = {
  check: 'service-drop',
  group: 'House and lot',
  title: 'Power drop',
  run: (eave) => {
    const { serviceDropAboveRoofIn, serviceDropToMast, pitchRisePer12 } = eave.survey;
    if (serviceDropAboveRoofIn === null)
      return lacking({
        what,
        source: sources,
        field: `survey.eaves.${eave.surveyIndex}.serviceDropAboveRoofIn`,
        enter:
          'Enter the least height of the power drop above the new roof edge, in the survey. Keep clear of it; where no drop crosses this eave, leave it blank.',
      });
    const limitIn = serviceDropToMast ? 18 : pitchRisePer12 >= 4 ? 36 : 96;
    return held({
      what,
      at: wholeEave,
      value: length(serviceDropAboveRoofIn),
      limit: length(limitIn),
      worse: 'less',
      source: sources,
      assumptions: ['No more than 300 volts between conductors (from memory). The utility decides.'],
      remedy:
        'Have the utility or an electrician raise the drop before work begins, and put it in the estimate.',
      why: [
        step(
          'Least height',
          serviceDropToMast ? 'drop to a mast through the overhang' : 'by the pitch of the roof',
          serviceDropToMast
            ? '18 in.'
            : `${formatPitch(pitchRisePer12)}: ${pitchRisePer12 >= 4 ? '3 ft' : '8 ft'}`,
          length(limitIn).text,
          { ref: `eave/${eave.layout.eaveId}/serviceDropAboveRoofIn` },
        ),
      ],
    });
  },
};
