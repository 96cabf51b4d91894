import type { z } from 'zod';
import { designSchema } from '../../../core/eave/design-document.ts';
import { jobInfoSchema } from '../../../core/job/job-file.ts';
import { civilDate } from '../../../core/pricing/civil-date-field.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../../core/result.ts';
import { surveySchema } from '../../../core/survey/survey-document.ts';

type Schema = z.ZodType;

/** A schema with its coats taken off: what it is inside, and whether blank stands for "none". */
type Bare = { readonly schema: Schema; readonly nullable: boolean };

const roots: Readonly<Record<string, Schema>> = {
  info: jobInfoSchema,
  survey: surveySchema,
  design: designSchema,
  estimateOn: civilDate.nullable(),
};

/**
 * Reads what a person typed at an entry by the entry's own rule in the job document, so that screen and file agree.
 * @param path - dotted path, e.g. `survey.eaves.0.rafters.3.readingIn`.
 * @param text - what was typed; blank reads as "none" where the entry may be empty.
 * @returns the value for the document, or the problem with its `field`.
 */
export function readEntry(path: string, text: string): Result<unknown, Problem> {
  const { schema, nullable } = schemaAt(path);
  const trimmed = text.trim();
  if (nullable && trimmed === '') return ok(null);
  const type = kindOf(schema);
  // Words keep their spaces, but spaces alone are no words.
  const words = trimmed === '' ? '' : text;
  const typed = type === 'number' ? numberIn(trimmed) : type === 'string' ? words : trimmed;
  if (typed === undefined) return fail({ code: 'number-unreadable', typed: text, field: path });
  const read = schema.safeParse(typed);
  return read.success
    ? ok(read.data)
    : fail({ ...problemOf(read.error.issues[0], schema, text), field: path });
}

/** True where the entry may be left blank. */
export function mayBeBlank(path: string): boolean {
  return schemaAt(path).nullable;
}

function numberIn(text: string): number | undefined {
  return /^-?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : undefined;
}

function problemOf(issue: z.core.$ZodIssue | undefined, schema: Schema, text: string): Problem {
  if (issue?.code === 'custom' && issue.params !== undefined) return issue.params['problem'] as Problem;
  if (kindOf(schema) === 'number') {
    const { minValue, maxValue } = schema as unknown as z.ZodNumber;
    if (issue?.code === 'invalid_type')
      return { code: 'entry-invalid', what: text, detail: 'Write a whole number.' };
    return { code: 'out-of-range', what: text, least: String(minValue ?? ''), most: String(maxValue ?? '') };
  }
  if (issue?.code === 'too_small')
    return { code: 'entry-invalid', what: 'Blank', detail: 'Write something here.' };
  if (issue?.code === 'too_big')
    return {
      code: 'entry-invalid',
      what: 'Too long',
      detail: `Keep it under ${String(issue.maximum)} characters.`,
    };
  return { code: 'entry-invalid', what: text, detail: issue?.message ?? 'Write it another way.' };
}

function schemaAt(path: string): Bare {
  const [root = '', ...keys] = path.split('.');
  let at = bare(roots[root]);
  for (const key of keys) at = bare(inside(at.schema, key));
  return at;
}

function inside(schema: Schema, key: string): Schema | undefined {
  const def = schema.def as unknown as {
    type: string;
    shape?: Record<string, Schema>;
    element?: Schema;
    options?: readonly Schema[];
  };
  if (def.type === 'array') return def.element;
  // Of several shapes, the first that has the entry: entries of one name are alike in all of them.
  if (def.options !== undefined)
    return def.options.map((option) => inside(option, key)).find((found) => found !== undefined);
  return def.shape?.[key];
}

function bare(schema: Schema | undefined): Bare {
  if (schema === undefined) throw new Error('no such entry in the job document');
  let nullable = false;
  let at = schema;
  for (;;) {
    const def = at.def as unknown as { type: string; innerType?: Schema };
    if (def.innerType === undefined) return { schema: at, nullable };
    if (def.type === 'nullable') nullable = true;
    at = def.innerType;
  }
}

function kindOf(schema: Schema): string {
  return schema.def.type;
}
