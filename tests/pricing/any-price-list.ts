import * as fc from 'fast-check';
import { priceListSchema, unitsOfSale, type PriceItem } from '../../core/pricing/price-list.ts';
import { addDays } from '../../core/units/civil-date.ts';

/** A word or two as they stand in a cell, a start of a formula and quotes among them. */
const words = fc
  .array(
    fc.constantFrom('2x6', 'No.2', 'hem-fir', '=SUM(A1)', '-', "'s", '"quoted"', 'x;y', 'a,b', 'é', '+1'),
    {
      maxLength: 4,
    },
  )
  .map((some) => some.join(' '));
const day = fc.integer({ min: 10_000, max: 20_000 }).map((days) => addDays('1970-01-01', days));

/** Any price list that a shop may have: ids apart, everything else as it comes. */
export const anyPriceList: fc.Arbitrary<readonly PriceItem[]> = fc
  .array(
    fc.record({
      category: fc.constantFrom('lumber', 'nails', 'sheet', 'plank', 'edge', 'other'),
      description: words.map((text) => (text === '' ? 'Item' : text)),
      unit: fc.constantFrom(...unitsOfSale),
      supplier: fc.constantFrom('', 'Fernhollow Lumber', 'Brindle Hardware'),
      taxable: fc.boolean(),
      retired: fc.boolean(),
      section: fc.constantFrom('', '2x6', '1x8'),
      grade: fc.constantFrom('', 'No.2'),
      species: fc.constantFrom('', 'hem-fir'),
      minimumPack: fc.integer({ min: 1, max: 500 }),
      notes: words,
      lengthFt: fc.option(fc.integer({ min: 4, max: 120 }).map((quarters) => quarters / 4)),
      nail: fc.constantFrom('', '16d common'),
      packageLb: fc.option(fc.integer({ min: 1, max: 200 }).map((halves) => halves / 2)),
      packageCount: fc.option(fc.integer({ min: 1, max: 5000 })),
      widthIn: fc.option(fc.integer({ min: 8, max: 960 }).map((sixteenths) => sixteenths / 16)),
      lengthIn: fc.option(fc.integer({ min: 16, max: 9600 }).map((sixteenths) => sixteenths / 16)),
      thicknessIn: fc.option(fc.double({ min: 0.01, max: 6, noNaN: true })),
      prices: fc.array(
        fc.record({
          priceUsd: fc.integer({ min: 0, max: 10_000_000 }).map((mills) => String(mills / 1000)),
          observedOn: day,
          source: fc.constantFrom('list', 'quote', 'receipt'),
          validUntil: fc.option(day),
        }),
        { maxLength: 4 },
      ),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((items) => priceListSchema.parse(items.map((item, index) => ({ ...item, id: `item-${index}` }))));
