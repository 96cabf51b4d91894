import { describe, expect, test } from 'vitest';
import { convertPrice } from '../../core/pricing/convert-price.ts';
import { priceItem } from '../pricing/make-price.ts';

function board(section: string, lengthFt: number) {
  return priceItem({ unit: 'each', section, lengthFt });
}

describe('a price for one unit of sale as a price for another', () => {
  test.each([
    // Board measure, nominal T x W x L / 12: 2x6 of 12 ft is 12 BF, of 16 ft 16 BF. American Softwood Lumber Standard,
    // PS 20, board measure; from memory.
    ['2x6', 12, '750', 'MBF', 'each', '9'],
    ['2x6', 16, '750', 'MBF', 'each', '12'],
    ['2x6', 16, '12', 'each', 'MBF', '750'],
    // A 2x6 of 10 ft is 10 BF: US Army EN0069A, "Frame Structures".
    ['2x6', 10, '1', 'BF', 'each', '10'],
    // Eight 1x4 of 14 ft are 37-1/3 BF, so one is 4-2/3: US Army EN5155, "Carpentry". At $3 a board foot it costs $14.
    ['1x4', 14, '3', 'BF', 'each', '14'],
    // A thousand board feet of 2x6 is a thousand feet run: definition, from memory.
    ['2x6', 8, '640', 'MBF', 'LF', '0.64'],
  ] as const)('%s of %i ft at $%s for %s is $%s', (section, lengthFt, price, from, to, expected) => {
    expect(convertPrice(board(section, lengthFt), price, from, to)).toBe(expected);
  });

  test('a sheet of 4 by 8 ft is 32 square feet', () => {
    // 4 x 8 = 32: computed here.
    const sheet = priceItem({ category: 'sheet', unit: 'sheet', widthIn: 48, lengthIn: 96 });
    expect(convertPrice(sheet, '0.95', 'SF', 'sheet')).toBe('30.4');
    expect(convertPrice(sheet, '30.40', 'sheet', 'SF')).toBe('0.95');
  });

  test('nails by the pound follow the pounds of their box', () => {
    const nails = priceItem({ category: 'nails', unit: 'box', packageLb: 5 });
    expect(convertPrice(nails, '2.5', 'lb', 'box')).toBe('12.5');
  });

  test('what does not come out even keeps six places, half up', () => {
    // A 2x4 of 8 ft is 5-1/3 BF: $1 each is 3/16 of a dollar a board foot; $1 a foot run is $1.50 a board foot.
    expect(convertPrice(board('2x4', 8), '1', 'each', 'BF')).toBe('0.1875');
    expect(convertPrice(board('2x4', 8), '1', 'LF', 'BF')).toBe('1.5');
    expect(convertPrice(board('2x6', 7), '1', 'each', 'LF')).toBe('0.142857');
  });

  test('sizes that do not say how units hang together leave the price unturned', () => {
    expect(convertPrice(priceItem({ unit: 'each', section: '2x6' }), '1', 'MBF', 'each')).toBeUndefined();
    expect(convertPrice(priceItem({ category: 'nails', unit: 'box' }), '1', 'lb', 'box')).toBeUndefined();
    expect(convertPrice(board('2x6', 8), '1', 'sheet', 'each')).toBeUndefined();
  });
});
