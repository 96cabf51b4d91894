/**
 * Measures exact cut plans: `node tests/bench/cutting.ts`, and as the last part of `npm run bench`.
 *
 *   --standard N --limited N --large N --slanted N   jobs of each class, made from seeds (cutting-classes.ts)
 *   --seed S          the first seed
 *   --limit MS        time for one job
 *   --rivals N        jobs that other solvers are given as well, each for --rivalLimit MS
 *   --instances DIR   instances with known optima (cutting-instances.ts)
 *
 * One line of JSON an instance, then one a class. `ms` is the time until the cost was proven, by the clock, `cpuMs` the
 * same in time of the processor, which other work on the machine does not lengthen; what is spent on ties comes after.
 */
import { parseArgs } from 'node:util';
import { allOf } from '../../core/cutting/column.ts';
import { centsOf, cuttingModel } from '../../core/cutting/cutting-model.ts';
import { fitDecreasing } from '../../core/cutting/fit-decreasing.ts';
import { openingOrders } from '../../core/cutting/greedy-loads.ts';
import { solveExactly } from '../../core/cutting/exact/solve-exactly.ts';
import { loadLinearPrograms } from '../../electron/workers/highs-programs.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import { jobClasses, makeJob } from './cutting-classes.ts';
import { readInstances } from './cutting-instances.ts';
import { patternsForRivals, rivals } from './cutting-rivals.ts';
import { median } from './measure.ts';

const whole = { type: 'string' } as const;
const { values } = parseArgs({
  options: {
    standard: { ...whole, default: '60' },
    limited: { ...whole, default: '30' },
    large: { ...whole, default: '12' },
    slanted: { ...whole, default: '30' },
    seed: { ...whole, default: '100001' },
    limit: { ...whole, default: '10000' },
    rivals: { ...whole, default: '8' },
    rivalLimit: { ...whole, default: '5000' },
    instances: whole,
  },
});
const firstSeed = Number(values.seed);
const limitMs = Number(values.limit);
const programs = await loadLinearPrograms();

type Row = {
  readonly name: string;
  readonly cost: number;
  readonly bound: number;
  readonly status: string;
  readonly proof: string;
  readonly tiesProven: boolean;
  readonly ms: number;
  readonly cpuMs: number;
  readonly allMs: number;
  /** Best of first-fit and best-fit decreasing started on every length, each board then swapped for the cheapest. */
  readonly heuristic: number;
  readonly oneLength: number | null;
  readonly opt: number | null;
};

// The solver is compiled while it first runs; that is no part of any job.
for (let seed = 1; seed <= 20; seed += 1) solveOne('warm-up', makeJob('standard', seed), null);

for (const kind of jobClasses) {
  const count = Number(values[kind]);
  const rows = Array.from({ length: count }, (_, index) => {
    const seed = firstSeed + index;
    return printed(solveOne(`${kind}-${seed}`, makeJob(kind, seed), null));
  });
  if (count > 0) summarize(kind, rows);
}

if (values.instances !== undefined)
  for (const [set, instances] of readInstances(values.instances))
    summarize(
      set,
      instances.map(({ name, problem, opt }) => printed(solveOne(name, problem, opt))),
    );

await compareWithRivals(Number(values.rivals), Number(values.rivalLimit));

function solveOne(name: string, problem: CuttingProblem, opt: number | null): Row {
  const start = performance.now();
  const cpuStart = process.cpuUsage();
  const proven = { ms: Number.NaN, cpuMs: Number.NaN };
  const plan = solveExactly(problem, programs, {
    stopped: () => performance.now() - start > limitMs,
    onProgress: ({ costCents, boundCents }) => {
      if (costCents !== boundCents || !Number.isNaN(proven.ms)) return;
      proven.ms = performance.now() - start;
      proven.cpuMs = cpuSince(cpuStart);
    },
  });
  const allMs = performance.now() - start;
  if (!plan.ok) throw new Error(`${name}: ${plan.problem.code}`);
  const { status, proof, tiesProven, costUsd, boundUsd, oneLengthUsd } = plan.value;
  return {
    name,
    cost: cents(costUsd),
    bound: cents(boundUsd),
    status,
    proof,
    tiesProven,
    ms: Number.isNaN(proven.ms) ? allMs : proven.ms,
    cpuMs: Number.isNaN(proven.cpuMs) ? cpuSince(cpuStart) : proven.cpuMs,
    allMs,
    heuristic: heuristicCents(problem),
    oneLength: oneLengthUsd === null ? null : cents(oneLengthUsd),
    opt,
  };
}

function heuristicCents(problem: CuttingProblem): number {
  const modelled = cuttingModel(problem);
  if (!modelled.ok) throw new Error(modelled.problem.code);
  const { model } = modelled.value;
  const costs = openingOrders(model).flatMap((order) =>
    (['first', 'best'] as const).map((fit) => {
      const loads = fitDecreasing(model, allOf(model), order, fit);
      return loads === undefined ? Number.POSITIVE_INFINITY : centsOf(model, loads);
    }),
  );
  return Math.min(...costs);
}

function printed(row: Row): Row {
  const { ms, cpuMs, allMs, opt, ...rest } = row;
  console.log(
    JSON.stringify({
      ...rest,
      ms: round(ms),
      cpuMs: round(cpuMs),
      allMs: round(allMs),
      ...(opt === null ? {} : { opt }),
    }),
  );
  return row;
}

function summarize(figure: string, rows: readonly Row[]): void {
  const proven = rows.filter(({ status }) => status === 'optimal');
  const gaps = rows.map(({ cost, bound }) => (cost === bound ? 0 : (cost - bound) / bound));
  const known = rows.flatMap(({ cost, bound, opt }) => (opt === null ? [] : [{ cost, bound, opt }]));
  const oneLength = rows.flatMap((row) => (row.oneLength === null ? [] : [row.cost / row.oneLength]));
  console.log(
    JSON.stringify({
      figure: `cut plans, ${figure}`,
      jobs: rows.length,
      proven: proven.length,
      inWholeNumbers: rows.filter(({ proof }) => proof === 'exact-bound').length,
      tiesProven: rows.filter(({ tiesProven }) => tiesProven).length,
      worstGapPercent: round(100 * Math.max(...gaps)),
      ...times(
        'ms',
        rows.map(({ ms }) => ms),
      ),
      ...times(
        'cpuMs',
        rows.map(({ cpuMs }) => cpuMs),
      ),
      ...times(
        'allMs',
        rows.map(({ allMs }) => allMs),
      ),
      costOverHeuristic: round(mean(rows.map(({ cost, heuristic }) => cost / heuristic))),
      costOverOneLength: round(mean(oneLength)),
      ...(known.length === 0
        ? {}
        : {
            atKnownOptimum: known.filter(({ cost, opt }) => cost === opt).length,
            belowKnownOptimum: known.filter(({ cost, opt }) => cost < opt).length,
            boundAboveKnownOptimum: known.filter(({ bound, opt }) => bound > opt).length,
            provenWithinASecond: proven.filter(({ ms }) => ms <= 1000).length,
          }),
    }),
  );
}

/** Side by side, one job after the other: our own solve, and others with our patterns, all with the same time. */
async function compareWithRivals(count: number, rivalLimitMs: number): Promise<void> {
  if (count === 0) return;
  const others = await rivals();
  const results = new Map<string, { proven: number; found: number; ms: number[] }>();
  const note = (name: string, proven: boolean, found: boolean, ms: number): void => {
    const known = results.get(name) ?? { proven: 0, found: 0, ms: [] };
    results.set(name, {
      proven: known.proven + Number(proven),
      found: known.found + Number(found),
      ms: [...known.ms, ms],
    });
  };
  let jobs = 0;
  for (let seed = firstSeed; jobs < count; seed += 1) {
    const problem = makeJob('standard', seed);
    // Where bounds and heuristics settle it at once there is nothing to compare.
    const list = patternsForRivals(problem);
    if (list === undefined) continue;
    jobs += 1;
    const own = solveOne(`standard-${seed}`, problem, null);
    note('own', own.status === 'optimal' && own.ms <= rivalLimitMs, true, own.ms);
    for (const [name, solve] of Object.entries(others)) {
      const start = performance.now();
      const { cost, claimsOptimal } = solve(list, rivalLimitMs);
      const ms = performance.now() - start;
      note(name, claimsOptimal && ms <= rivalLimitMs && cost === own.cost, cost === own.cost, ms);
      if (claimsOptimal && cost !== own.cost)
        console.log(
          JSON.stringify({ name: `standard-${seed}`, solver: name, claims: cost, least: own.cost }),
        );
    }
  }
  for (const [solver, { proven, found, ms }] of results)
    console.log(
      JSON.stringify({
        figure: 'cut plans beside other solvers given our patterns',
        solver,
        jobs,
        limitMs: rivalLimitMs,
        provenInTime: proven,
        foundTheLeast: found,
        ...times('ms', ms),
      }),
    );
}

function times(name: string, taken: readonly number[]): Readonly<Record<string, number>> {
  const sorted = taken.toSorted((a, b) => a - b);
  const last = sorted.length - 1;
  return {
    [`${name}Median`]: round(median(sorted)),
    [`${name}P95`]: round(sorted[Math.min(last, Math.floor(sorted.length * 0.95))] ?? Number.NaN),
    [`${name}Max`]: round(sorted[last] ?? Number.NaN),
  };
}

function cpuSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function cents(usd: string): number {
  return Math.round(Number(usd) * 100);
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}

function round(value: number): number {
  return Number(value.toPrecision(4));
}
