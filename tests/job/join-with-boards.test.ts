import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestBoards } from '../../core/cutting/cheapest-boards.ts';
import { layOutEaves } from '../../core/job/lay-out-eaves.ts';
import type { JobInput } from '../../core/job/job-file.ts';
import { joinWithBoards } from '../../core/job/join-with-boards.ts';
import { boardsOnJoints, jointsOf, supportsOf } from '../../core/layout/fascia-joints.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { smallJob } from '../takeoff/small-job.ts';

const trim = 8;
const kerf = 2;

/** A fascia of 1x8 on tails every 24 in., with boards of these lengths at these prices, invented. */
function jobOf(lengthFt: number, boards: readonly (readonly [feet: number, usd: string])[], change = {}) {
  const count = Math.floor((lengthFt * 12) / 24);
  return smallJob({
    stations: Array.from({ length: count }, (_, index) => 12 + 24 * index),
    survey: {},
    eave: { lengthIn: lengthFt * 12 },
    priceList: boards.map(([feet, priceUsd]) => ({
      id: `1x8-${feet}`,
      category: 'lumber',
      description: `1x8 primed ${feet} ft`,
      unit: 'each',
      section: '1x8',
      grade: 'primed',
      lengthFt: feet,
      prices: [{ priceUsd, observedOn: '2026-04-01' }],
    })),
    ...change,
  });
}

function laid(job: JobInput): { readonly before: EaveLayout; readonly after: EaveLayout } {
  const layouts = layOutEaves(job);
  if (!layouts.ok) throw new Error(layouts.problem.code);
  const [after] = joinWithBoards(job, layouts.value, []);
  return { before: layouts.value[0]!, after: after! };
}

/** What a way to break the fascia costs: boards by trying every way, and 5 $ a joint. [cent] */
function costOf(fascia: EaveLayout['fascia'], boards: readonly (readonly [number, string])[]): number {
  const cents = cheapestBoards(
    fascia.map(({ lengthSixteenths }) => lengthSixteenths + kerf),
    boards.map(([feet, usd]) => ({
      roomSixteenths: feet * 192 - 2 * trim + kerf,
      priceCents: Math.round(Number(usd) * 100),
    })),
  );
  return (cents ?? Number.POSITIVE_INFINITY) + 500 * (fascia.length - 1);
}

describe('the cheapest boards for a few pieces', () => {
  test('put two pieces on one board where that is cheaper', () => {
    const lengths = [
      { roomSixteenths: 130, priceCents: 3 },
      { roomSixteenths: 230, priceCents: 5 },
    ];
    expect(cheapestBoards([100, 120], lengths)).toBe(5);
    expect(cheapestBoards([100, 120, 120], lengths)).toBe(8);
    expect(cheapestBoards([240], lengths)).toBeNull();
    expect(cheapestBoards([], lengths)).toBe(0);
  });
});

describe('fascia joints chosen with the boards', () => {
  // 20 ft with tails at 9, 11 and 13 ft: halves of 9 and 11 ft take two boards of 14 ft, $56. With the joint at 13 ft one of
  // 14 ft and one of 8 ft do, $44.
  test('are moved off the middle where that takes a shorter board', () => {
    const boards = [
      [8, '16.00'],
      [14, '28.00'],
    ] as const;
    const { before, after } = laid(jobOf(20, boards));
    expect(costOf(before.fascia, boards)).toBe(5600 + 500);
    expect(costOf(after.fascia, boards)).toBe(4400 + 500);
    expect(after.fascia).toHaveLength(2);
  });

  // Two of 12 ft at $40, or three of 8 ft at $10 with one joint more at $5.
  test('are one more where long boards cost more than the joint', () => {
    const boards = [
      [8, '10.00'],
      [12, '40.00'],
    ] as const;
    const { before, after } = laid(jobOf(20, boards));
    expect(costOf(before.fascia, boards)).toBe(8000 + 500);
    expect(costOf(after.fascia, boards)).toBe(3000 + 1000);
  });

  test('stay on tails, cover the run whole, and never cost more; of one run nothing costs less', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 9, max: 26 }),
        fc.uniqueArray(fc.constantFrom(8, 10, 12, 14, 16), { minLength: 1, maxLength: 4 }),
        fc.array(fc.integer({ min: 150, max: 400 }), { minLength: 4, maxLength: 4 }),
        (lengthFt, feet, perFoot) => {
          const boards = feet
            .toSorted((a, b) => a - b)
            .map((each, index) => [each, ((each * (perFoot[index] ?? 200)) / 100).toFixed(2)] as const);
          const { before, after } = laid(jobOf(lengthFt, boards));
          const { fasciaRun } = after;
          const supports = supportsOf(fasciaRun);
          expect(jointsOf(after.fascia).every((joint) => supports.includes(joint))).toBe(true);
          expect(after.fascia).toEqual(boardsOnJoints(fasciaRun, jointsOf(after.fascia)));
          expect(costOf(after.fascia, boards)).toBeLessThanOrEqual(costOf(before.fascia, boards));
          const everyWay = subsetsOf(supports.slice(1, -1));
          const least = Math.min(
            ...everyWay.map((joints) => costOf(boardsOnJoints(fasciaRun, joints), boards)),
          );
          expect(costOf(after.fascia, boards)).toBe(least);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('stay where they are while a board of the fascia is pinned', () => {
    const boards = [
      [8, '16.00'],
      [14, '28.00'],
    ] as const;
    const job = jobOf(20, boards);
    const pinned = {
      ...job,
      design: {
        ...job.design,
        cutting: { ...job.design.cutting, pins: [{ itemId: '1x8-14', marks: ['A-F01'] }] },
      },
    };
    const { before, after } = laid(pinned);
    expect(after.fascia).toEqual(before.fascia);
  });
});

/** Every choice of up to three of some stations; more joints cost more than they save here. */
function subsetsOf(stations: readonly number[]): readonly (readonly number[])[] {
  const found: (readonly number[])[] = [[]];
  for (const station of stations)
    for (const before of found.slice()) if (before.length < 3) found.push([...before, station]);
  return found;
}
