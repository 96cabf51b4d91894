import { entryProblems } from '../../job/read-job-file.ts';
import { problemSentence } from '../../problems/sentence.ts';
import { fail, ok, type Result } from '../../result.ts';
import { convertPrice } from '../convert-price.ts';
import { createItemIds } from '../new-item-id.ts';
import {
  changedEntries,
  entriesOf,
  entryNames,
  priceEntriesSchema,
  type PriceChange,
  type EntryName,
  type PriceEntries,
  type SomeEntries,
} from '../price-changes.ts';
import type { PriceItem, PriceList, PriceObservation } from '../price-list.ts';
import { priceOn } from '../price-on.ts';
import { codedId, createItemMatcher, type MatchedBy } from './item-matcher.ts';
import type { ImportField, ImportLayout } from './layout.ts';
import { createRowCells, fieldOfEntry, type CellFault, type ReadRow } from './row-cells.ts';

/** A cell that cannot be read, and where it stands. */
export type ImportFault = CellFault & { readonly row: number };

/** What one row does to the list. */
export type ImportedRow = {
  readonly row: number;
  readonly does: 'adds' | 'changes' | 'prices' | 'nothing';
  readonly foundBy: MatchedBy | null;
  readonly description: string;
  readonly supplier: string;
  readonly unit: string;
  /** What the list holds today, and what it will hold. [$/unit] */
  readonly fromUsd: string | null;
  readonly toUsd: string | null;
  readonly day: string | null;
  /** What else of the item changes. */
  readonly changes: readonly string[];
};

export type ImportCounts = {
  readonly rows: number;
  readonly added: number;
  readonly changed: number;
  readonly prices: number;
  readonly unchanged: number;
  readonly skipped: number;
  readonly faults: number;
  readonly found: Readonly<Record<MatchedBy, number>>;
};

export type Imported = {
  readonly counts: ImportCounts;
  /** The first of the faults, and the first of the rows. */
  readonly faults: readonly ImportFault[];
  readonly rows: readonly ImportedRow[];
  /** Cells that would also read otherwise: a day, an amount. */
  readonly twoWays: { readonly day: string | null; readonly number: string | null };
  /** The changes to the list, all or nothing: those of items before those of prices. */
  readonly changes: readonly PriceChange[];
};

/** Most rows and faults that are shown. */
const mostShown = 200;

/**
 * Reads the rows of a supplier's file against the price list, one after another, so that long files can be read in slices.
 *
 * A blank cell leaves what the item has. An item that is on the list keeps its unit of sale: a price for another unit is
 * turned into it. It keeps its wording too, unless the layout says otherwise.
 * @param list - the list with the prices of today.
 * @param today - the day of a price whose day is not told.
 */
export function startImport(
  layout: ImportLayout,
  list: PriceList,
  today: string,
): { readonly take: (cells: readonly string[], row: number) => void; readonly end: () => Imported } {
  const cells = createRowCells(layout, today);
  const matcher = createItemMatcher(list.map(entriesOf));
  const newId = createItemIds(list.map(({ id }) => id));
  const listed = new Map(list.map((item) => [item.id, item]));
  const now = new Map<string, PriceEntries>();
  const takenRow = new Map<string, { readonly row: number; readonly given: SomeEntries }>();
  const added = new Set<string>();
  const notes: PriceChange[] = [];
  const rows: ImportedRow[] = [];
  const faults: ImportFault[] = [];
  const found = { code: 0, size: 0, description: 0 };
  let [total, unchanged, skipped, faulty] = [0, 0, 0, 0];

  const told = (row: number, all: readonly CellFault[]): void => {
    faulty += all.length;
    for (const fault of all) if (faults.length < mostShown) faults.push({ row, ...fault });
  };

  return {
    take(raw, row) {
      if (cells.isBlank(raw)) return;
      total += 1;
      const wide = raw.slice(layout.columns.length).some((cell) => cell.trim() !== '');
      if (wide)
        return told(row, [
          { field: 'code', detail: `It has ${raw.length} cells under ${layout.columns.length} columns.` },
        ]);
      const read = cells.read(raw);
      if (!read.ok) return told(row, read.problem);
      if (read.value.price === null && layout.skipsUnpriced) {
        skipped += 1;
        return;
      }
      const match = matcher.match({ code: read.value.code, given: read.value.given });
      if (!match.ok)
        return told(row, [
          {
            field: 'description',
            detail: `It fits more than one item: ${match.problem.join('; ')}. Name the column of the grade, the supplier or the item code.`,
          },
        ]);
      const before =
        match.value === undefined ? undefined : (now.get(match.value.id) ?? onList(match.value.id));
      const next =
        before === undefined
          ? newItem(read.value, newId, listed, now)
          : changedItem(before, read.value, layout);
      if (!next.ok) return told(row, next.problem);
      const entries = next.value;
      const earlier = takenRow.get(entries.id);
      const differs = earlier === undefined ? undefined : disagreement(earlier.given, read.value.given);
      if (earlier !== undefined && differs !== undefined)
        return told(row, [
          {
            field: fieldOfEntry(differs),
            detail: `It differs from row ${earlier.row}, which speaks of the same item. Make them agree.`,
          },
        ]);
      const price = priceFor(entries, read.value);
      if (!price.ok) return told(row, [price.problem]);
      if (earlier === undefined) takenRow.set(entries.id, { row, given: read.value.given });
      if (match.value !== undefined) found[match.value.by] += 1;
      now.set(entries.id, entries);
      if (before === undefined) {
        added.add(entries.id);
        matcher.added({ code: read.value.code, given: read.value.given }, entries);
      }
      if (price.value !== null) notes.push({ kind: 'note-price', itemId: entries.id, price: price.value });
      const held = heldPrice(listed.get(entries.id), today);
      const changes = before === undefined ? [] : changedEntries(before, entries);
      const isNews = price.value !== null && !isHeld(price.value, held);
      if (before !== undefined && changes.length === 0 && !isNews) unchanged += 1;
      if (rows.length < mostShown)
        rows.push({
          row,
          does:
            before === undefined ? 'adds' : changes.length > 0 ? 'changes' : isNews ? 'prices' : 'nothing',
          foundBy: match.value?.by ?? null,
          description: entries.description,
          supplier: entries.supplier,
          unit: entries.unit,
          fromUsd: held?.priceUsd ?? null,
          toUsd: price.value?.priceUsd ?? null,
          day: price.value?.observedOn ?? null,
          changes,
        });
    },
    end() {
      const items = [...now.values()].flatMap((item): PriceChange[] => {
        if (added.has(item.id)) return [{ kind: 'add-item', item }];
        const from = listed.get(item.id);
        if (from === undefined) return [];
        const was = entriesOf(from);
        return changedEntries(was, item).length === 0 ? [] : [{ kind: 'entries', from: was, to: item }];
      });
      return {
        counts: {
          rows: total,
          added: added.size,
          changed: items.length - added.size,
          prices: notes.length,
          unchanged,
          skipped,
          faults: faulty,
          found,
        },
        faults,
        rows,
        twoWays: cells.twoWays,
        changes: [...items, ...notes],
      };
    },
  };

  function onList(id: string): PriceEntries | undefined {
    const item = listed.get(id);
    return item === undefined ? undefined : entriesOf(item);
  }
}

function newItem(
  { code, given, unit }: ReadRow,
  newId: (description: string) => string,
  listed: ReadonlyMap<string, PriceItem>,
  now: ReadonlyMap<string, PriceEntries>,
): Result<PriceEntries, readonly CellFault[]> {
  const description = given.description ?? describe(given);
  const category = given.category ?? (given.section === undefined ? undefined : 'lumber');
  const lacks: CellFault[] = [];
  if (description === '')
    lacks.push({
      field: 'description',
      detail: 'A new item needs a description, or a section and a length.',
    });
  if (category === undefined)
    lacks.push({
      field: 'kind',
      detail: 'A new item needs a kind. Choose its column, or one kind for all rows.',
    });
  if (unit === null)
    lacks.push({
      field: 'unit',
      detail: 'A new item needs a unit of sale. Choose its column, or one unit for all rows.',
    });
  if (lacks.length > 0 || category === undefined || unit === null) return fail(lacks);
  const isFree = (id: string): boolean => !listed.has(id) && !now.has(id);
  const coded = isFree(code) ? code : codedId(given.supplier ?? '', code);
  const id = code === '' ? newId(description) : isFree(coded) ? coded : newId(coded);
  return checked({ ...given, id, description, category, unit });
}

function checked(raw: Partial<PriceEntries>): Result<PriceEntries, readonly CellFault[]> {
  const read = priceEntriesSchema.safeParse(raw);
  if (read.success) return ok(read.data);
  return fail(
    entryProblems(read.error.issues, raw).map((problem) => ({
      field: fieldOfEntry(problem.field ?? ''),
      detail: problemSentence(problem),
    })),
  );
}

/** Entries are checked as their cells are read, so that what comes of them together stands. */
function changedItem(
  before: PriceEntries,
  { given }: ReadRow,
  layout: ImportLayout,
): Result<PriceEntries, readonly CellFault[]> {
  const { description, category, ...rest } = given;
  return ok({
    ...before,
    ...rest,
    ...(layout.takesWording && description !== undefined ? { description } : {}),
    ...(layout.takesWording && category !== undefined ? { category } : {}),
  });
}

/** A wording from the sizes, where the file has none: `2x6 hem-fir No. 2, 12 ft`. */
function describe(given: SomeEntries): string {
  const words = [given.section, given.species, given.grade].filter(
    (word) => word !== undefined && word !== '',
  );
  if (given.section === undefined) return '';
  return given.lengthFt === undefined || given.lengthFt === null
    ? words.join(' ')
    : `${words.join(' ')}, ${given.lengthFt} ft`;
}

function disagreement(a: SomeEntries, b: SomeEntries): EntryName | undefined {
  return entryNames.find((name) => a[name] !== undefined && b[name] !== undefined && a[name] !== b[name]);
}

function priceFor(item: PriceEntries, { price, unit }: ReadRow): Result<PriceObservation | null, CellFault> {
  if (price === null || unit === null || unit === item.unit) return ok(price);
  const priceUsd = convertPrice(item, price.priceUsd, unit, item.unit);
  return priceUsd === undefined
    ? fail({
        field: 'unit' satisfies ImportField,
        detail: `${item.description} is sold by ${item.unit} on the list; a price for ${unit} cannot be turned into that without its sizes.`,
      })
    : ok({ ...price, priceUsd });
}

function heldPrice(item: PriceItem | undefined, today: string): PriceObservation | undefined {
  if (item === undefined) return undefined;
  const price = priceOn(item, today, 0);
  return price.ok ? price.value.observation : item.prices[0];
}

function isHeld(price: PriceObservation, held: PriceObservation | undefined): boolean {
  return held !== undefined && held.priceUsd === price.priceUsd && held.observedOn === price.observedOn;
}
