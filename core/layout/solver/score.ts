/**
 * How far a layout falls short of what is wanted, in order of weight; less is better. Whole numbers throughout, so that
 * sums do not depend on their order.
 */
export type Score = {
  /** Rafters without a tail of their own or a hung one that stands for them. */
  readonly unserved: number;
  /** What gaps between neighbouring tails exceed the largest allowed by, in all. [1/64 in] */
  readonly over: number;
  /** Less the panel joints that stand on a tail. */
  readonly missed: number;
  /** Rafters with a side free of old framing that a hung tail stands for all the same. */
  readonly passedOver: number;
  /** Weighted cost of the methods. [thousandths] */
  readonly cost: number;
  readonly hung: number;
  /** Sum of the squared gaps, those to the ends of the fascia run among them. [1/64 in squared] */
  readonly squares: number;
};

/** Parts of an inch that gaps are reckoned in. */
const partsPerInch = 64;

/** An inch measure in 64ths, to the nearest. */
export function in64ths(inches: number): number {
  return Math.round(inches * partsPerInch);
}

/** Negative where the first is better, positive where it is worse, 0 where both are alike. */
export function compareScores(one: Score, other: Score): number {
  return (
    one.unserved - other.unserved ||
    one.over - other.over ||
    one.missed - other.missed ||
    one.passedOver - other.passedOver ||
    one.cost - other.cost ||
    one.hung - other.hung ||
    one.squares - other.squares
  );
}
