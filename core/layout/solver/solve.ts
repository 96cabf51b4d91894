import { clashToleranceIn } from '../in-the-way.ts';
import { isHung, type Candidate, type Choices, type RafterWish } from './candidate.ts';
import { compareScores, in64ths, type Score } from './score.ts';

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
 * Chooses the best layout among candidates: least excess over the largest gap; fewest rafters without a tail; most panel
 * joints on tails; fewest rafters passed over that have a side free; least cost of methods; fewest hung tails; most even gaps. Held candidates are always taken; others overlap
 * nothing. Exact over the candidates, by dynamic programming along the wall, bay by bay: of two layouts up to a rafter, one
 * that is no better and whose last tail lies no further along can be dropped, since whatever follows costs it no less.
 * @param choices - candidates and wishes. [in]
 * @returns the chosen ones from left to right. The same choices always give the same answer.
 */
export function solve(choices: Choices): Solution {
  let states: readonly State[] = [nothingYet];
  for (const [bay, { candidates }] of choices.bays.entries()) {
    states = throughBay(states, candidates, bay, choices);
    const next = choices.rafters[bay];
    if (next !== undefined) states = pastRafter(states, next, candidatesRightOf(choices, bay));
  }
  let best: State | undefined;
  for (const state of states) {
    const ended = withEnd(state, choices.toIn);
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

/** Every way to take candidates of a bay, each after those before it. */
function throughBay(
  entering: readonly State[],
  candidates: readonly Candidate[],
  bay: number,
  choices: Choices,
): readonly State[] {
  let states: State[] = [...entering];
  for (const candidate of candidates) {
    const best = new Map<number, State>();
    for (const state of states) take(state, candidate, bay, choices, best);
    if (candidate.heldId === null) states.push(...best.values());
    else states = [...best.values()];
  }
  return states.filter(({ left }) => left !== 'due');
}

/** Adds a candidate to a layout in every way that it may stand there; of those that end alike the best is kept. */
function take(
  state: State,
  candidate: Candidate,
  bay: number,
  choices: Choices,
  best: Map<number, State>,
): void {
  if (!standTogether(state.last, candidate, choices.roomIn)) return;
  if (!isHung(candidate)) {
    if (candidate.heldId !== null) keep(state, candidate, state.left, state.rightMet, -1, choices, best);
    else if (candidate.rafter === bay - 1) {
      if (state.left === 'due') keep(state, candidate, 'met', state.rightMet, -1, choices, best);
    } else if (!state.rightMet) keep(state, candidate, state.left, true, -1, choices, best);
    return;
  }
  const leftWish = choices.rafters[bay - 1];
  const rightWish = choices.rafters[bay];
  if (state.left === 'open' && leftWish?.hungRight === true) {
    keep(state, candidate, 'met', state.rightMet, bay - 1, choices, best);
    return;
  }
  keep(state, candidate, state.left, state.rightMet, -1, choices, best);
  if (rightWish?.want === 'any' && rightWish.hungLeft && !state.rightMet)
    keep(state, candidate, state.left, true, bay, choices, best);
}

/** Two neighbours may stand so unless they overlap; what is held stays whatever happens. A hung tail needs room. */
function standTogether(last: Candidate | undefined, next: Candidate, roomIn: number): boolean {
  if (last === undefined || (last.stubborn && next.stubborn)) return true;
  const needsRoom = (isHung(last) && last.heldId === null) || (isHung(next) && next.heldId === null);
  const clearIn = next.leftIn - last.rightIn;
  return needsRoom ? clearIn >= roomIn - clashToleranceIn : clearIn >= -clashToleranceIn;
}

const standingNumber: Readonly<Record<Standing, number>> = { met: 0, due: 1, open: 2 };

function keep(
  state: State,
  candidate: Candidate,
  left: Standing,
  rightMet: boolean,
  standsFor: number,
  choices: Choices,
  best: Map<number, State>,
): void {
  const { last } = state;
  const gapIn = candidate.centreIn - (last?.centreIn ?? choices.fromIn);
  const carries = candidate.joint >= 0 && last?.joint !== candidate.joint;
  const next: State = {
    over: state.over + (last === undefined ? 0 : overBy(gapIn, choices.gapIn)),
    unserved: state.unserved,
    missed: state.missed - (carries ? 1 : 0),
    passedOver: state.passedOver + (choices.rafters[standsFor]?.sideFree === true ? 1 : 0),
    cost: state.cost + candidate.cost,
    hung: state.hung + (isHung(candidate) ? 1 : 0),
    squares: state.squares + in64ths(gapIn) ** 2,
    last: candidate,
    left,
    rightMet,
    before: state,
    standsFor,
    added: true,
  };
  const key = standingNumber[left] * 2 + (rightMet ? 1 : 0);
  const known = best.get(key);
  if (known === undefined || compareScores(next, known) < 0) best.set(key, next);
}

function overBy(gapIn: number, largestIn: number): number {
  return Math.max(0, in64ths(gapIn - largestIn));
}

/** Leaves a bay: what its left rafter lacks is counted, and its right rafter becomes the next bay's left one. */
function pastRafter(states: readonly State[], wish: RafterWish, hasRight: boolean): readonly State[] {
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
  return undominated(past);
}

/**
 * Drops layouts that another one betters wherever the wall goes on. One without any tail yet stands apart: its first gap
 * is held to nothing, though it is the widest.
 */
function undominated(states: readonly State[]): readonly State[] {
  const kept: State[] = [];
  for (const standing of ['met', 'due', 'open'] as const) {
    const alike = states.filter(({ left }) => left === standing);
    const empty = alike.filter(({ last }) => last === undefined).toSorted(compareScores);
    kept.push(...empty.slice(0, 1));
    let best: State | undefined;
    for (const state of alike.toSorted((a, b) => centreOfLast(b) - centreOfLast(a) || compareScores(a, b))) {
      if (state.last === undefined || (best !== undefined && compareScores(state, best) >= 0)) continue;
      best = state;
      kept.push(state);
    }
  }
  return kept;
}

function centreOfLast({ last }: State): number {
  return last?.centreIn ?? Number.NEGATIVE_INFINITY;
}

function withEnd(state: State, toIn: number): State {
  const gapIn = toIn - (state.last?.centreIn ?? toIn);
  return {
    ...state,
    unserved: state.unserved + (state.left === 'open' ? 1 : 0),
    squares: state.squares + in64ths(gapIn) ** 2,
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
