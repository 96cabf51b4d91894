import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plateUpIn } from '../../core/survey/wall-line.ts';
import type { EaveDesign } from '../../core/eave/design-document.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

const stations = [16, 40, 64, 88, 112, 136, 160, 184, 208];

/** A plate that falls 1 in. over its 20 ft, and sags 3/8 in. more in its middle. */
const plateReadings = [
  { id: 'p1', stationIn: 0, upIn: 12 },
  { id: 'p2', stationIn: 120, upIn: 11.125 },
  { id: 'p3', stationIn: 240, upIn: 11 },
];

/** Heights of the tails' top corners above a level line, by station. */
function heights(fasciaLine: EaveDesign['fasciaLine'], readings = plateReadings) {
  const layout = layOut(makeEave(stations, { plateReadings: readings }), makeDesign({ fasciaLine }));
  return {
    layout,
    tails: layout.extenders.map(({ centreIn, section }) => ({
      stationIn: centreIn,
      heightIn: plateUpIn(readings, centreIn) + section.tailTopAbovePlateIn,
    })),
  };
}

/** Slope from the first tail to the last. [in/in] */
function fallOf(tails: ReturnType<typeof heights>['tails']): number {
  const [first, last] = [tails[0], tails.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no tails');
  return (last.heightIn - first.heightIn) / (last.stationIn - first.stationIn);
}

/** Tails of an eave whose plate was not read. */
function unread(mode: 'level' | 'parallel') {
  return layOut(makeEave(stations), makeDesign({ fasciaLine: mode })).extenders;
}

describe('where the plate was read', () => {
  it('a level fascia line is level, whatever the plate does', () => {
    for (const { heightIn } of heights('level').tails)
      expect(heightIn).toBeCloseTo(heights('level').tails[0]?.heightIn ?? 0, 9);
  });

  it("a parallel one is straight, and falls as the plate's run does", () => {
    const { layout, tails } = heights('parallel');
    // Least squares through (0, 0), (120, -0.875), (240, -1): slope -1 / 240, since the middle one weighs on neither side.
    expect(layout.fasciaLine.risePerInch).toBeCloseTo(-1 / 240, 12);
    expect(fallOf(tails)).toBeCloseTo(-1 / 240, 9);
    for (const { stationIn, heightIn } of tails)
      expect(heightIn).toBeCloseTo(layout.fasciaLine.atStartIn - stationIn / 240, 9);
  });

  it('the sag of the plate is taken up tail by tail', () => {
    const { layout } = heights('parallel');
    const lifts = layout.extenders.map(({ liftAtTailIn }) => liftAtTailIn);
    // The plate lies lowest in the middle against its own run, so the tails there come up most.
    expect(lifts.indexOf(Math.max(...lifts))).toBe(4);
    expect(Math.max(...lifts)).toBeGreaterThan(0.1);
    expect(layout.fasciaLine.lowestIn).toBeCloseTo(-Math.max(...lifts), 9);
  });

  it('as found each tail follows its rafter, and the scatter is told against the parallel line', () => {
    const { layout } = heights('as-found');
    for (const { liftAtTailIn } of layout.extenders) expect(liftAtTailIn).toBeCloseTo(0, 12);
    expect(layout.fasciaLine.lowestIn).toBeLessThan(-0.1);
    expect(layout.fasciaLine.highestAfterIn).toBe(layout.fasciaLine.highestIn);
  });

  it('the level line they were read from does not matter', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100, max: 100 }), (by) => {
        const moved = plateReadings.map((reading) => ({ ...reading, upIn: reading.upIn + by }));
        for (const mode of ['parallel', 'level', 'best-fit'] as const) {
          const here = heights(mode).layout.extenders;
          heights(mode, moved).layout.extenders.forEach(({ section }, index) =>
            expect(section.tailTopAbovePlateIn).toBeCloseTo(here[index]?.section.tailTopAbovePlateIn ?? 0, 8),
          );
        }
      }),
      { numRuns: 10 },
    );
  });
});

describe('where the plate was not read', () => {
  it('level and parallel are the same line', () => {
    expect(unread('level')).toEqual(unread('parallel'));
  });
});

describe('once the tails are cut', () => {
  it('what is left of the scatter is what a sixteenth at the seat makes at the tail', () => {
    const rafters = stations.map((readingIn, index) => ({
      id: `r${index}`,
      readingIn,
      heightAbovePlateIn: 5 + ((index * 7) % 5) / 11,
    }));
    const { fasciaLine, extenders } = layOut(makeEave([], { rafters }));
    expect(fasciaLine.highestIn).toBeGreaterThan(0.1);
    // Half a sixteenth at the plate, times 1.5 at the tail with a backspan of twice the overhang.
    expect(fasciaLine.highestAfterIn).toBeLessThanOrEqual(1.5 / 32 + 1e-9);
    expect(fasciaLine.lowestAfterIn).toBeGreaterThanOrEqual(-1.5 / 32 - 1e-9);
    expect(fasciaLine.highestAfterIn - fasciaLine.lowestAfterIn).toBeGreaterThan(0);
    for (const { fit, section } of extenders) {
      const heel = section.bearing.kind === 'notched' ? section.bearing.heelCutIn : 0;
      expect(Math.abs(fit.heelSixteenths / 16 - heel)).toBeLessThanOrEqual(1 / 32 + 1e-9);
    }
  });
});
