import type { Method } from '../../eave/design-document.ts';
import type { Side } from '../../survey/survey-document.ts';
import type { Interval } from '../in-the-way.ts';

/** A place where a tail may stand. Lengths in inches along the wall. */
export type Candidate = Interval & {
  readonly centreIn: number;
  /** Its middle as the solver reckons with it. [1/64 in] */
  readonly at: number;
  readonly method: Method;
  readonly side: Side;
  /** Index of the rafter it is fastened to; of a hung tail the one on its left, -1 where there is none. */
  readonly rafter: number;
  /** Of a tail that must stand here, its id; null where the solver may choose. */
  readonly heldId: string | null;
  /** What holds it: the person's pin or what was built. */
  readonly heldBy: 'pinned' | 'built' | null;
  /** Whether it may overlap another tail that is held too. */
  readonly stubborn: boolean;
  /** Weighted cost. [thousandths] */
  readonly cost: number;
  /** Index of the panel joint that it carries, -1 where none. */
  readonly joint: number;
  readonly fillerIn: number | null;
  /** Where a hung tail's centre may move without running into old framing; of others just where it is. [in] */
  readonly roomFromIn: number;
  readonly roomToIn: number;
};

/** What is asked for at a rafter. */
export type RafterWish = {
  /**
   * `served`: a held tail stands for it already, or none is wanted. `own`: one of its candidates has to be taken.
   * `any`: one of its candidates, or a hung tail in a bay beside it that stands for it.
   */
  readonly want: 'served' | 'own' | 'any';
  /** Whether a hung tail in the bay on its left, or right, may stand for it. */
  readonly hungLeft: boolean;
  readonly hungRight: boolean;
  /** Whether a side of it is free of old framing. */
  readonly sideFree: boolean;
};

/** The candidates between two neighbouring rafters, or past the first or last. */
export type BayCandidates = {
  /** Beside the rafter on the bay's left, hung, beside the one on its right; by their centres. */
  readonly candidates: readonly Candidate[];
};

/** What the solver chooses from. One bay more than rafters: bay i lies left of rafter i. */
export type Choices = {
  readonly rafters: readonly RafterWish[];
  readonly bays: readonly BayCandidates[];
  /** Middles of the rafters, in order. [1/64 in] */
  readonly raftersAt: readonly number[];
  /** Ends of the fascia run. [1/64 in] */
  readonly from: number;
  readonly to: number;
  /** Largest gap that is let stand, centre to centre. [1/64 in] */
  readonly largestGap: number;
  /** Least clear distance between a hung tail and another. [in] */
  readonly roomIn: number;
};

/** True for a tail hung between rafters. */
export function isHung({ method }: Pick<Candidate, 'method'>): boolean {
  return method === 'block-hung';
}
