import { setImmediate } from 'node:timers/promises';
import type { HostEvent } from '../../core/contract/reply.ts';
import { fittedLayout, guessLayout, isOwnHeader } from '../../core/pricing/import/guess-layout.ts';
import { fieldNames } from '../../core/pricing/import/field-names.ts';
import type { ImportLayout, Separator, TextEncoding } from '../../core/pricing/import/layout.ts';
import { startImport, type Imported } from '../../core/pricing/import/read-import.ts';
import { mostItems } from '../../core/pricing/price-changes.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { storedChange } from '../store/price-changes.ts';
import { forgetLayout, listLayouts, putLayout } from '../store/price-layouts.ts';
import { listPricesOn } from '../store/prices.ts';
import type { Context } from './context.ts';
import { guessSeparator, readCsvSlices } from './csv-slices.ts';
import type { PriceSteps } from './price-steps.ts';
import { spaced } from './spaced.ts';
import { readTextBytes } from './text-bytes.ts';

type ImportCommands =
  | 'prices.importOpen'
  | 'prices.importPreview'
  | 'prices.importRun'
  | 'prices.importStop'
  | 'prices.layouts'
  | 'prices.forgetLayout';

/** A file in hand. */
type HeldFile = {
  readonly bytes: Uint8Array;
  readonly stop: AbortController;
  rows: readonly string[][];
  separator: Separator;
  encoding: TextEncoding;
};

/** Files that are held at once, the oldest let go of first. */
const mostFiles = 3;
/** Rows that are matched before the host looks after others. */
const rowsAtOnce = 1000;
/** Lines and columns of a file that the page shows. */
const headShown = { rows: 12, columns: 60 };
const stopped: Problem = { code: 'prices', fault: { what: 'import-stopped' } };
const gone: Problem = { code: 'prices', fault: { what: 'import-gone' } };

/** Suppliers' files on their way into the price list. */
export function priceImportHandlers(
  context: Pick<Context, 'store' | 'today'>,
  steps: PriceSteps,
  publish: (event: HostEvent) => void,
): Pick<Handlers, ImportCommands> {
  const { store } = context;
  const files = new Map<string, HeldFile>();

  const match = async (importId: string, layout: ImportLayout): Promise<Result<Imported, Problem>> => {
    const file = files.get(importId);
    if (file === undefined) return fail(gone);
    const fault = layoutFault(layout);
    if (fault !== undefined) return fail(fault);
    const tell = spaced((done: number) =>
      publish({ kind: 'importing', importId, stage: 'matching', done, of: file.rows.length }),
    );
    const today = context.today();
    const reading = startImport(
      layout,
      store.read((db) => listPricesOn(db, today)),
      today,
    );
    for (let at = layout.headerRow; at < file.rows.length; at += 1) {
      reading.take(file.rows[at] ?? [], at + 1);
      if (at % rowsAtOnce !== 0) continue;
      tell(at);
      await setImmediate();
      if (file.stop.signal.aborted) return fail(stopped);
    }
    return ok(reading.end());
  };

  return {
    'prices.importOpen': async ({ importId, base64, separator, encoding, headerRow }) => {
      const bytes = base64 === null ? files.get(importId)?.bytes : Buffer.from(base64, 'base64');
      if (bytes === undefined) return fail(gone);
      files.get(importId)?.stop.abort();
      const stop = new AbortController();
      const text = readTextBytes(bytes, encoding);
      if (!text.ok) return text;
      const parted = separator ?? guessSeparator(text.value.text);
      const tell = spaced((done: number) =>
        publish({ kind: 'importing', importId, stage: 'reading', done, of: null }),
      );
      const file: HeldFile = { bytes, stop, rows: [], separator: parted, encoding: text.value.encoding };
      files.delete(importId);
      files.set(importId, file);
      for (const oldest of [...files.keys()].slice(0, -mostFiles)) files.delete(oldest);
      const rows = await readCsvSlices(text.value.text, parted, stop.signal, tell);
      if (!rows.ok) {
        if (files.get(importId) === file) files.delete(importId);
        return rows;
      }
      file.rows = rows.value;
      const top = headerRow ?? titleLine(rows.value);
      const header = titlesOf(rows.value, top);
      if (header.length === 0) return fail({ code: 'csv-broken', row: 1, detail: 'the file is empty' });
      const known = store
        .read(listLayouts)
        .flatMap(({ name, layout }) => {
          const fitted = headerRow === null && top > 0 ? fittedLayout(layout, header) : undefined;
          return fitted === undefined ? [] : [{ name, layout: { ...fitted, headerRow: top } }];
        })
        .toSorted((a, b) => fieldsOf(b.layout) - fieldsOf(a.layout))[0];
      const under = rows.value.slice(top, top + 200);
      return ok({
        separator: parted,
        encoding: text.value.encoding,
        rows: Math.max(0, rows.value.length - top),
        head: rows.value.slice(0, headShown.rows).map((row) => row.slice(0, headShown.columns).map(shown)),
        isOurs: isOwnHeader(header),
        layout: known?.layout ?? guessLayout(header, under, top),
        layoutName: known?.name ?? null,
      });
    },
    'prices.importPreview': async ({ importId, layout }) => {
      const read = await match(importId, layout);
      if (!read.ok) return read;
      const { changes: _changes, ...told } = read.value;
      return ok({
        ...told,
        faults: [...told.faults],
        rows: told.rows.map((row) => ({ ...row, changes: [...row.changes] })),
      });
    },
    'prices.importRun': async ({ importId, layout, rememberAs }) => {
      const read = await match(importId, layout);
      if (!read.ok) return read;
      const { counts, changes, faults } = read.value;
      const refused = refusal(read.value, store.read((db) => listPricesOn(db, context.today())).length);
      if (refused !== undefined) return fail(refused);
      const [first] = faults;
      if (first !== undefined)
        return fail({
          code: 'prices',
          fault: { what: 'import-faults', faults: counts.faults, first: `row ${first.row}: ${first.detail}` },
        });
      publish({ kind: 'importing', importId, stage: 'writing', done: 0, of: changes.length });
      // One transaction has no pause in it: the list holds all of the file or none.
      const written = store.write((db) => {
        if (rememberAs !== null) putLayout(db, rememberAs, context.today(), layout);
        return steps.change(db, changes.map(storedChange));
      });
      if (!written.ok) return written;
      files.delete(importId);
      const { stepId, changed } = written.value;
      return ok({
        stepId,
        added: counts.added,
        changed: counts.changed,
        prices: changed - counts.added - counts.changed,
      });
    },
    'prices.importStop': ({ importId }) => {
      const file = files.get(importId);
      file?.stop.abort();
      files.delete(importId);
      return ok({ wasHeld: file !== undefined });
    },
    'prices.layouts': () => ok([...store.read(listLayouts)]),
    'prices.forgetLayout': ({ name }) =>
      store.write((db) => (forgetLayout(db, name) ? ok({}) : fail({ code: 'not-found', what: 'layout' }))),
  };
}

/** Why a layout cannot be read by: a meaning given twice, or none that says what a row is. */
function layoutFault({ columns }: ImportLayout): Problem | undefined {
  const fields = columns.flatMap(({ field }) => (field === null ? [] : [field]));
  const twice = fields.find((field, index) => fields.indexOf(field) !== index);
  if (twice !== undefined)
    return { code: 'prices', fault: { what: 'column-twice', field: fieldNames[twice] } };
  if (fields.some((field) => field === 'code' || field === 'description' || field === 'section'))
    return undefined;
  return { code: 'prices', fault: { what: 'column-missing', field: fieldNames.description } };
}

function refusal({ counts, changes }: Imported, items: number): Problem | undefined {
  if (counts.added + items > mostItems)
    return { code: 'prices', fault: { what: 'list-full', items: counts.added + items, most: mostItems } };
  return changes.length === 0 && counts.faults === 0
    ? { code: 'prices', fault: { what: 'import-nothing' } }
    : undefined;
}

/** The line that names the columns: the first whose cells are as many as the lines under it have. */
function titleLine(rows: readonly (readonly string[])[]): number {
  const filled = rows.slice(0, 20).map((row) => row.filter((cell) => cell.trim() !== '').length);
  const most = Math.max(0, ...filled);
  return Math.max(1, filled.findIndex((count) => count > 1 && count >= most / 2) + 1);
}

function titlesOf(rows: readonly (readonly string[])[], headerRow: number): readonly string[] {
  const columns = Math.max(0, ...rows.slice(0, 200).map((row) => row.length));
  const titles = headerRow === 0 ? [] : (rows[headerRow - 1] ?? []);
  return Array.from({ length: columns }, (_, index) => {
    const title = (titles[index] ?? '').trim().slice(0, 200);
    return title === '' ? `Column ${index + 1}` : title;
  });
}

function fieldsOf(layout: ImportLayout): number {
  return layout.columns.filter(({ field }) => field !== null).length;
}

function shown(cell: string): string {
  return cell.length > 60 ? `${cell.slice(0, 59)}…` : cell;
}
