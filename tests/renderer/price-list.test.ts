import { describe, expect, test } from 'vitest';
import { priceItemSchema } from '../../core/pricing/price-list.ts';
import { isWanted, newItemId } from '../../renderer/screens/prices/price-words.ts';

const board = priceItemSchema.parse({
  id: '2x6-12',
  category: 'lumber',
  description: '2x6 No.2 fir, 12 ft',
  unit: 'each',
  supplier: 'Fernhollow Lumber',
});

describe('the search of the price list', () => {
  test('takes words in any order and any case', () => {
    expect(isWanted(board, 'FERN 2x6')).toBe(true);
    expect(isWanted(board, '12 fir')).toBe(true);
    expect(isWanted(board, '2x8')).toBe(false);
  });

  test('shows everything while it is empty', () => {
    expect(isWanted(board, '')).toBe(true);
  });
});

describe('the key of a new item', () => {
  test('is made of its description', () => {
    expect(newItemId('2x6 DF #2, 12 ft', new Set())).toBe('2x6-df-2-12-ft');
  });

  test('takes a number where the key is in use', () => {
    expect(newItemId('Nails!', new Set(['nails', 'nails-2']))).toBe('nails-3');
  });

  test('is never empty', () => {
    expect(newItemId('***', new Set())).toBe('item');
  });
});
