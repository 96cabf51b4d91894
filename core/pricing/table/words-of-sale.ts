import type { PriceItem, UnitOfSale } from '../price-list.ts';

/** A unit as a supplier writes it, as so many of a unit of sale: MSF is 1000 SF. */
export type WrittenUnit = { readonly unit: UnitOfSale; readonly per: number };

/** How units are written, without points, blanks and dollar signs. Common practice, no source. */
const unitWords: readonly (readonly [words: string, unit: UnitOfSale, per: number])[] = [
  ['each ea pc pcs pce piece pieces unit stk stick board ct', 'each', 1],
  ['lf lft linft lnft linearft linearfoot linearfeet ft foot feet lineal linealft plf', 'LF', 1],
  ['mlf thousandlf', 'LF', 1000],
  ['clf', 'LF', 100],
  ['bf bdft boardft boardfoot boardfeet', 'BF', 1],
  ['mbf mbdft mfbm mbm thousandboardfeet thousandbf thousandbdft', 'MBF', 1],
  ['lb lbs pound pounds #', 'lb', 1],
  ['box boxes bx ctn carton pail pkg package', 'box', 1],
  ['sheet sheets sht panel panels pnl', 'sheet', 1],
  ['sf sqft squarefoot squarefeet sft psf', 'SF', 1],
  ['msf thousandsf thousandsqft', 'SF', 1000],
  ['roll rolls rl', 'roll', 1],
];

const units: ReadonlyMap<string, WrittenUnit> = new Map(
  unitWords.flatMap(([words, unit, per]) =>
    words.split(' ').map((word): [string, WrittenUnit] => [word, { unit, per }]),
  ),
);

/**
 * Reads a unit of sale as a supplier writes it.
 * @returns e.g. `$/MBF` -> MBF; `msf` -> 1000 SF; undefined where it is none that is known.
 */
export function readUnit(text: string): WrittenUnit | undefined {
  const plain = text
    .toLowerCase()
    .replace(/\(.*\)/, '')
    .replace(/^\s*(?:\$\s*\/|\/|per\b|an?\b)/, '')
    .replace(/[\s.$/]/g, '');
  return units.get(plain);
}

const kindWords: Readonly<Record<string, PriceItem['category']>> = {
  lumber: 'lumber',
  framing: 'lumber',
  board: 'lumber',
  boards: 'lumber',
  trim: 'lumber',
  nails: 'nails',
  nail: 'nails',
  fasteners: 'nails',
  sheet: 'sheet',
  sheets: 'sheet',
  'sheet goods': 'sheet',
  panel: 'sheet',
  panels: 'sheet',
  plywood: 'sheet',
  plank: 'plank',
  planks: 'plank',
  edge: 'edge',
  'edge metal': 'edge',
  'drip edge': 'edge',
  other: 'other',
};

/** Reads the kind of an item; undefined where it is none that is known. */
export function readKind(text: string): PriceItem['category'] | undefined {
  return kindWords[text.trim().toLowerCase().replace(/\s+/g, ' ')];
}

/** Reads where a price is known from. */
export function readSource(text: string): 'list' | 'quote' | 'receipt' | undefined {
  const plain = text.trim().toLowerCase();
  if (/^(price )?list$/.test(plain)) return 'list';
  if (/^quot(e|ation)$/.test(plain)) return 'quote';
  return /^(receipt|bill|invoice)$/.test(plain) ? 'receipt' : undefined;
}
