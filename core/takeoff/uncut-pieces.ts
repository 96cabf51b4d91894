import type { JobInput } from '../job/job-file.ts';
import { numberList } from '../layout/number-list.ts';
import type { Extender } from '../layout/layout-types.ts';
import type { Problem } from '../problems/problem.ts';
import { formatInches } from '../units/format-length.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';
import type { EaveToTakeOff } from './takeoff-context.ts';

/** With less wood than this above its notch the piece is all but cut in two. [in] Common practice, no source. */
const leastThroatIn = 1;
/** A shim higher than this is no shim but a post. [in] Common practice, no source. */
const highestShimIn = 6;

/**
 * Names the extenders that nobody can make as drawn: the notch all but cuts the piece, or the piece stands so high over
 * the plate that no shim bears it. They stay in the takeoff, so that the readings can be seen, but what carries the eave
 * there instead is not counted, and so no sum with them is the price of the job.
 * @param input - for the place of the readings in the job.
 * @param eaves - the eaves with their sections. [in]
 * @returns one problem for each eave and reason.
 */
export function uncutPieces(input: JobInput, eaves: readonly EaveToTakeOff[]): readonly Problem[] {
  return eaves.flatMap((eave) => [
    ...told(input, eave, {
      figure: ({ section }) =>
        section.bearing.kind === 'notched' && section.throatIn < leastThroatIn
          ? Math.max(0, section.throatIn)
          : null,
      say: (figures) =>
        `the notch leaves ${figures} of the piece above the plate and all but cuts it in two. Measure the height above plate again; if it is so, take these rafters' extenders out in Design and enter what carries the eave there instead.`,
    }),
    ...told(input, eave, {
      // A kicked-up tail stands on packers, which are built up to their height.
      figure: ({ section: { bearing, kickUp } }) =>
        bearing.kind === 'shimmed' && kickUp === null && bearing.shimIn > highestShimIn
          ? bearing.shimIn
          : null,
      say: (figures) =>
        `the piece stands ${figures} over the plate, too high for a shim, and what carries it there is not counted. Measure the height above plate again, or choose deeper stock in Design.`,
    }),
  ]);
}

type Telling = {
  readonly figure: (extender: Extender) => number | null;
  readonly say: (figures: string) => string;
};

function told(input: JobInput, { layout }: EaveToTakeOff, { figure, say }: Telling): readonly Problem[] {
  const cases = layout.extenders.flatMap((extender) => {
    const value = figure(extender);
    return value === null ? [] : [{ number: extender.rafterNumber, value }];
  });
  if (cases.length === 0) return [];
  const least = written(cases.reduce((low, { value }) => Math.min(low, value), Number.POSITIVE_INFINITY));
  const most = written(cases.reduce((high, { value }) => Math.max(high, value), 0));
  const index = input.survey.eaves.findIndex(({ id }) => id === layout.eaveId);
  return [
    {
      code: 'entry-invalid',
      what: `${layout.name}, ${cases.length === 1 ? 'rafter' : 'rafters'} ${numberList(cases.map(({ number }) => number))}`,
      detail: say(least === most ? least : `${least} to ${most}`),
      field: `survey.eaves.${index}.heightAbovePlateIn`,
    },
  ];
}

function written(inches: number): string {
  return nearestSixteenth(inches) === 0 ? 'nothing' : formatInches(inches);
}
