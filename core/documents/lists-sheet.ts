import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { Piece, PieceUse } from '../takeoff/takeoff-types.ts';
import { structuralBlock } from './cautions.ts';
import { blockList, boardList, fillerList, pieceList, tailList } from './crew-lists.ts';
import { type CutGroup, cutGroups } from './cut-groups.ts';
import { eavesWithParts, type EaveParts } from './eave-drawings.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Pieces whose list is their marks, places, lengths and cuts, in the order that they go on. */
const plainLists: readonly { readonly uses: readonly PieceUse[]; readonly name: string }[] = [
  { uses: ['header'], name: 'Header blocks' },
  { uses: ['shim', 'packer'], name: 'Shims and packers' },
  { uses: ['ledger', 'soffit-nailer'], name: 'Soffit ledger and nailers' },
];

const rakeLists: readonly { readonly uses: readonly PieceUse[]; readonly name: string }[] = [
  { uses: ['lookout', 'ladder'], name: 'Lookouts and ladder pieces' },
  { uses: ['barge'], name: 'Barge rafter' },
  { uses: ['rake-fascia'], name: 'Rake fascia' },
];

/** Makes the crew's lists: tails, blocks by bay, headers, fillers, shims, edge boards and rakes, each to be read large. */
export function listsSheet(input: JobInput, result: JobResult): Sheet {
  const eaves = eavesWithParts(input, result.eaves);
  const groups = cutGroups(eaves, input.settings.cutting.templateToleranceIn);
  return {
    ...sheetHead('lists', input),
    blocks: [
      { kind: 'facts', pairs: overhangFacts(result.eaves) },
      {
        kind: 'list',
        items: [
          'Every piece is set crown up; boards on edge have their crown up too.',
          'Lengths are overall, from long point to long point; short points are named where they differ. Stations run from the left end of the wall, seen from outside; left and right are as seen from outside.',
          "Wall line: where the wall's framing face crosses the crown edge, from the back end. The heel and the seat are marked from there.",
        ],
      },
      structuralBlock,
      ...eaves.flatMap((parts) => eaveBlocks(parts, result, groups)),
    ],
  };
}

function eaveBlocks(parts: EaveParts, result: JobResult, groups: readonly CutGroup[]): readonly Block[] {
  const { layout, design } = parts;
  const { pieces } = result.takeoff;
  const own = pieces.filter(({ eaveId, rakeId }) => eaveId === layout.eaveId && rakeId === undefined);
  const rakes = result.rakes.filter(({ eaveId }) => eaveId === layout.eaveId);
  return [
    ...list(`Tails of ${layout.name}, ${design.extender.section}, crown up`, tailList(layout, own, groups)),
    ...list(`Fillers of ${layout.name}, crown up`, fillerList(layout)),
    ...list(
      `Blocks by bay of ${layout.name}, ${design.blocks.stock.section}, crown up`,
      blockList(layout, own),
    ),
    ...plainLists.flatMap((one) => plain(`${one.name} of ${layout.name}`, own, one.uses, 'Station')),
    ...list(
      `Sub-fascia of ${layout.name}, ${design.fascia.subFascia.stock.section}, crown up`,
      boardList(layout, layout.subFascia, layout.subFasciaRun),
    ),
    ...list(
      `Fascia of ${layout.name}, ${design.fascia.stock.section}, crown up`,
      boardList(layout, layout.fascia, layout.fasciaRun),
    ),
    ...rakes.flatMap((rake) => {
      const ofRake = pieces.filter(({ rakeId }) => rakeId === rake.rakeId);
      return rakeLists.flatMap((one) =>
        plain(`${one.name} of ${rake.name}`, ofRake, one.uses, 'Up the slope'),
      );
    }),
  ];
}

function plain(
  heading: string,
  pieces: readonly Piece[],
  uses: readonly PieceUse[],
  place: string,
): readonly Block[] {
  const ofUse = pieces.filter(({ use }) => uses.includes(use));
  const [first] = ofUse;
  return first === undefined
    ? []
    : list(`${heading}, ${first.stock.section}, crown up`, pieceList(ofUse, place));
}

/** A table under its heading; nothing where it would have no row. */
function list(heading: string, table: Extract<Block, { kind: 'table' }>): readonly Block[] {
  return table.rows.length === 0 ? [] : [{ kind: 'heading', text: heading }, table];
}
