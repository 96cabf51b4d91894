import { Decimal } from 'decimal.js';
import type { Board, CutPlan } from '../cutting/cut-plan-types.ts';
import type { Takeoff, TakeoffLine } from '../takeoff/takeoff-types.ts';
import type { TracePart } from '../trace/trace.ts';
import { formatLength } from '../units/format-length.ts';
import { decimalText, formatUsd, usd } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { boughtDraft, type CostDraft, type Costed, lineTrace } from './cost-draft.ts';
import { deliveryOf, suppliersUsed } from './deliveries.ts';
import type { PriceItem } from './price-list.ts';
import { priceOn } from './price-on.ts';
import type { PriceQuestion } from './stock-lengths.ts';

/**
 * Cost lines of lumber: one for each length bought, boards x price of a board.
 * Boards are shared between uses (blocks come out of extender boards), so a line stands in the phase, and under the
 * wording, of the takeoff line whose pieces take most of its length. Boards on hand have lines of their own, at what they
 * are worth to the person, even nothing: the list is then whole. They are not taxed, since nobody sells them.
 */
export function lumberCosts(input: PriceQuestion, takeoff: Takeoff, cutPlans: readonly CutPlan[]): Costed {
  const lineOfMark = new Map<string, TakeoffLine>();
  for (const line of takeoff.lines) {
    if (line.need.kind !== 'lumber') continue;
    for (const mark of line.need.marks) lineOfMark.set(mark, line);
  }
  const items = new Map(input.priceList.map((item) => [item.id, item]));
  const drafts = cutPlans.flatMap((plan) =>
    boardsByItem(plan).map(([itemId, boards]) => {
      if (boards[0]?.onHand === true) return onHandDraft(plan, itemId, boards, lineOfMark);
      const item = items.get(itemId);
      if (item === undefined) throw new Error(`cut plan ${plan.group} buys an item that is not on the list`);
      return lumberDraft(input, plan, item, boards, lineOfMark);
    }),
  );
  return { drafts: [...drafts, ...deliveryDrafts(input, cutPlans, lineOfMark)], lacks: [] };
}

function lumberDraft(
  input: PriceQuestion,
  plan: CutPlan,
  item: PriceItem,
  boards: readonly Board[],
  lineOfMark: ReadonlyMap<string, TakeoffLine>,
): CostDraft {
  const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
  const served = servedLines(boards, lineOfMark);
  const main = served[0];
  const first = boards[0];
  if (!price.ok || main === undefined || first === undefined)
    throw new Error(`cut plan ${plan.group} has a board without a price or without pieces`);
  const length = formatLength(inchesOf(first.lengthSixteenths));
  return boughtDraft({
    id: `lumber-${plan.group.replaceAll(' ', '-')}-${item.id}`,
    line: main,
    item,
    price: price.value,
    description: `${plan.group}, ${length}`,
    quantity: boards.length,
    unit: 'each',
    unitCostUsd: new Decimal(first.priceCents).div(100).toFixed(2),
    parts: madeOfBoards(plan, boards, served),
  });
}

/**
 * One line for each supplier that charges to deliver and that lumber is bought from. Not taxed: whether a delivery is
 * differs from state to state, and an extra cost can be entered in its place.
 */
function deliveryDrafts(
  input: PriceQuestion,
  cutPlans: readonly CutPlan[],
  lineOfMark: ReadonlyMap<string, TakeoffLine>,
): readonly CostDraft[] {
  return suppliersUsed(input, cutPlans).flatMap((supplier): readonly CostDraft[] => {
    const deliveryUsd = deliveryOf(input, supplier);
    if (new Decimal(deliveryUsd).isZero()) return [];
    const ofSupplier = new Set(
      input.priceList.filter((item) => item.supplier === supplier).map(({ id }) => id),
    );
    const boards = cutPlans.flatMap((plan) => plan.boards.filter(({ itemId }) => ofSupplier.has(itemId)));
    const [main] = servedLines(boards, lineOfMark);
    if (main === undefined) return [];
    return [
      {
        line: {
          id: `delivery-${supplier}`,
          takeoffLineId: main.id,
          kind: 'material',
          phase: main.phase,
          description: `Delivery of lumber, ${supplier}`,
          clientWording: main.clientWording,
          quantity: decimalText(1),
          unit: 'delivery',
          unitCostUsd: decimalText(deliveryUsd),
          costUsd: deliveryUsd,
          taxable: false,
          supplier,
          stalePriceOf: null,
          rateMark: null,
          madeOf: [
            {
              label: 'Delivery, as the supplier charges it',
              value: formatUsd(deliveryUsd),
              ref: 'setting/suppliers',
            },
          ],
        },
        price: null,
      },
    ];
  });
}

function onHandDraft(
  plan: CutPlan,
  itemId: string,
  boards: readonly Board[],
  lineOfMark: ReadonlyMap<string, TakeoffLine>,
): CostDraft {
  const served = servedLines(boards, lineOfMark);
  const [main] = served;
  const [first] = boards;
  if (main === undefined || first === undefined)
    throw new Error(`cut plan ${plan.group} has a board without pieces`);
  const worthUsd = new Decimal(first.priceCents).div(100);
  return {
    line: {
      id: `lumber-${plan.group.replaceAll(' ', '-')}-${itemId}`,
      takeoffLineId: main.id,
      kind: 'material',
      phase: main.phase,
      description: `${plan.group}, ${formatLength(inchesOf(first.lengthSixteenths))}, on hand`,
      clientWording: main.clientWording,
      quantity: decimalText(boards.length),
      unit: 'each',
      unitCostUsd: decimalText(worthUsd.toFixed(2)),
      costUsd: usd(worthUsd.times(boards.length)),
      taxable: false,
      supplier: '',
      stalePriceOf: null,
      rateMark: null,
      madeOf: madeOfBoards(plan, boards, served),
    },
    price: null,
  };
}

function madeOfBoards(
  plan: CutPlan,
  boards: readonly Board[],
  served: readonly TakeoffLine[],
): readonly TracePart[] {
  return [
    ...served.map(lineTrace),
    ...boards.map((board) => ({
      label: `Board ${board.number}`,
      value: `${board.items.length} ${board.items.length === 1 ? 'piece' : 'pieces'} from ${formatLength(inchesOf(board.lengthSixteenths))}`,
      ref: `board/${plan.group}/${board.number}`,
    })),
  ];
}

function boardsByItem(plan: CutPlan): readonly (readonly [string, readonly Board[]])[] {
  const byItem = new Map<string, Board[]>();
  for (const board of plan.boards) {
    const boards = byItem.get(board.itemId);
    if (boards === undefined) byItem.set(board.itemId, [board]);
    else boards.push(board);
  }
  return [...byItem].sort(([, a], [, b]) => (a[0]?.lengthSixteenths ?? 0) - (b[0]?.lengthSixteenths ?? 0));
}

/** Takeoff lines that have pieces in these boards, the one with the most length first. */
function servedLines(
  boards: readonly Board[],
  lineOfMark: ReadonlyMap<string, TakeoffLine>,
): readonly TakeoffLine[] {
  const lengths = new Map<TakeoffLine, number>();
  for (const board of boards)
    for (const piece of board.items) {
      const line = lineOfMark.get(piece.mark);
      if (line !== undefined) lengths.set(line, (lengths.get(line) ?? 0) + piece.lengthSixteenths);
    }
  return [...lengths].sort(([, a], [, b]) => b - a).map(([line]) => line);
}
