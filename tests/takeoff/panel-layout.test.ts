import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layCover } from '../../core/takeoff/lay-cover.ts';
import {
  type Course,
  jointsOfCourse,
  layCourse,
  leastBoardIn,
  leastEndBearingIn,
} from '../../core/takeoff/panel-layout.ts';
import { panelGapIn } from '../../core/takeoff/sheathing-strip.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';

const tail = (centreIn: number, thicknessIn = 1.5) => ({
  id: `t${centreIn}`,
  leftIn: centreIn - thicknessIn / 2,
  rightIn: centreIn + thicknessIn / 2,
});
const tails = (...centres: readonly number[]) => centres.map((centre) => tail(centre));
const every = (stepIn: number, toIn: number) =>
  Array.from({ length: Math.floor(toIn / stepIn) + 1 }, (_, index) => index * stepIn);
const course = (rest: Partial<Course>): Course => ({
  fromIn: 0,
  toIn: 240,
  tails: tails(...every(16, 240)),
  boardIn: 96,
  gapIn: panelGapIn,
  ...rest,
});
const ends = (boards: ReturnType<typeof layCourse>) => boards.map(({ fromIn, toIn }) => [fromIn, toIn]);

describe('a course of panels', () => {
  test('runs whole where its joints come on tails: 8 ft panels on tails at 16 in., 1/8 in. apart', () => {
    // Panel ends 1/8 in. apart at all edges: panel makers' layout rule, on secondary pages (10d box shank, 0.128 in.).
    // First joint at 96-1/16, second at 192-3/16: both within 3/16 of the tails' centres, so that 1/2 in. bears.
    const boards = layCourse(course({}));
    expect(ends(boards)).toEqual([
      [0, 96],
      [96.125, 192.125],
      [192.25, 240],
    ]);
    expect(boards.map(({ whole }) => whole)).toEqual([true, true, false]);
    expect(jointsOfCourse(boards)).toEqual([
      { stationIn: 96.0625, tailId: 't96' },
      { stationIn: 192.1875, tailId: 't192' },
    ]);
  });

  test('is cut back to the centre of the last tail it reaches where its end comes between tails', () => {
    const boards = layCourse(course({ tails: tails(0, 20, 44, 70, 90, 118, 140, 180, 200, 239) }));
    expect(ends(boards)).toEqual([
      [0, 89.9375],
      [90.0625, 179.9375],
      [180.0625, 240],
    ]);
    expect(boards.map(({ rightJoint }) => rightJoint?.tailId)).toEqual(['t90', 't180', undefined]);
  });

  test('is one panel where that is long enough', () => {
    expect(ends(layCourse(course({ toIn: 96 })))).toEqual([[0, 96]]);
    expect(layCourse(course({ toIn: 96 }))[0]?.whole).toBe(true);
  });

  test('lies loose over a block where no tail is in reach, and says so', () => {
    const boards = layCourse(course({ tails: tails(4, 130, 236) }));
    expect(jointsOfCourse(boards)[0]).toEqual({ stationIn: 96.0625, tailId: null });
  });

  test('stays whole where joints need not land on tails, and says which of them do', () => {
    const boards = layCourse(course({ tails: tails(20, 44, 96, 118, 180, 239), cutBack: false }));
    expect(jointsOfCourse(boards)).toEqual([
      { stationIn: 96.0625, tailId: 't96' },
      { stationIn: 192.1875, tailId: null },
    ]);
    expect(boards.map(({ whole }) => whole)).toEqual([true, true, false]);
    // The course above begins with half a panel, so that its joints stand 4 ft away.
    const above = layCourse(course({ cutBack: false }), [96.0625, 192.1875]);
    expect(jointsOfCourse(above).map(({ stationIn }) => stationIn)).toEqual([48.0625, 144.1875]);
  });

  test('leaves no sliver at its end: the joint before it moves to an earlier tail', () => {
    // 204 in.: joints at 96 and 192 would leave 12 in.
    const boards = layCourse(course({ toIn: 204, tails: tails(...every(16, 204)) }));
    expect(boards).toHaveLength(3);
    expect((boards.at(-1)?.toIn ?? 0) - (boards.at(-1)?.fromIn ?? 0)).toBeGreaterThanOrEqual(24 - 0.1);
  });

  test('has its joints a tail or more away from those of the course below', () => {
    const strip = { widthIn: 60, breakIn: null, fromIn: 0, toIn: 240 };
    // Only the tails of the layout are asked for.
    const layout = { extenders: tails(...every(16, 240)) } as unknown as EaveLayout;
    const boards = layCover(layout, strip, { coverIn: 48, boardIn: 96, gapIn: panelGapIn });
    const of = (number: number) => jointsOfCourse(boards.filter((board) => board.course === number));
    const below = new Set(of(1).map(({ tailId }) => tailId));
    expect(of(2).length).toBeGreaterThan(0);
    expect(of(2).filter(({ tailId }) => below.has(tailId))).toEqual([]);
    expect(boards.filter(({ course: number }) => number === 2)[0]).toMatchObject({
      lowIn: 48.125,
      highIn: 60,
    });
  });
});

describe('whatever the tails', () => {
  const any = fc.record({
    centres: fc.uniqueArray(fc.integer({ min: 1, max: 479 }), { minLength: 1, maxLength: 30 }),
    boardIn: fc.integer({ min: 48, max: 144 }),
    gapIn: fc.constantFrom(0, 0.125),
    avoid: fc.array(fc.integer({ min: 1, max: 479 }), { maxLength: 5 }),
  });

  test('boards follow each other with the gap between, from end to end, none longer than it comes', () => {
    fc.assert(
      fc.property(any, ({ centres, avoid, ...rest }) => {
        const laid = layCourse(
          course({ ...rest, toIn: 480, tails: tails(...centres.toSorted((a, b) => a - b)) }),
          avoid,
        );
        expect(laid[0]?.fromIn).toBe(0);
        expect(laid.at(-1)?.toIn).toBe(480);
        for (const [index, board] of laid.entries()) {
          expect(board.toIn - board.fromIn).toBeLessThanOrEqual(rest.boardIn + 1e-6);
          expect(board.toIn).toBeGreaterThan(board.fromIn);
          const nextIn = laid[index + 1]?.fromIn ?? board.toIn + rest.gapIn;
          expect(nextIn - board.toIn).toBeCloseTo(rest.gapIn, 9);
        }
      }),
    );
  });

  test('every joint bears 1/2 in. or more on both sides, or stands where no tail is in reach', () => {
    fc.assert(
      fc.property(any, ({ centres: at, avoid, ...rest }) => {
        const all = tails(...at.toSorted((a, b) => a - b));
        const laid = layCourse(course({ ...rest, toIn: 480, tails: all }), avoid);
        for (const board of laid) {
          const joint = board.rightJoint;
          if (joint === null) continue;
          const under = all.find(({ id }) => id === joint.tailId);
          const bearingIn =
            under === undefined
              ? Number.POSITIVE_INFINITY
              : Math.min(board.toIn - under.leftIn, under.rightIn - (board.toIn + rest.gapIn));
          expect(bearingIn).toBeGreaterThanOrEqual(leastEndBearingIn - 1e-6);
          if (under !== undefined) continue;
          // Looked for independently: no tail's centre is in reach, and the uncut end bears on none.
          const uncutIn = board.fromIn + rest.boardIn;
          const bears = (toIn: number): boolean =>
            all.some(
              ({ leftIn, rightIn }) =>
                toIn - leftIn >= leastEndBearingIn && rightIn - (toIn + rest.gapIn) >= leastEndBearingIn,
            );
          const centres = all.filter(
            ({ leftIn, rightIn }) =>
              (leftIn + rightIn) / 2 - board.fromIn >= leastBoardIn &&
              (leftIn + rightIn + rest.gapIn) / 2 <= uncutIn,
          );
          expect([bears(uncutIn), centres]).toEqual([false, []]);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a joint of the course below is shared only where no other tail is in reach', () => {
    fc.assert(
      fc.property(any, ({ centres, ...rest }) => {
        const all = tails(...centres.toSorted((a, b) => a - b));
        const whole = course({ ...rest, toIn: 480, tails: all });
        const below = jointsOfCourse(layCourse(whole)).map(({ stationIn }) => stationIn);
        for (const board of layCourse(whole, below)) {
          const joint = board.rightJoint;
          const hasBelow = (one: (typeof all)[number]) =>
            below.some((stationIn) => stationIn > one.leftIn - 1e-6 && stationIn < one.rightIn + 1e-6);
          const under = all.find(({ id }) => id === joint?.tailId);
          if (joint === null || under === undefined || !hasBelow(under)) continue;
          const others = all.filter(
            (one) =>
              !hasBelow(one) &&
              (one.leftIn + one.rightIn) / 2 - board.fromIn >= leastBoardIn &&
              (one.leftIn + one.rightIn) / 2 - rest.gapIn / 2 <= board.fromIn + rest.boardIn,
          );
          expect(others).toEqual([]);
        }
      }),
    );
  });
});
