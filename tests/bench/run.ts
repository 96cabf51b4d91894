import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Decimal } from 'decimal.js';
import { runChecks } from '../../core/checks/run-checks.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { ensureBrowser } from '../app/ensure-browser.ts';
import { sideBySide } from './measure.ts';
import { lengthenJob } from './lengthen-job.ts';
import { timeLayout } from './layout.ts';
import { timePriceHistory } from './price-history.ts';
import { timePriceImport } from './price-import.ts';
import { timeStart } from './start-time.ts';
import { timeStore } from './store.ts';

/**
 * `npm run bench`: medians and ratios, measured side by side in one run. One line of JSON a figure. The exact cut plans
 * come last, in a process of their own that is given what follows `--` (cutting.ts).
 */
const sample = readSample();
const long = lengthenJob(sample, 50);

const sampleResult = compute(sample);
const recompute = await sideBySide(
  {
    sample: () => compute(sample),
    'sample x 50': () => compute(long),
    checks: () => runChecks(sample, sampleResult),
  },
  9,
);
const sampleMs = recompute['sample'] ?? Number.NaN;
const longMs = recompute['sample x 50'] ?? Number.NaN;
print('checks beside the computation they follow', {
  checksMs: round(recompute['checks'] ?? Number.NaN),
  sampleMs: round(sampleMs),
  ratio: round((recompute['checks'] ?? Number.NaN) / sampleMs),
});
print('recompute survey to estimate', {
  sampleMs: round(sampleMs),
  times50Ms: round(longMs),
  ratio: round(longMs / sampleMs),
});

for (const [name, input] of [
  ['sample', sample],
  ['sample x 50', long],
] as const) {
  const { cutPlans } = compute(input);
  const cost = sum(cutPlans.map((plan) => plan.costUsd));
  const bound = sum(cutPlans.map((plan) => plan.boundUsd));
  const oneLength = sum(cutPlans.map((plan) => plan.oneLengthUsd ?? plan.costUsd));
  print(`boards bought, ${name}`, {
    costUsd: cost.toFixed(2),
    boundUsd: bound.toFixed(2),
    overBound: round(cost.div(bound).toNumber()),
    firstFitOneLengthUsd: oneLength.toFixed(2),
    costOverOneLength: round(cost.div(oneLength).toNumber()),
  });
}

for (const figures of await timeLayout()) print('layout of an eave', figures);
print('start to first usable screen', await timeStart(ensureBrowser()));
print('import of a price list of 100,000 rows beside a bare loop of inserts', await timePriceImport());
print('a shop after ten years beside one of 200 jobs', await timeStore());

print('prices over time, a million beside ten thousand', await timePriceHistory());

const cutting = fileURLToPath(new URL('cutting.ts', import.meta.url));
process.exitCode =
  spawnSync(process.execPath, [cutting, ...process.argv.slice(2)], { stdio: 'inherit' }).status ?? 1;

function readSample(): JobInput {
  const text = readFileSync(
    fileURLToPath(new URL('../../fixtures/sample-job.json', import.meta.url)),
    'utf8',
  );
  const file = readJobFile(text);
  if (!file.ok) throw new Error(JSON.stringify(file.problem));
  return file.value;
}

function compute(input: JobInput): JobResult {
  const result = computeJob(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

function sum(amounts: readonly string[]): Decimal {
  return amounts.reduce<Decimal>((total, amount) => total.plus(amount), new Decimal(0));
}

function round(value: number): number {
  return Number(value.toPrecision(4));
}

function print(figure: string, values: Readonly<Record<string, unknown>>): void {
  console.log(JSON.stringify({ figure, ...values }));
}
