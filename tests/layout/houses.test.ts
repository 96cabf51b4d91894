import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { layOutEaves } from '../../core/job/lay-out-eaves.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { bentHouse, bowedHouse, crowdedHouse, longHouse, rowsOf } from './houses.ts';
import { besideRafters, layOut, makeDesign } from './make-layout.ts';

const everyWay = { ...besideRafters, allowFiller: true, allowBlockHung: true, allowFullLength: true };

describe('a long house of 60 ft with rafters at 24 in., laid out again at 16', () => {
  const layout = layOut(longHouse(), makeDesign({ layout: { ...everyWay, largestGapIn: 16 } }));

  it('hangs one tail in the middle of each bay', () => {
    expect(layout.extenders).toHaveLength(61);
    // Worked by hand. Rafters 23.95 on centre; the tail right of the first is at 0.75 + 1.5 = 2.25; the next
    // own tail at 26.2; half way 14.225, 14-1/4 to a sixteenth. The last rafter has its tail on its left, inside the wall.
    expect(rowsOf(layout).slice(0, 3)).toEqual([
      'A-E01 2-1/4" side right, preferred',
      'A-T01 1\' 2-1/4" (1\' 0") hung, gap, A-H01 1\' 10-7/16"',
      'A-E02 2\' 2-3/16" (11-15/16") side right, preferred',
    ]);
    expect(rowsOf(layout).slice(-2)).toEqual([
      'A-T30 58\' 11-1/4" (10-7/16") hung, gap, A-H30 1\' 10-7/16"',
      'A-E31 59\' 9-3/4" (10-1/2") side left, moved',
    ]);
  });

  it('leaves no gap over 16 in. and splits each bay into two blocks', () => {
    const gaps = layout.extenders
      .slice(1)
      .map((one, index) => one.centreIn - (layout.extenders[index]?.centreIn ?? 0));
    expect(Math.max(...gaps)).toBeLessThanOrEqual(16);
    expect(layout.bays).toHaveLength(60);
    expect(layout.findings.filter(({ topic }) => topic === 'wide-gap')).toEqual([]);
  });
});

describe('a crowded house, every second rafter between two ceiling joists', () => {
  it('fills out to the joists, as the default weights have it', () => {
    const layout = layOut(crowdedHouse(), makeDesign({ layout: { ...everyWay, largestGapIn: 30 } }));
    // Worked by hand: right of rafter 2, 20.5 + 1 + 1.875 + 0.75 = 24.125; the last has no wall left on its right.
    expect(rowsOf(layout)).toEqual([
      'A-E01 2-3/4" side right, preferred',
      'A-E02 2\' 0-1/8" (1\' 9-3/8") filler right, moved, A-P01 1-7/8"',
      'A-E03 3\' 10-1/4" (1\' 10-1/8") side right, preferred',
      'A-E04 5\' 5-5/8" (1\' 7-3/8") filler right, moved, A-P02 1-7/8"',
      'A-E05 7\' 4-1/2" (1\' 10-7/8") side right, preferred',
      'A-E06 9\' 4-5/8" (2\' 0-1/8") filler right, moved, A-P03 1-7/8"',
      'A-E07 11\' 1-1/4" (1\' 8-5/8") side right, preferred',
      'A-E08 13\' 1-1/8" (1\' 11-7/8") filler right, moved, A-P04 1-7/8"',
      'A-E09 15\' 0" (1\' 10-7/8") side right, preferred',
      'A-E10 16\' 3-3/8" (1\' 3-3/8") filler left, moved, A-P05 1-7/8"',
    ]);
  });

  it('hangs a tail for each where no filler is allowed', () => {
    const layout = layOut(
      crowdedHouse(),
      makeDesign({ layout: { ...everyWay, allowFiller: false, largestGapIn: 30 } }),
    );
    // Worked by hand: T01 as near to the joist as nailing allows, 23.375 + 1/2 + 3/4 = 24.625, for half way would be
    // 24.5; T02 half way between 46.25 and 88.5; H02 from 63 to 85.75; T05 half way from 180 to the wall's end at 200.
    expect(rowsOf(layout)).toEqual([
      'A-E01 2-3/4" side right, preferred',
      'A-T01 2\' 0-5/8" (1\' 9-7/8") hung, moved, A-H01 1\' 10"',
      'A-E03 3\' 10-1/4" (1\' 9-5/8") side right, preferred',
      'A-T02 5\' 7-3/8" (1\' 9-1/8") hung, moved, A-H02 1\' 10-3/4"',
      'A-E05 7\' 4-1/2" (1\' 9-1/8") side right, preferred',
      'A-T03 9\' 5-1/8" (2\' 0-5/8") hung, moved, A-H03 1\' 8-1/2"',
      'A-E07 11\' 1-1/4" (1\' 8-1/8") side right, preferred',
      'A-T04 13\' 1-5/8" (2\' 0-3/8") hung, moved, A-H04 1\' 10-3/4"',
      'A-E09 15\' 0" (1\' 10-3/8") side right, preferred',
      'A-T05 15\' 10" (10") hung, moved, A-H05 1\' 6-3/4"',
    ]);
  });

  it('says of each what would serve it where neither is allowed', () => {
    const layout = layOut(crowdedHouse());
    expect(layout.unplaced.map(({ rafterNumber }) => rafterNumber)).toEqual([2, 4, 6, 8, 10]);
    const told = layout.findings.filter(({ topic }) => topic === 'no-side-free');
    expect(told.map(({ stationIn }) => stationIn)).toEqual([20.5, 62, 109, 153.5, 199]);
    for (const { text } of told)
      expect(text).toMatch(/Allow fillers, under Layout in Design: .* could stand at/);
  });
});

describe('a wall that bows out by 1 in. in 20 ft', () => {
  const layout = layOut(bowedHouse(), makeDesign());

  it('is where it is at each tail, straight between the readings', () => {
    // Tails 1-1/2 right of their rafters; out 1/120 of the way from the nearer corner.
    const out = layout.extenders.map(({ centreIn, wallOutIn }) => [centreIn, wallOutIn]);
    expect(out[0]).toEqual([2.25, 2.25 / 120]);
    expect(out[5]).toEqual([121.5, 1 - 1.5 / 120]);
    expect(out[9]).toEqual([217.5, 22.5 / 120]);
  });

  it('takes its bow off each own overhang, so that the fascia is straight', () => {
    for (const { overhangLevelIn, wallOutIn } of layout.extenders)
      expect(overhangLevelIn + wallOutIn).toBeCloseTo(16, 9);
  });
});

describe('a house without hips that bends at a corner, four eaves', () => {
  const laid = layOutEaves(bentHouse());
  const eaves = laid.ok ? laid.value : [];

  it('has each eave laid out by itself, with its own letter', () => {
    expect(eaves.map(({ letter, extenders }) => [letter, extenders.length])).toEqual([
      ['A', 18],
      ['B', 9],
      ['C', 9],
      ['D', 9],
    ]);
    for (const { letter, extenders, unplaced } of eaves) {
      expect(extenders.every(({ mark }) => mark.startsWith(`${letter}-`))).toBe(true);
      expect(unplaced).toEqual([]);
    }
  });

  it('ends the fascias that meet in the inside corner at one another', () => {
    // Each stops where the other's outer face is: 16 in. of framing and 1-1/2 in. of board short of the corner.
    const [, south, west] = eaves;
    expect(south?.fascia.at(-1)?.toIn).toBe(168 - 17.5);
    expect(west?.fascia[0]?.fromIn).toBe(17.5);
  });

  it('lays panels from where the fascia begins', () => {
    const [, south, west] = eaves;
    // 8 ft from 0 reaches the tail right of the rafter at 84 (20-13/16 apart); from 17-1/2 the one right of that at 104.8125.
    expect(south?.panelJoints.map(({ stationIn }) => stationIn)).toEqual([85.5]);
    expect(west?.panelJoints.map(({ stationIn }) => stationIn)).toEqual([106.3125]);
  });
});

describe('the sample house', () => {
  const file = readJobFile(
    readFileSync(fileURLToPath(new URL('../../fixtures/sample-job.json', import.meta.url)), 'utf8'),
  );
  const laid = file.ok ? layOutEaves(file.value) : undefined;
  const eaves = laid?.ok === true ? laid.value : [];

  it('has every rafter served, every gap spanned, and each panel joint on a tail', () => {
    expect(eaves).toHaveLength(2);
    for (const { extenders, unplaced, largestGap, panelJoints } of eaves) {
      expect(unplaced).toEqual([]);
      for (const [index, { centreIn, leftIn }] of extenders.entries()) {
        const before = extenders[index - 1];
        if (before === undefined) continue;
        expect(leftIn).toBeGreaterThan(before.rightIn);
        expect(centreIn - before.centreIn).toBeLessThanOrEqual(largestGap.gapIn + 1 / 32);
      }
      expect(panelJoints.every(({ extenderId }) => extenderId !== null)).toBe(true);
    }
  });
});
