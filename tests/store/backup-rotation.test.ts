import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../core/units/civil-date.ts';
import { daysToKeep, keptDays, keptMonths, keptWeeks } from '../../electron/store/backup-rotation.ts';

/** Consecutive days back from one. */
function daysBack(from: string, count: number): string[] {
  return Array.from({ length: count }, (_, back) => addDays(from, -back));
}

test('of forty days in a row the last seven stay, and the newest of older weeks and months', () => {
  // 2026-04-30 was a Thursday; its week began on Monday the 27th.
  expect([...daysToKeep(daysBack('2026-04-30', 40))].toSorted()).toEqual([
    '2026-03-31',
    '2026-04-05',
    '2026-04-12',
    '2026-04-19',
    '2026-04-24',
    '2026-04-25',
    '2026-04-26',
    '2026-04-27',
    '2026-04-28',
    '2026-04-29',
    '2026-04-30',
  ]);
});

test('a shop that is opened once a year keeps every one of its last twelve backups', () => {
  const yearly = Array.from({ length: 15 }, (_, year) => `${2010 + year}-06-01`);
  expect([...daysToKeep(yearly)].toSorted()).toEqual(yearly.slice(-keptMonths));
});

test('what is kept is never more than days, weeks and months together, and the newest is always among it', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 60 }), (offsets) => {
      const days = offsets.map((offset) => addDays('2024-01-01', offset));
      const kept = daysToKeep(days);
      expect(kept.size).toBeLessThanOrEqual(keptDays + keptWeeks + keptMonths);
      expect(kept).toContain(days.toSorted().at(-1));
      expect(days).toEqual(expect.arrayContaining([...kept]));
      // Dropping is settled: a second turn drops nothing more.
      expect(daysToKeep([...kept])).toEqual(kept);
    }),
  );
});
