import { Decimal } from 'decimal.js';
import type { BoundCertificate, Board, CutPlan, CuttingProblem } from '../cutting/cut-plan-types.ts';
import { thumbPurchase } from '../cutting/thumb-rule.ts';
import { usdOfCents } from '../cutting/with-bound.ts';
import { decimalText, type DecimalText } from '../units/money.ts';
import { cutText } from './cut-text.ts';
import type { JobInput } from './job-file.ts';
import type { Json } from './json.ts';
import { sawOf } from './saw-of.ts';

/** Enough digits to write parts of a cent out whole. */
const Exact = Decimal.clone({ precision: 60 });

/** One stock's plan: boards with what is cut from them, cost, bound with its proof, and what simpler ways cost. */
export function cutPlanJson(plan: CutPlan, problem: CuttingProblem | undefined, input: JobInput) {
  const { cutting } = input.settings;
  const saw = sawOf(cutting, plan.stock);
  const thumb = problem === undefined ? null : thumbPurchase(problem, plan, cutting.thumbWastePercent);
  return {
    group: plan.group,
    section: plan.stock.section,
    grade: plan.stock.grade,
    kerfSixteenths: saw.kerfSixteenths,
    endTrimSixteenths: saw.endTrimSixteenths,
    costUsd: plan.costUsd,
    boundUsd: plan.boundUsd,
    gapPercent: percent(plan.gap),
    status: plan.status,
    proof: plan.proof,
    tiesProven: plan.tiesProven,
    boardFewerUsd: usdOfCents(plan.centsPerBoard),
    certificate: plan.certificate === null ? null : certificateJson(plan.certificate),
    yieldPercent: percent(plan.yield),
    oneLengthUsd: plan.oneLengthUsd,
    oneLengthFt: plan.oneLengthFt,
    thumbRule:
      thumb === null
        ? null
        : {
            wastePercent: decimalText(cutting.thumbWastePercent),
            boardFt: thumb.boardFt,
            countBoards: thumb.boards,
            costUsd: thumb.costUsd,
            countTooFew: thumb.tooFew,
          },
    unmetPins: plan.unmetPins.map(({ pin, why }) => ({ itemId: pin.itemId, marks: pin.marks, why })),
    boards: plan.boards.map(boardJson),
  } satisfies Json;
}

function boardJson(board: Board) {
  return {
    number: board.number,
    itemId: board.itemId,
    onHand: board.onHand,
    lengthSixteenths: board.lengthSixteenths,
    lengthText: cutText(board.lengthSixteenths),
    priceUsd: usdOfCents(board.priceCents),
    pieces: board.items.map(({ mark, lengthSixteenths, slantSixteenths = 0 }) => ({
      mark,
      lengthSixteenths,
      lengthText: cutText(lengthSixteenths),
      slantSixteenths,
    })),
    offcutSixteenths: board.offcutSixteenths,
    offcutText: cutText(board.offcutSixteenths),
  } satisfies Json;
}

/** Worths from which the bound can be reckoned again, exact: they are whole parts of a cent, 2^20 to the cent. */
function certificateJson({ worths, supplies }: BoundCertificate) {
  return {
    worths: worths.map(({ lengthSixteenths, slantSixteenths, parts }) => ({
      lengthSixteenths,
      slantSixteenths,
      worthUsd: partsUsd(parts),
    })),
    supplies: supplies.map(({ itemId, lengthSixteenths, priceCents, parts }) => ({
      itemId,
      lengthSixteenths,
      priceUsd: usdOfCents(priceCents),
      worthUsd: partsUsd(parts),
    })),
  } satisfies Json;
}

function partsUsd(parts: number): DecimalText {
  return decimalText(new Exact(parts).div(2 ** 20).div(100));
}

/** A ratio in percent, to 2 decimals half up. [%] */
function percent(ratio: number): DecimalText {
  return decimalText(new Decimal(ratio).times(100).toDecimalPlaces(2, Decimal.ROUND_HALF_UP));
}
