import { Decimal } from 'decimal.js';
import type { Board, CutPlan, UnplannedStock } from '../cutting/cut-plan-types.ts';
import { drawBoards } from '../drawings/draw-boards.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { problemSentence } from '../problems/sentence.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatUsd, sumUsd, usd } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { cautionBlocks } from './cautions.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/** Boards on one drawing, so that it never outgrows a page. */
const boardsPerDrawing = 4;

/** Beyond this many boards of one stock the table alone is printed. */
const mostBoardsDrawn = 120;

/** Makes the cut list: per stock the boards to buy, each board drawn, and its pieces in the order of the saw. */
export function cutListSheet(input: JobInput, result: JobResult): Sheet {
  const pieces = new Map(result.takeoff.pieces.map((piece) => [piece.mark, piece]));
  const { cutting } = input.settings;
  return {
    ...sheetHead('cut-list', input),
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Client', input.job.customer.name],
          ['Site', input.job.siteAddress],
          ['Prices of', input.asOf],
          ...overhangFacts(result.eaves),
          ['Saw kerf', formatLength(cutting.kerfIn)],
          ['End trim', `${formatLength(cutting.endTrimIn)} off each end of every board`],
          ['Lumber in all', formatUsd(sumUsd(result.cutPlans.map((plan) => plan.costUsd)))],
        ],
      },
      ...unplannedBlocks(result.unplanned),
      ...result.cutPlans.flatMap((plan) => planBlocks(plan, pieces, input)),
      ...cautionBlocks(input),
    ],
  };
}

function unplannedBlocks(unplanned: readonly UnplannedStock[]): readonly Block[] {
  if (unplanned.length === 0) return [];
  return [
    { kind: 'heading', text: 'This cut list is not complete' },
    { kind: 'paragraph', text: 'No boards are planned for these pieces, and no sum below holds them:' },
    {
      kind: 'list',
      items: unplanned.map(
        (stock) =>
          `${stock.group}, ${stock.marks.length} ${stock.marks.length === 1 ? 'piece' : 'pieces'}: ${problemSentence(stock.problem)}`,
      ),
    },
  ];
}

function planBlocks(plan: CutPlan, pieces: ReadonlyMap<string, Piece>, input: JobInput): readonly Block[] {
  const { kerfIn, endTrimIn } = input.settings.cutting;
  const count = plan.boards.length;
  const blocks: Block[] = [
    { kind: 'heading', text: `${plan.group}: ${count} ${count === 1 ? 'board' : 'boards'}` },
    buyTable(plan),
    { kind: 'paragraph', text: boundSentence(plan) },
  ];
  if (count <= mostBoardsDrawn) {
    for (let from = 0; from < count; from += boardsPerDrawing) {
      const some = plan.boards.slice(from, from + boardsPerDrawing);
      blocks.push({
        kind: 'drawing',
        drawing: drawBoards(plan, some, { endTrimIn, kerfIn }),
        // A drawing of fewer boards gets less room, so that all come out at one scale.
        heightShare: 0.06 + 0.1 * some.length,
      });
    }
    blocks.push({
      kind: 'paragraph',
      small: true,
      text: 'Lengths are to scale, widths are not. Cut from the left. Hatched: end trim and saw cuts. Dashed: what is left over.',
    });
  } else {
    blocks.push({
      kind: 'paragraph',
      small: true,
      text: `${count} boards are too many to draw; the list has them all.`,
    });
  }
  blocks.push({ kind: 'heading', text: `${plan.group}, board by board` }, boardTable(plan, pieces));
  return blocks;
}

/** The bound in plain words. */
export function boundSentence(plan: CutPlan): string {
  const cost = formatUsd(plan.costUsd);
  const used = `${(plan.yield * 100).toFixed(1)} % of the length bought goes into the job.`;
  const oneLength =
    plan.oneLengthUsd === null || plan.oneLengthFt === null
      ? ''
      : ` Bought in ${plan.oneLengthFt}-foot boards alone, cut one after another, it would cost ${formatUsd(plan.oneLengthUsd)}.`;
  return plan.status === 'optimal'
    ? `These boards cost ${cost}. No purchase from this price list can cost less. ${used}${oneLength}`
    : `These boards cost ${cost}. No purchase from this price list can cost less than ${formatUsd(plan.boundUsd)}: this plan is within ${(plan.gap * 100).toFixed(1)} % of that. ${used}${oneLength}`;
}

function buyTable(plan: CutPlan): Block {
  const groups = new Map<string, [Board, ...Board[]]>();
  for (const board of plan.boards) {
    const key = `${board.lengthSixteenths}/${board.itemId}`;
    const alike = groups.get(key);
    if (alike === undefined) groups.set(key, [board]);
    else alike.push(board);
  }
  const rows = [...groups.values()]
    .sort(([a], [b]) => b.lengthSixteenths - a.lengthSixteenths)
    .map(([first, ...others]) => {
      const count = 1 + others.length;
      return {
        cells: [
          `${plan.group} x ${formatLength(inchesOf(first.lengthSixteenths))}`,
          String(count),
          formatUsd(usd(new Decimal(first.priceCents).div(100))),
          formatUsd(usd(new Decimal(first.priceCents).times(count).div(100))),
        ],
      };
    });
  return {
    kind: 'table',
    columns: [
      { title: 'Boards to buy', align: 'left', share: 1 },
      { title: 'Count', align: 'right', share: 0 },
      { title: 'Each', align: 'right', share: 0 },
      { title: 'Cost', align: 'right', share: 0 },
    ],
    rows: [
      ...rows,
      { cells: ['Sum', String(plan.boards.length), '', formatUsd(plan.costUsd)], style: 'total' as const },
    ],
  };
}

function boardTable(plan: CutPlan, pieces: ReadonlyMap<string, Piece>): Block {
  return {
    kind: 'table',
    columns: [
      { title: 'Cut', align: 'right', share: 0 },
      { title: 'Mark', align: 'left', share: 0 },
      { title: 'Length', align: 'right', share: 0 },
      { title: 'Cuts and place', align: 'left', share: 1 },
      { title: 'Done', align: 'centre', share: 0 },
    ],
    rows: plan.boards.flatMap((board): readonly Row[] => [
      {
        style: 'group',
        cells: [
          `Board ${board.number}  ·  ${formatLength(inchesOf(board.lengthSixteenths))}  ·  left over ${formatLength(inchesOf(board.offcutSixteenths))}`,
        ],
      },
      ...board.items.map((item, index) => ({
        cells: [
          String(index + 1),
          item.mark,
          formatLength(inchesOf(item.lengthSixteenths)),
          pieces.get(item.mark)?.cuts ?? '',
          '____',
        ],
      })),
    ]),
  };
}
