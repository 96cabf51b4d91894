import { fail, ok, type Result } from '../../result.ts';
import { plainId } from '../new-item-id.ts';
import type { PriceEntries, SomeEntries } from '../price-changes.ts';

/** What a row says of which item it is. */
export type RowName = {
  readonly code: string;
  readonly given: SomeEntries;
};

/** How the item of a row was found. */
export type MatchedBy = 'code' | 'size' | 'description';

export type Match = { readonly id: string; readonly by: MatchedBy };

export type ItemMatcher = {
  /** The item of a row; undefined where the list has none; or the descriptions between which the row leaves it open. */
  readonly match: (row: RowName) => Result<Match | undefined, readonly string[]>;
  /** An item that the file itself added: later rows find it. */
  readonly added: (row: RowName, item: PriceEntries) => void;
};

/**
 * Finds the items that the rows of a file speak of.
 *
 * By code first: the item of that id, unless another supplier's; the id may also be the supplier's name and the code. Then
 * by section, length, supplier, and grade, species and kind as far as the row gives them; without section or length by
 * description and supplier. Letters large or small and blanks between words make no difference. Of several that fit, the
 * one that agrees in everything is it; else the row leaves it open. An item that one code of the file has found is not
 * found by another.
 */
export function createItemMatcher(items: readonly PriceEntries[]): ItemMatcher {
  const byId = new Map(items.map((item) => [item.id, item]));
  const byName = new Map<string, Named[]>();
  // Items that a code of this file has added: rows without a code alone may mean them.
  const codedByName = new Map<string, Named[]>();
  const codeOf = new Map<string, string>();
  for (const item of items) for (const key of keysOf(item)) push(byName, key, named(item));

  return {
    match({ code, given }) {
      const supplier = plain(given.supplier ?? '');
      if (code !== '') {
        for (const id of [code, codedId(given.supplier ?? '', code)]) {
          const item = byId.get(id);
          if (item === undefined) continue;
          if (supplier !== '' && item.supplier !== '' && plain(item.supplier) !== supplier) continue;
          codeOf.set(item.id, code);
          return ok({ id: item.id, by: 'code' });
        }
      }
      const bySize = given.section !== undefined && given.lengthFt !== undefined && given.lengthFt !== null;
      const key = bySize
        ? sizeKey(given.section ?? '', given.lengthFt ?? 0)
        : wordKey(given.description ?? '');
      const row = {
        supplier,
        grade: plain(given.grade ?? ''),
        species: plain(given.species ?? ''),
      };
      const known = byName.get(key) ?? [];
      const candidates = code === '' ? [...known, ...(codedByName.get(key) ?? [])] : known;
      const fits = candidates.filter((one) => {
        const taken = codeOf.get(one.item.id);
        return (code === '' || taken === undefined || taken === code) && agrees(one, given, row);
      });
      const exact = fits.filter(
        (one) => one.supplier === row.supplier && one.grade === row.grade && one.species === row.species,
      );
      const [first, second] = (exact.length === 1 ? exact : fits).map(({ item }) => item);
      if (first === undefined) return ok(undefined);
      if (second !== undefined) return fail([first.description, second.description]);
      if (code !== '') codeOf.set(first.id, code);
      return ok({ id: first.id, by: bySize ? 'size' : 'description' });
    },
    added({ code }, item) {
      byId.set(item.id, item);
      const names = code === '' ? byName : codedByName;
      for (const key of keysOf(item)) push(names, key, named(item));
      if (code !== '') codeOf.set(item.id, code);
    },
  };
}

/** The id of a supplier's code where the bare code is another supplier's. */
export function codedId(supplier: string, code: string): string {
  return `${plainId(supplier).slice(0, 20)}-${code}`.slice(0, 60);
}

type Words = { readonly supplier: string; readonly grade: string; readonly species: string };

/** An item with its words made plain once: a long file holds each against many rows. */
type Named = Words & { readonly item: PriceEntries };

function named(item: PriceEntries): Named {
  return {
    item,
    supplier: plain(item.supplier),
    grade: plain(item.grade),
    species: plain(item.species),
  };
}

function agrees(one: Named, given: SomeEntries, row: Words): boolean {
  return (
    (row.supplier === '' || one.supplier === row.supplier) &&
    (given.category === undefined || given.category === one.item.category) &&
    (given.grade === undefined || row.grade === one.grade) &&
    (given.species === undefined || one.species === '' || row.species === one.species)
  );
}

function keysOf(item: PriceEntries): readonly string[] {
  const isBoard = item.category === 'lumber' || item.category === 'plank';
  const words = wordKey(item.description);
  return isBoard && item.section !== '' && item.lengthFt !== null
    ? [sizeKey(item.section, item.lengthFt), words]
    : [words];
}

function sizeKey(section: string, lengthFt: number): string {
  return `size ${plain(section)} ${lengthFt}`;
}

function wordKey(description: string): string {
  return `words ${plain(description)}`;
}

function plain(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}

function push<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [value]);
  else list.push(value);
}
