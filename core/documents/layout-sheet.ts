import { drawDeck } from '../drawings/draw-deck.ts';
import { drawRake } from '../drawings/draw-rake.ts';
import type { AsBuilt } from '../eave/design-document.ts';
import { stillToCut, stillToCutSentence } from '../job/still-to-cut.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Extender, Unplaced } from '../layout/layout-types.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { choiceWords } from '../trace/choice-words.ts';
import { formatLength } from '../units/format-length.ts';
import { cautionBlocks } from './cautions.ts';
import { deckBoards, lowestJoints } from './deck-boards.ts';
import { elevationsOf, eavesWithParts, type EaveParts, plansOf } from './eave-drawings.ts';
import { jointDrawings } from './joint-drawings.ts';
import { overhangWords } from './overhang-words.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';
import { nailsOfTail, nailWords, plateWords } from './tail-words.ts';

/** Longest stretch of wall on one plan or elevation: 24 ft at 3/8" = 1' 0" is 9 in. of paper. [in] */
const longestStretchIn = 24 * 12;

/** Two of the edge's drawings, or of the joints', share a page. [-] */
const halfPage = 0.48;

/** A plan has a page to itself, but for the line under it. [-] */
const wholePage = 1.07;

/** What the carpenter writes into where nothing was built yet. */
const toWriteIn = '____________';

/** Makes the crew's layout sheet: each eave in plan and elevation, and each tail by station with room for the as-built. */
export function layoutSheet(input: JobInput, result: JobResult): Sheet {
  const eaves = eavesWithParts(input, result.eaves);
  return {
    ...sheetHead('layout', input),
    orientation: 'landscape',
    blocks: [
      {
        kind: 'list',
        items: [
          "Stations run from the left end of each wall, seen from outside, to the tails' centres; left and right are as seen from outside.",
          'Set every tail crown up. Nails: into the rafter beside it (lap), through the header block into its back end (header), toenails into the plate (plate), at the ridge (ridge).',
          'Write into the last column where a tail was really set, and type it back in: blocks, fascia and what is still to be cut follow.',
          stillToCutSentence(stillToCut(result.eaves, result.takeoff.pieces, input.design)),
        ],
      },
      ...cautionBlocks(input),
      ...eaves.flatMap((parts, index) => [
        ...(index === 0 ? [] : [{ kind: 'new-page' as const }]),
        ...eaveBlocks(parts, input, result),
        ...eaveDrawings(parts, input, result),
      ]),
    ],
  };
}

function eaveBlocks(parts: EaveParts, input: JobInput, result: JobResult): readonly Block[] {
  const { layout } = parts;
  const findings = result.findings.filter(({ eaveId }) => eaveId === layout.eaveId);
  return [
    { kind: 'heading', text: `Eave ${layout.letter}: ${layout.name}` },
    {
      kind: 'paragraph',
      text: `Wall ${formatLength(layout.wallLengthIn)}. Tails of ${parts.design.extender.section}. Overhang ${overhangWords(layout)}.`,
    },
    tailTable(parts, input, result.takeoff.pieces),
    ...(findings.length === 0
      ? []
      : [
          { kind: 'heading' as const, text: `Look at these before work begins, ${layout.name}` },
          { kind: 'list' as const, items: findings.map(({ text }) => text) },
        ]),
  ];
}

function eaveDrawings(parts: EaveParts, input: JobInput, result: JobResult): readonly Block[] {
  const { layout } = parts;
  const deck = deckBoards(layout, input);
  const joints = lowestJoints(deck);
  return [
    ...plansOf(parts, longestStretchIn, joints).map((plan) => large(plan, wholePage)),
    { kind: 'paragraph', text: planLegend },
    ...elevationsOf(parts, longestStretchIn, joints).map((elevation) => large(elevation, halfPage)),
    ...(deck.length === 0 ? [] : [large(drawDeck(layout, deck), halfPage)]),
    ...jointDrawings(parts, input.settings.fastening).map((drawing) => large(drawing, halfPage)),
    ...result.rakes
      .filter(({ eaveId }) => eaveId === layout.eaveId)
      .map((rake) => large(drawRake(rake, parts), wholePage)),
  ];
}

const planLegend =
  "On the plan: bold numbers are the old rafters with their stations; shaded pieces are new; a ladder of lines is a tail hung on header blocks, crossed lines a filler, hatched a ceiling joist; a triangle marks a tail that moved to the other side or stands in something's way; a cross marks a rafter without a tail; a dotted line, and the word panel, are a joint of the new deck's panels; figures in the bays are the clear lengths of the blocks; a dash-dot line is the line that the wall was read from.";

function large(drawing: Extract<Block, { kind: 'drawing' }>['drawing'], heightShare: number): Block {
  return { kind: 'drawing', drawing, heightShare, large: true };
}

function tailTable({ layout, design }: EaveParts, input: JobInput, pieces: readonly Piece[]): Block {
  const hands = new Map(pieces.map(({ mark, hand }) => [mark, hand]));
  const built = new Map(
    input.design.asBuilt
      .filter(({ eaveId }) => eaveId === layout.eaveId)
      .map((entry) => [entry.extenderId, entry]),
  );
  const rows = [
    ...layout.extenders.map((extender) => ({
      stationIn: extender.centreIn,
      row: {
        cells: [
          formatLength(extender.centreIn),
          rafterWords(extender),
          extender.mark,
          methodWords(extender),
          formatLength(extender.overhangLevelIn),
          plateWords(extender),
          nailWords(nailsOfTail(extender, design, input.settings.fastening)),
          ['up', hands.get(extender.mark)].filter((word) => word !== undefined).join(', '),
          builtWords(extender, built.get(extender.id)),
        ],
      } satisfies Row,
    })),
    ...layout.unplaced.map((missing) => ({ stationIn: missing.stationIn, row: unplacedRow(missing) })),
  ].toSorted((a, b) => a.stationIn - b.stationIn);
  return {
    kind: 'table',
    large: true,
    columns: [
      { title: 'Station', align: 'right', share: 0 },
      { title: 'Rafter', align: 'right', share: 0 },
      { title: 'Tail', align: 'left', share: 0 },
      { title: 'Side and method', align: 'left', share: 3 },
      { title: 'Overhang', align: 'right', share: 0 },
      { title: 'At the plate', align: 'left', share: 0 },
      { title: 'Nails', align: 'left', share: 3 },
      { title: 'Crown', align: 'left', share: 0 },
      { title: 'As built', align: 'left', share: 0 },
    ],
    rows: rows.map(({ row }) => row),
  };
}

/** A hung tail stands between two rafters. */
function rafterWords({ method, rafterNumber }: Extender): string {
  return method === 'block-hung' ? `${rafterNumber} - ${rafterNumber + 1}` : String(rafterNumber);
}

function methodWords({ method, side, headers, filler }: Extender): string {
  const words = choiceWords.method[method];
  switch (method) {
    case 'side':
      return side;
    case 'filler':
      return filler === null ? `${side}, ${words}` : `${side}, over filler ${filler.mark}`;
    case 'block-hung':
      return headers.length === 0 ? words : `hung on ${headers.map(({ mark }) => mark).join(', ')}`;
    default:
      return `${side}, ${words}`;
  }
}

function builtWords({ inPlace, centreIn }: Extender, entry: AsBuilt | undefined): string {
  if (entry === undefined) return toWriteIn;
  const station = entry.stationIn === null ? '' : ` at ${formatLength(centreIn)}`;
  const words = inPlace ? `in place${station}` : entry.stationIn === null ? toWriteIn : `set${station}`;
  return entry.note === '' ? words : `${words}. ${entry.note}`;
}

function unplacedRow({ stationIn, rafterNumber, reason }: Unplaced): Row {
  return {
    cells: [
      formatLength(stationIn),
      String(rafterNumber),
      '-',
      reason === 'no-side-free' ? 'no tail: no side free' : 'no tail wanted',
      '',
      '',
      '',
      '',
      '',
    ],
  };
}
