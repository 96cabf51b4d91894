import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nailingRoomIn, spaceLookouts } from '../../core/rake/space-lookouts.ts';

const run = fc.record({
  widthIn: fc.constantFrom(1.5, 3.5, 5.5),
  topIn: fc.double({ min: 40, max: 400, noNaN: true }),
  largestIn: fc.double({ min: 8, max: 48, noNaN: true }),
});
/** Joints of panels 4 ft or 8 ft apart, from a first one. */
const joints = fc
  .record({
    firstIn: fc.double({ min: -20, max: 120, noNaN: true }),
    apartIn: fc.constantFrom(48.125, 96.125),
  })
  .map(({ firstIn, apartIn }) => Array.from({ length: 9 }, (_, index) => firstIn + index * apartIn));

describe('lookouts up a slope', () => {
  test('stand 21.44 in. apart over 178 in. at 24 in. at most, the first and last clear of fascia and ridge', () => {
    // Worked by hand: first at 3-1/2 / 2 + 1-1/2 = 3-1/4, last at 178 - 3-1/4 = 174-3/4; 171-1/2 / 24 = 7.1 -> 8 spaces.
    const places = spaceLookouts({ widthIn: 3.5, topIn: 178, largestIn: 24, jointsIn: [] });
    expect(places).toHaveLength(9);
    expect(places[0]).toEqual({ alongIn: 3.25, because: 'eave' });
    expect(places[1]).toEqual({ alongIn: 3.25 + 171.5 / 8, because: 'spacing' });
    expect(places.at(-1)).toEqual({ alongIn: 174.75, because: 'ridge' });
  });

  test('are never further apart than the largest spacing, rise from the eave up, and do not touch', () => {
    fc.assert(
      fc.property(run, joints, (one, jointsIn) => {
        const places = spaceLookouts({ ...one, jointsIn }).map(({ alongIn }) => alongIn);
        for (const [index, alongIn] of places.slice(1).entries()) {
          const gapIn = alongIn - (places[index] ?? 0);
          expect(gapIn).toBeLessThanOrEqual(one.largestIn + 1e-6);
          expect(gapIn).toBeGreaterThan(one.widthIn / 2);
        }
        expect(places[0]).toBeGreaterThanOrEqual(one.widthIn / 2 + nailingRoomIn - 1e-9);
        expect(places.at(-1)).toBeLessThanOrEqual(one.topIn - one.widthIn / 2 - nailingRoomIn + 1e-9);
      }),
    );
  });

  test('lie under every joint of the panels between the first and the last', () => {
    fc.assert(
      fc.property(run, joints, (one, jointsIn) => {
        const places = spaceLookouts({ ...one, jointsIn });
        const firstIn = one.widthIn / 2 + nailingRoomIn;
        for (const jointIn of jointsIn.filter((at) => at >= firstIn && at <= one.topIn - firstIn))
          expect(places.filter(({ alongIn }) => Math.abs(alongIn - jointIn) < 1e-9)).toHaveLength(1);
      }),
    );
  });

  test('are as few as the largest spacing lets them be, where no joint asks for one', () => {
    fc.assert(
      fc.property(run, (one) => {
        const places = spaceLookouts({ ...one, jointsIn: [] });
        const spanIn = one.topIn - 2 * (one.widthIn / 2 + nailingRoomIn);
        // The fewest by trying: one space, two, three ... until none is too large.
        let spaces = 1;
        while (spanIn / spaces > one.largestIn + 1e-6) spaces += 1;
        expect(places).toHaveLength(spaces + 1);
      }),
    );
  });

  test('give way to a joint close by: the first or last moves under it instead of crowding it', () => {
    const near = { widthIn: 3.5, topIn: 178, largestIn: 24 };
    const low = spaceLookouts({ ...near, jointsIn: [5] });
    expect(low[0]).toEqual({ alongIn: 5, because: 'panel-joint' });
    const high = spaceLookouts({ ...near, jointsIn: [172] });
    expect(high.at(-1)).toEqual({ alongIn: 172, because: 'panel-joint' });
  });

  test('are one in the middle where there is no room for two', () => {
    expect(spaceLookouts({ widthIn: 3.5, topIn: 10, largestIn: 24, jointsIn: [] })).toEqual([
      { alongIn: 5, because: 'eave' },
    ]);
  });
});
