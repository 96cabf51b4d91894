import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { coverEave, type CoveredEave } from '../takeoff/cover.ts';
import { eavesToTakeOff } from '../takeoff/takeoff-context.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { blockList, boardList, fillerList, pieceList } from './crew-lists.ts';
import {
  type EaveParts,
  fasciaLineOf,
  plansOf,
  plateDetailOf,
  sectionOf,
  wallBowOf,
} from './eave-drawings.ts';
import { overhangWords } from './overhang-words.ts';
import { coverSchedule, extenderSchedule, stickSchedule, ventWords } from './piece-schedules.ts';
import type { Block } from './sheet.ts';

/** One eave on the takeoff: what it is, its drawings, and a schedule of everything that is cut for it. */
export function eaveBlocks(input: JobInput, { takeoff }: JobResult, parts: EaveParts): readonly Block[] {
  const { layout, design } = parts;
  const pieces = takeoff.pieces.filter(
    ({ eaveId, rakeId }) => eaveId === layout.eaveId && rakeId === undefined,
  );
  const covered = eavesToTakeOff(input, [layout]).map((eave) => coverEave(eave, input));
  const section = sectionOf(parts, 'shop');
  const detail = plateDetailOf(parts);
  const line = fasciaLineOf(parts);
  const blocks: Block[] = [
    { kind: 'heading', text: `Eave ${layout.letter}: ${layout.name}` },
    {
      kind: 'paragraph',
      text: `Wall ${formatLength(layout.wallLengthIn)}. Overhang ${overhangWords(layout)}. Stations run from the left end of the wall, seen from outside; left and right are as seen from outside.`,
    },
  ];
  if (section !== undefined) blocks.push({ kind: 'drawing', drawing: section, heightShare: 0.55 });
  blocks.push(
    { kind: 'heading', text: `Extenders of ${layout.name}, ${design.extender.section}` },
    extenderSchedule(layout),
    {
      kind: 'paragraph',
      small: true,
      text: `Wall line: where the wall's framing face crosses the piece's top edge, measured from ${
        design.backEnd === 'parallel' ? 'the top corner of its plumb' : 'its square'
      } back end; strike the heel plumb from there. The blank holds ${formatLength(design.trimAllowanceIn)} to trim to the string.`,
    },
    ...unplacedBlocks(parts),
    ...pieceBlocks(layout, pieces),
  );
  if (detail !== undefined) blocks.push({ kind: 'drawing', drawing: detail, heightShare: 0.45 });
  blocks.push(
    { kind: 'heading', text: `Blocks of ${layout.name}, ${design.blocks.stock.section}` },
    plain(blockList(layout, pieces)),
  );
  for (const plan of plansOf(parts)) blocks.push({ kind: 'drawing', drawing: plan, heightShare: 0.5 });
  blocks.push({
    kind: 'paragraph',
    small: true,
    text: `On the plan: bold numbers are the old rafters with their stations; shaded pieces are new; hatched pieces are ceiling joists; a triangle marks an extender that moved to the other side or stands in something's way; a cross marks a rafter without an extender; figures in the bays are block lengths.`,
  });
  if (layout.subFasciaRun !== null)
    blocks.push(
      { kind: 'heading', text: `Sub-fascia of ${layout.name}, ${design.fascia.subFascia.stock.section}` },
      plain(boardList(layout, layout.subFascia, layout.subFasciaRun)),
    );
  blocks.push(
    { kind: 'heading', text: `Fascia of ${layout.name}, ${design.fascia.stock.section}` },
    plain(boardList(layout, layout.fascia, layout.fasciaRun)),
    ...coverBlocks(covered, pieces),
  );
  if (line !== undefined) {
    blocks.push(
      { kind: 'drawing', drawing: line, heightShare: 0.3 },
      {
        kind: 'paragraph',
        small: true,
        text: `Diamonds: each tail as its own rafter would leave it. Heavy line: the line that every tail is brought to. The figure says how far up or down. ${scatterWords(layout)}`,
      },
    );
  }
  const bow = wallBowOf(parts);
  if (bow !== undefined) {
    blocks.push(
      { kind: 'drawing', drawing: bow, heightShare: 0.3 },
      {
        kind: 'paragraph',
        small: true,
        text: "Chain line: the straight reference line. Above it and below it the wall's framing face with its readings. Heavy line: the tails' top corners; the figures are their own overhangs. Between wall and tails the drawing is shortened.",
      },
    );
  }
  return blocks;
}

/** Header blocks, fillers, shims: what goes with the tails, where there is any. */
function pieceBlocks(layout: EaveLayout, pieces: readonly Piece[]): readonly Block[] {
  const small = pieces.filter(({ use }) => use === 'header' || use === 'shim' || use === 'packer');
  const fillers = layout.extenders.some(({ filler }) => filler !== null);
  return [
    ...(small.length === 0
      ? []
      : [
          { kind: 'heading', text: `Header blocks, shims and packers of ${layout.name}` } as const,
          plain(pieceList(small, 'Station')),
        ]),
    ...(fillers
      ? [{ kind: 'heading', text: `Fillers of ${layout.name}` } as const, plain(fillerList(layout))]
      : []),
  ];
}

/** Sheathing and soffit as laid, and what carries the soffit. */
function coverBlocks(covered: readonly CoveredEave[], pieces: readonly Piece[]): readonly Block[] {
  return covered.flatMap((eave): readonly Block[] => {
    const { layout, cover, soffit } = eave;
    const sticks = pieces.filter(({ use }) => use === 'ledger' || use === 'soffit-nailer');
    const vents = ventWords(eave);
    return [
      ...(cover.kind === 'none'
        ? []
        : [
            { kind: 'heading', text: `Sheathing of ${layout.name}` } as const,
            coverSchedule(layout, cover.boards),
          ]),
      ...(soffit === null
        ? []
        : [
            { kind: 'heading', text: `Soffit of ${layout.name}` } as const,
            coverSchedule(layout, soffit.boards),
            ...(sticks.length === 0 ? [] : [stickSchedule(sticks)]),
            ...(vents === null ? [] : [{ kind: 'paragraph', text: vents } as const]),
          ]),
    ];
  });
}

/** A list of the crew's sheets in the print of this one. */
function plain(table: Extract<Block, { kind: 'table' }>): Block {
  const { large: _, ...rest } = table;
  return rest;
}

/** Scatter of the tails before and after they are brought to the line. */
function scatterWords({ fasciaLine: line }: EaveLayout): string {
  const before = `Before: ${formatLength(line.highestIn)} above the line to ${formatLength(-line.lowestIn)} below`;
  return line.mode === 'as-found'
    ? `${before}; the tails stay so.`
    : `${before}. After, with seats and shims cut to a sixteenth: ${formatLength(line.highestAfterIn)} above to ${formatLength(-line.lowestAfterIn)} below.`;
}

function unplacedBlocks({ layout }: EaveParts): readonly Block[] {
  if (layout.unplaced.length === 0) return [];
  return [
    {
      kind: 'list',
      items: layout.unplaced.map((missing) =>
        missing.reason === 'pinned-none'
          ? `Rafter ${missing.rafterNumber} at ${formatLength(missing.stationIn)}: no extender wanted.`
          : `Rafter ${missing.rafterNumber} at ${formatLength(missing.stationIn)}: no side free. Left: ${missing.left}. Right: ${missing.right}.`,
      ),
    },
  ];
}
