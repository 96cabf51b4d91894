import { formatInches, formatLength } from '../units/format-length.ts';
import { gaugeBlockIn, type StringAt, stringLine } from '../layout/string-line.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { structuralBlock } from './cautions.ts';
import { eavesWithParts, type EaveParts, fasciaLineOf, wallBowOf } from './eave-drawings.ts';
import { overhangWords } from './overhang-words.ts';
import type { Block, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Makes the string-line page: where the string's ends and blocks are set, and how it runs past each tail and the wall. */
export function stringLineSheet(input: JobInput, result: JobResult): Sheet {
  const eaves = eavesWithParts(input, result.eaves);
  return {
    ...sheetHead('string-line', input),
    blocks: [
      { kind: 'list', items: rules() },
      structuralBlock,
      ...eaves.flatMap((parts, index) => [
        ...(index === 0 ? [] : [{ kind: 'new-page' as const }]),
        ...eaveBlocks(parts),
      ]),
    ],
  };
}

function rules(): readonly string[] {
  const block = formatInches(gaugeBlockIn);
  return [
    `Set the first and the last tail to the figures below, nail a ${block} block to the plumb cut of each, and stretch the string over the blocks at the tails' top corners.`,
    `Check every tail with a loose ${block} block: the string just clears it, and the tail's top corner stands at the string or as far above or below it as the list says.`,
    "Measure level from the wall's framing face, and plumb from the top of the plate.",
    'The string is taken as straight: its sag is not reckoned. On a long run hold it up by a block in the middle, set by the figures there, and sight along it.',
    'Tails that run long are marked plumb at the gauge block and cut in place.',
  ];
}

function eaveBlocks(parts: EaveParts): readonly Block[] {
  const { layout } = parts;
  const line = stringLine(layout);
  const heading: Block = { kind: 'heading', text: `Eave ${layout.letter}: ${layout.name}` };
  if (line === undefined) {
    return [
      heading,
      {
        kind: 'paragraph',
        text: 'Fewer than two tails stand on this eave, so there is no string to stretch.',
      },
    ];
  }
  const wave = fasciaLineOf(parts);
  const bow = wallBowOf(parts);
  return [
    heading,
    {
      kind: 'paragraph',
      text: `Overhang ${overhangWords(layout)}. Stations run from the left end of the wall, seen from outside, to the tails' centres.`,
    },
    { kind: 'heading', text: `Ends of the string, ${layout.name}` },
    {
      kind: 'table',
      large: true,
      columns: [
        { title: 'End', align: 'left', share: 0 },
        { title: 'Tail', align: 'left', share: 0 },
        { title: 'Station', align: 'right', share: 0 },
        { title: 'Out from the wall', align: 'right', share: 0 },
        { title: 'Height at the plate', align: 'left', share: 1 },
      ],
      rows: [line.left, line.right].map((at, index) => ({
        cells: [
          index === 0 ? 'left' : 'right',
          at.extender.mark,
          formatLength(at.stationIn),
          formatLength(at.fromWallIn),
          plateWords(at),
        ],
      })),
    },
    { kind: 'heading', text: `The string at each tail, ${layout.name}` },
    {
      kind: 'table',
      large: true,
      columns: [
        { title: 'Station', align: 'right', share: 0 },
        { title: 'Tail', align: 'left', share: 0 },
        { title: 'From the wall', align: 'right', share: 0 },
        { title: 'From the tail', align: 'right', share: 0 },
        { title: 'Height at the plate', align: 'left', share: 0 },
        { title: 'Tail to the string', align: 'left', share: 0 },
        { title: 'As found', align: 'left', share: 1 },
      ],
      rows: line.stations.map((at) => ({
        cells: [
          formatLength(at.stationIn),
          at.extender.mark,
          formatLength(at.fromWallIn),
          formatLength(at.fromTailIn),
          plateWords(at),
          aboveWords(at.tailAboveIn),
          aboveWords(at.asFoundAboveIn),
        ],
      })),
    },
    {
      kind: 'paragraph',
      text: "Tail to the string: where the tail's top corner is set. As found: where the old rafter's own line would leave it.",
    },
    ...(wave === undefined
      ? []
      : [{ kind: 'drawing' as const, drawing: wave, heightShare: 0.3, large: true }]),
    ...(bow === undefined ? [] : [{ kind: 'drawing' as const, drawing: bow, heightShare: 0.3, large: true }]),
  ];
}

function plateWords({ abovePlateIn }: StringAt): string {
  const text = formatLength(Math.abs(abovePlateIn));
  if (text === '0"') return 'at its top';
  return abovePlateIn > 0 ? `${text} above` : `${text} below`;
}

function aboveWords(aboveIn: number): string {
  const text = formatLength(Math.abs(aboveIn));
  if (text === '0"') return 'at it';
  return aboveIn > 0 ? `${text} above` : `${text} below`;
}
