import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { changedJob, entryOf } from '../job/changed-job.ts';
import { soundResult } from '../job/example-job.ts';

const edge = (id: string, entries: Record<string, unknown>) => ({
  id,
  category: 'edge',
  description: id,
  unit: 'each',
  ...entries,
});
const at = (priceUsd: string) => ({ prices: [{ priceUsd, observedOn: '2026-04-13' }] });
/** What is bought and lacking with these edge items and no other. */
const buying = (...items: Record<string, unknown>[]) => {
  const { estimate } = soundResult(
    changedJob((raw) => {
      raw.priceList = [...raw.priceList.filter(({ category }) => category !== 'edge'), ...items];
    }),
  );
  return {
    lines: estimate.lines
      .filter(({ takeoffLineId, kind }) => takeoffLineId === 'drip-edge' && kind === 'material')
      .map(({ description, quantity, unit, costUsd }) => [description, quantity, unit, costUsd]),
    lacks: estimate.lacks.map(problemSentence),
  };
};

describe('the drip edge that is bought', () => {
  test('is the one that covers a foot for the least money, laps taken off, not the first on the list', () => {
    // 5 ft at 4.00 covers 58 in.: 6.9 cents an inch; 10 ft at 9.85 covers 118 in.: 8.3; 20 ft at 17 covers 238: 7.1.
    const { lines, lacks } = buying(
      edge('ten', { lengthIn: 120, ...at('9.85') }),
      edge('five', { lengthIn: 60, ...at('4.00') }),
      edge('twenty', { lengthIn: 240, ...at('17') }),
    );
    // The eave is 80 in. long: 2 pieces of 60 in.
    expect(lines).toEqual([['five', '2', 'piece', '8.00']]);
    expect(lacks).toEqual([]);
  });

  test('is none without a price, of a later day or not bought any more, and then another is taken', () => {
    const { lines, lacks } = buying(
      edge('bare', { lengthIn: 120 }),
      edge('later', { lengthIn: 120, prices: [{ priceUsd: '1', observedOn: '2027-01-01' }] }),
      edge('by weight', { lengthIn: 120, unit: 'lb', ...at('1') }),
      edge('old', { lengthIn: 120, retired: true, ...at('1') }),
      edge('sold', { lengthIn: 120, ...at('9.85') }),
    );
    expect(lines).toEqual([['sold', '1', 'piece', '9.85']]);
    expect(lacks).toEqual([]);
  });

  test('is lacking by name only where none has a price', () => {
    expect(buying(edge('bare', { lengthIn: 120 }), edge('other', { lengthIn: 120 }))).toEqual({
      lines: [],
      lacks: ['No price for bare. Add it to the price list.'],
    });
  });

  test('asks for its length, since neither pieces nor rolls can be counted without one', () => {
    expect(buying(edge('roll', { unit: 'roll', ...at('40') })).lacks).toEqual([
      'roll is priced by roll, which needs the length of a roll. Fill that in on the price list.',
    ]);
    expect(buying(edge('piece', at('9'))).lacks).toEqual([
      'piece is priced by each, which needs the length of a piece. Fill that in on the price list.',
    ]);
    expect(buying(edge('piece', at('9')), edge('ten', { lengthFt: 10, ...at('30') })).lines).toEqual([
      ['ten', '1', 'piece', '30.00'],
    ]);
  });
});

describe('sheathing that is not bought any more', () => {
  test('is lacking by name, and its sheets are still counted by its size', () => {
    const { estimate, takeoff } = soundResult(
      changedJob((raw) => Object.assign(entryOf(raw.priceList, 'panel'), { retired: true })),
    );
    expect(estimate.lacks.map(problemSentence)).toEqual([
      'Sheathing of Eave A (Porch eave): "Roof panel 15/32, 4 x 8 ft" is not bought any more. Choose another sheet in Design.',
    ]);
    expect(estimate.lines.filter(({ takeoffLineId }) => takeoffLineId.startsWith('sheathing'))).toEqual([]);
    expect(takeoff.lines.find(({ kind }) => kind === 'sheet')?.need).toMatchObject({ sheets: 1 });
  });
});
