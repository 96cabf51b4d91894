import type { CutPlan, CuttingProblem, ProofKind } from '../cutting/cut-plan-types.ts';
import { areShorter, planOfShorter } from '../cutting/shorter-pieces.ts';
import { stockGroup } from '../cutting/stock-group.ts';
import { centsOfUsd, usdOfCents, withBound } from '../cutting/with-bound.ts';
import type { BoardQuestions } from './board-questions.ts';
import type { PlaceCost } from './cost-staircase.ts';
import type { KeyedProblem } from './unsettled-plans.ts';

/** What is known of the boards of a job at several overhangs, stock by stock. */
export type OverhangLadder = {
  /** Takes the questions of one overhang; what is known at others is carried over. [in] */
  readonly add: (overhangIn: number, questions: BoardQuestions) => void;
  /** Takes a plan of some overhang's question; it counts at once wherever it tells anything. */
  readonly learn: (key: string, plan: CutPlan) => void;
  /** Questions of an overhang whose cost and bound are not yet one. */
  readonly open: (overhangIn: number) => readonly KeyedProblem[];
  /** Every overhang asked about, from the least up. */
  readonly costs: () => readonly PlaceCost[];
  /** The best plans at an overhang, by key; those that have a bound of their own. */
  readonly plans: (overhangIn: number) => ReadonlyMap<string, CutPlan>;
};

/** One stock at one overhang. */
type Rung = {
  readonly key: string;
  readonly problem: CuttingProblem;
  /** The cheapest plan known. */
  plan: CutPlan | null;
  /** A plan that was made for just this question, whose bound and certificate are its own. */
  own: CutPlan | null;
  boundCents: number;
  proof: Exclude<ProofKind, 'none'>;
};

type Place = { readonly overhangIn: number; readonly rungs: ReadonlyMap<string, Rung> | null };

/**
 * Keeps what is known of the boards over the overhang. Where each piece of an overhang is no longer than one of the next,
 * the plan of the next one does for it too, and its own bound holds for the next: plans are carried down and bounds up, so
 * that costs rise with the overhang by construction, and one proof settles its neighbours.
 * Worked: boards of 63.03 $ known at 16 in. and of 62.94 $ at 16-1/4 in. -> 62.94 $ at 16 in. too.
 */
export function createOverhangLadder(): OverhangLadder {
  const places: Place[] = [];

  const neighbour = (at: number, step: 1 | -1, group: string): Rung | undefined =>
    places[at + step]?.rungs?.get(group);

  /** Carries the plan of a rung down as long as it is cheaper there than what is known. */
  const carryDown = (from: number, group: string): void => {
    for (let at = from; at > 0; at -= 1) {
      const above = places[at]?.rungs?.get(group);
      const below = neighbour(at, -1, group);
      if (above?.plan == null || below === undefined) return;
      if (below.plan !== null && centsOfUsd(below.plan.costUsd) <= below.boundCents) return;
      const carried =
        above.key === below.key ? above.plan : planOfShorter(below.problem, above.problem, above.plan);
      if (carried === undefined || !isCheaper(carried, below.plan)) return;
      below.plan = carried;
    }
  };
  /** Carries the bound of a rung up as long as it is higher than what is known. */
  const carryUp = (from: number, group: string): void => {
    for (let at = from; ; at += 1) {
      const below = places[at]?.rungs?.get(group);
      const above = neighbour(at, 1, group);
      if (below === undefined || above === undefined || below.boundCents <= above.boundCents) return;
      if (below.key !== above.key && !areShorter(below.problem, above.problem)) return;
      above.boundCents = below.boundCents;
      above.proof = below.proof;
    }
  };
  const carry = (at: number, group: string): void => {
    carryDown(at, group);
    carryUp(at, group);
  };
  const rungsOf = (overhangIn: number): readonly Rung[] => {
    const place = places.find((one) => one.overhangIn === overhangIn);
    return [...(place?.rungs?.values() ?? [])];
  };

  return {
    add(overhangIn, questions) {
      const at = places.findIndex((place) => place.overhangIn > overhangIn);
      const index = at === -1 ? places.length : at;
      const rungs =
        questions === null
          ? null
          : new Map(questions.map((question) => [stockGroup(question.problem.stock), emptyRung(question)]));
      places.splice(index, 0, { overhangIn, rungs });
      for (const group of rungs?.keys() ?? []) {
        carryDown(index + 1, group);
        if (index > 0) carryUp(index - 1, group);
        carry(index, group);
      }
    },
    learn(key, plan) {
      for (const [at, { rungs }] of places.entries())
        for (const [group, rung] of rungs ?? []) {
          if (rung.key !== key) continue;
          if (rung.own === null || isCheaper(plan, rung.own) || plan.boundUsd !== rung.own.boundUsd)
            rung.own = plan;
          if (isCheaper(plan, rung.plan)) rung.plan = plan;
          // With a worth on boards the bound counts that worth too, and says nothing of the cost alone.
          const bound = plan.centsPerBoard === 0 || plan.proof !== 'none' ? centsOfUsd(plan.boundUsd) : 0;
          if (bound > rung.boundCents) {
            rung.boundCents = bound;
            rung.proof = plan.proof === 'exact-bound' ? 'exact-bound' : 'solver-tree';
          }
          carry(at, group);
        }
    },
    open: (overhangIn) =>
      rungsOf(overhangIn)
        .filter(({ plan, boundCents }) => plan === null || centsOfUsd(plan.costUsd) > boundCents)
        .map(({ key, problem }) => ({ key, problem })),
    costs: () => places.map(costOfPlace),
    plans: (overhangIn) =>
      new Map(
        rungsOf(overhangIn).flatMap((rung) => {
          const plan = wholePlan(rung);
          return plan === null ? [] : [[rung.key, plan] as const];
        }),
      ),
  };
}

function emptyRung({ key, problem }: KeyedProblem): Rung {
  return { key, problem, plan: null, own: null, boundCents: 0, proof: 'exact-bound' };
}

/** Whether a plan is to be preferred to another: it costs less, or as little with fewer boards. */
function isCheaper(one: CutPlan, other: CutPlan | null): boolean {
  if (other === null) return true;
  const byCents = centsOfUsd(one.costUsd) - centsOfUsd(other.costUsd);
  return byCents < 0 || (byCents === 0 && one.boards.length < other.boards.length);
}

/** A plan with the bound that is known, and with what only a plan of just this question can tell. */
function wholePlan({ plan, own, boundCents, proof }: Rung): CutPlan | null {
  if (plan === null) return null;
  const { certificate, oneLengthUsd, oneLengthFt } = own ?? plan;
  const cost = centsOfUsd(plan.costUsd);
  return plan === own && centsOfUsd(plan.boundUsd) >= boundCents
    ? plan
    : withBound({ ...plan, certificate, oneLengthUsd, oneLengthFt }, Math.min(boundCents, cost), proof);
}

function costOfPlace({ overhangIn, rungs }: Place): PlaceCost {
  const all = [...(rungs?.values() ?? [])];
  if (rungs === null || all.some(({ plan }) => plan === null))
    return { overhangIn, boardsUsd: null, boundUsd: null, proof: 'none', hasNoBoard: rungs === null };
  const cents = all.reduce((sum, { plan }) => sum + (plan === null ? 0 : centsOfUsd(plan.costUsd)), 0);
  const bound = all.reduce((sum, { boundCents }) => sum + boundCents, 0);
  return {
    overhangIn,
    boardsUsd: usdOfCents(cents),
    boundUsd: usdOfCents(Math.min(bound, cents)),
    proof:
      bound < cents
        ? 'none'
        : all.every(({ proof }) => proof === 'exact-bound')
          ? 'exact-bound'
          : 'solver-tree',
    hasNoBoard: false,
  };
}
