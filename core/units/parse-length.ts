import { fail, ok, type Result } from '../result.ts';
import type { LengthReason, Problem } from '../problems/problem.ts';
import { writeFractionsOut } from './written-fractions.ts';

const millimetresPerUnit: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };

const tapeDenominators: ReadonlySet<number> = new Set([2, 4, 8, 16, 32, 64]);

const fraction = String.raw`(\d+)\/(\d+)`;
const inchesPart = String.raw`(?:(\d+(?:\.\d+)?|\.\d+)(?:[ -]${fraction})?|${fraction})`;
const onlyInches = new RegExp(String.raw`^${inchesPart} ?(?:"|in)?$`);
const feetAndInches = new RegExp(
  String.raw`^(\d+(?:\.\d+)?|\.\d+) ?(?:'|ft)(?:[ -]*${inchesPart} ?(?:"|in)?)?$`,
);
const dashed = new RegExp(String.raw`^(\d+)-(\d+)-(?:(\d+)|${fraction})$`);
const metric = /^(\d+(?:\.\d+)?|\.\d+) ?(mm|cm|m)$/;

/**
 * Reads a length the way a carpenter writes it.
 *
 * Understood: `5' 6-1/2"`, `5 ft 6 1/2 in.`, `66.5`, `66 1/2`, `66-1/2`, `5-6-8/16` and `5-6-8` (feet, inches,
 * sixteenths), `1.69 m`, `169 cm`, `1690 mm`, and fractions written as one character (½). A bare number is inches.
 * @param text - what was typed.
 * @returns the length, not rounded [in]; or a `length-unreadable` problem that says what is wrong.
 */
export function parseLength(text: string): Result<number, Problem> {
  const normal = normalise(text);
  const unreadable = (reason: LengthReason): Result<number, Problem> =>
    fail({ code: 'length-unreadable', typed: text, reason });
  if (normal === '') return unreadable('empty');
  if (normal.startsWith('-')) return unreadable('negative');
  // More digits than any tape has would overflow to an endless number.
  if (/(?:^|[^.\d])\d{10}/.test(normal)) return unreadable('form');

  const metricMatch = metric.exec(normal);
  if (metricMatch) {
    // An inch is 25.4 mm exactly (international yard, 1959).
    return ok((Number(metricMatch[1]) * (millimetresPerUnit[metricMatch[2] ?? ''] ?? Number.NaN)) / 25.4);
  }

  const dashedMatch = dashed.exec(normal);
  if (dashedMatch) {
    const [, feet, inches, sixteenths, top, bottom] = dashedMatch;
    const part = sixteenths === undefined ? fractionOf(top, bottom) : fractionOf(sixteenths, '16');
    return part.ok
      ? joinFeet(Number(feet), Number(inches) + part.value, unreadable)
      : unreadable(part.problem);
  }

  const inchesMatch = onlyInches.exec(normal);
  if (inchesMatch) {
    const inches = inchesOfMatch(inchesMatch.slice(1));
    return inches.ok ? ok(inches.value) : unreadable(inches.problem);
  }

  const feetMatch = feetAndInches.exec(normal);
  if (feetMatch) {
    const rest = feetMatch.slice(2);
    if (rest.every((part) => part === undefined)) return ok(Number(feetMatch[1]) * 12);
    if ((feetMatch[1] ?? '').includes('.')) return unreadable('form');
    const inches = inchesOfMatch(rest);
    return inches.ok ? joinFeet(Number(feetMatch[1]), inches.value, unreadable) : unreadable(inches.problem);
  }
  return unreadable(/^\d+-\d+$/.test(normal) ? 'ambiguous-dash' : 'form');
}

/**
 * Reads a length that may lie on either side of a line: as `parseLength`, with a plus or minus sign before it.
 * @param text - what was typed, e.g. `-3/8`, `+1/2`, `1/4`.
 * @returns the length, not rounded, negative behind a minus [in]; or the problem of what stands behind the sign.
 */
export function parseSignedLength(text: string): Result<number, Problem> {
  const [, sign, rest = text] = /^\s*([-+‐‑–−])(.*)$/s.exec(text) ?? [];
  const read = parseLength(rest);
  if (!read.ok)
    return read.problem.code === 'length-unreadable' ? fail({ ...read.problem, typed: text }) : read;
  return ok(sign === undefined || sign === '+' ? read.value : -read.value || 0);
}

type Part = Result<number, LengthReason>;

function normalise(text: string): string {
  return writeFractionsOut(text.toLowerCase())
    .trim()
    .replace(/[′’‘`]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/(?:inches|inch|in)\.?$/, 'in')
    .replace(/(\d|\s)(feet|foot|ft)\b\.?/, '$1ft')
    .replace(/[‐‑–−]/g, '-')
    .replace(/\s*-\s*/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

function inchesOfMatch(parts: readonly (string | undefined)[]): Part {
  const [whole, top, bottom, aloneTop, aloneBottom] = parts;
  if (whole === undefined) return fractionOf(aloneTop, aloneBottom);
  if (top === undefined) return ok(Number(whole));
  if (whole.includes('.')) return fail('form');
  const part = fractionOf(top, bottom);
  return part.ok ? ok(Number(whole) + part.value) : part;
}

function fractionOf(top: string | undefined, bottom: string | undefined): Part {
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (!tapeDenominators.has(denominator)) return fail('denominator');
  if (numerator >= denominator) return fail('fraction-over-1');
  return ok(numerator / denominator);
}

function joinFeet(
  feet: number,
  inches: number,
  unreadable: (reason: LengthReason) => Result<number, Problem>,
): Result<number, Problem> {
  return inches >= 12 ? unreadable('inches-over-12') : ok(feet * 12 + inches);
}
