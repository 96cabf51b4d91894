import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { lackSentences } from '../core/documents/lacks.ts';
import { makeSheet } from '../core/documents/make-sheet.ts';
import { sheetKinds } from '../core/documents/sheet.ts';
import { readJobFile } from '../core/job/read-job-file.ts';
import { searchLimitMs } from '../core/job/unsettled-plans.ts';
import { resultsJson } from '../core/job/results-json.ts';
import { inputOfWay } from '../core/offer/offered-ways.ts';
import type { Problem } from '../core/problems/problem.ts';
import { problemSentence } from '../core/problems/sentence.ts';
import { logBug } from './log.ts';
import { makePaper } from './paper/make-paper.ts';
import type { PaperSize } from './paper/paper-size.ts';
import { unprintableNote } from './paper/unprintable.ts';
import { computeProven, provenSupplierCosts } from './services/proven-job.ts';
import { provenWays } from './services/proven-ways.ts';
import { slowProgress } from './slow-progress.ts';
import { startCuttingPort } from './workers/cutting-port.ts';
import { createProver } from './workers/prover.ts';

const help = `Runs a whole job without a window: survey, design, takeoff, cut plan, estimate, papers.

npm run sample -- --out DIR [--job FILE] [--paper letter|a4] [--search SECONDS]

  --out DIR     folder for the files; made where it is missing
  --job FILE    job file to run; the sample job where absent
  --paper SIZE  letter or a4; the job's own setting where absent
  --search S    longest search for the boards of one stock; 10 where absent
  --help        this text

Writes one PDF a sheet: ${sheetKinds.map((kind) => `${kind}.pdf`).join(', ')};
and results.json, every figure with its unit in its name.
Problems go to standard error, one sentence a line, with the entry they are about in front.
What is worth knowing and leaves the sums whole begins with "note:" and does not change the exit code. A run of
more than 5 seconds says what it is doing.
Exit code 0: everything was computed and nothing is missing from the sums.
Exit code 1: the job cannot be computed (no files are written), or the sums lack something (the files are
written, and say on their first page that they are not complete).`;

/** Longest search that can be asked for. [s] */
const longestSearchS = 600;

const sampleJob = fileURLToPath(new URL('../fixtures/sample-job.json', import.meta.url));

/** Runs the job that the arguments name; returns the exit code. */
async function run(args: readonly string[]): Promise<number> {
  const options = readOptions(args);
  if (options === 'help') {
    console.log(help);
    return 0;
  }
  if (typeof options === 'string') {
    console.error(options);
    return 1;
  }
  let text: string;
  try {
    text = await readFile(options.job, 'utf8');
  } catch {
    console.error(`The job file ${options.job} cannot be read. Check its name and place.`);
    return 1;
  }
  const file = readJobFile(text);
  if (!file.ok) return complain(file.problem);
  const progress = slowProgress(5000, (line) => console.error(line));
  progress.at('Searching the boards that cost least.');
  const prover = createProver({
    startPort: startCuttingPort,
    reportBug: (error) => logBug('cutting', error),
  });
  const means = { prover, searchLimitMs: options.searchLimitMs };
  const computed = await computeProven(means, file.value);
  if (!computed.ok) {
    await prover.close();
    progress.end();
    return complain([computed.problem]);
  }
  const { result } = computed.value;
  const supplierCosts = await provenSupplierCosts(means, file.value, result);
  const proven = await provenWays(means, file.value);
  await prover.close();
  if (!proven.ok) {
    progress.end();
    return complain([proven.problem]);
  }
  const { ways } = proven.value;
  const [offered] = ways;
  const paper = options.paper ?? file.value.settings.paperSize;
  try {
    await mkdir(options.out, { recursive: true });
    await writeFile(
      join(options.out, 'results.json'),
      `${JSON.stringify(resultsJson(file.value, result), null, 2)}\n`,
    );
    const unprintable = new Set<string>();
    for (const [index, kind] of sheetKinds.entries()) {
      progress.at(`Making ${kind}.pdf, paper ${index + 1} of ${sheetKinds.length}.`);
      // The quote is of the way that is offered first, every other paper of the design as it is drawn.
      const sheet =
        kind === 'quote' && offered !== undefined
          ? makeSheet(kind, inputOfWay(file.value, offered), offered.result, { ways })
          : makeSheet(kind, file.value, result, { supplierCosts });
      const made = await makePaper(sheet, paper);
      await writeFile(join(options.out, `${kind}.pdf`), made.pdf);
      for (const character of made.unprintable) unprintable.add(character);
    }
    if (unprintable.size > 0) console.error(`note: ${unprintableNote([...unprintable])}`);
  } catch (error) {
    if (!isFileError(error)) throw error;
    console.error(`The files cannot be written to ${options.out} (${error.code}). Choose another folder.`);
    return 1;
  } finally {
    progress.end();
  }
  for (const note of result.estimate.notes) console.error(`note: ${told(note)}`);
  const lacks = lackSentences(result);
  for (const sentence of lacks) console.error(`missing from the sums: ${sentence}`);
  return lacks.length === 0 ? 0 : 1;
}

type Options = {
  readonly out: string;
  readonly job: string;
  readonly paper: PaperSize | undefined;
  /** [ms] */
  readonly searchLimitMs: number;
};

function readOptions(args: readonly string[]): Options | string {
  let values: { out?: string; job?: string; paper?: string; search?: string; help?: boolean };
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: {
        out: { type: 'string' },
        job: { type: 'string' },
        paper: { type: 'string' },
        search: { type: 'string' },
        help: { type: 'boolean' },
      },
    }));
  } catch (error) {
    return `${withStop(error instanceof Error ? error.message : String(error))} Run with --help to see what is understood.`;
  }
  if (values.help === true) return 'help';
  if (values.out === undefined || values.out === '') return 'Say where the files go: --out DIR. See --help.';
  if (values.paper !== undefined && values.paper !== 'letter' && values.paper !== 'a4') {
    return `"${values.paper}" is not a paper size known here. Write --paper letter or --paper a4.`;
  }
  const searchS = values.search === undefined ? searchLimitMs / 1000 : Number(values.search);
  if (!(searchS > 0 && searchS <= longestSearchS))
    return `"${values.search}" is no time to search. Write seconds, like --search 10, up to ${longestSearchS}.`;
  return {
    out: values.out,
    job: values.job ?? sampleJob,
    paper: values.paper,
    searchLimitMs: searchS * 1000,
  };
}

function withStop(sentence: string): string {
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}

function complain(problems: readonly Problem[]): 1 {
  for (const problem of problems) console.error(told(problem));
  return 1;
}

/** A problem as one line, the entry it is about in front. */
function told(problem: Problem): string {
  const sentence = problemSentence(problem);
  return problem.field === undefined ? sentence : `${problem.field}: ${sentence}`;
}

function isFileError(error: unknown): error is Error & { readonly code: string } {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' && 'syscall' in error;
}

process.exitCode = await run(process.argv.slice(2));
