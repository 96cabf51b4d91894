import type { Board, CutItem, CutPlan } from '../cutting/cut-plan-types.ts';
import { type Saw, slantOf } from '../cutting/board-use.ts';
import { stockGroup } from '../cutting/stock-group.ts';
import { drawBoards } from '../drawings/draw-boards.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { sawOf } from '../job/saw-of.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf, nearestSixteenth } from '../units/sixteenths.ts';
import { cautionBlocks } from './cautions.ts';
import { unplannedBlocks } from './cut-list-sheet.ts';
import { inPlaceNote } from './in-place-note.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Boards on one drawing, which stands over their cuts. */
const boardsPerDrawing = 3;

/** Beyond this many boards of one stock none is drawn. */
const mostBoardsDrawn = 120;

const tick = '☐';

/** Makes the saw list: board by board each cut in its order, to be ticked off at the saw, and the offcuts to keep. */
export function sawListSheet(input: JobInput, result: JobResult): Sheet {
  const pieces = new Map(result.takeoff.pieces.map((piece) => [piece.mark, piece]));
  const { cutting } = input.settings;
  return {
    ...sheetHead('saw-list', input),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Client', input.job.customer.name],
          ['Site', input.job.siteAddress],
          ...overhangFacts(result.eaves),
          ['Saw kerf', formatLength(cutting.kerfIn)],
          ['Boards', result.cutPlans.map((plan) => `${plan.group}: ${plan.boards.length}`).join(', ')],
        ],
      },
      ...inPlaceNote(input, result),
      ...unplannedBlocks('saw list', result.unplanned),
      { kind: 'list', items: rulesOf(result.cutPlans, cutting.endTrimIn) },
      ...result.cutPlans.flatMap((plan) => planBlocks(plan, pieces, sawOf(cutting, plan.stock))),
      ...offcutBlocks(result.cutPlans, cutting.keepOffcutIn),
      ...cautionBlocks(input),
    ],
  };
}

/** How every board on the list is cut. */
function rulesOf(plans: readonly CutPlan[], endTrimIn: number): readonly string[] {
  const slanted = plans.some(({ boards }) =>
    boards.some(({ items }) => items.some(({ slantSixteenths = 0 }) => slantSixteenths > 0)),
  );
  return [
    'Crown edge up, board on the bench with its left end at the left hand. Cut from the left, in the order of the list.',
    endTrimIn > 0
      ? `Square the left end first, ${formatLength(endTrimIn)} off. Measure each piece from the last cut; keep the line.`
      : 'Measure each piece from the last cut; keep the line.',
    'Lengths are overall, from long point to long point.',
    ...(slanted
      ? [
          'Pieces with two plumb ends nest: tails point right. On each the long point is at the top edge on the left, and at the bottom edge on the right; the next piece begins on the same cut. Along the top edge a piece measures its mid-line length, which is given beside it.',
        ]
      : []),
  ];
}

function planBlocks(plan: CutPlan, pieces: ReadonlyMap<string, Piece>, saw: Saw): readonly Block[] {
  const count = plan.boards.length;
  const isDrawn = count <= mostBoardsDrawn;
  const step = isDrawn ? boardsPerDrawing : count;
  const blocks: Block[] = [];
  for (let from = 0; from < count; from += step) {
    const some = plan.boards.slice(from, from + step);
    const last = from + some.length;
    blocks.push({
      kind: 'heading',
      text:
        some.length === 1
          ? `${plan.group}, board ${last} of ${count}`
          : `${plan.group}, boards ${from + 1} to ${last} of ${count}`,
    });
    if (isDrawn) {
      blocks.push({
        kind: 'drawing',
        drawing: drawBoards(plan, some, saw),
        heightShare: 0.06 + 0.085 * some.length,
        large: true,
      });
    }
    blocks.push(sawTable(plan, some, pieces, saw));
  }
  return blocks;
}

function sawTable(
  plan: CutPlan,
  boards: readonly Board[],
  pieces: ReadonlyMap<string, Piece>,
  saw: Saw,
): Block {
  return {
    kind: 'table',
    large: true,
    columns: [
      { title: 'Done', align: 'left', share: 0 },
      { title: 'Cut', align: 'right', share: 0 },
      { title: 'Mark', align: 'left', share: 0 },
      { title: 'Length', align: 'right', share: 0 },
      { title: 'How it is cut', align: 'left', share: 1 },
    ],
    rows: boards.flatMap((board): readonly Row[] => [
      { style: 'group', cells: [boardHeading(plan, board)] },
      ...board.items.map((item, index) => ({
        cells: [
          tick,
          String(index + 1),
          item.mark,
          formatLength(inchesOf(item.lengthSixteenths)),
          howCut(board, index, pieces.get(item.mark), saw),
        ],
      })),
      ...(board.offcutSixteenths > 0
        ? [{ cells: ['', '', 'offcut', formatLength(inchesOf(board.offcutSixteenths)), ''] }]
        : []),
    ]),
  };
}

function boardHeading(plan: CutPlan, board: Board): string {
  const alike = plan.boards.filter((other) => patternOf(other) === patternOf(board));
  const [first] = alike;
  const same =
    alike.length === 1
      ? ''
      : first === board
        ? `  ·  ${alike.length} boards are cut alike, ${board.number} to ${alike.at(-1)?.number ?? board.number}: set a stop`
        : `  ·  as board ${first?.number ?? board.number}`;
  return `Board ${board.number}  ·  ${formatLength(inchesOf(board.lengthSixteenths))}${board.onHand ? ', on hand' : ''}${same}`;
}

/** Boards with the same text are cut alike. */
function patternOf({ lengthSixteenths, items }: Board): string {
  return JSON.stringify([
    lengthSixteenths,
    items.map((item) => [item.lengthSixteenths, item.slantSixteenths ?? 0]),
  ]);
}

/** The cuts of a piece: where its left end comes from, its length along the top edge, its own words, its hand. */
function howCut(board: Board, index: number, piece: Piece | undefined, saw: Saw): string {
  const item = board.items[index];
  if (item === undefined) return '';
  return [
    slantWords(board, index, item, saw),
    piece?.hand === undefined ? '' : `${piece.hand} hand`,
    piece?.shortSixteenths === undefined
      ? ''
      : `${formatLength(inchesOf(piece.shortSixteenths))} between short points`,
    piece?.cuts ?? '',
  ]
    .filter((words) => words !== '')
    .join('; ');
}

function slantWords(board: Board, index: number, item: CutItem, saw: Saw): string {
  const slant = slantOf(saw, item);
  if (slant === 0) return '';
  const before = index === 0 ? 0 : slantOf(saw, board.items[index - 1] ?? item);
  const left = before === slant ? 'left end as it is' : 'left end cut plumb first, long point on top';
  const top = formatLength(inchesOf(nearestSixteenth((item.lengthSixteenths - slant) / 16)));
  return `${left}; ${top} along the top edge`;
}

/** What is long enough to be kept, longest first. */
function offcutBlocks(plans: readonly CutPlan[], keepIn: number): readonly Block[] {
  const rows = plans.flatMap((plan) =>
    plan.boards
      .filter(({ offcutSixteenths }) => offcutSixteenths > 0 && inchesOf(offcutSixteenths) >= keepIn)
      .toSorted((a, b) => b.offcutSixteenths - a.offcutSixteenths)
      .map((board) => ({
        cells: [
          tick,
          stockGroup(plan.stock),
          formatLength(inchesOf(board.offcutSixteenths)),
          `from board ${board.number}`,
        ],
      })),
  );
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: `Offcuts to keep, ${formatLength(keepIn)} and longer` },
    {
      kind: 'table',
      large: true,
      columns: [
        { title: 'Kept', align: 'left', share: 0 },
        { title: 'Lumber', align: 'left', share: 0 },
        { title: 'Length', align: 'right', share: 0 },
        { title: 'Where from', align: 'left', share: 1 },
      ],
      rows,
    },
  ];
}
