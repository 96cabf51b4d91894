import type { ImportField } from './layout.ts';

/** What a column of a supplier's file is called. */
export const fieldNames: Readonly<Record<ImportField, string>> = {
  code: 'Item code',
  description: 'Description',
  kind: 'Kind',
  section: 'Section',
  species: 'Species',
  grade: 'Grade',
  length: 'Stock length',
  unit: 'Unit of sale',
  price: 'Price',
  day: 'Day of the price',
  source: 'Known from',
  validUntil: 'Valid until',
  supplier: 'Supplier',
  taxable: 'Taxable',
  retired: 'Retired',
  minimumPack: 'Least pack',
  notes: 'Note',
  nail: 'Nail',
  packageLb: 'Pounds in a package',
  packageCount: 'Nails in a package',
  width: 'Width',
  lengthOfOne: 'Length of a piece or roll',
  thickness: 'Thickness',
};
