import type { Side } from '../survey/survey-document.ts';
import { overlaps } from './in-the-way.ts';
import type { Unplaced } from './layout-types.ts';
import type { TailPlace } from './tail-place.ts';
import { clashOf, rafterAt } from './solver/beside-rafter.ts';
import { isHung, type Candidate } from './solver/candidate.ts';
import { prepare, type Prepared } from './solver/choices.ts';
import { ownIdStart } from './solver/held-tails.ts';
import { settle, type Settled } from './solver/settle.ts';
import { solve } from './solver/solve.ts';
import { gapToleranceIn, stretch, type Wall } from './solver/wall.ts';

/** The tails of an eave from left to right, the rafters that get none, and what was asked for and could not be. */
export type PlacedTails = {
  readonly tails: readonly TailPlace[];
  readonly unplaced: readonly Unplaced[];
  readonly notes: readonly { readonly stationIn: number; readonly text: string }[];
  /** What the solver chose from. */
  readonly prepared: Prepared;
};

/**
 * Places the tails of an eave: the person's pins and what was built first and as they are, then as the solver finds best,
 * each with why it stands there and what was in the way. Hung tails of our own are named by the rafter on their left:
 * `gap-5`, and a second in the same bay `gap-5-2`. Their middles come on whole sixteenths; nothing else is rounded.
 * Worked: rafters at 16, 40, 64 with a joist right of the second, right preferred -> right, left (moved), right.
 * @param wall - the old wall and what is wanted. [in]
 */
export function placeTails(wall: Wall): PlacedTails {
  const prepared = prepare(wall);
  const settled = settle(solve(prepared.choices).chosen, prepared.wall);
  const ids = idsOf(settled, wall);
  const tails = settled.map((one, index): TailPlace => {
    const { candidate, leftIn, rightIn, standsFor } = one;
    const id = ids[index] ?? '';
    const rafter = rafterAt(Math.max(0, candidate.rafter), wall);
    return {
      id,
      method: candidate.method,
      rafter,
      rightRafter:
        isHung(candidate) && candidate.rafter >= 0 ? (wall.rafters[candidate.rafter + 1] ?? null) : null,
      standsFor: wall.rafters[standsFor]?.id ?? builtFor(candidate, wall),
      side: candidate.side,
      leftIn,
      rightIn,
      fillerIn: candidate.fillerIn,
      inPlace: wall.asBuilt.some(({ extenderId, inPlace }) => extenderId === id && inPlace),
      ...reasonOf(index, settled, prepared, wall),
    };
  });
  return {
    tails,
    unplaced: unplacedOf(settled, prepared, wall),
    notes: prepared.held.flatMap(({ note, leftIn, rightIn }) =>
      note === null ? [] : [{ stationIn: (leftIn + rightIn) / 2, text: note }],
    ),
    prepared,
  };
}

/** A rafter's tail that was built too far off it hangs, and is that rafter's all the same. */
function builtFor(candidate: Candidate, { rafters }: Wall): string | null {
  const own = isHung(candidate) ? rafters.find(({ id }) => id === candidate.heldId) : undefined;
  return own?.id ?? null;
}

function idsOf(settled: readonly Settled[], wall: Wall): readonly string[] {
  const taken = new Set([...wall.rafters, ...wall.design.addedTails].map(({ id }) => id));
  for (const { candidate } of settled) if (candidate.heldId !== null) taken.add(candidate.heldId);
  return settled.map(({ candidate }) => {
    if (candidate.heldId !== null) return candidate.heldId;
    if (!isHung(candidate)) return rafterAt(candidate.rafter, wall).id;
    const first = `${ownIdStart}${candidate.rafter + 1}`;
    let id = first;
    for (let count = 2; taken.has(id); count += 1) id = `${first}-${count}`;
    taken.add(id);
    return id;
  });
}

type Reason = Pick<TailPlace, 'because' | 'clash'>;

function reasonOf(index: number, settled: readonly Settled[], prepared: Prepared, wall: Wall): Reason {
  const one = settled[index];
  if (one === undefined) throw new Error('no such tail');
  const { candidate, standsFor } = one;
  if (candidate.heldBy !== null)
    return { because: candidate.heldBy, clash: heldClash(index, settled, prepared, wall) };
  if (isHung(candidate)) {
    if (standsFor >= 0) return standInReason(standsFor, settled, prepared, wall);
    return { because: whyExtra(index, settled, wall), clash: null };
  }
  if (candidate.stubborn) return { because: 'pinned', clash: heldClash(index, settled, prepared, wall) };
  const preferred = wall.design.preferredSide;
  if (candidate.method === 'side' && candidate.side === preferred)
    return { because: 'preferred', clash: null };
  const clash = inTheWayOn(preferred, candidate.rafter, settled, prepared, wall);
  if (clash !== null) return { because: 'moved', clash };
  return { because: whyNotPreferred(index, settled, prepared, wall), clash: null };
}

/** What overlaps a tail that stands where it was put. */
function heldClash(
  index: number,
  settled: readonly Settled[],
  prepared: Prepared,
  wall: Wall,
): string | null {
  const one = settled[index];
  if (one === undefined) throw new Error('no such tail');
  const { candidate } = one;
  const own = wall.rafters[candidate.rafter];
  const found = prepared
    .standing(one)
    .find(
      ({ kind, leftIn }) =>
        !(candidate.method === 'end-replacement' && kind === 'rafter' && leftIn === own?.leftFaceIn),
    );
  if (found !== undefined) return `${found.label}, ${stretch(found)}`;
  const neighbour = [settled[index - 1], settled[index + 1]].find(
    (other) => other !== undefined && overlaps(other, one),
  );
  if (neighbour !== undefined) return `${tailLabel(neighbour, wall)}, ${stretch(neighbour)}`;
  if (candidate.method === 'outer-face' || isHung(candidate)) return null;
  return clashOf(one, wall, () => []);
}

function tailLabel({ candidate }: Settled, wall: Wall): string {
  return isHung(candidate)
    ? 'the hung tail'
    : `the extender of rafter ${rafterAt(candidate.rafter, wall).number}`;
}

/** What keeps a tail from a rafter's side: its condition, old framing, the wall's end, or another tail; null if nothing. */
function inTheWayOn(
  side: Side,
  rafter: number,
  settled: readonly Settled[],
  { places }: Prepared,
  wall: Wall,
): string | null {
  const { condition, number } = rafterAt(rafter, wall);
  if (condition !== 'sound') return `rafter ${number} is ${condition}`;
  const own = places[rafter]?.sides[side];
  if (own === undefined || own.clash !== null) return own?.clash ?? null;
  const found = settled.find(
    (one) => (isHung(one.candidate) || one.candidate.rafter !== rafter) && overlaps(one, own.place),
  );
  return found === undefined ? null : `${tailLabel(found, wall)}, ${stretch(found)}`;
}

/** A tail hangs for a rafter because that is pinned so, or because of what is in the way on its sides. */
function standInReason(rafter: number, settled: readonly Settled[], prepared: Prepared, wall: Wall): Reason {
  const { id } = rafterAt(rafter, wall);
  const pinned = wall.design.pins.some(({ rafterId, method }) => rafterId === id && method === 'block-hung');
  return pinned
    ? { because: 'pinned', clash: null }
    : { because: 'moved', clash: bothSides(rafter, settled, prepared, wall) };
}

function bothSides(
  rafter: number,
  settled: readonly Settled[],
  prepared: Prepared,
  wall: Wall,
): string | null {
  const [left, right] = [
    inTheWayOn('left', rafter, settled, prepared, wall),
    inTheWayOn('right', rafter, settled, prepared, wall),
  ];
  if (left === right || left === null || right === null) return left ?? right;
  return `${left}; ${right}`;
}

/** Why a tail hangs here that stands for no rafter: what would be amiss without it. */
function whyExtra(index: number, settled: readonly Settled[], wall: Wall): TailPlace['because'] {
  const [before, after] = [settled[index - 1], settled[index + 1]];
  if (before !== undefined && after !== undefined && tooWide(before, after, wall)) return 'gap';
  return (settled[index]?.candidate.joint ?? -1) >= 0 ? 'panel-joint' : 'even';
}

/** Why a rafter's tail does not stand on the preferred side, which is free. */
function whyNotPreferred(
  index: number,
  settled: readonly Settled[],
  { places }: Prepared,
  wall: Wall,
): TailPlace['because'] {
  const one = settled[index];
  const place = places[one?.candidate.rafter ?? -1]?.sides[wall.design.preferredSide].place;
  const [before, after] = [settled[index - 1], settled[index + 1]];
  if (one === undefined || place === undefined) return 'even';
  const would = { centreIn: (place.leftIn + place.rightIn) / 2 };
  const wide = (tail: { readonly centreIn: number }): boolean =>
    (before !== undefined && tooWide(before, tail, wall)) ||
    (after !== undefined && tooWide(tail, after, wall));
  if (wide(would) && !wide(one)) return 'gap';
  return one.candidate.joint >= 0 ? 'panel-joint' : 'even';
}

type Stationed = { readonly centreIn: number };

function tooWide(left: Stationed, right: Stationed, { largestGapIn }: Wall): boolean {
  return right.centreIn - left.centreIn > largestGapIn + gapToleranceIn;
}

function unplacedOf(settled: readonly Settled[], prepared: Prepared, wall: Wall): readonly Unplaced[] {
  const met = new Set<number>();
  for (const { candidate, standsFor } of settled) {
    if (standsFor >= 0) met.add(standsFor);
    if (!isHung(candidate)) met.add(candidate.rafter);
    const ownBuilt = wall.rafters.findIndex(({ id }) => id === candidate.heldId);
    if (ownBuilt >= 0) met.add(ownBuilt);
  }
  return wall.rafters.flatMap((rafter, index): readonly Unplaced[] => {
    if (met.has(index)) return [];
    const base = { rafterId: rafter.id, rafterNumber: rafter.number, stationIn: rafter.centreIn };
    if (wall.design.pins.some(({ rafterId, side }) => rafterId === rafter.id && side === 'none'))
      return [{ ...base, reason: 'pinned-none', left: 'none wanted', right: 'none wanted' }];
    const left = inTheWayOn('left', index, settled, prepared, wall);
    const right = inTheWayOn('right', index, settled, prepared, wall);
    return [{ ...base, reason: 'no-side-free', left: left ?? 'free', right: right ?? 'free' }];
  });
}
