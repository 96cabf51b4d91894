import { Decimal } from 'decimal.js';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { DecimalText } from '../../core/units/money.ts';
import { parseLength } from '../../core/units/parse-length.ts';
import { formatPitch, parsePitch } from '../../core/units/pitch.ts';
import type { EntryKind } from './entry.ts';
import { writeLength } from './write-length.ts';

/** Least and most that make sense for an entry. */
export type Range = { readonly least: number; readonly most: number };

/** Lengths: read as a carpenter writes them, written in feet, inches and sixteenths. [in] */
export function lengthKind(range: Range): EntryKind<number> {
  return {
    read: (text) => within(parseLength(text), range, text, writeLength),
    write: writeLength,
  };
}

/** Pitches: read as `6/12`, `26.6 deg` or `50 %`, written as rise in 12. */
export const pitchKind: EntryKind<number> = { read: parsePitch, write: formatPitch };

/** Plain numbers; `whole` for counts. */
export function numberKind(range: Range, whole: boolean): EntryKind<number> {
  return {
    read(text) {
      const read = readDecimal(text);
      if (!read.ok) return read;
      const value = Number(read.value);
      return whole && !Number.isInteger(value)
        ? fail({ code: 'number-unreadable', typed: text })
        : within(ok(value), range, text, String);
    },
    write: String,
  };
}

/** Exact decimals kept as text: percentages, quantities. */
export function decimalKind(range: Range): EntryKind<string> {
  return {
    read(text) {
      const read = readDecimal(text);
      return read.ok ? withinDecimal(read.value, range, text) : read;
    },
    write: (value) => new Decimal(value).toFixed(),
  };
}

/** Money kept as exact decimal text: at least two places are shown, and more where the price has more. [$] */
export function moneyKind(range: Range): EntryKind<string> {
  return {
    read(text) {
      const read = readDecimal(text);
      return read.ok
        ? withinDecimal(read.value, range, text)
        : fail({ code: 'money-unreadable', typed: text });
    },
    write(value) {
      const exact = new Decimal(value);
      const [whole = '0', part] = exact.toFixed(Math.max(2, exact.decimalPlaces())).split('.');
      const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
      return part === undefined ? grouped : `${grouped}.${part}`;
    },
  };
}

function readDecimal(text: string): Result<DecimalText, Problem> {
  const bare = text
    .trim()
    .replace(/^\$\s*/, '')
    .replace(/\s*%$/, '')
    .replace(/,(?=\d{3}(?!\d))/g, '');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(bare)
    ? ok(new Decimal(bare).toFixed() as DecimalText)
    : fail({ code: 'number-unreadable', typed: text });
}

function withinDecimal(value: DecimalText, range: Range, typed: string): Result<string, Problem> {
  const checked = within(ok(Number(value)), range, typed, String);
  return checked.ok ? ok(value) : checked;
}

function within(
  read: Result<number, Problem>,
  range: Range,
  typed: string,
  write: (value: number) => string,
): Result<number, Problem> {
  if (!read.ok || (read.value >= range.least && read.value <= range.most)) return read;
  return fail({
    code: 'out-of-range',
    what: typed.trim(),
    least: write(range.least),
    most: write(range.most),
  });
}
