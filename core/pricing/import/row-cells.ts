import { Decimal } from 'decimal.js';
import { problemSentence } from '../../problems/sentence.ts';
import type { Problem } from '../../problems/problem.ts';
import { fail, ok, type Result } from '../../result.ts';
import { unguarded } from '../price-cells.ts';
import { entryNames, someEntriesSchema, type EntryName, type SomeEntries } from '../price-changes.ts';
import type { PriceObservation, UnitOfSale } from '../price-list.ts';
import { cellProblem, rawEntry, type WrittenStyle } from '../table/entry-text.ts';
import { isTwoWays, readNumber } from '../table/written-number.ts';
import { readSource, readUnit } from '../table/words-of-sale.ts';
import type { ImportField, ImportLayout } from './layout.ts';
import { decidesOrder, isDayTwoWays, readWrittenDay } from './written-day.ts';

/** A cell that cannot be read. */
export type CellFault = { readonly field: ImportField; readonly detail: string };

/** A row as its cells say it. */
export type ReadRow = {
  readonly code: string;
  /** Entries that the row gives; a blank cell gives none. */
  readonly given: SomeEntries;
  /** The unit that the price is for; null where the row does not say. */
  readonly unit: UnitOfSale | null;
  readonly price: PriceObservation | null;
};

/** What a file leaves open, as its first such cell shows it. */
export type TwoWays = { day: string | null; number: string | null };

/** Which entry of an item a column gives. */
const entryFields: readonly (readonly [ImportField, EntryName])[] = [
  ['description', 'description'],
  ['kind', 'category'],
  ['section', 'section'],
  ['species', 'species'],
  ['grade', 'grade'],
  ['length', 'lengthFt'],
  ['supplier', 'supplier'],
  ['taxable', 'taxable'],
  ['retired', 'retired'],
  ['minimumPack', 'minimumPack'],
  ['notes', 'notes'],
  ['nail', 'nail'],
  ['packageLb', 'packageLb'],
  ['packageCount', 'packageCount'],
  ['width', 'widthIn'],
  ['lengthOfOne', 'lengthIn'],
  ['thickness', 'thicknessIn'],
];

/** Which column an entry of an item stands in. */
export function fieldOfEntry(entry: string): ImportField {
  return entryFields.find(([, name]) => name === entry)?.[0] ?? (entry === 'unit' ? 'unit' : 'code');
}

export type RowCells = {
  readonly isBlank: (row: readonly string[]) => boolean;
  /** Reads a row; the faults of all of its cells, where there are any. */
  readonly read: (row: readonly string[]) => Result<ReadRow, readonly CellFault[]>;
  readonly twoWays: Readonly<TwoWays>;
};

/**
 * Reads the rows of a file by its layout.
 * @param today - the day of a price whose day is not told.
 */
export function createRowCells(layout: ImportLayout, today: string): RowCells {
  const style: WrittenStyle = { decimalSign: layout.decimalSign, lengthUnit: layout.lengthUnit };
  const columnOf = new Map<ImportField, number>();
  for (const [index, { field }] of layout.columns.entries()) if (field !== null) columnOf.set(field, index);
  const constants = new Map(Object.entries(layout.constants));
  const twoWays: TwoWays = { day: null, number: null };
  const cell = (row: readonly string[], field: ImportField): string => {
    const index = columnOf.get(field);
    const own = index === undefined ? '' : unguarded(row[index] ?? '').trim();
    return own === '' ? (constants.get(field) ?? '').trim() : own;
  };
  let isOrderSeen = false;
  const days = new Map<string, Result<string, Problem>>();
  // A file has few days and many rows.
  const readDay = (text: string): Result<string, Problem> => {
    const known = days.get(text);
    if (known !== undefined) return known;
    const read = readWrittenDay(text, layout.dayOrder);
    days.set(text, read);
    // One day that reads in the told order alone says how the others are meant.
    if (read.ok && decidesOrder(text, layout.dayOrder)) isOrderSeen = true;
    if (isOrderSeen) twoWays.day = null;
    else if (twoWays.day === null && isDayTwoWays(text)) twoWays.day = text;
    return read;
  };

  return {
    twoWays,
    isBlank: (row) => [...columnOf.values()].every((index) => (row[index] ?? '').trim() === ''),
    read(row) {
      const faults: CellFault[] = [];
      const take = <T>(field: ImportField, read: Result<T, Problem>): T | undefined => {
        if (read.ok) return read.value;
        faults.push({ field, detail: problemSentence(read.problem) });
        return undefined;
      };
      const raws: Partial<Record<EntryName, unknown>> = {};
      const texts: Partial<Record<EntryName, string>> = {};
      for (const [field, entry] of entryFields) {
        const text = cell(row, field);
        if (text === '') continue;
        texts[entry] = text;
        const raw = take(field, rawEntry(entry, text, style));
        if (raw !== undefined) raws[entry] = raw;
      }
      const entries = someEntriesSchema.safeParse(raws);
      if (!entries.success)
        for (const issue of entries.error.issues) {
          const name = entryNames.find((known) => known === issue.path[0]);
          const problem = cellProblem([issue], name === undefined ? '' : (texts[name] ?? ''));
          faults.push({ field: fieldOfEntry(name ?? ''), detail: problemSentence(problem) });
        }
      const unitText = cell(row, 'unit');
      const written = unitText === '' ? null : readUnit(unitText);
      if (written === undefined)
        faults.push({
          field: 'unit',
          detail: `"${unitText.slice(0, 40)}" is no unit of sale. ${unitsKnown}`,
        });
      const priceText = cell(row, 'price');
      if (isTwoWays(priceText)) twoWays.number ??= priceText;
      const price = priceText === '' ? null : take('price', readPrice(priceText, layout, written?.per ?? 1));
      const dayText = cell(row, 'day');
      const day = dayText === '' ? today : take('day', readDay(dayText));
      const untilText = cell(row, 'validUntil');
      const until = untilText === '' ? null : take('validUntil', readDay(untilText));
      const sourceText = cell(row, 'source');
      const source = sourceText === '' ? 'list' : readSource(sourceText);
      if (source === undefined) faults.push({ field: 'source', detail: 'Write list, quote or receipt.' });
      if (
        !entries.success ||
        faults.length > 0 ||
        price === undefined ||
        day === undefined ||
        until === undefined ||
        source === undefined
      )
        return fail(faults);
      return ok({
        code: cell(row, 'code'),
        given: entries.data,
        unit: written?.unit ?? null,
        price: price === null ? null : { priceUsd: price, observedOn: day, source, validUntil: until },
      });
    },
  };
}

const unitsKnown = 'Write each, LF, BF, MBF, MLF, lb, box, sheet, SF, MSF or roll.';

const mostUsd = 1_000_000;

/** A price for one unit of sale: `$850.00` for MSF is 0.85 for SF. */
function readPrice(text: string, layout: ImportLayout, per: number): Result<string, Problem> {
  const number = readNumber(text.replace(/\s*(USD|\/.*)$/i, ''), layout.decimalSign);
  if (!number.ok) return fail({ code: 'money-unreadable', typed: text });
  const value = new Decimal(number.value).div(per);
  return value.isNegative() || value.gt(mostUsd)
    ? fail({ code: 'out-of-range', what: text.slice(0, 40), least: '$0', most: '$1,000,000' })
    : ok(per === 1 ? number.value : value.toFixed());
}
