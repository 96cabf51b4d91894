import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { labourTasks } from '../../core/takeoff/labour-tasks.ts';
import { lineOf, smallTakeoff } from './small-job.ts';

const installHoursAt = (pitchRisePer12: number) =>
  lineOf(smallTakeoff({ eave: { pitchRisePer12 } }), 'labour-install-extenders').quantity;

const idsWhere = (hasOldBlocks: boolean) =>
  smallTakeoff({ eave: { hasOldBlocks } }).lines.map((line) => line.id);

describe('labour', () => {
  test('hours are pieces times hours for one', () => {
    // 5 extenders x 0.45 h (placeholder, common practice, no source).
    expect(lineOf(smallTakeoff(), 'labour-install-extenders').quantity).toBe('2.25');
  });

  test('work at the roof edge of two storeys takes the factor of the shop, work on the ground does not', () => {
    const takeoff = smallTakeoff({ survey: { storeys: 2 } });
    // 2.25 h x 1.25 = 2.8125 h, half up to hundredths.
    expect(lineOf(takeoff, 'labour-install-extenders').quantity).toBe('2.81');
    expect(lineOf(takeoff, 'labour-cut-extenders').quantity).toBe('1');
  });

  test('a pitch steeper than 8/12 slows work at the edge, one of 8/12 does not', () => {
    expect(installHoursAt(8)).toBe('2.25');
    // 2.25 x 1.15 = 2.5875.
    expect(installHoursAt(9)).toBe('2.59');
  });

  test('33.7 deg read off a level is 8/12 and not steeper', () => {
    // tan 33.7 deg x 12 = 8.003; a level shows tenths of a degree (common practice, no source).
    expect(installHoursAt(12 * Math.tan((33.7 * Math.PI) / 180))).toBe('2.25');
    expect(installHoursAt(8.01)).toBe('2.25');
    expect(installHoursAt(8.02)).toBe('2.59');
  });

  test('factors multiply, and each is named on the line', () => {
    const line = lineOf(smallTakeoff({ survey: { storeys: 3, access: 'hard' } }), 'labour-install-extenders');
    // 2.25 x 1.25^2 x 1.2 = 4.21875.
    expect(line.quantity).toBe('4.22');
    expect(line.madeOf.map((part) => part.ref)).toEqual([
      'labour/install-extenders',
      'eave/wall-1/rafters',
      'setting/labour.perStoreyAboveOne',
      'setting/labour.hardAccessFactor',
    ]);
  });

  test("the shop's own rate takes the place of the placeholder and is marked so", () => {
    const line = lineOf(
      smallTakeoff({
        settings: { labour: { rates: [{ task: 'install-extenders', hoursPerUnit: 0.6 }] } },
      }),
      'labour-install-extenders',
    );
    expect(line.quantity).toBe('3');
    expect(line.madeOf[0]?.label).toContain("the shop's own");
    expect(lineOf(smallTakeoff(), 'labour-install-extenders').madeOf[0]?.label).toContain('placeholder');
  });

  test('total hours are the sum of the printed lines, and crew days follow from them', () => {
    const takeoff = smallTakeoff({ settings: { labour: { crewSize: 3, hoursPerDay: 7 } } });
    const sum = takeoff.lines
      .filter((line) => line.kind === 'labour')
      .reduce((hours, line) => hours.plus(line.quantity), new Decimal(0));
    expect(takeoff.labourHours).toBe(sum.toFixed());
    expect(takeoff.crewDays).toBe(sum.div(21).toDecimalPlaces(1, Decimal.ROUND_HALF_UP).toFixed());
  });

  test('tails cut at the bench are not cut again in place', () => {
    const takeoff = smallTakeoff({ eaveDesign: { trimAllowanceIn: 0 } });
    expect(takeoff.lines.map((line) => line.id)).not.toContain('labour-cut-tails');
  });

  test('old blocks come out only where the house has them', () => {
    expect(idsWhere(true)).toContain('labour-old-blocks-out');
    expect(idsWhere(false)).not.toContain('labour-old-blocks-out');
  });

  test('a task has one key', () => {
    expect(new Set(labourTasks.map((task) => task.key)).size).toBe(labourTasks.length);
  });
});
