import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import type { EaveLayout, Extender } from '../../core/layout/layout-types.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

const stations = [16, 40, 64, 88, 112, 136, 160, 184, 208];

/** A wall that bows 3/4 in. out in its middle, read from a string between its corners. */
const bowedOut = [
  { id: 'w1', stationIn: 0, outIn: 0 },
  { id: 'w2', stationIn: 120, outIn: 0.75 },
  { id: 'w3', stationIn: 240, outIn: 0 },
];

const anyBow = fc
  .uniqueArray(
    fc.record({ stationIn: fc.integer({ min: 0, max: 240 }), sixteenths: fc.integer({ min: -32, max: 32 }) }),
    {
      selector: ({ stationIn }) => stationIn,
      maxLength: 6,
    },
  )
  .map((readings) =>
    readings.map(({ stationIn, sixteenths }, index) => ({
      id: `w${index}`,
      stationIn,
      outIn: sixteenths / 16,
    })),
  );

/** How far out of the reference line a tail's top corner comes: the wall there, and its own overhang from it. */
function outOfReference({ wallOutIn, overhangLevelIn }: Extender): number {
  return wallOutIn + overhangLevelIn;
}

function findings(layout: EaveLayout, topic: string): readonly string[] {
  return layout.findings.filter((one) => one.topic === topic).map(({ text }) => text);
}

/** What 16 in. leave of themselves along the wall that bows 3/4 in. out at 10 ft. [in] */
function leftAt(stationIn: number): number {
  return 16 - 0.75 * (1 - Math.abs(stationIn - 120) / 120);
}

describe('a straight fascia on a bowed wall', () => {
  it('has every tail end on one line, parallel to the reference line', () => {
    fc.assert(
      fc.property(anyBow, (wallReadings) => {
        const layout = layOut(makeEave(stations, { wallReadings }));
        for (const extender of layout.extenders) {
          expect(outOfReference(extender)).toBeCloseTo(16, 10);
          expect(extender.section.overhangLevelIn).toBe(extender.overhangLevelIn);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("is the straight wall with each tail's own overhang: section and blank alike", () => {
    fc.assert(
      fc.property(anyBow, (wallReadings) => {
        const bowed = layOut(makeEave(stations, { wallReadings }), makeDesign({ fasciaLine: 'as-found' }));
        for (const extender of bowed.extenders) {
          const design = makeDesign({ fasciaLine: 'as-found', overhangIn: extender.overhangLevelIn });
          const same = layOut(makeEave(stations), design).extenders.find(({ id }) => id === extender.id);
          expect(extender.section.finishedLengthIn).toBeCloseTo(same?.section.finishedLengthIn ?? 0, 9);
          expect(extender.section.tailTopAbovePlateIn).toBeCloseTo(same?.section.tailTopAbovePlateIn ?? 0, 9);
          expect(Math.abs(extender.blankSixteenths - (same?.blankSixteenths ?? 0))).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('still brings every tail to one height', () => {
    fc.assert(
      fc.property(anyBow, (wallReadings) => {
        const { extenders, fasciaLine } = layOut(makeEave(stations, { wallReadings }));
        for (const { section } of extenders)
          expect(section.tailTopAbovePlateIn).toBeCloseTo(fasciaLine.atStartIn, 9);
      }),
      { numRuns: 40 },
    );
  });

  it('worked by hand: 3/4 in. out at 10 ft leaves 15-1/4 in. there, 15.55 at the rafters beside it', () => {
    const { extenders, lineInPlan } = layOut(makeEave([88, 120, 152], { wallReadings: bowedOut }));
    // 88 and 152: 0.75 x 88 / 120 = 0.55 out; less half an extender's and half a rafter's thickness to its centre, 1-1/2.
    expect(extenders.map(({ centreIn }) => centreIn)).toEqual([89.5, 121.5, 153.5]);
    for (const { centreIn, overhangLevelIn } of extenders)
      expect(overhangLevelIn).toBeCloseTo(leftAt(centreIn), 12);
    expect(leftAt(120)).toBe(15.25);
    expect(lineInPlan).toMatchObject({
      kind: 'straight',
      from: 'reference-line',
      bowed: true,
      outIn: 16,
      wallMeanOutIn: expect.closeTo(0.375, 12),
      least: { stationIn: 121.5, extenderId: 'r2' },
      most: { stationIn: 153.5, extenderId: 'r3' },
    });
  });

  it("measured from the wall's mean lies that much further out", () => {
    const design = makeDesign({ overhangFrom: 'wall-mean' });
    const { extenders, lineInPlan } = layOut(makeEave(stations, { wallReadings: bowedOut }), design);
    expect(lineInPlan.outIn).toBeCloseTo(16.375, 12);
    for (const extender of extenders) expect(outOfReference(extender)).toBeCloseTo(16.375, 10);
  });

  it("read from a string held off the wall is the same, where it is measured from the wall's mean", () => {
    const design = makeDesign({ overhangFrom: 'wall-mean' });
    const heldOff = bowedOut.map((reading) => ({ ...reading, outIn: reading.outIn - 1.5 }));
    const overhangs = (wallReadings: typeof bowedOut) =>
      layOut(makeEave(stations, { wallReadings }), design).extenders.map(
        ({ overhangLevelIn }) => overhangLevelIn,
      );
    const held = overhangs(heldOff);
    overhangs(bowedOut).forEach((overhangIn, index) => expect(held[index]).toBeCloseTo(overhangIn, 10));
  });
});

describe("a fascia that follows the wall's bow", () => {
  it('has every tail stick out alike, as on a straight wall', () => {
    fc.assert(
      fc.property(anyBow, (wallReadings) => {
        const design = makeDesign({ fasciaInPlan: 'follow' });
        const bowed = layOut(makeEave(stations, { wallReadings }), design);
        const straight = layOut(makeEave(stations), design);
        expect(bowed.extenders.map((extender) => ({ ...extender, wallOutIn: 0 }))).toEqual(
          straight.extenders,
        );
        expect(bowed.lineInPlan.outIn).toBeNull();
      }),
      { numRuns: 30 },
    );
  });
});

describe('what is told of the bow', () => {
  it('is how far the tails stick out at the least and at the most, and where', () => {
    const [text] = findings(layOut(makeEave(stations, { wallReadings: bowedOut })), 'wall-bow');
    expect(text).toContain('the tails stick out 15-5/16" (at 9\' 5-1/2") to 15-7/8" (at 1\' 5-1/2")');
    expect(findings(layOut(makeEave(stations)), 'wall-bow')).toEqual([]);
  });

  it('is that a fascia which follows it will not look straight', () => {
    const design = makeDesign({ fasciaInPlan: 'follow' });
    const [text] = findings(layOut(makeEave(stations, { wallReadings: bowedOut }), design), 'wall-bow');
    expect(text).toContain('follows its bow');
  });

  it('is every stretch of tails beyond a limit, at the worst of them', () => {
    const eave = makeEave(stations, { wallReadings: bowedOut });
    // 15.5 in. is left where the wall is 1/2 in. out: from 80 to 160.
    const short = layOut(eave, makeDesign({ leastOverhangIn: 15.5 }));
    expect(short.findings.filter(({ topic }) => topic === 'overhang-limit')).toMatchObject([
      {
        stationIn: 113.5,
        text: expect.stringContaining(
          'From 7\' 5-1/2" to 11\' 5-1/2" the tails stick out 15-5/16" at the worst, at 9\' 5-1/2", less than the 15-1/2" asked for',
        ),
      },
    ]);
    const long = findings(layOut(eave, makeDesign({ mostOverhangIn: 15.75 })), 'overhang-limit');
    expect(long).toHaveLength(2);
    expect(long[0]).toContain('more than the 15-3/4" allowed');
    expect(
      findings(layOut(eave, makeDesign({ leastOverhangIn: 15, mostOverhangIn: 17 })), 'overhang-limit'),
    ).toEqual([]);
  });

  it('is a sentence at the reading where the wall reaches the line of the tails', () => {
    const wallReadings = [
      { id: 'w1', stationIn: 0, outIn: 0 },
      { id: 'w2', stationIn: 100, outIn: 12 },
    ];
    const laid = layOutEave(makeEave(stations, { wallReadings }), makeDesign({ overhangIn: 12 }), 'B', null);
    if (laid.ok) throw new Error('the eave was laid out');
    expect(laid.problem).toMatchObject({
      code: 'wall-past-line',
      field: 'survey.eaves.1.wallReadings.1.outIn',
    });
    expect(problemSentence(laid.problem)).toContain('nothing of the overhang is left');
  });
});
