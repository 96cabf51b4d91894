import { planCuts } from '../cutting/plan-cuts.ts';
import type { CutItem, CutPlan, CuttingProblem, UnplannedStock } from '../cutting/cut-plan-types.ts';
import { stockLengths, type PriceQuestion } from '../pricing/stock-lengths.ts';
import type { Problem } from '../problems/problem.ts';
import { stockGroup } from '../cutting/stock-group.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { inchesOf, nearestSixteenth, sixteenthsUp } from '../units/sixteenths.ts';

/** The boards to buy, stock by stock, and the pieces that no board could be planned for. */
export type LumberPlan = {
  readonly cutPlans: readonly CutPlan[];
  readonly unplanned: readonly UnplannedStock[];
};

/**
 * Plans the boards of a job. Pieces of one section and grade share boards, whatever they are used for. Where a piece
 * is longer than any board, it alone is left unplanned and the others go on.
 * @param input - day, price list and settings with kerf and end trim [in].
 * @param pieces - every piece of the job. [1/16 in]
 */
export function planLumber(input: PriceQuestion, pieces: readonly Piece[]): LumberPlan {
  const cutPlans: CutPlan[] = [];
  const unplanned: UnplannedStock[] = [];
  for (const [group, ofStock] of piecesByStock(pieces)) {
    const stock = ofStock[0]?.stock;
    if (stock === undefined) continue;
    const leaveOut = (left: readonly CutItem[], problem: Problem): void => {
      unplanned.push({ group, stock, marks: left.map(({ mark }) => mark), problem });
    };
    const items = ofStock.map(({ mark, lengthSixteenths }) => ({ mark, lengthSixteenths }));
    const { lengths, problems } = stockLengths(input, stock);
    const longest = lengths.at(-1);
    if (longest === undefined) {
      leaveOut(items, problems[0] ?? { code: 'no-price', item: group });
      continue;
    }
    const { cutting } = input.settings;
    const endTrimSixteenths = sixteenthsUp(cutting.endTrimIn);
    const usable = longest.lengthSixteenths - 2 * endTrimSixteenths;
    const tooLong = items.filter((item) => item.lengthSixteenths > usable);
    const [worst] = [...tooLong].sort((a, b) => b.lengthSixteenths - a.lengthSixteenths);
    if (worst !== undefined)
      leaveOut(tooLong, {
        code: 'piece-longer-than-stock',
        stock: group,
        mark: tooLong.length === 1 ? worst.mark : `${worst.mark} (the longest of ${tooLong.length})`,
        pieceIn: inchesOf(worst.lengthSixteenths),
        longestIn: inchesOf(nearestSixteenth(Math.max(0, usable) / 16)),
      });
    const fitting = items.filter((item) => item.lengthSixteenths <= usable);
    if (fitting.length === 0) continue;
    const plan = planCuts({
      stock,
      items: fitting,
      lengths,
      kerfSixteenths: sixteenthsUp(cutting.kerfIn),
      endTrimSixteenths,
    } satisfies CuttingProblem);
    if (plan.ok) cutPlans.push(plan.value);
    else leaveOut(fitting, plan.problem);
  }
  return { cutPlans, unplanned };
}

function piecesByStock(pieces: readonly Piece[]): ReadonlyMap<string, readonly Piece[]> {
  const byStock = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const group = stockGroup(piece.stock);
    const ofStock = byStock.get(group);
    if (ofStock === undefined) byStock.set(group, [piece]);
    else ofStock.push(piece);
  }
  return byStock;
}
