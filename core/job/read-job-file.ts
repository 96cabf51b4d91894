import type { z } from 'zod';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { entryName } from './entry-name.ts';
import { jobFileSchema, type JobFile } from './job-file.ts';
import { fileProblems } from './file-problems.ts';
import { jsonFaultLine } from './json-fault.ts';
import { trimNames } from './trim-names.ts';

/**
 * Reads a job file of the schema in fixtures/job-file.md.
 * @param text - the file as text.
 * @returns the job with every default filled in and every length in inches; or each problem of the file, with the
 * dotted path of its entry.
 */
export function readJobFile(text: string): Result<JobFile, readonly Problem[]> {
  const parsed = parseJson(text);
  if (!parsed.ok) return fail([parsed.problem]);
  const notAJob = strangeFile(parsed.value);
  if (notAJob !== undefined) return fail([notAJob]);
  const read = jobFileSchema.safeParse(parsed.value);
  if (!read.success) return fail(entryProblems(read.error.issues, parsed.value).map(withoutBlankField));
  const file = trimNames(read.data);
  const problems = fileProblems(file);
  return problems.length === 0 ? ok(file) : fail(problems);
}

/**
 * Turns what a schema found into problems with a sentence for people.
 * @param issues - of zod; those made by core/survey/fields.ts carry their problem.
 * @param document - what was read, to tell a missing entry from a wrong one.
 */
export function entryProblems(issues: readonly z.core.$ZodIssue[], document: unknown): readonly Problem[] {
  return issues.filter(isTightest).map((issue) => {
    const field = issue.path.map(String).join('.');
    const carried = issue.code === 'custom' ? carriedProblem(issue.params) : undefined;
    if (carried !== undefined) return { ...carried, field };
    return {
      code: 'entry-invalid',
      what: entryName(field),
      detail: detailOf(issue, isMissing(document, issue.path)),
      field,
    };
  });
}

/** A problem of the file as a whole stands at no entry. */
function withoutBlankField(problem: Problem): Problem {
  const { field, ...whole } = problem;
  return field === '' ? whole : problem;
}

/** Of several bounds that one number breaks, the tightest is told. */
function isTightest(issue: z.core.$ZodIssue, _index: number, issues: readonly z.core.$ZodIssue[]): boolean {
  if (issue.code !== 'too_big') return true;
  const path = JSON.stringify(issue.path);
  return !issues.some(
    (other) =>
      other.code === 'too_big' && other.maximum < issue.maximum && JSON.stringify(other.path) === path,
  );
}

/** Entries that hold a day of the calendar. */
const dayEntries: ReadonlySet<PropertyKey> = new Set(['asOf', 'observedOn', 'validUntil']);

function parseJson(text: string): Result<unknown, Problem> {
  const bare = text.replace(/^\uFEFF/, '');
  try {
    const value: unknown = JSON.parse(bare);
    return ok(value);
  } catch {
    return fail({ code: 'file-not-json', detail: `at line ${jsonFaultLine(bare)}` });
  }
}

function strangeFile(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { code: 'file-not-a-job', detail: 'it holds no job. Choose a file that begins with "format".' };
  const format: unknown = 'format' in value ? value.format : undefined;
  if (format !== 'eavewright-job')
    return {
      code: 'file-not-a-job',
      detail: 'its "format" is not "eavewright-job". Choose another file.',
      field: 'format',
    };
  const version: unknown = 'version' in value ? value.version : undefined;
  if (version !== 1)
    return {
      code: 'file-not-a-job',
      detail: 'its "version" is not 1. It may be of a newer program; update this one.',
      field: 'version',
    };
  return undefined;
}

function carriedProblem(params: unknown): Problem | undefined {
  if (typeof params !== 'object' || params === null || !('problem' in params)) return undefined;
  // Only core/survey/fields.ts puts a problem here.
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- zod types params as unknown values
  return params.problem as Problem;
}

function detailOf(issue: z.core.$ZodIssue, missing: boolean): string {
  const start = missing ? 'It is missing. ' : '';
  switch (issue.code) {
    case 'invalid_type':
      return `${start}Enter ${dayEntries.has(issue.path.at(-1) ?? '') ? 'a date like 2026-04-30' : kindWords(issue.expected)}.`;
    case 'invalid_value':
      return `${start}Choose one of: ${issue.values.map(String).join(', ')}.`;
    case 'unrecognized_keys':
      return `Not known here: ${issue.keys.join(', ')}. Check the spelling, or take it out.`;
    case 'too_small':
      return issue.origin === 'string'
        ? `Enter at least ${issue.minimum === 1 ? 'one character' : `${String(issue.minimum)} characters`}.`
        : `Enter ${String(issue.minimum)} or more.`;
    case 'too_big':
      return issue.origin === 'string'
        ? `Shorten it to ${String(issue.maximum)} characters.`
        : issue.origin === 'array'
          ? `Keep to ${String(issue.maximum)} entries.`
          : issue.maximum === Number.MAX_SAFE_INTEGER
            ? 'Enter a smaller number.'
            : `Enter ${String(issue.maximum)} or less.`;
    case 'invalid_union':
      return `${start}Enter a number, or text like 5' 6-1/2" for a length, 6/12 for a pitch, 12.50 for an amount.`;
    case 'custom':
      return issue.message;
    case 'invalid_format':
    case 'not_multiple_of':
    case 'invalid_key':
    case 'invalid_element':
      return 'Enter it in the form that fixtures/job-file.md describes.';
    default:
      return 'Enter it in the form that fixtures/job-file.md describes.';
  }
}

function isMissing(document: unknown, path: readonly PropertyKey[]): boolean {
  let at = document;
  for (const key of path) {
    if (typeof at !== 'object' || at === null) return true;
    at = Reflect.get(at, key);
  }
  return at === undefined;
}

function kindWords(expected: string): string {
  switch (expected) {
    case 'string':
      return 'text';
    case 'number':
      return 'a number';
    case 'int':
      return 'a whole number';
    case 'boolean':
      return 'true or false';
    case 'array':
      return 'a list';
    case 'object':
      return 'a group of entries';
    default:
      return 'a value of another kind';
  }
}
