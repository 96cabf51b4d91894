import { priceColumns } from '../price-cells.ts';
import { readNumber } from '../table/written-number.ts';
import type { DecimalSign } from '../table/written-number.ts';
import type { ImportField, ImportLayout } from './layout.ts';
import { guessDayOrder } from './written-day.ts';

/** Titles of columns, in small letters and digits alone, as price lists write them. Common practice, no source. */
const titles: readonly (readonly [field: ImportField, words: string])[] = [
  [
    'code',
    'id code itemcode itemno itemnumber itemid sku partno partnumber stockno articleno article product productcode number',
  ],
  ['description', 'description desc itemdescription productdescription name itemname productname item'],
  ['kind', 'category kind class group type department'],
  ['section', 'section size nominal nominalsize dimension dimensions'],
  ['species', 'species wood speciesgroup'],
  ['grade', 'grade quality'],
  ['length', 'lengthft length len stocklength boardlength lengthfeet lengthin lengthinches'],
  ['unit', 'unit uom unitofmeasure per um sellunit priceunit pricingunit unitofsale soldby'],
  ['price', 'priceusd price unitprice netprice yourprice cost unitcost listprice net sellprice amount'],
  ['day', 'observedon date pricedate effective effectivedate asof day quotedon'],
  ['source', 'source knownfrom'],
  ['validUntil', 'validuntil expires expiry expirydate validto gooduntil quoteexpires until'],
  ['supplier', 'supplier vendor yard merchant'],
  ['taxable', 'taxable tax'],
  ['retired', 'retired discontinued inactive'],
  ['minimumPack', 'minimumpack minpack pack packsize packqty minqty minimum minorder minimumqty'],
  ['notes', 'notes note remarks remark comment comments'],
  ['nail', 'nail nailtype'],
  ['packageLb', 'packagelb packagepounds boxweight'],
  ['packageCount', 'packagecount boxcount countperbox'],
  ['width', 'widthin width'],
  ['lengthOfOne', 'piecelength rolllength'],
  ['thickness', 'thicknessin thickness thick'],
];

const fieldOfTitle: ReadonlyMap<string, ImportField> = new Map(
  titles.flatMap(([field, words]) => words.split(' ').map((word): [string, ImportField] => [word, field])),
);

/** What a column is, by its title; null where nothing fits. Its unit may stand in brackets: `Length (ft)`. */
export function fieldOfColumn(title: string): ImportField | null {
  // The column of the program's own file that says how long one piece or roll is.
  if (title.trim().toLowerCase() === 'length_in') return 'lengthOfOne';
  const whole = plainTitle(title);
  return fieldOfTitle.get(whole) ?? fieldOfTitle.get(plainTitle(title.replace(/[([].*$/, ''))) ?? null;
}

/**
 * Guesses how a file is laid out, from the titles of its columns and its first rows.
 * @param header - the titles.
 * @param rows - the first rows under them.
 */
export function guessLayout(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  headerRow: number,
): ImportLayout {
  const taken = new Set<ImportField>();
  const columns = header.map((title) => {
    const field = fieldOfColumn(title);
    if (field === null || taken.has(field)) return { title, field: null };
    taken.add(field);
    return { title, field };
  });
  const cellsOf = (...fields: readonly ImportField[]): string[] =>
    columns.flatMap(({ field }, index) =>
      field !== null && fields.includes(field) ? rows.map((row) => row[index] ?? '') : [],
    );
  const priceTitle = header[columns.findIndex(({ field }) => field === 'price')] ?? '';
  const lengthTitle = header[columns.findIndex(({ field }) => field === 'length')] ?? '';
  const unitInTitle = /\b(MBF|LF|BF|SF|MSF)\b/i.exec(priceTitle)?.[1];
  const isOurs = isOwnHeader(header);
  return {
    headerRow,
    columns,
    constants: taken.has('unit') || unitInTitle === undefined ? {} : { unit: unitInTitle.toUpperCase() },
    decimalSign: guessDecimalSign(cellsOf('price')),
    dayOrder: guessDayOrder(cellsOf('day', 'validUntil')) ?? 'month-first',
    lengthUnit: /\bin(ch(es)?)?\b|"/i.test(lengthTitle) ? 'in' : 'ft',
    skipsUnpriced: !isOurs,
    takesWording: isOurs,
    separator: null,
    encoding: null,
  };
}

/** True where the columns are those that the price list itself writes; its newer ones may be missing. */
export function isOwnHeader(header: readonly string[]): boolean {
  const names = header.map((title) => title.trim().toLowerCase());
  return (
    ['id', 'category', 'description', 'unit', 'price_usd', 'observed_on'].every((name) =>
      names.includes(name),
    ) && names.every((name) => priceColumns.some((column) => column === name))
  );
}

/**
 * Lays a remembered layout onto a file: each column by its title, wherever it stands now.
 * @returns undefined where the file lacks a column that the layout reads.
 */
export function fittedLayout(layout: ImportLayout, header: readonly string[]): ImportLayout | undefined {
  const wanted = new Map(
    layout.columns.flatMap(({ title, field }) =>
      field === null ? [] : [[plainTitle(title), field] as const],
    ),
  );
  const columns = header.map((title) => {
    const field = wanted.get(plainTitle(title)) ?? null;
    wanted.delete(plainTitle(title));
    return { title, field };
  });
  return wanted.size > 0 || columns.every(({ field }) => field === null) ? undefined : { ...layout, columns };
}

function plainTitle(title: string): string {
  return title.toLowerCase().replace(/[^a-z0-9]/g, '');
}

/** The decimal sign of some prices: by comma where one reads by comma alone. */
export function guessDecimalSign(prices: readonly string[]): DecimalSign {
  const given = prices.filter((text) => text.trim() !== '');
  return given.some((text) => readNumber(text, 'comma').ok && !readNumber(text, 'point').ok)
    ? 'comma'
    : 'point';
}
