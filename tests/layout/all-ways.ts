import type { Score } from '../../core/layout/solver/score.ts';
import type { JointedWall as Wall } from '../../core/layout/solver/wall.ts';

/**
 * Finds the best layout of a small wall by trying every way to place a tail at every rafter, every number of hung tails
 * in every stretch of free plate and every panel joint under each, and evening the hung ones out by moving each to the
 * middle between its neighbours until nothing moves. Reckons with the plain wall alone, in its own words.
 */
export function bestOfAllWays(wall: Wall, mostHung: number): Score {
  const rooms = roomsBetween(wall);
  const options = wall.rafters.map((_, rafter) => optionsAt(rafter, wall));
  let best: Score | undefined;
  const consider = (own: readonly Own[]): void => {
    for (const hung of countsIn(rooms, mostHung)) {
      const score = scoreOf(own, hung, wall, options);
      if (score !== undefined && (best === undefined || less(score, best))) best = score;
    }
  };
  const walk = (rafter: number, own: readonly Own[]): void => {
    const ways = options[rafter];
    if (ways === undefined) {
      if (
        own.every(
          (one, index) => index === 0 || one.left >= (own[index - 1]?.left ?? 0) + wall.thicknessIn - slack,
        )
      )
        consider(own);
      return;
    }
    walk(rafter + 1, own);
    for (const way of ways) walk(rafter + 1, [...own, way]);
  };
  walk(0, []);
  if (best === undefined) throw new Error('no way at all');
  return best;
}

const slack = 1 / 32;
const room = 0.5;

type Own = { readonly rafter: number; readonly left: number; readonly cost: number; readonly plain: boolean };
type Room = { readonly bay: number; readonly from: number; readonly to: number };
type Tail = {
  readonly own: Own | undefined;
  readonly room: Room | undefined;
  readonly from: number;
  readonly to: number;
  at: number;
};

function optionsAt(rafter: number, wall: Wall): readonly Own[] {
  const { weights, design, occupied } = wall;
  const { leftFaceIn, rightFaceIn } = wall.rafters[rafter] ?? { leftFaceIn: 0, rightFaceIn: 0 };
  const clear = (left: number): boolean =>
    left >= -slack &&
    left + wall.thicknessIn <= wall.lengthIn + slack &&
    occupied.every((one) => left + wall.thicknessIn <= one.leftIn + slack || left >= one.rightIn - slack);
  return (['left', 'right'] as const).flatMap((side) => {
    const other = side === design.preferredSide ? 0 : weights.otherSide;
    const joist = occupied.find(
      ({ kind, leftIn, rightIn }) =>
        kind === 'joist' && (side === 'left' ? rightIn === leftFaceIn : leftIn === rightFaceIn),
    );
    const beside = side === 'left' ? leftFaceIn - wall.thicknessIn : rightFaceIn;
    const own: Own[] = [];
    if (clear(beside)) own.push({ rafter, left: beside, cost: other, plain: true });
    if (joist !== undefined && design.layout.allowFiller) {
      const past = side === 'left' ? joist.leftIn - wall.thicknessIn : joist.rightIn;
      if (clear(past)) own.push({ rafter, left: past, cost: weights.filler + other, plain: false });
    }
    return own;
  });
}

function roomsBetween({ rafters, occupied, thicknessIn, design }: Wall): readonly Room[] {
  if (!design.layout.allowBlockHung) return [];
  return rafters.slice(1).flatMap((right, index) => {
    const left = rafters[index];
    const inside = occupied.filter(
      (one) => one.rightIn > (left?.rightFaceIn ?? 0) - 1e-9 && one.leftIn < right.leftFaceIn + 1e-9,
    );
    const edges = inside.toSorted((a, b) => a.leftIn - b.leftIn);
    const found: Room[] = [];
    let from = left?.rightFaceIn ?? 0;
    for (const one of edges) {
      const [least, most] = [from + room + thicknessIn / 2, one.leftIn - room - thicknessIn / 2];
      if (most >= least - slack && one.leftIn >= from)
        found.push({ bay: index + 1, from: least, to: Math.max(least, most) });
      from = Math.max(from, one.rightIn);
    }
    return found;
  });
}

/** Every number of hung tails in every room. */
function countsIn(rooms: readonly Room[], most: number): readonly (readonly Room[])[] {
  return rooms.reduce<readonly (readonly Room[])[]>(
    (ways, one) =>
      ways.flatMap((way) =>
        Array.from({ length: most + 1 }, (_, count) => [...way, ...Array.from({ length: count }, () => one)]),
      ),
    [[]],
  );
}

function scoreOf(
  own: readonly Own[],
  hung: readonly Room[],
  wall: Wall,
  options: readonly (readonly Own[])[],
): Score | undefined {
  const half = wall.thicknessIn / 2;
  const tails: Tail[] = [
    ...own.map(
      (one): Tail => ({
        own: one,
        room: undefined,
        from: one.left + half,
        to: one.left + half,
        at: one.left + half,
      }),
    ),
    ...hung.map(
      (one): Tail => ({ own: undefined, room: one, from: one.from, to: one.to, at: (one.from + one.to) / 2 }),
    ),
  ].sort((a, b) => a.at - b.at);
  // An own tail in the same bay may lie on either side of a room's middle: it keeps its side, and the room what is left.
  const orders = ordersOf(tails);
  let best: Score | undefined;
  for (const order of orders)
    for (const windows of windowsOf(order, wall)) {
      for (const largestIn of [Number.POSITIVE_INFINITY, wall.largestGapIn + slack]) {
        const placed = even(windows, wall, largestIn);
        if (placed === undefined) continue;
        const score = judge(order, placed, wall, options, own, hung);
        if (best === undefined || less(score, best)) best = score;
      }
    }
  return best;
}

/** Tails in the order of the wall: rooms and own tails do not overlap in it, but for a tail beside a rafter in its room. */
function ordersOf(tails: readonly Tail[]): readonly (readonly Tail[])[] {
  const sorted = tails.toSorted(
    (a, b) => middleOf(a) - middleOf(b) || (a.own === undefined ? 1 : -1) - (b.own === undefined ? 1 : -1),
  );
  return [sorted];
}

/** A tail beside a rafter lies at that rafter; a hung one between the ends of its room. */
function middleOf({ own, room: of, at }: Tail): number {
  return own !== undefined ? at : ((of?.from ?? 0) + (of?.to ?? 0)) / 2;
}

type Window = { readonly from: number; readonly to: number };

/** What each tail may move in, once for every way to put hung tails under joints. */
function windowsOf(order: readonly Tail[], wall: Wall): readonly (readonly Window[])[] {
  return order.reduce<readonly (readonly Window[])[]>(
    (ways, tail, index) => {
      if (tail.own !== undefined) return ways.map((way) => [...way, { from: tail.at, to: tail.at }]);
      const [before, after] = [order[index - 1], order[index + 1]];
      const reach = wall.thicknessIn + room;
      const free = {
        from: Math.max(tail.from, before?.own === undefined ? tail.from : before.at + reach),
        to: Math.min(tail.to, after?.own === undefined ? tail.to : after.at - reach),
      };
      const joints = wall.jointsIn.map((joint) => ({
        from: Math.max(free.from, joint - wall.jointToleranceIn),
        to: Math.min(free.to, joint + wall.jointToleranceIn),
      }));
      const windows = [free, ...joints].filter(({ from, to }) => from <= to + slack);
      return ways.flatMap((way) => windows.map(({ from, to }) => [...way, { from, to: Math.max(from, to) }]));
    },
    [[]],
  );
}

/**
 * Moves each tail to the middle between its neighbours, within its window and no further than so far from a neighbour, until
 * none moves.
 */
function even(windows: readonly Window[], wall: Wall, largestIn: number): readonly number[] | undefined {
  const at = windows.map(({ from, to }) => (from + to) / 2);
  for (let round = 0; round < 2000; round += 1) {
    let moved = 0;
    for (const [index, { from, to }] of windows.entries()) {
      const middle = ((at[index - 1] ?? wall.fromIn) + (at[index + 1] ?? wall.toIn)) / 2;
      const least = Math.max(from, (at[index + 1] ?? Number.NEGATIVE_INFINITY) - largestIn);
      const most = Math.min(to, (at[index - 1] ?? Number.POSITIVE_INFINITY) + largestIn);
      const next = Math.min(to, Math.max(from, Math.min(most, Math.max(least, middle))));
      moved = Math.max(moved, Math.abs(next - (at[index] ?? 0)));
      at[index] = next;
    }
    if (moved < 1e-10) break;
  }
  const apart = (index: number): number => (at[index] ?? 0) - (at[index - 1] ?? 0);
  const still = ({ from, to }: Window): boolean => from === to;
  for (let index = 1; index < at.length; index += 1) {
    const bothOwn =
      still(windows[index] ?? { from: 0, to: 0 }) && still(windows[index - 1] ?? { from: 0, to: 0 });
    if (apart(index) < wall.thicknessIn + (bothOwn ? 0 : room) - slack) return undefined;
  }
  return at;
}

function judge(
  order: readonly Tail[],
  placed: readonly number[],
  wall: Wall,
  options: readonly (readonly Own[])[],
  own: readonly Own[],
  hung: readonly Room[],
): Score {
  const parts = placed.map((at) => Math.round(at * 64));
  const largest = Math.round((wall.largestGapIn + slack) * 64);
  const stops = [Math.round(wall.fromIn * 64), ...parts, Math.round(wall.toIn * 64)];
  const gaps = stops.slice(1).map((stop, index) => stop - (stops[index] ?? 0));
  const lacking = wall.rafters
    .map((_, rafter) => rafter)
    .filter((rafter) => own.every((one) => one.rafter !== rafter));
  const plain = (rafter: number): boolean => (options[rafter] ?? []).some((one) => one.plain);
  const { unserved, passedOver } = standIns(
    lacking,
    hung.map(({ bay }) => bay),
    plain,
  );
  return {
    over: gaps.slice(1, -1).reduce((sum, gap) => sum + Math.max(0, gap - largest), 0),
    unserved,
    missed:
      0 -
      wall.jointsIn.filter((joint) =>
        placed.some((at) => Math.abs(at - joint) <= wall.jointToleranceIn + 1e-6),
      ).length,
    passedOver,
    cost: Math.round(1000 * order.reduce((sum, tail) => sum + (tail.own?.cost ?? wall.weights.blockHung), 0)),
    hung: hung.length,
    squares: gaps.reduce((sum, gap) => sum + gap ** 2, 0),
  };
}

/** Which hung tails stand for which rafters: as many as can be, then as few as can be that have a free side. */
function standIns(
  lacking: readonly number[],
  bays: readonly number[],
  plain: (rafter: number) => boolean,
): { readonly unserved: number; readonly passedOver: number } {
  const [rafter, ...rest] = lacking;
  if (rafter === undefined) return { unserved: 0, passedOver: 0 };
  const without = standIns(rest, bays, plain);
  let best = { ...without, unserved: without.unserved + 1 };
  for (const bay of [rafter, rafter + 1]) {
    const index = bays.indexOf(bay);
    if (index === -1) continue;
    const left = standIns(rest, bays.toSpliced(index, 1), plain);
    const here = { unserved: left.unserved, passedOver: left.passedOver + (plain(rafter) ? 1 : 0) };
    if (
      here.unserved < best.unserved ||
      (here.unserved === best.unserved && here.passedOver < best.passedOver)
    )
      best = here;
  }
  return best;
}

function less(one: Score, other: Score): boolean {
  for (const key of ['unserved', 'over', 'missed', 'passedOver', 'cost', 'hung', 'squares'] as const)
    if (one[key] !== other[key]) return one[key] < other[key];
  return false;
}
