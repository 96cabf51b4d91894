import GLPK from 'glpk.js/node';
import jsLpSolver from 'javascript-lp-solver';
import { solve as solveYalps } from 'yalps';
import { partsOfCent } from '../../core/cutting/column.ts';
import { centsOf, cuttingModel } from '../../core/cutting/cutting-model.ts';
import { enumeratePatterns } from '../../core/cutting/exact/enumerate-patterns.ts';
import { quickParts } from '../../core/cutting/plan-cuts.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/** What a solver answers about a list of patterns: its cost, and whether it calls it the least. [cents] */
export type RivalAnswer = { readonly cost: number; readonly claimsOptimal: boolean };

/** A list of patterns as every solver gets it: what a board costs, what it gives by size, and of what stock it is. */
type PatternList = {
  readonly patterns: readonly {
    readonly cents: number;
    readonly stock: number;
    readonly cut: readonly (readonly [size: number, count: number])[];
  }[];
  readonly demand: readonly number[];
  readonly available: readonly number[];
};

/** Other solvers of integer programs, each given the patterns that our own listing finds for our quick plan. */
export async function rivals(): Promise<
  Readonly<Record<string, (list: PatternList, limitMs: number) => RivalAnswer>>
> {
  const glpk = await GLPK();
  return {
    'glpk.js': (list, limitMs) => {
      const answer = glpk.solve(
        {
          name: 'boards',
          objective: {
            direction: glpk.GLP_MIN,
            name: 'cents',
            vars: list.patterns.map(({ cents }, index) => ({ name: `x${index}`, coef: cents })),
          },
          subjectTo: [
            ...list.demand.map((count, size) => ({
              name: `size${size}`,
              vars: list.patterns.flatMap(({ cut }, index) =>
                cut.filter(([one]) => one === size).map(([, coef]) => ({ name: `x${index}`, coef })),
              ),
              bnds: { type: glpk.GLP_LO, lb: count, ub: 0 },
            })),
            ...list.available.flatMap((boards, stock) =>
              boards === Number.POSITIVE_INFINITY
                ? []
                : [
                    {
                      name: `stock${stock}`,
                      vars: list.patterns.flatMap((pattern, index) =>
                        pattern.stock === stock ? [{ name: `x${index}`, coef: 1 }] : [],
                      ),
                      bnds: { type: glpk.GLP_UP, ub: boards, lb: 0 },
                    },
                  ],
            ),
          ],
          generals: list.patterns.map((_, index) => `x${index}`),
        },
        { msglev: glpk.GLP_MSG_OFF, presol: true, mipgap: 0, tmlim: Math.ceil(limitMs / 1000) },
      );
      return { cost: Math.round(answer.result.z), claimsOptimal: answer.result.status === glpk.GLP_OPT };
    },
    yalps: (list, limitMs) => {
      const answer = solveYalps(
        { ...namedModel(list), direction: 'minimize', objective: 'cents', integers: true },
        { tolerance: 0, timeout: limitMs, maxIterations: Number.POSITIVE_INFINITY, maxPivots: 1e9 },
      );
      return { cost: Math.round(answer.result), claimsOptimal: answer.status === 'optimal' };
    },
    'javascript-lp-solver': (list, limitMs) => {
      const { constraints, variables } = namedModel(list);
      const start = performance.now();
      const answer: unknown = jsLpSolver.Solve({
        optimize: 'cents',
        opType: 'min',
        constraints,
        variables,
        ints: Object.fromEntries(list.patterns.map((_, index) => [`x${index}`, 1])),
        timeout: limitMs,
      });
      const { feasible, result } = answer as { readonly feasible: boolean; readonly result: number };
      // It does not say whether it was stopped: a search that ended in time has seen everything.
      return {
        cost: feasible ? Math.round(result) : Number.POSITIVE_INFINITY,
        claimsOptimal: feasible && performance.now() - start < limitMs,
      };
    },
  };
}

/** The patterns that a plan cheaper than the quick one can use; undefined where the quick one is proven already. */
export function patternsForRivals(problem: CuttingProblem): PatternList | undefined {
  const modelled = cuttingModel(problem);
  const quick = quickParts(problem);
  if (!modelled.ok || !quick.ok) return undefined;
  const { model, proven, loads, boundCents } = quick.value.parts;
  const cost = centsOf(model, loads);
  if (cost === boundCents) return undefined;
  const { columns, complete } = enumeratePatterns(model, proven, {
    slack: cost * partsOfCent - proven.parts,
    mostColumns: 50_000,
    mostSteps: 50_000_000,
    stopped: () => false,
  });
  if (!complete) return undefined;
  return {
    patterns: columns.map(({ cents, stock, sizes, counts }) => ({
      cents,
      stock,
      cut: sizes.map((size, place) => [size, counts[place] ?? 0] as const),
    })),
    demand: model.sizes.map(({ demand }) => demand),
    available: model.stocks.map(({ available }) => available),
  };
}

function namedModel({ patterns, demand, available }: PatternList): {
  readonly constraints: Record<string, { readonly min?: number; readonly max?: number }>;
  readonly variables: Record<string, Record<string, number>>;
} {
  return {
    constraints: {
      ...Object.fromEntries(demand.map((count, size) => [`size${size}`, { min: count }])),
      ...Object.fromEntries(
        available.flatMap((boards, stock) =>
          boards === Number.POSITIVE_INFINITY ? [] : [[`stock${stock}`, { max: boards }] as const],
        ),
      ),
    },
    variables: Object.fromEntries(
      patterns.map(({ cents, stock, cut }, index) => [
        `x${index}`,
        {
          cents,
          [`stock${stock}`]: 1,
          ...Object.fromEntries(cut.map(([size, count]) => [`size${size}`, count])),
        },
      ]),
    ),
  };
}
