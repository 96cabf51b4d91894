import type { z } from 'zod';
import { entryProblems } from '../../job/read-job-file.ts';
import type { Problem } from '../../problems/problem.ts';
import { shortened } from '../../problems/shortened.ts';
import { fail, ok, type Result } from '../../result.ts';
import { formatLength } from '../../units/format-length.ts';
import { parseLength } from '../../units/parse-length.ts';
import { someEntriesSchema, type EntryName, type PriceEntries, type SomeEntries } from '../price-changes.ts';
import { readNumber, type DecimalSign } from './written-number.ts';
import { readKind, readUnit } from './words-of-sale.ts';

/** How the cells of a file are written; what a person types is by point, and feet. */
export type WrittenStyle = {
  readonly decimalSign: DecimalSign;
  /** What a stock length without a unit counts. */
  readonly lengthUnit: 'ft' | 'in';
};

export const typedStyle: WrittenStyle = { decimalSign: 'point', lengthUnit: 'ft' };

/**
 * Reads an entry of an item from the text of a cell; a blank cell is what an item has that says nothing of it.
 * @param name - which entry.
 * @param text - what stands in the cell: `12`, `12 ft`, `MBF`, `yes`.
 * @returns that one entry as the item holds it, or the problem.
 */
export function readEntryText(name: EntryName, text: string): Result<SomeEntries, Problem> {
  const raw = rawEntry(name, text, typedStyle);
  if (!raw.ok) return raw;
  const read = someEntriesSchema.safeParse({ [name]: raw.value });
  return read.success ? ok(read.data) : fail(cellProblem(read.error.issues, text));
}

/** The problem of a cell, said of what stands in it. */
export function cellProblem(issues: readonly z.core.$ZodIssue[], text: string): Problem {
  const [problem] = entryProblems(issues, null);
  if (problem === undefined) return { code: 'number-unreadable', typed: text };
  const { field: _field, ...rest } = problem;
  return rest.code === 'entry-invalid' ? { ...rest, what: `"${shortened(text.trim())}"` } : rest;
}

/** Writes an entry of an item as its cell shows it, so that reading it gives the same again. */
export function writeEntryText(name: EntryName, entries: PriceEntries): string {
  const value = entries[name];
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (name === 'widthIn' || name === 'lengthIn' || name === 'thicknessIn') {
    const written = formatLength(Number(value));
    const read = parseLength(written);
    // A size off the sixteenths stays a number.
    return read.ok && read.value === value ? written : String(value);
  }
  return String(value);
}

/** Reads the text of a cell as far as its writing goes; whether the value makes sense, the schema of an item says. */
export function rawEntry(name: EntryName, written: string, style: WrittenStyle): Result<unknown, Problem> {
  const text = written.trim();
  switch (name) {
    case 'category':
      return known(readKind(text), text, 'Write lumber, planks, sheet goods, nails, edge metal or other.');
    case 'unit': {
      const unit = readUnit(text);
      const whole = unit?.per === 1 ? unit.unit : undefined;
      return known(whole, text, 'Write each, LF, BF, MBF, lb, box, sheet, SF or roll.');
    }
    case 'taxable':
    case 'retired':
      return yesOrNo(text, name === 'taxable');
    case 'lengthFt':
      return text === '' ? ok(null) : feetOf(text, style);
    case 'packageLb':
    case 'packageCount':
      return text === '' ? ok(null) : numberOf(text, style);
    case 'minimumPack':
      return text === '' ? ok(1) : numberOf(text, style);
    case 'widthIn':
    case 'lengthIn':
    case 'thicknessIn':
      return text === '' ? ok(null) : inchesOf(text, style);
    case 'description':
    case 'supplier':
    case 'section':
    case 'grade':
    case 'species':
    case 'nail':
    case 'notes':
      return ok(text);
    default:
      return name satisfies never;
  }
}

function known<T>(value: T | undefined, text: string, detail: string): Result<T, Problem> {
  return value === undefined
    ? fail({ code: 'entry-invalid', what: text === '' ? 'A blank' : `"${shortened(text)}"`, detail })
    : ok(value);
}

function yesOrNo(text: string, whenBlank: boolean): Result<boolean, Problem> {
  if (text === '') return ok(whenBlank);
  if (/^(yes|y|true|1|x)$/i.test(text)) return ok(true);
  if (/^(no|n|false|0|-)$/i.test(text)) return ok(false);
  return known<boolean>(undefined, text, 'Write yes or no.');
}

function numberOf(text: string, style: WrittenStyle): Result<number, Problem> {
  const read = readNumber(text.replace(/\s*(lbs?|pounds?|nails?|pcs?|ct)\.?$/i, ''), style.decimalSign);
  return read.ok ? ok(Number(read.value)) : fail({ code: 'number-unreadable', typed: text });
}

/** A stock length: a bare number by the unit of its column, else as on a tape. [ft] */
function feetOf(text: string, style: WrittenStyle): Result<number, Problem> {
  const bare = readNumber(text, style.decimalSign);
  if (bare.ok) return ok(style.lengthUnit === 'ft' ? Number(bare.value) : Number(bare.value) / 12);
  const length = parseLength(pointed(text, style));
  return length.ok ? ok(length.value / 12) : length;
}

function inchesOf(text: string, style: WrittenStyle): Result<number, Problem> {
  const bare = readNumber(text, style.decimalSign);
  return bare.ok ? ok(Number(bare.value)) : parseLength(pointed(text, style));
}

function pointed(text: string, style: WrittenStyle): string {
  return style.decimalSign === 'comma' ? text.replace(/(\d),(\d)/g, '$1.$2') : text;
}
