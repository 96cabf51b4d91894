import { Decimal } from 'decimal.js';
import type { Problem } from '../../core/problems/problem.ts';
import { shortened } from '../../core/problems/shortened.ts';
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

/** Pitches: read as `6/12`, `7 1/2`, `26.6 deg` or `50 %`, written as rise in 12. */
export const pitchKind: EntryKind<number> = { read: parsePitch, write: formatPitch };

/** A pitch that something begins above: as a pitch, and level (`0`) too. */
export const pitchLimitKind: EntryKind<number> = {
  read: (text) => (/^0(\/12)?$/.test(text.trim()) ? ok(0) : parsePitch(text)),
  write: formatPitch,
};

/** Plain numbers; `whole` for counts. The unit may be typed after the number, feet also as on a tape: `14'`. */
export function numberKind(range: Range, whole: boolean, unit = ''): EntryKind<number> {
  return {
    read(text) {
      const read = readNumber(text, unit);
      if (!read.ok) return read;
      return whole && !Number.isInteger(read.value)
        ? fail({ code: 'number-not-whole', typed: text })
        : within(read, range, text, withUnit(unit));
    },
    write: String,
  };
}

/** Exact decimals kept as text: percentages, quantities. */
export function decimalKind(range: Range, unit = ''): EntryKind<string> {
  return {
    read(text) {
      const read = readDecimal(withoutUnit(text, unit), text);
      return read.ok ? withinDecimal(read.value, range, text, withUnit(unit)) : read;
    },
    write: (value) => new Decimal(value).toFixed(),
  };
}

/** Money kept as exact decimal text: at least two places are shown, and more where the price has more. [$] */
export function moneyKind(range: Range): EntryKind<string> {
  return {
    read(text) {
      const read = readDecimal(text, text);
      return read.ok
        ? withinDecimal(read.value, range, text, (bound) => `$${writeMoney(String(bound))}`)
        : fail({ code: 'money-unreadable', typed: text });
    },
    write: writeMoney,
  };
}

function writeMoney(value: string): string {
  const exact = new Decimal(value);
  const [whole = '0', part] = exact.toFixed(Math.max(2, exact.decimalPlaces())).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === undefined ? grouped : `${grouped}.${part}`;
}

function readNumber(text: string, unit: string): Result<number, Problem> {
  if (unit === 'ft' && /\d\s*(?:['’′]|f(?:ee|oo)?t)/i.test(text)) {
    const length = parseLength(text);
    return length.ok ? ok(length.value / 12) : length;
  }
  const read = readDecimal(withoutUnit(text, unit), text);
  return read.ok ? ok(Number(read.value)) : read;
}

/** Other ways in which the units of entries are written after a number. */
const unitWords: Readonly<Record<string, string>> = {
  lb: 'lbs?|pounds?',
  hours: 'h|hrs?|hours?',
  days: 'd|days?',
  people: 'people|persons?',
  nails: 'nails?',
  times: 'x|times',
};

function withoutUnit(text: string, unit: string): string {
  const words = unitWords[unit];
  return words === undefined ? text : text.replace(new RegExp(`(\\d)\\s*(?:${words})\\.?\\s*$`, 'i'), '$1');
}

function withUnit(unit: string): (bound: number) => string {
  return (bound) => (unit === '' || bound === Number.MAX_SAFE_INTEGER ? String(bound) : `${bound} ${unit}`);
}

function readDecimal(text: string, typed: string): Result<DecimalText, Problem> {
  const bare = text
    .trim()
    .replace(/^\$\s*/, '')
    .replace(/\s*%$/, '')
    .replace(/,(?=\d{3}(?!\d))/g, '');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(bare)
    ? ok(new Decimal(bare).toFixed() as DecimalText)
    : fail({ code: 'number-unreadable', typed });
}

function withinDecimal(
  value: DecimalText,
  range: Range,
  typed: string,
  write: (value: number) => string,
): Result<string, Problem> {
  const checked = within(ok(Number(value)), range, typed, write);
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
    what: shortened(typed.trim()),
    least: write(range.least),
    most: write(range.most),
  });
}
