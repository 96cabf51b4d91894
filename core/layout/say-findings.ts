import { formatInches } from '../units/format-length.ts';
import type { Finding } from './layout-types.ts';
import { numberList } from './number-list.ts';

/** One rafter that a finding is about, with the figure that the sentence tells. */
export type Case = { readonly number: number; readonly stationIn: number; readonly value: number };

/** How a finding is told: what it is about, and the sentence that follows the rafters' numbers. */
export type Telling = {
  readonly topic: Finding['topic'];
  readonly structural: boolean;
  /** Gets the figures of all cases, written out as one or as a range, and how many cases there are. */
  readonly say: (figures: string, count: number) => string;
  /** How one figure is written; inches to a sixteenth unless told. */
  readonly write?: (value: number) => string;
};

/**
 * Tells what repeats along an eave in one sentence: `Rafter 4: ...` with its station, or `Rafters 2, 5-9: ...` without.
 * @param eaveId - of the eave.
 * @param cases - in the order of the rafters.
 * @param telling - what to say.
 * @returns one finding, or none where there is no case.
 */
export function tellOnce(eaveId: string, cases: readonly Case[], telling: Telling): readonly Finding[] {
  const [only, second] = cases;
  if (only === undefined) return [];
  const numbers = numberList(cases.map(({ number }) => number));
  const sentence = telling.say(figuresOf(cases, telling.write ?? formatInches), cases.length);
  return [
    {
      eaveId,
      stationIn: second === undefined ? only.stationIn : null,
      topic: telling.topic,
      text: `${second === undefined ? 'Rafter' : 'Rafters'} ${numbers}: ${sentence}`,
      structural: telling.structural,
    },
  ];
}

function figuresOf(cases: readonly Case[], write: (value: number) => string): string {
  const values = cases.map(({ value }) => value);
  const least = write(values.reduce((a, b) => Math.min(a, b)));
  const most = write(values.reduce((a, b) => Math.max(a, b)));
  return least === most ? least : `${least} to ${most}`;
}
