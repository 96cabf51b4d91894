import { clashToleranceIn } from '../in-the-way.ts';
import { isHung, type Candidate, type Choices, type RafterWish } from './candidate.ts';
import { compareScores, type Score } from './score.ts';

/** A candidate that was chosen. */
export type Chosen = {
  readonly candidate: Candidate;
  /** Index of the rafter that a hung tail stands for, -1 where it stands for none. */
  readonly standsFor: number;
};

/** The best layout: its tails from left to right, and how good it is. */
export type Solution = { readonly chosen: readonly Chosen[]; readonly score: Score };

/**
 * How the rafter on a bay's left stands while the bay is gone through: `met` has its tail, `due` takes one of its
 * candidates in this bay, `open` has none and may still be stood for by a tail hung in this bay.
 */
type Standing = 'met' | 'due' | 'open';

/** A layout of everything up to some place along the wall. */
type State = Score & {
  readonly last: Candidate | undefined;
  readonly left: Standing;
  /** Whether the rafter on the bay's right has its tail already. */
  readonly rightMet: boolean;
  readonly before: State | undefined;
  /** What this state added to the one before; the rafter that it stands for. */
  readonly standsFor: number;
  readonly added: boolean;
};

/**
 * Chooses the best layout among candidates: fewest rafters without a tail; least excess over the largest gap; most panel
 * joints on tails; fewest rafters passed over that have a side free; least cost of methods; fewest hung tails; most even
 * gaps. Held candidates are always taken; others overlap nothing. Exact over the candidates, whose middles count in 64ths,
 * by dynamic programming along the wall, bay by bay. Of two layouts that leave the rafters alike, one whose last tail lies
 * no further along and that is no better with a next tail right here can be dropped: the longer gap to any later tail
 * costs it more and more.
 * @param choices - candidates and wishes. [1/64 in]
 * @returns the chosen ones from left to right. The same choices always give the same answer.
 */
export function solve(choices: Choices): Solution {
  let states: readonly State[] = [nothingYet];
  for (const [bay, { candidates }] of choices.bays.entries()) {
    states = throughBay(states, candidates, bay, choices);
    const next = choices.rafters[bay];
    if (next !== undefined) states = pastRafter(states, next, bay, choices);
  }
  let best: State | undefined;
  for (const state of states) {
    const ended = withEnd(state, choices);
    if (best === undefined || compareScores(ended, best) < 0) best = ended;
  }
  if (best === undefined) throw new Error('no layout takes what is held');
  return { chosen: walkBack(best), score: scoreOf(best) };
}

const nothingYet: State = {
  over: 0,
  unserved: 0,
  missed: 0,
  passedOver: 0,
  cost: 0,
  hung: 0,
  squares: 0,
  last: undefined,
  left: 'met',
  rightMet: false,
  before: undefined,
  standsFor: -1,
  added: false,
};

function candidatesRightOf({ bays }: Choices, rafter: number): boolean {
  return (bays[rafter + 1]?.candidates ?? []).some((one) => one.rafter === rafter && !isHung(one));
}

/**
 * Every way to take candidates of a bay, each after those before it. Layouts whose last tail is out of the way of the next
 * candidate are `ready`; the others wait. A held candidate is taken even where every layout runs into it.
 * @param entering - by their last tails.
 * @returns by their last tails.
 */
function throughBay(
  entering: readonly State[],
  candidates: readonly Candidate[],
  bay: number,
  choices: Choices,
): readonly State[] {
  let ready: State[] = [];
  let waiting: readonly State[] = entering;
  for (const candidate of candidates) {
    const near: State[] = [];
    for (const state of waiting)
      (outOfTheWay(state.last, candidate, choices.roomIn) ? ready : near).push(state);
    ready = unbettered(ready, candidate.at, choices);
    const best: (State | undefined)[] = [];
    for (const state of ready) take(state, candidate, bay, choices, best);
    for (const state of near)
      if (standTogether(state.last, candidate, choices.roomIn)) take(state, candidate, bay, choices, best);
    if (candidate.heldId !== null && best.every((state) => state === undefined))
      for (const state of near) take(state, candidate, bay, choices, best);
    const taken = best.filter((state) => state !== undefined);
    if (candidate.heldId === null) waiting = [...near, ...taken];
    else [ready, waiting] = [[], taken];
  }
  return [...ready, ...waiting].filter(({ left }) => left !== 'due');
}

function outOfTheWay(last: Candidate | undefined, next: Candidate, roomIn: number): boolean {
  return last === undefined || next.leftIn - last.rightIn >= roomIn - clashToleranceIn;
}

/**
 * Drops the layouts that others, whose last tails lie further along, better both with a next tail, at a place or anywhere
 * beyond, and without any more. One without any tail yet stands apart: its first gap is held to nothing.
 * @param states - by their last tails.
 * @param at - the nearest place that a next tail can stand at. [1/64 in]
 */
function unbettered(states: readonly State[], at: number, choices: Choices): State[] {
  const bestGoingOn: (State | undefined)[] = [];
  const bestEnding: (State | undefined)[] = [];
  const kept: State[] = [];
  for (let index = states.length - 1; index >= 0; index -= 1) {
    const state = states[index];
    if (state === undefined) continue;
    const kind = standingNumber(state.left, state.rightMet) * 2 + (state.last === undefined ? 1 : 0);
    const goingOn = bestGoingOn[kind];
    const ending = bestEnding[kind];
    const goesOn = goingOn === undefined || compareAt(state, goingOn, at, choices, true) < 0;
    const ends = ending === undefined || compareAt(state, ending, at, choices, false) < 0;
    if (goesOn) bestGoingOn[kind] = state;
    if (ends) bestEnding[kind] = state;
    if (goesOn || ends) kept.push(state);
  }
  return kept.reverse();
}

/** Compares two layouts as they would be with a next tail at a place, or with the end of the run there. */
function compareAt(
  one: State,
  other: State,
  at: number,
  { from, largestGap }: Choices,
  withTail: boolean,
): number {
  const [oneGap, otherGap] = [at - (one.last?.at ?? from), at - (other.last?.at ?? from)];
  const held = withTail && one.last !== undefined;
  return (
    one.unserved - other.unserved ||
    one.over - other.over + (held ? overBy(oneGap, largestGap) - overBy(otherGap, largestGap) : 0) ||
    one.missed - other.missed ||
    one.passedOver - other.passedOver ||
    one.cost - other.cost ||
    one.hung - other.hung ||
    one.squares + oneGap ** 2 - (other.squares + otherGap ** 2)
  );
}

/** Adds a candidate to a layout in every way that it may stand there; of those that end alike the best is kept. */
function take(
  state: State,
  candidate: Candidate,
  bay: number,
  choices: Choices,
  best: (State | undefined)[],
): void {
  if (!isHung(candidate)) {
    if (candidate.heldId !== null) keep(state, candidate, state.left, state.rightMet, -1, choices, best);
    else if (candidate.rafter === bay - 1) {
      if (state.left === 'due') keep(state, candidate, 'met', state.rightMet, -1, choices, best);
    } else if (!state.rightMet) keep(state, candidate, state.left, true, -1, choices, best);
    return;
  }
  if (state.left === 'open' && choices.rafters[bay - 1]?.hungRight === true) {
    keep(state, candidate, 'met', state.rightMet, bay - 1, choices, best);
    return;
  }
  keep(state, candidate, state.left, state.rightMet, -1, choices, best);
  const right = choices.rafters[bay];
  if (right?.want === 'any' && right.hungLeft && !state.rightMet)
    keep(state, candidate, state.left, true, bay, choices, best);
}

/** Two neighbours may stand so unless they overlap; what is held stays whatever happens. A hung tail needs room. */
function standTogether(last: Candidate | undefined, next: Candidate, roomIn: number): boolean {
  if (last === undefined || (last.stubborn && next.stubborn)) return true;
  const needsRoom = (isHung(last) && last.heldId === null) || (isHung(next) && next.heldId === null);
  return next.leftIn - last.rightIn >= (needsRoom ? roomIn : 0) - clashToleranceIn;
}

/** A number for how both rafters of a bay stand. */
function standingNumber(left: Standing, rightMet: boolean): number {
  return (left === 'met' ? 0 : left === 'due' ? 2 : 4) + (rightMet ? 1 : 0);
}

function keep(
  state: State,
  candidate: Candidate,
  left: Standing,
  rightMet: boolean,
  standsFor: number,
  choices: Choices,
  best: (State | undefined)[],
): void {
  const { last } = state;
  const gap = candidate.at - (last?.at ?? choices.from);
  const carries = candidate.joint >= 0 && last?.joint !== candidate.joint;
  const over = state.over + (last === undefined ? 0 : overBy(gap, choices.largestGap));
  const unserved = state.unserved;
  const missed = state.missed - (carries ? 1 : 0);
  const passedOver = state.passedOver + (choices.rafters[standsFor]?.sideFree === true ? 1 : 0);
  const cost = state.cost + candidate.cost;
  const hung = state.hung + (isHung(candidate) ? 1 : 0);
  const squares = state.squares + gap ** 2;
  const number = standingNumber(left, rightMet);
  const known = best[number];
  // Written out, for this is gone through more often than all else together.
  if (
    known !== undefined &&
    (unserved - known.unserved ||
      over - known.over ||
      missed - known.missed ||
      passedOver - known.passedOver ||
      cost - known.cost ||
      hung - known.hung ||
      squares - known.squares) >= 0
  )
    return;
  const score = { over, unserved, missed, passedOver, cost, hung, squares };
  best[number] = { ...score, last: candidate, left, rightMet, before: state, standsFor, added: true };
}

function overBy(gap: number, largest: number): number {
  return Math.max(0, gap - largest);
}

/** Leaves a bay: what its left rafter lacks is counted, and its right rafter becomes the next bay's left one. */
function pastRafter(
  states: readonly State[],
  wish: RafterWish,
  rafter: number,
  choices: Choices,
): readonly State[] {
  const hasRight = candidatesRightOf(choices, rafter);
  const past: State[] = [];
  for (const state of states) {
    const unserved = state.unserved + (state.left === 'open' ? 1 : 0);
    const enter = (left: Standing): void => {
      past.push({ ...state, unserved, left, rightMet: false, before: state, standsFor: -1, added: false });
    };
    if (state.rightMet || wish.want === 'served') enter('met');
    else {
      if (hasRight) enter('due');
      if (wish.want === 'any') enter('open');
    }
  }
  return unbettered(past, choices.raftersAt[rafter] ?? 0, choices);
}

function withEnd(state: State, { from, to }: Choices): State {
  const gap = to - (state.last?.at ?? from);
  return {
    ...state,
    unserved: state.unserved + (state.left === 'open' ? 1 : 0),
    squares: state.squares + gap ** 2,
  };
}

function walkBack(end: State): readonly Chosen[] {
  const chosen: Chosen[] = [];
  let state: State | undefined = end;
  for (; state !== undefined; state = state.before)
    if (state.added && state.last !== undefined)
      chosen.push({ candidate: state.last, standsFor: state.standsFor });
  return chosen.reverse();
}

function scoreOf({ over, unserved, missed, passedOver, cost, hung, squares }: State): Score {
  return { over, unserved, missed, passedOver, cost, hung, squares };
}
