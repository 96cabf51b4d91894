/**
 * Measures the cut plan on instances with known optima: `node tests/bench/cutting.ts --instances DIR`.
 * Reads every `yard*.json` of DIR (`instances: [{ name, stock: [{ len, cost, max }], items: [[len, demand]], opt }]`,
 * whole units, kerf already in the lengths) and prints one line of JSON each, then the means. Instances with a limited
 * stock length are passed over, since the plan buys as many as it needs.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { planCuts } from '../../core/cutting/plan-cuts.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';

const instanceFile = z.object({
  instances: z.array(
    z.object({
      name: z.string(),
      stock: z.array(z.object({ len: z.number(), cost: z.number(), max: z.number().nullable() })),
      items: z.array(z.tuple([z.number(), z.number()])),
      opt: z.number(),
    }),
  ),
});
type Instance = z.infer<typeof instanceFile>['instances'][number];

const { values } = parseArgs({ options: { instances: { type: 'string' } } });
if (values.instances === undefined) {
  console.error('Say where the instances are: --instances DIR');
  process.exit(1);
}
const directory = values.instances;
const instances = readdirSync(directory)
  .filter((name) => /^yard.*\.json$/.test(name))
  .toSorted()
  .flatMap((name) => instanceFile.parse(JSON.parse(readFileSync(join(directory, name), 'utf8'))).instances);

const measured = instances
  .filter(({ stock }) => stock.every(({ max }) => max === null))
  .map((instance) => {
    const problem = problemOf(instance);
    const start = performance.now();
    const plan = planCuts(problem);
    const ms = performance.now() - start;
    if (!plan.ok) throw new Error(`${instance.name}: ${plan.problem.code}`);
    const cost = Math.round(Number(plan.value.costUsd) * 100);
    const bound = Math.round(Number(plan.value.boundUsd) * 100);
    const oneLength = Math.round(Number(plan.value.oneLengthUsd) * 100);
    const row = {
      name: instance.name,
      cost,
      bound,
      opt: instance.opt,
      status: plan.value.status,
      ms,
      oneLength,
    };
    console.log(JSON.stringify({ ...row, ms: Number(ms.toFixed(1)) }));
    return row;
  });

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
const sortedMs = measured.map(({ ms }) => ms).toSorted((a, b) => a - b);
console.log(
  JSON.stringify({
    instances: measured.length,
    passedOver: instances.length - measured.length,
    meanCostOverOptimum: mean(measured.map(({ cost, opt }) => cost / opt)),
    worstCostOverOptimum: Math.max(...measured.map(({ cost, opt }) => cost / opt)),
    meanBoundOverOptimum: mean(measured.map(({ bound, opt }) => bound / opt)),
    boundAboveOptimum: measured.filter(({ bound, opt }) => bound > opt).length,
    atOptimum: measured.filter(({ cost, opt }) => cost === opt).length,
    provenOptimal: measured.filter(({ status }) => status === 'optimal').length,
    meanCostOverOneLength: mean(measured.map(({ cost, oneLength }) => cost / oneLength)),
    msMedian: sortedMs[Math.floor(sortedMs.length / 2)],
    msMax: sortedMs.at(-1),
  }),
);

function problemOf(instance: Instance): CuttingProblem {
  return {
    stock: { section: '2x6', grade: '' },
    items: instance.items.flatMap(([length, demand]) =>
      Array.from({ length: demand }, (_, index) => ({
        mark: `${length}-${index}`,
        lengthSixteenths: length as Sixteenths,
      })),
    ),
    lengths: instance.stock.map(({ len, cost }) => ({
      itemId: `L${len}`,
      lengthSixteenths: len as Sixteenths,
      priceCents: cost,
    })),
    kerfSixteenths: 0 as Sixteenths,
    endTrimSixteenths: 0 as Sixteenths,
  };
}
