import { z } from 'zod';
import { problemSentence } from '../problems/sentence.ts';
import { shortened } from '../problems/shortened.ts';
import { formatLength } from '../units/format-length.ts';
import { parseLength, parseSignedLength } from '../units/parse-length.ts';
import { checkPitch, parsePitch } from '../units/pitch.ts';
import type { Problem } from '../problems/problem.ts';
import type { Result } from '../result.ts';

/**
 * A length entry of a document: a number of inches, or text as a carpenter writes it; read to a number of inches. Where
 * the range begins below 0, a sign may stand before it.
 * @param range - least and most that make sense for the entry. [in]
 */
export function lengthField(range: { least: number; most: number }) {
  return z.union([z.number(), z.string()]).transform((entry, context): number => {
    const parse = range.least < 0 ? parseSignedLength : parseLength;
    const read = typeof entry === 'number' ? { ok: true as const, value: entry } : parse(entry);
    return settle(read, context, (inches) =>
      inches >= range.least && inches <= range.most
        ? undefined
        : {
            code: 'out-of-range',
            what: typeof entry === 'number' ? lengthInWords(entry) : shortened(entry),
            least: formatLength(range.least),
            most: formatLength(range.most),
          },
    );
  });
}

/** A pitch entry: a number as rise in 12, or text such as `6/12`, `26.57 deg`, `50 %`; read to rise in 12. */
export const pitchField = z.union([z.number(), z.string()]).transform((entry, context): number => {
  const read = typeof entry === 'number' ? checkPitch(entry, pitchInWords(entry)) : parsePitch(entry);
  return settle(read, context, () => undefined);
});

/** Above this a number is a slip of the finger or of a program, and is told by its size alone. [in] */
const largestTold = 1_000_000;

function lengthInWords(inches: number): string {
  if (Math.abs(inches) <= largestTold) return formatLength(inches);
  return inches > 0 ? `A length of over ${largestTold} in.` : `A length of under -${largestTold} in.`;
}

function pitchInWords(risePer12: number): string {
  if (Math.abs(risePer12) <= largestTold) return `${risePer12}/12`;
  return risePer12 > 0 ? `over ${largestTold}/12` : `under -${largestTold}/12`;
}

function settle(
  read: Result<number, Problem>,
  context: z.core.$RefinementCtx,
  check: (value: number) => Problem | undefined,
): number {
  const problem = read.ok
    ? Number.isFinite(read.value)
      ? check(read.value)
      : ({ code: 'number-unreadable', typed: String(read.value) } as const)
    : read.problem;
  if (problem !== undefined) {
    context.addIssue({ code: 'custom', message: problemSentence(problem), params: { problem } });
    return z.NEVER;
  }
  return read.ok ? read.value : z.NEVER;
}

/** A decimal entry, kept as text so that no cent is lost: `12.5`, `$1,250.00`, or a number. */
export function decimalField(range: { least: number; most: number }) {
  return z.union([z.number(), z.string()]).transform((entry, context): string => {
    const text = String(entry)
      .trim()
      .replace(/^\$/, '')
      .replace(/,(?=\d{3}\b)/g, '');
    const value = Number(text);
    const problem: Problem | undefined =
      !/^-?(\d+\.?\d*|\.\d+)$/.test(text) || !Number.isFinite(value)
        ? { code: 'number-unreadable', typed: String(entry) }
        : value < range.least || value > range.most
          ? {
              code: 'out-of-range',
              what: shortened(text),
              least: String(range.least),
              most: String(range.most),
            }
          : undefined;
    if (problem !== undefined) {
      context.addIssue({ code: 'custom', message: problemSentence(problem), params: { problem } });
      return z.NEVER;
    }
    return text;
  });
}
