import { describe, expect, test } from 'vitest';
import { edgeUsd, footUsd, nailPackageUsd, pieceUsd, sheetUsd } from '../../core/pricing/unit-conversion.ts';
import { priceItem } from './make-price.ts';

const lumber = (
  unit: 'each' | 'LF' | 'BF' | 'MBF' | 'sheet',
  lengthFt: number | null = 16,
  section = '2x6',
) => priceItem({ unit, section, lengthFt, description: 'A board' });

describe('the price of one board', () => {
  // Board feet by nominal size: US Army EN0069A, "Frame Structures" (2x6 of 10 ft = 10 BF), so 16 ft = 16 BF.
  test.each([
    ['each', '12.90', '12.90'],
    ['LF', '0.855', '13.68'],
    ['BF', '0.75', '12.00'],
    ['MBF', '750', '12.00'],
    ['MBF', '812.34', '13.00'],
  ] as const)('of 2x6, 16 ft, sold by %s at %s is %s', (unit, price, piece) => {
    expect(pieceUsd(lumber(unit), price)).toEqual({ ok: true, value: piece });
  });

  test('is rounded to whole cents half up', () => {
    expect(pieceUsd(lumber('LF', 10), '0.0505')).toEqual({ ok: true, value: '0.51' });
    expect(pieceUsd(lumber('LF', 10), '0.05049')).toEqual({ ok: true, value: '0.50' });
  });

  // Source: EN5155 "Carpentry": 8 pieces 1x4 of 14 ft = 37-1/3 BF, so one is 4-2/3 BF.
  test('of thin stock counts a whole inch of thickness', () => {
    expect(pieceUsd(lumber('BF', 14, '1x4'), '3')).toEqual({ ok: true, value: '14.00' });
  });

  test('needs its length where it is sold by the foot, its section by the board foot, and no odd unit', () => {
    const needs = (item: ReturnType<typeof lumber>) => {
      const price = pieceUsd(item, '1');
      return price.ok ? 'none' : price.problem;
    };
    expect(needs(lumber('LF', null))).toMatchObject({
      code: 'unit-does-not-fit',
      needs: 'its length in feet',
    });
    expect(needs(lumber('MBF', 16, '9x9'))).toMatchObject({ code: 'unit-does-not-fit', unit: 'MBF' });
    expect(needs(lumber('sheet'))).toMatchObject({ code: 'unit-does-not-fit', unit: 'sheet' });
  });
});

describe('the price of other things', () => {
  test('a 4 by 8 sheet at 0.95 a square foot is 30.40', () => {
    const sheet = priceItem({ unit: 'SF', category: 'sheet', widthIn: 48, lengthIn: 96 });
    expect(sheetUsd(sheet, '0.95')).toEqual({ ok: true, value: '30.40' });
    expect(sheetUsd(priceItem({ unit: 'sheet', category: 'sheet' }), '28.5')).toEqual({
      ok: true,
      value: '28.50',
    });
    expect(sheetUsd(priceItem({ unit: 'SF', category: 'sheet' }), '0.95').ok).toBe(false);
  });

  test('ten feet of edge at 0.89 a foot is 8.90', () => {
    const edge = priceItem({ unit: 'LF', category: 'edge' });
    expect(edgeUsd(edge, '0.89', 120)).toEqual({ ok: true, value: '8.90' });
    expect(edgeUsd(priceItem({ unit: 'lb', category: 'edge' }), '1', 120).ok).toBe(false);
  });

  test('five pounds of nails at 2.499 a pound is 12.50', () => {
    const nails = { category: 'nails', nail: '16d common', packageLb: 5 } as const;
    expect(nailPackageUsd(priceItem({ unit: 'lb', ...nails }), '2.499')).toEqual({
      ok: true,
      value: '12.50',
    });
    expect(nailPackageUsd(priceItem({ unit: 'box', ...nails }), '19.8')).toEqual({
      ok: true,
      value: '19.80',
    });
    expect(nailPackageUsd(priceItem({ unit: 'box', category: 'nails' }), '19.8').ok).toBe(false);
  });

  test('a foot of 1x6 plank at 1,900 MBF is 0.95', () => {
    const plank = priceItem({ unit: 'MBF', category: 'plank', section: '1x6' });
    const foot = footUsd(plank, '1900');
    expect(foot.ok && foot.value.toFixed(4)).toBe('0.9500');
    expect(footUsd(priceItem({ unit: 'each', category: 'plank' }), '5').ok).toBe(false);
  });
});
