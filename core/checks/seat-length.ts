import { formatInches } from '../units/format-length.ts';
import { atTail, held, type Check, source, step } from './answer.ts';
import { governingTail } from './governing.ts';
import { inches, plain } from './measured.ts';

/** Least bearing on wood. [in] Source: IRC R802.6. */
const leastBearingIn = 1.5;

/** Bearing length of the tail on the plate against 1-1/2 in. Source: IRC R802.6, as seen in transcription. */
export const seatLength: Check = {
  check: 'seat-length',
  group: 'Rules of thumb',
  title: 'Length of bearing',
  run: (eave) => {
    const tail = governingTail(eave.tails, ({ bearingLengthIn }) => -bearingLengthIn);
    const { bearing } = tail.extender.section;
    const shimmed = bearing.kind === 'shimmed';
    return held({
      what: 'Bearing of the tail on the plate against 1-1/2 in. on wood',
      at: atTail(tail.extender),
      value: inches(tail.bearingLengthIn),
      limit: inches(leastBearingIn),
      worse: 'less',
      source: [source('IRC R802.6', 'published')],
      assumptions: shimmed
        ? [
            `The tail clears the plate: a bearing shim ${formatInches(bearing.shimIn)} high and as long as the plate is wide is taken to stand under it.`,
          ]
        : [],
      remedy: 'Deeper stock cuts a longer seat; or set a bearing shim of 1-1/2" or more over the plate.',
      why: [
        step(
          'Bearing',
          shimmed
            ? 'as long as the plate is wide'
            : '(d x slope factor - height above plate) / slope, not more than the plate',
          shimmed
            ? `plate ${plain(eave.survey.plateWidthIn, 3)}`
            : `plate ${plain(eave.survey.plateWidthIn, 3)} in.`,
          inches(tail.bearingLengthIn).text,
          { ref: `section/${eave.layout.eaveId}/${tail.extender.id}` },
        ),
      ],
    });
  },
};
