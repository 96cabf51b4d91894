import type { EaveDesign, Method } from '../../../../core/eave/design-document.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../../../../core/layout/layout-types.ts';
import type { Problem } from '../../../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../../../core/result.ts';
import { formatLength } from '../../../../core/units/format-length.ts';
import type { Documents } from '../../editor/documents.ts';
import { type DropPlace, dropPlace, rafterAt } from '../../editor/drop-place.ts';
import {
  addTail,
  hungForRafter,
  idAfterMove,
  isHung,
  moveTail,
  nextTailId,
  pinAsItStands,
  pinTail,
  releaseTail,
  removeTail,
  type TailPin,
} from '../../editor/tail-edits.ts';
import { freePlaceIn } from './free-place.ts';

/** A thing to do with a tail: what it is called for Undo, the edit, and the tail that is taken up behind it. */
export type TailMove = {
  readonly what: string;
  readonly edit: (documents: Documents) => Documents;
  readonly thenTake: string | null;
};

/** What a move is worked out from. */
export type Tails = {
  readonly designIndex: number;
  readonly design: EaveDesign;
  readonly layout: EaveLayout;
};

/** A station against a rafter's side is taken as that side within this. [in] */
const besideWithinIn = 1 / 32;

export function thicknessOf({ leftIn, rightIn }: Extender): number {
  return rightIn - leftIn;
}

/** The rafter that a tail belongs to: it stands by it, or was hung for it; undefined of one that hangs of its own. */
export function rafterOf({ design, layout }: Tails, tail: Extender): PlacedRafter | undefined {
  const rafterId = isHung(tail) ? hungForRafter(design, layout.rafters, tail) : tail.rafterId;
  return layout.rafters.find(({ id }) => id === rafterId);
}

/** A pin; without a method the program chooses it. */
export function pinOf(side: TailPin['side'], method: Method | undefined): TailPin {
  return method === undefined || side === 'none' ? { side } : { side, method };
}

/** Brings a tail to a place; null where it stands there already, or was built where it stands. */
export function moveTo(tails: Tails, tail: Extender, place: DropPlace): TailMove | null {
  const isThere =
    place.kind === 'hung'
      ? isHung(tail) && Math.abs(place.stationIn - tail.centreIn) < besideWithinIn
      : !isHung(tail) && tail.rafterId === place.rafterId && tail.side === place.side;
  if (isThere || tail.inPlace) return null;
  return {
    what: `moving ${tail.mark}`,
    edit: (documents) => moveTail(documents, tails.designIndex, tail, place),
    thenTake: idAfterMove(tails.design, tails.layout.rafters, tail, place),
  };
}

/**
 * Moves a tail one step along the wall: a hung one by a distance, up to the side of a rafter; one beside a rafter to the
 * rafter's other side.
 * @param byIn - to the right positive. [in]
 */
export function stepTail(tails: Tails, tail: Extender, byIn: number): TailMove | null {
  const { layout } = tails;
  if (!isHung(tail)) {
    const rafter = layout.rafters.find(({ id }) => id === tail.rafterId);
    const side = byIn < 0 ? 'left' : 'right';
    if (rafter === undefined || side === tail.side) return null;
    const place = {
      rafterId: rafter.id,
      rafterNumber: rafter.number,
      side,
      stationIn: tail.centreIn,
    } as const;
    return moveTo(tails, tail, { kind: 'beside', ...place });
  }
  const thicknessIn = thicknessOf(tail);
  // A step that would lead into a rafter ends against it.
  return moveTo(tails, tail, dropPlace(layout, thicknessIn, tail.centreIn + byIn, besideWithinIn));
}

/** Where a typed station puts a tail; the problem where a rafter is in the way. */
export function placeAtStation(
  layout: EaveLayout,
  tail: Extender,
  stationIn: number,
): Result<DropPlace, Problem> {
  const thicknessIn = thicknessOf(tail);
  const rafter = rafterAt(layout, thicknessIn - 2 * besideWithinIn, stationIn);
  if (rafter === undefined) return ok(dropPlace(layout, thicknessIn, stationIn, besideWithinIn));
  return fail({
    code: 'rafter-stands-there',
    rafter: String(rafter.number),
    leftIn: rafter.leftFaceIn - thicknessIn / 2,
    rightIn: rafter.rightFaceIn + thicknessIn / 2,
  });
}

/** Hangs a tail in the widest free stretch between a tail and the next one; null where none fits. */
export function hangBehind(tails: Tails, tail: Extender): TailMove | null {
  const { layout } = tails;
  const next = layout.extenders.find(({ centreIn }) => centreIn > tail.centreIn);
  return hangBetween(tails, tail.rightIn, next?.leftIn ?? layout.wallLengthIn, thicknessOf(tail));
}

/** Hangs a tail in the widest free stretch between two stations; null where none fits. */
export function hangBetween(
  tails: Tails,
  fromIn: number,
  toIn: number,
  thicknessIn: number,
): TailMove | null {
  const { layout, design, designIndex } = tails;
  const stationIn = freePlaceIn(layout, fromIn, toIn, thicknessIn);
  if (stationIn === null) return null;
  return {
    what: `hanging a tail at ${formatLength(stationIn)}`,
    edit: (documents) => addTail(documents, designIndex, stationIn),
    thenTake: nextTailId(design, layout.rafters),
  };
}

/** Holds a tail as it stands. */
export function pinMove({ designIndex, design, layout }: Tails, tail: Extender): TailMove {
  return {
    what: `pinning ${tail.mark}`,
    edit: (documents) => pinAsItStands(documents, designIndex, tail),
    thenTake: isHung(tail)
      ? idAfterMove(design, layout.rafters, tail, { kind: 'hung', stationIn: tail.centreIn })
      : tail.rafterId,
  };
}

/** Leaves a tail to the program again. */
export function releaseMove({ designIndex }: Tails, tail: Extender): TailMove {
  return {
    what: `releasing ${tail.mark}`,
    edit: (documents) => releaseTail(documents, designIndex, tail),
    thenTake: isHung(tail) ? null : tail.id,
  };
}

/** Takes a tail away and takes up its neighbour. */
export function removeMove({ designIndex, layout }: Tails, tail: Extender): TailMove {
  const at = layout.extenders.findIndex(({ id }) => id === tail.id);
  return {
    what: `taking ${tail.mark} away`,
    edit: (documents) => removeTail(documents, designIndex, tail),
    thenTake: (layout.extenders[at + 1] ?? layout.extenders[at - 1])?.id ?? null,
  };
}

/** Pins how a rafter's tail stands, or with null leaves it to the program. */
export function standMove(
  { designIndex }: Tails,
  rafter: { readonly id: string; readonly number: number },
  pin: TailPin | null,
): TailMove {
  return {
    what: `the tail of rafter ${rafter.number}`,
    edit: (documents) => pinTail(documents, designIndex, rafter.id, pin),
    thenTake: rafter.id,
  };
}
