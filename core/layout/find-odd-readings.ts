import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import type { Finding } from './layout-types.ts';

/** A reading further than this off the straight line between its neighbours is questioned. [in] Common practice, no source. */
const questionedOffIn = 0.75;

/** Neighbours further apart than this leave room for a true bow between them. [in] Common practice, no source. */
const neighboursApartIn = 120;

/** A reading along the wall. [in] */
type Read = { readonly stationIn: number; readonly valueIn: number };

/**
 * Questions readings of the wall's bow and of the plate's height that leap: each against the straight line between its
 * neighbours on both sides, where those stand no more than 10 ft apart, and stations past the wall's end. Needs three
 * readings; with fewer nobody can say which is off.
 * Worked: 0, 1-1/4 and 0 at 4, 8 and 12 ft -> the middle one is 1-1/4" off: measure again?
 * @param survey - of the eave. [in]
 */
export function findOddReadings(
  survey: Pick<EaveSurvey, 'id' | 'lengthIn' | 'wallReadings' | 'plateReadings'>,
): readonly Finding[] {
  const wall = survey.wallReadings.map(({ stationIn, outIn }) => ({ stationIn, valueIn: outIn }));
  const plate = survey.plateReadings.map(({ stationIn, upIn }) => ({ stationIn, valueIn: upIn }));
  return [...findOdd('wall', wall, survey), ...findOdd('plate', plate, survey)];
}

function findOdd(
  what: 'wall' | 'plate',
  readings: readonly Read[],
  { id, lengthIn }: Pick<EaveSurvey, 'id' | 'lengthIn'>,
): readonly Finding[] {
  const inOrder = readings.toSorted((a, b) => a.stationIn - b.stationIn);
  const question = (stationIn: number, text: string): Finding => ({
    eaveId: id,
    stationIn,
    topic: 'measure-again',
    text: `The ${what} reading at ${formatLength(stationIn)} ${text}`,
    structural: false,
  });
  return inOrder.flatMap((reading, index): readonly Finding[] => {
    if (reading.stationIn > lengthIn)
      return [
        question(reading.stationIn, `lies past the wall's end at ${formatLength(lengthIn)}: measure again?`),
      ];
    const [before, after] = [inOrder[index - 1], inOrder[index + 1]];
    if (before === undefined || after === undefined) return [];
    const apartIn = after.stationIn - before.stationIn;
    if (apartIn <= 0 || apartIn > neighboursApartIn) return [];
    const share = (reading.stationIn - before.stationIn) / apartIn;
    const off = Math.abs(reading.valueIn - before.valueIn - share * (after.valueIn - before.valueIn));
    return off > questionedOffIn + 1e-9
      ? [question(reading.stationIn, `is ${formatInches(off)} off its neighbours: measure again?`)]
      : [];
  });
}
