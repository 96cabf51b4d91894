import { expect, test } from 'vitest';
import { labourTasks } from '../../core/takeoff/labour-tasks.ts';
import { lineOf, smallTakeoff } from '../takeoff/small-job.ts';

const fasciaHoursAt = (hoursPerUnit: number) =>
  lineOf(
    smallTakeoff({
      stations: Array.from({ length: 80 }, (_, index) => 12 + 24 * index),
      eave: { lengthIn: 1920 },
      settings: { labour: { rates: [{ task: 'fascia', hoursPerUnit }] } },
    }),
    'labour-fascia',
  ).quantity;

test('fascia of 160 LF takes 5.6 to 8 hours at the published 3.5 to 5 hours for 100 LF', () => {
  // Source: a construction-estimating textbook's labour table (new work): fascia 3.5 to 5.0 h for 100 LF.
  expect(fasciaHoursAt(0.035)).toBe('5.6');
  expect(fasciaHoursAt(0.05)).toBe('8');
});

const hoursOf = (key: string) => labourTasks.find((task) => task.key === key)?.hoursPerUnit;

test('our fascia placeholder stays above that of new work, and our sheathing too', () => {
  // Same table: fascia 3.5 to 5.0 h for 100 LF, plywood roof 1.4 to 2.8 h for 100 SF, on new work with good access.
  // Work on an old eave from staging is slower (common practice, no source: two to three times).
  expect(hoursOf('fascia')).toBeGreaterThanOrEqual(0.05);
  expect(hoursOf('sheathing')).toBeGreaterThanOrEqual(0.028);
});

test('placeholders keep within the ranges that the trade names', () => {
  // Common practice, no source; labour hours of one person, one storey, straight run.
  const ranges: Readonly<Record<string, readonly [least: number, most: number]>> = {
    'survey-rafters': [0.08, 0.15],
    'set-up-side': [8, 16],
    'strip-roof-edge': [0.06, 0.1],
    'strip-fascia': [0.05, 0.1],
    'old-blocks-out': [0.1, 0.25],
    'cut-extenders': [0.15, 0.25],
    'install-extenders': [0.3, 0.6],
    'install-over-fillers': [0.4, 0.75],
    'install-hung': [0.6, 1],
    'install-whole': [1, 2],
    'replace-end': [1.5, 3],
    shims: [0.05, 0.15],
    'cut-tails': [0.05, 0.08],
    blocks: [0.1, 0.2],
    'sub-fascia': [0.05, 0.08],
    fascia: [0.06, 0.1],
    mitres: [0.25, 1],
    sheathing: [0.03, 0.05],
    'drip-edge': [0.02, 0.03],
    // Framing, panels and vents of a soffit together: 0.12 to 0.28 h a foot.
    'soffit-framing': [0.05, 0.1],
    soffit: [0.07, 0.14],
    'soffit-vents': [0.1, 0.25],
    'clean-up-side': [3, 6],
    // A gable has two rakes, so setting up and cleaning up are half those of a side.
    'rake-set-up': [4, 8],
    'rake-strip-back': [0.06, 0.1],
    'rake-framing': [0.25, 0.5],
    'rake-barge': [0.12, 0.2],
    'rake-fascia': [0.06, 0.1],
    'rake-corner': [1, 4],
    'rake-sheathing': [0.03, 0.05],
    'rake-drip-edge': [0.02, 0.03],
    // Ripped, scribed to the siding and set from a ladder up the slope; no range was found, so a soffit's whole one.
    'rake-soffit': [0.12, 0.28],
    'rake-clean-up': [1.5, 3],
  };
  expect(labourTasks.map((task) => task.key).toSorted()).toEqual(Object.keys(ranges).toSorted());
  for (const task of labourTasks) {
    expect(task.hoursPerUnit).toBeGreaterThanOrEqual(ranges[task.key]?.[0] ?? Number.NaN);
    expect(task.hoursPerUnit).toBeLessThanOrEqual(ranges[task.key]?.[1] ?? Number.NaN);
  }
});
