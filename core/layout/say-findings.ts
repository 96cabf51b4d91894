import { formatInches } from '../units/format-length.ts';
import type { Extender, Finding } from './layout-types.ts';
import { numberList } from './number-list.ts';

/** One rafter or tail that a finding is about, with the figure that the sentence tells. */
export type Case = {
  /** Of the rafter; of a hung tail, of the one on its left. */
  readonly number: number;
  readonly stationIn: number;
  readonly value: number;
  readonly hung?: boolean;
};

/**
 * The tails that a finding is about.
 * @param extenders - of the eave.
 * @param figure - of a tail, null where the finding is not about it.
 */
export function casesOfTails(
  extenders: readonly Extender[],
  figure: (extender: Extender) => number | null,
): readonly Case[] {
  return extenders.flatMap((extender) => {
    const value = figure(extender);
    const { rafterNumber: number, centreIn: stationIn, method } = extender;
    return value === null ? [] : [{ number, stationIn, value, hung: method === 'block-hung' }];
  });
}

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
 * Tells what repeats along an eave in one sentence: `Rafter 4: ...` with its station, or `Rafters 2, 5-9: ...` without, or
 * `Rafters 2, 5-9 and the tail hung right of 5: ...`.
 * @param eaveId - of the eave.
 * @param cases - in the order of the rafters.
 * @param telling - what to say.
 * @returns one finding, or none where there is no case.
 */
export function tellOnce(eaveId: string, cases: readonly Case[], telling: Telling): readonly Finding[] {
  const [only, second] = cases;
  if (only === undefined) return [];
  const sentence = telling.say(figuresOf(cases, telling.write ?? formatInches), cases.length);
  return [
    {
      eaveId,
      stationIn: second === undefined ? only.stationIn : null,
      topic: telling.topic,
      text: `${subjectOf(cases)}: ${sentence}`,
      structural: telling.structural,
    },
  ];
}

function subjectOf(cases: readonly Case[]): string {
  const numbersOf = (hung: boolean): readonly number[] => [
    ...new Set(cases.filter((one) => (one.hung ?? false) === hung).map(({ number }) => number)),
  ];
  const [beside, hung] = [numbersOf(false), numbersOf(true)];
  const rafters =
    beside.length === 0 ? '' : `${beside.length === 1 ? 'Rafter' : 'Rafters'} ${numberList(beside)}`;
  if (hung.length === 0) return rafters;
  const one = cases.filter((single) => single.hung === true).length === 1;
  const right = `hung right of ${beside.length > 0 ? '' : hung.length === 1 ? 'rafter ' : 'rafters '}${numberList(hung)}`;
  return rafters === ''
    ? `${one ? 'The tail' : 'Tails'} ${right}`
    : `${rafters} and the ${one ? 'tail' : 'tails'} ${right}`;
}

function figuresOf(cases: readonly Case[], write: (value: number) => string): string {
  const values = cases.map(({ value }) => value);
  const least = write(values.reduce((a, b) => Math.min(a, b)));
  const most = write(values.reduce((a, b) => Math.max(a, b)));
  return least === most ? least : `${least} to ${most}`;
}
