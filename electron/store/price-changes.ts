import {
  changedEntries,
  type EntryName,
  type PriceChange,
  type PriceEntries,
} from '../../core/pricing/price-changes.ts';
import type { PriceObservation } from '../../core/pricing/price-list.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { assertNever, fail, ok, type Result } from '../../core/result.ts';
import type { WritableDb } from './database.ts';
import { addItems, removeItem, type NewItem } from './price-items.ts';
import { addNumberedPrices, notePrices, removeNumberedPrices, type NumberedPrice } from './price-notes.ts';
import { priceEntriesOf, priceRow } from './price-rows.ts';
import { query } from './query.ts';

/**
 * One step as it can be undone to the letter: what was taken away goes back under the number that it had in the order of
 * the list.
 */
export type StoredChange =
  | ({ readonly kind: 'add-item' } & NewItem)
  | { readonly kind: 'remove-item'; readonly itemId: string }
  | { readonly kind: 'entries'; readonly from: PriceEntries; readonly to: PriceEntries }
  | { readonly kind: 'note-price'; readonly itemId: string; readonly price: PriceObservation }
  | { readonly kind: 'take-back'; readonly itemId: string; readonly price: PriceObservation }
  | ({ readonly kind: 'put-price' } & NumberedPrice)
  | ({ readonly kind: 'remove-price' } & NumberedPrice);

/** A step that came over the bridge. */
export function storedChange(change: PriceChange): StoredChange {
  return change.kind === 'add-item' ? { ...change, sequence: null } : change;
}

/**
 * Makes changes to the price list, in their order; to be called inside one transaction, so that all of them hold or none.
 * Steps of one kind that follow each other are made together: a long file brings a hundred thousand.
 * @returns the steps that undo what was done, in the order in which they are to be done; or why one cannot be.
 */
export function changePrices(
  db: WritableDb,
  changes: readonly StoredChange[],
): Result<readonly StoredChange[], Problem> {
  const undo: (readonly StoredChange[])[] = [];
  for (const run of runsOf(changes)) {
    const done = changeRun(db, run);
    if (!done.ok) return done;
    undo.push(done.value.toReversed());
  }
  return ok(undo.toReversed().flat());
}

type Run = { readonly [K in StoredChange['kind']]: readonly [K, readonly OfKind<K>[]] }[StoredChange['kind']];
type OfKind<K extends StoredChange['kind']> = Extract<StoredChange, { kind: K }>;

function runsOf(changes: readonly StoredChange[]): readonly Run[] {
  const runs: (readonly [StoredChange['kind'], StoredChange[]])[] = [];
  for (const change of changes) {
    const last = runs.at(-1);
    if (last?.[0] === change.kind) last[1].push(change);
    else runs.push([change.kind, [change]]);
  }
  // Each run holds steps of its own kind alone.
  return runs as unknown as readonly Run[];
}

/** Makes the steps of one kind; answers what undoes each, in the order of the steps. */
function changeRun(db: WritableDb, run: Run): Result<readonly StoredChange[], Problem> {
  switch (run[0]) {
    case 'add-item': {
      const added = addItems(db, run[1]);
      return added.ok ? ok(run[1].map(({ item }) => ({ kind: 'remove-item', itemId: item.id }))) : added;
    }
    case 'remove-item':
      return each(run[1], ({ itemId }) => {
        const removed = removeItem(db, itemId);
        return removed.ok ? ok({ kind: 'add-item', ...removed.value }) : removed;
      });
    case 'entries':
      return each(run[1], ({ from, to }) => changeEntries(db, from, to));
    case 'note-price': {
      const noted = notePrices(db, run[1]);
      return noted.ok ? ok(noted.value.map((price) => ({ kind: 'remove-price', ...price }))) : noted;
    }
    case 'take-back':
      return each(run[1], ({ itemId, price }) => takeBack(db, itemId, price));
    case 'put-price':
      addNumberedPrices(db, run[1]);
      return ok(run[1].map((price) => ({ ...price, kind: 'remove-price' })));
    case 'remove-price':
      return removeNumberedPrices(db, run[1])
        ? ok(run[1].map((price) => ({ ...price, kind: 'put-price' })))
        : fail({ code: 'not-found', what: 'price' });
    default:
      return assertNever(run);
  }
}

function each<T>(
  steps: readonly T[],
  change: (step: T) => Result<StoredChange, Problem>,
): Result<readonly StoredChange[], Problem> {
  const undo: StoredChange[] = [];
  for (const step of steps) {
    const done = change(step);
    if (!done.ok) return done;
    undo.push(done.value);
  }
  return ok(undo);
}

function changeEntries(db: WritableDb, from: PriceEntries, to: PriceEntries): Result<StoredChange, Problem> {
  const row = db.row(query.selectFrom('price_items').selectAll().where('id', '=', to.id));
  if (row === undefined || from.id !== to.id) return fail({ code: 'not-found', what: 'price item' });
  const now = priceEntriesOf(row);
  const names = changedEntries(from, to);
  // What it is to be it may be already: then an answer was lost, and the change comes again.
  const other = names.find((name) => now[name] !== from[name] && now[name] !== to[name]);
  if (other !== undefined)
    return fail({
      code: 'prices',
      fault: { what: 'changed-since', item: now.description, entry: entryWords[other] ?? other },
    });
  const next = { ...now, ...Object.fromEntries(names.map((name) => [name, to[name]])) };
  if (names.length > 0) db.run(query.updateTable('price_items').set(priceRow(next)).where('id', '=', to.id));
  return ok({ kind: 'entries', from: to, to: from });
}

const entryWords: Readonly<Partial<Record<EntryName, string>>> = {
  category: 'kind',
  lengthFt: 'length',
  packageLb: 'package',
  packageCount: 'package',
  widthIn: 'width',
  lengthIn: 'length',
  thicknessIn: 'thickness',
  minimumPack: 'pack',
  notes: 'note',
  taxable: 'tax',
};

/** Takes back the latest of an item's prices that say this. */
function takeBack(db: WritableDb, itemId: string, price: PriceObservation): Result<StoredChange, Problem> {
  const row = db.row(
    query
      .selectFrom('prices')
      .select('sequence')
      .where('item_id', '=', itemId)
      .where('observed_on', '=', price.observedOn)
      .where('price_usd', '=', price.priceUsd)
      .where('source', '=', price.source)
      .where('valid_until', 'is', price.validUntil)
      .orderBy('sequence', 'desc')
      .limit(1),
  );
  if (row === undefined) return fail({ code: 'not-found', what: 'price' });
  const numbered = { itemId, price, sequence: row.sequence };
  removeNumberedPrices(db, [numbered]);
  return ok({ kind: 'put-price', ...numbered });
}
