import { Decimal } from 'decimal.js';
import type { CutPlan } from '../cutting/cut-plan-types.ts';
import { onHandIdOf } from '../pricing/boards-on-hand.ts';
import { usd, type Usd } from '../units/money.ts';
import { pieceOfBoard } from './stock-piece.ts';

/** What is left of a board once a job is cut. */
export type JobOffcut = {
  /** Group and number of the board that it is left of. */
  readonly board: string;
  readonly section: string;
  readonly grade: string;
  /** [1/16 in] */
  readonly lengthSixteenths: number;
};

/**
 * The offcuts of a job that are worth keeping, longest first of each section.
 * @param cutPlans - of the job, those of boards on hand among them.
 * @param keepIn - shortest that is kept. [in]
 * @returns e.g. kept from 24 in. on, a board with 2 ft 3 in. left gives one and a board with 9 in. left none.
 */
export function jobOffcuts(cutPlans: readonly CutPlan[], keepIn: number): readonly JobOffcut[] {
  return cutPlans
    .flatMap((plan) =>
      plan.boards
        .filter(({ offcutSixteenths }) => offcutSixteenths > 0 && offcutSixteenths >= keepIn * 16)
        .map((board) => ({
          board: `${plan.group}, board ${board.number}`,
          section: plan.stock.section,
          grade: plan.stock.grade,
          lengthSixteenths: board.offcutSixteenths,
        })),
    )
    .toSorted(
      (a, b) =>
        a.section.localeCompare(b.section, 'en', { numeric: true }) ||
        b.lengthSixteenths - a.lengthSixteenths,
    );
}

/** Numbers of the pieces of the shop's stock that a job's plans cut up; each piece is one board. */
export function piecesCutUp(cutPlans: readonly CutPlan[]): readonly number[] {
  return cutPlans.flatMap((plan) =>
    plan.boards.flatMap((board) => (board.onHand ? (pieceOfBoard(onHandIdOf(board.itemId)) ?? []) : [])),
  );
}

/**
 * What an offcut is worth at so much a foot.
 * @param lengthSixteenths - its length. [1/16 in]
 * @param usdPerFoot - what a foot is worth. [$/ft]
 * @returns cents half up: 27 in. at $0.50 -> 1.125 -> $1.13. [$]
 */
export function offcutValue(lengthSixteenths: number, usdPerFoot: Decimal.Value): Usd {
  return usd(new Decimal(lengthSixteenths).div(192).times(usdPerFoot));
}
