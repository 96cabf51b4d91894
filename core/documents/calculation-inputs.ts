import type { JobInput } from '../job/job-file.ts';
import { eaveEntryName } from '../trace/entry-labels.ts';
import { entryValue, entryWords } from '../trace/entry-value.ts';
import { formatLength } from '../units/format-length.ts';
import { outText } from '../units/offset-words.ts';
import type { EaveParts } from './eave-drawings.ts';
import type { Block, Row } from './sheet.ts';

/** What was entered for the house and the place, each entry with its value, blanks told as such. */
export function siteInputBlocks(input: JobInput): readonly Block[] {
  const { survey, design } = input;
  return inputTable('Entered for the house', [
    ...entriesOf({ yearBuilt: survey.yearBuilt, storeys: survey.storeys, access: survey.access }),
    ...entriesOf(survey.site),
    ...entriesOf({ notchRule: design.notchRule }),
  ]);
}

/** What was measured and chosen for an eave; rafter by rafter readings are on the takeoff. */
export function eaveInputBlocks({ layout, survey, design }: EaveParts): readonly Block[] {
  const {
    id: _id,
    name: _name,
    readingMode: _mode,
    readingTo: _to,
    lengthIn,
    rafters,
    obstructions: _obstructions,
    wallReadings,
    plateReadings,
    ...measured
  } = survey;
  const {
    eaveId: _eaveId,
    pins: _pins,
    preferredSide: _side,
    extender,
    fascia,
    soffit,
    blocks,
    sheathing,
    structure,
    ...chosen
  } = design;
  return inputTable(`Entered for eave ${layout.letter}`, [
    ...entriesOf({
      wallLengthIn: lengthIn,
      rafters: rafters.length,
      ...measured,
      wallReadings: readingWords(wallReadings.map(({ stationIn, outIn }) => [stationIn, outText(outIn)])),
      plateReadings: readingWords(
        plateReadings.map(({ stationIn, upIn }) => [stationIn, formatLength(upIn)]),
      ),
    }),
    ...entriesOf({
      extender,
      ...chosen,
      fascia: fascia.stock,
      fasciaDropIn: fascia.dropIn,
      soffit: soffit.kind,
      blocks: blocks.wanted ? blocks.stock : 'none',
      sheathing: sheathing.kind,
      sheathingTieBackIn: sheathing.tieBackIn,
    }),
    ...entriesOf(structure),
  ]);
}

/** Readings along the wall in one line: `0": 0, 10' 0": 3/4" out`; none where nothing was read. */
function readingWords(readings: readonly (readonly [stationIn: number, value: string])[]): string {
  return readings.length === 0
    ? 'none'
    : readings.map(([stationIn, value]) => `${formatLength(stationIn)}: ${value}`).join(', ');
}

type Entry = readonly [name: string, value: string];

function entriesOf(entries: Readonly<Record<string, unknown>>): readonly Entry[] {
  return Object.entries(entries).map(([name, value]) => {
    const words = eaveEntryName(name) ?? entryWords(name);
    return [`${words.charAt(0).toUpperCase()}${words.slice(1)}`, entryValue(name, value)];
  });
}

/** Two entries a line, down the left column first. */
function inputTable(title: string, entries: readonly Entry[]): readonly Block[] {
  const half = Math.ceil(entries.length / 2);
  return [
    { kind: 'heading', text: title },
    {
      kind: 'table',
      columns: [
        { title: 'Entry', align: 'left', share: 3 },
        { title: 'Value', align: 'left', share: 3 },
        { title: 'Entry', align: 'left', share: 3 },
        { title: 'Value', align: 'left', share: 3 },
      ],
      rows: Array.from(
        { length: half },
        (_, index): Row => ({
          cells: [...(entries[index] ?? ['', '']), ...(entries[half + index] ?? ['', ''])],
        }),
      ),
    },
  ];
}
