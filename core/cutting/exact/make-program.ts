import type { LinearModel } from './linear-programs.ts';

/** A row of a program: what its entries may come to. */
export type ProgramRow = { readonly lower: number; readonly upper: number };

/** A column of a program in whole numbers from 0 up. */
export type ProgramColumn = {
  readonly cost: number;
  readonly upper: number;
  readonly entries: readonly (readonly [row: number, value: number])[];
};

/** A row that must come to exactly so much. */
export const exactly = (amount: number): ProgramRow => ({ lower: amount, upper: amount });

/** A row that must come to so much at least. */
export const atLeast = (amount: number): ProgramRow => ({ lower: amount, upper: Number.POSITIVE_INFINITY });

/** A row that may come to so much at most. */
export const atMost = (amount: number): ProgramRow => ({ lower: Number.NEGATIVE_INFINITY, upper: amount });

/** Writes rows and columns, all in whole numbers, the way that a solver takes them. */
export function makeProgram(rows: readonly ProgramRow[], columns: readonly ProgramColumn[]): LinearModel {
  const starts = new Int32Array(columns.length + 1);
  for (const [index, { entries }] of columns.entries())
    starts[index + 1] = (starts[index] ?? 0) + entries.length;
  const entries = columns.flatMap((column) => column.entries);
  return {
    columnCost: Float64Array.from(columns, ({ cost }) => cost),
    columnLower: new Float64Array(columns.length),
    columnUpper: Float64Array.from(columns, ({ upper }) => upper),
    columnWhole: new Uint8Array(columns.length).fill(1),
    rowLower: Float64Array.from(rows, ({ lower }) => lower),
    rowUpper: Float64Array.from(rows, ({ upper }) => upper),
    starts,
    rows: Int32Array.from(entries, ([row]) => row),
    values: Float64Array.from(entries, ([, value]) => value),
  };
}
