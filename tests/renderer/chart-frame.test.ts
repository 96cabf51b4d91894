import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../core/units/civil-date.ts';
import { dateTicks, daysShown, momentsOf, stepPath, valueTicks } from '../../renderer/charts/chart-frame.ts';

const line = (...days: readonly string[]) => ({
  id: 'a',
  name: 'a',
  points: days.map((from) => ({ from, value: 1, text: '$1' })),
});

const x = (day: string) => Number(day.slice(8));
const y = (value: number) => value;

describe('the axes of a chart', () => {
  test('hold every value between their lowest and highest mark, evenly apart', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (one, other) => {
          const [least, most] = [Math.min(one, other) / 100, Math.max(one, other) / 100];
          const ticks = valueTicks(least, most, 4);
          expect(ticks[0]).toBeLessThanOrEqual(least + 1e-6);
          expect(ticks.at(-1)).toBeGreaterThanOrEqual(most - 1e-6);
          expect(ticks.length).toBeGreaterThanOrEqual(2);
          expect(ticks.length).toBeLessThanOrEqual(7);
          expect(new Set(ticks).size).toBe(ticks.length);
        },
      ),
    );
  });

  test('mark round dollars: 6.10 to 6.38 by tenths', () => {
    expect(valueTicks(6.1, 6.38, 3)).toEqual([6.1, 6.2, 6.3, 6.4]);
  });

  test('mark no more days than fit, each within what is shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 2, max: 12 }), (days, most) => {
        const last = addDays('2001-01-20', days);
        const ticks = dateTicks('2001-01-20', last, most);
        expect(ticks.length).toBeLessThanOrEqual(Math.max(most + 1, 4));
        for (const { at } of ticks) expect(at >= 0 && at <= days).toBe(true);
      }),
    );
  });

  test('name the first of February twelve days after the twentieth of January', () => {
    const [first] = dateTicks('2026-01-20', '2026-12-20', 12);
    expect(first).toEqual({ at: daysBetween('2026-01-20', '2026-02-01'), label: 'Feb 2026' });
  });
});

describe('a stepped line', () => {
  test('holds each value until the next, and the last to the end', () => {
    const points = [
      { from: '2026-01-01', value: 5, text: '' },
      { from: '2026-01-10', value: 7, text: '' },
    ];
    expect(stepPath(points, '2026-01-20', x, y)).toBe('M1 5H10L10 7H20');
  });

  test('is broken where a value is not known until the next', () => {
    const points = [
      { from: '2026-01-01', until: '2026-01-03', value: 5, text: '' },
      { from: '2026-01-04', until: '2026-01-06', value: 6, text: '' },
      { from: '2026-01-10', until: '2026-01-12', value: 7, text: '' },
    ];
    expect(stepPath(points, '2026-01-20', x, y)).toBe('M1 5H4L4 6H6M10 7H12');
  });
});

describe('what a chart is read by', () => {
  test('is each day of a change once, and the last day shown', () => {
    expect(
      momentsOf([line('2026-01-02', '2026-02-03'), line('2026-01-02', '2026-05-01')], '2026-03-01'),
    ).toEqual(['2026-01-02', '2026-02-03', '2026-03-01']);
  });

  test('is a day wide at least', () => {
    expect(daysShown([line('2026-03-01')], '2026-03-01')).toEqual({ first: '2026-02-28', days: 1 });
    expect(daysShown([], '2026-03-01').days).toBe(1);
  });
});
