import { Decimal } from 'decimal.js';
import type { Board, CutPlan, CuttingProblem, UnplannedStock } from '../cutting/cut-plan-types.ts';
import { thumbPurchase } from '../cutting/thumb-rule.ts';
import { drawBoards } from '../drawings/draw-boards.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { sawOf } from '../job/saw-of.ts';
import { cheapestWay, comparedWays, type SupplierCost } from '../job/supplier-ways.ts';
import { problemSentence } from '../problems/sentence.ts';
import { formatLength } from '../units/format-length.ts';
import { formatUsd, sumUsd, usd } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { cautionBlocks } from './cautions.ts';
import { inPlaceNote } from './in-place-note.ts';
import { comparisonSentences, howProven, pinSentences, proofSentence } from './plan-words.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';
import { wayWords } from './supplier-words.ts';

/** Boards on one drawing, so that it never outgrows a page. */
const boardsPerDrawing = 4;

/** Beyond this many boards of one stock none is drawn. */
const mostBoardsDrawn = 120;

/** Makes the cut list: per stock the boards to buy, what is known of their cost, and each board drawn. */
export function cutListSheet(
  input: JobInput,
  result: JobResult,
  supplierCosts: readonly SupplierCost[] = [],
): Sheet {
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
      ...inPlaceNote(input, result),
      ...unplannedBlocks('cut list', result.unplanned),
      ...supplierBlocks(supplierCosts),
      ...result.cutPlans.flatMap((plan, index) =>
        planBlocks(plan, result.cuttingProblems[index]?.problem, input),
      ),
      ...cautionBlocks(input),
    ],
  };
}

/** What the lumber costs at each supplier alone, and at the cheapest split of it; nothing where there is one supplier. */
function supplierBlocks(costs: readonly SupplierCost[]): readonly Block[] {
  const rows = comparedWays(costs);
  if (rows.length < 2) return [];
  const best = cheapestWay(costs);
  return [
    { kind: 'heading', text: 'Where to buy' },
    {
      kind: 'table',
      columns: [
        { title: 'Bought at', align: 'left', share: 1 },
        { title: 'Lumber', align: 'right', share: 0 },
        { title: 'Delivery', align: 'right', share: 0 },
        { title: 'Together', align: 'right', share: 0 },
      ],
      rows: rows.map(({ suppliers, unplanned, lumberUsd, deliveryUsd, totalUsd }) => ({
        cells:
          unplanned > 0
            ? [
                `${wayWords(suppliers)}: no board for ${unplanned} ${unplanned === 1 ? 'piece' : 'pieces'}`,
                '',
                '',
                '',
              ]
            : [wayWords(suppliers), formatUsd(lumberUsd), formatUsd(deliveryUsd), formatUsd(totalUsd)],
        ...(best !== null && suppliers === best.suppliers ? { style: 'strong' as const } : {}),
      })),
    },
  ];
}

/** Pieces that no board is planned for; the list is not complete without them. */
export function unplannedBlocks(list: string, unplanned: readonly UnplannedStock[]): readonly Block[] {
  if (unplanned.length === 0) return [];
  return [
    { kind: 'heading', text: `This ${list} is not complete` },
    { kind: 'paragraph', text: 'No boards are planned for these pieces, and no sum holds them:' },
    {
      kind: 'list',
      items: unplanned.map(
        (stock) =>
          `${stock.group}, ${stock.marks.length} ${stock.marks.length === 1 ? 'piece' : 'pieces'}: ${problemSentence(stock.problem)}`,
      ),
    },
  ];
}

function planBlocks(plan: CutPlan, problem: CuttingProblem | undefined, input: JobInput): readonly Block[] {
  const { cutting } = input.settings;
  const count = plan.boards.length;
  const thumb = problem === undefined ? null : thumbPurchase(problem, plan, cutting.thumbWastePercent);
  const blocks: Block[] = [
    { kind: 'heading', text: `${plan.group}: ${count} ${count === 1 ? 'board' : 'boards'}` },
    buyTable(plan),
    {
      kind: 'paragraph',
      text: [
        proofSentence(plan),
        ...pinSentences(plan),
        ...comparisonSentences(plan, thumb, cutting.thumbWastePercent),
      ].join(' '),
    },
    { kind: 'paragraph', small: true, text: howProven(plan) },
  ];
  if (count > mostBoardsDrawn) {
    blocks.push({
      kind: 'paragraph',
      small: true,
      text: `${count} boards are too many to draw; the saw list has them all.`,
    });
    return blocks;
  }
  const saw = sawOf(cutting, plan.stock);
  for (let from = 0; from < count; from += boardsPerDrawing) {
    const some = plan.boards.slice(from, from + boardsPerDrawing);
    blocks.push({
      kind: 'drawing',
      drawing: drawBoards(plan, some, saw),
      // A drawing of fewer boards gets less room, so that all come out at one scale.
      heightShare: 0.06 + 0.085 * some.length,
    });
  }
  blocks.push({
    kind: 'paragraph',
    small: true,
    text: 'Lengths are to scale, widths are not. Cut from the left, crown edge up. Hatched: end trim and saw cuts. Dashed: what is left over.',
  });
  return blocks;
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
    .sort(([a], [b]) => Number(a.onHand) - Number(b.onHand) || b.lengthSixteenths - a.lengthSixteenths)
    .map(([first, ...others]) => {
      const count = 1 + others.length;
      return {
        cells: [
          `${plan.group} x ${formatLength(inchesOf(first.lengthSixteenths))}${first.onHand ? ', on hand' : ''}`,
          String(count),
          formatUsd(usd(new Decimal(first.priceCents).div(100))),
          formatUsd(usd(new Decimal(first.priceCents).times(count).div(100))),
        ],
      };
    });
  return {
    kind: 'table',
    columns: [
      {
        title: plan.boards.some(({ onHand }) => onHand) ? 'Boards to buy and to use' : 'Boards to buy',
        align: 'left',
        share: 1,
      },
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
