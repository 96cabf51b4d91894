import type { CostStaircase } from '../job/cost-staircase.ts';
import type { Problem } from '../problems/problem.ts';
import type { Usd } from '../units/money.ts';

/** What crosses the bridge in answer to a command: the value, or the problem; never an exception. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/** Something the host tells the page without being asked. */
export type HostEvent = ChangeEvent | SolvingEvent | StaircaseEvent | ImportingEvent;

/** A write made these different. `money`: what jobs took and what was billed for them. */
export type ChangeEvent = {
  readonly kind: 'changed';
  readonly what: 'jobs' | 'prices' | 'settings' | 'stock' | 'money';
};

/** How far a long computation has come that a page asked for. */
export type SolvingEvent = {
  readonly kind: 'solving';
  /** The id that the page gave it. */
  readonly solveId: string;
  /** Which of its parts: the key of a cutting problem, or a step of a staircase. */
  readonly key: string;
  /** What the best found so far costs, and what nothing can cost less than. */
  readonly costUsd: Usd;
  readonly boundUsd: Usd;
  /** Parts that are finished, and parts in all. [-] */
  readonly done: number;
  readonly of: number;
};

/** A cost staircase as far as it is known. */
export type StaircaseEvent = {
  readonly kind: 'staircase';
  /** The id that the page gave it. */
  readonly solveId: string;
  readonly staircase: CostStaircase;
  /** Overhangs that are reckoned, and those in all; then, of stocks at an overhang, those searched. [-] */
  readonly stage: 'reckoning' | 'searching';
  readonly done: number;
  readonly of: number;
};

/** How far the reading of a supplier's file has come. */
export type ImportingEvent = {
  readonly kind: 'importing';
  /** The id that the page gave the file. */
  readonly importId: string;
  readonly stage: 'reading' | 'matching' | 'writing';
  /** Rows that are done, and rows in all; none are told where that is not known yet. [rows] */
  readonly done: number;
  readonly of: number | null;
};
