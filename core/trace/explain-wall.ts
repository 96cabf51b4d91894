import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { ownerOf } from './ref.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { outText } from '../units/offset-words.ts';
import { entryValue } from './entry-value.ts';
import { chosenPart, findEave } from './found.ts';
import type { Explanation, TracePart } from './trace.ts';

/** A reading of the wall's bow. `wall/EAVE/READING` */
export function explainWallReading(rest: string, input: JobInput): Explanation | undefined {
  const found = ownerOf(rest, input.survey.eaves, ({ id }) => id);
  const reading = found?.owner.wallReadings.find(({ id }) => id === found.rest);
  if (found === undefined || reading === undefined) return undefined;
  return {
    ref: `wall/${rest}`,
    title: `Wall reading at ${formatLength(reading.stationIn)}, ${found.owner.name}`,
    value: outText(reading.outIn),
    how: `How far the wall's framing face stands out of its straight reference line there, as read from a string.`,
    parts: [],
  };
}

/** A reading of the plate's height. `plate/EAVE/READING` */
export function explainPlateReading(rest: string, input: JobInput): Explanation | undefined {
  const found = ownerOf(rest, input.survey.eaves, ({ id }) => id);
  const reading = found?.owner.plateReadings.find(({ id }) => id === found.rest);
  if (found === undefined || reading === undefined) return undefined;
  return {
    ref: `plate/${rest}`,
    title: `Plate reading at ${formatLength(reading.stationIn)}, ${found.owner.name}`,
    value: formatLength(reading.upIn),
    how: "How high the plate's top stands there against a level line, as read from a laser or a water level.",
    parts: [],
  };
}

/** The line that the tails of an eave are brought to in elevation. `fascia-line/EAVE` */
export function explainFasciaLine(
  eaveId: string,
  input: JobInput,
  result: JobResult,
): Explanation | undefined {
  const found = findEave(`${eaveId}/`, input, result);
  if (found === undefined) return undefined;
  const { layout, eave, design } = found;
  const { fasciaLine: line } = layout;
  const scatter = `The tails' own heights lie from ${formatInches(line.highestIn)} above it to ${formatInches(-line.lowestIn)} below`;
  const after =
    line.mode === 'as-found'
      ? 'and stay so'
      : `and, with seats and shims cut to a sixteenth, from ${formatInches(line.highestAfterIn)} above to ${formatInches(-line.lowestAfterIn)} below once they are set`;
  return {
    ref: `fascia-line/${eaveId}`,
    title: `Fascia line, ${layout.name}`,
    value: formatLength(line.atStartIn),
    how: `${modeWords[line.mode]}: ${formatLength(line.atStartIn)} above the plate's top at the wall's left end, ${fallWords(line.risePerInch)}. ${scatter}, ${after}.`,
    parts: [
      chosenPart(found, 'fasciaLine', 'Fascia line', entryValue('fasciaLine', design.fasciaLine)),
      {
        label: 'Height above plate (of the eave)',
        value: formatLength(eave.heightAbovePlateIn),
        ref: `eave/${eaveId}/heightAbovePlateIn`,
      },
      ...eave.rafters.flatMap((rafter, index): readonly TracePart[] =>
        rafter.heightAbovePlateIn === null
          ? []
          : [
              {
                label: `Height above plate of rafter ${index + 1} (measured here)`,
                value: formatLength(rafter.heightAbovePlateIn),
                ref: `rafter/${eaveId}/${rafter.id}/heightAbovePlateIn`,
              },
            ],
      ),
      ...eave.plateReadings.map(({ id, stationIn, upIn }) => ({
        label: `Plate reading at ${formatLength(stationIn)}`,
        value: formatLength(upIn),
        ref: `plate/${eaveId}/${id}`,
      })),
    ],
  };
}

const modeWords = {
  'as-found': 'Each tail follows its own rafter; the line to tell the scatter against is the mean of them',
  parallel: "Straight, at the mean of the tails, with the fall of the plate's run",
  level: 'Straight and level, at the mean of the tails',
  'best-fit': 'The straight line with the least squares of the distances to the tails',
} as const;

function fallWords(risePerInch: number): string {
  const per10Ft = risePerInch * 120;
  if (Math.abs(per10Ft) < 1 / 64) return 'level along the wall';
  return `${per10Ft < 0 ? 'falling' : 'rising'} ${formatInches(Math.abs(per10Ft))} in 10 ft`;
}

/**
 * The readings on either side of a station, which give the value there; the outermost one beyond them.
 * @param kind - of ref.
 * @param stationIn - along the wall line. [in]
 * @param write - how a reading is told.
 */
export function surroundingReadings<T extends { readonly id: string; readonly stationIn: number }>(
  kind: 'wall' | 'plate',
  eaveId: string,
  readings: readonly T[],
  stationIn: number,
  write: (reading: T) => string,
): readonly TracePart[] {
  const inOrder = readings.toSorted((a, b) => a.stationIn - b.stationIn);
  const before = inOrder.findLast((reading) => reading.stationIn <= stationIn);
  const after = inOrder.find((reading) => reading.stationIn > stationIn);
  return [before, after].flatMap((reading) =>
    reading === undefined
      ? []
      : [
          {
            label: `${kind === 'wall' ? 'Wall' : 'Plate'} reading at ${formatLength(reading.stationIn)}`,
            value: write(reading),
            ref: `${kind}/${eaveId}/${reading.id}`,
          },
        ],
  );
}
