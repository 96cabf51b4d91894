/**
 * Linear programs, handed in from outside so that core knows no solver: minimize cost x, with bounds on columns and rows.
 * Infinity is allowed as a bound.
 */
export type LinearModel = {
  readonly columnCost: Float64Array;
  readonly columnLower: Float64Array;
  readonly columnUpper: Float64Array;
  /** 1 where the column is a whole number. */
  readonly columnWhole: Uint8Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  /** Entries column by column: those of column j stand from starts[j] up to starts[j + 1]. */
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
};

/** Answer of a linear program; figures count only where it is optimal. */
export type LpAnswer = {
  readonly status: 'optimal' | 'infeasible' | 'stopped';
  readonly objective: number;
  readonly columnValues: Float64Array;
  /** Worth of each row, the change of the objective with its bound. */
  readonly rowDuals: Float64Array;
};

/** When a search in whole numbers is to end. */
export type MipLimits = {
  /** Time for it, at most. [ms] */
  readonly timeMs?: number;
  /** Ends as soon as objective - bound is no more than this. */
  readonly absoluteGap: number;
  /** Solutions that are not below this are of no use. */
  readonly cutoff?: number;
  /** Whether the program may be rewritten before the search; false where its columns are there to be searched by. */
  readonly rewrite: boolean;
  /** Cases that it may be parted into, at most. */
  readonly mostNodes?: number;
  /** Asked now and then. */
  readonly stopped: () => boolean;
  /** Told now and then. */
  readonly onProgress?: (objective: number, bound: number) => void;
  /** Told of each better solution. */
  readonly onSolution?: (columnValues: Float64Array, objective: number) => void;
};

/** Answer of a search in whole numbers. */
export type MipAnswer = {
  /** `stopped`: by a limit; objective is infinite where nothing was found. */
  readonly status: 'optimal' | 'stopped' | 'infeasible';
  readonly objective: number;
  /** No solution is below this. */
  readonly bound: number;
  readonly columnValues: Float64Array;
};

/** A solver of linear programs, with columns in whole numbers or not. */
export type LinearPrograms = {
  solveLp(model: LinearModel): LpAnswer;
  solveMip(model: LinearModel, limits: MipLimits): MipAnswer;
};
