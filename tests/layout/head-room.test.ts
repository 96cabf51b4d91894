import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import type { eaveDesignSchema } from '../../core/eave/design-document.ts';
import type { EaveLayout, WayOut } from '../../core/layout/layout-types.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

/** 7/12, HAP 4, a 2x6 18 in. out, no soffit thickness: 12.867 in. below the plate, over a head 10 in. below it. */
const low = makeEave([16, 40, 64], { pitchRisePer12: 7, heightAbovePlateIn: 4, windowHeadBelowPlateIn: 10 });

function laidOut(rest: Partial<z.input<typeof eaveDesignSchema>> = {}): EaveLayout {
  return layOut(low, makeDesign({ overhangIn: 18, soffit: { kind: 'level', thicknessIn: 0 }, ...rest }));
}

function way<K extends WayOut['kind']>(layout: EaveLayout, kind: K): Extract<WayOut, { kind: K }> {
  const found = layout.headRoom?.waysOut.find(
    (one): one is Extract<WayOut, { kind: K }> => one.kind === kind,
  );
  if (found === undefined) throw new Error(`no way out by ${kind}`);
  return found;
}

function roomOf(layout: EaveLayout): number {
  return layout.headRoom?.roomIn ?? Number.NaN;
}

describe('a soffit that comes below a window head', () => {
  it('is told with the room that is missing, worked by hand', () => {
    expect(roomOf(laidOut())).toBeCloseTo(4 + 10 - 10.5 - 5.5 * Math.hypot(1, 7 / 12), 9);
  });

  it('has ways out, cheapest first', () => {
    expect(laidOut().headRoom?.waysOut.map(({ kind }) => kind)).toEqual([
      'level-cut',
      'less-overhang',
      'sloped-soffit',
      'kick-up',
    ]);
  });

  it('clears with part of the underside cut level: what is left of the face is HAP + head - drop', () => {
    // 4 + 10 - 10.5 = 3-1/2.
    const { faceIn } = way(laidOut(), 'level-cut');
    expect(faceIn).toBe(3.5);
    expect(roomOf(laidOut({ tailFaceIn: faceIn }))).toBeCloseTo(0, 9);
    expect(roomOf(laidOut({ tailFaceIn: faceIn + 1 / 16 }))).toBeLessThan(0);
  });

  it('clears with less overhang: 2.867 in. over a slope of 7/12, down to an eighth', () => {
    // 18 - 2.8673 / 0.58333 = 13.0846.
    const { overhangIn } = way(laidOut(), 'less-overhang');
    expect(overhangIn).toBe(13);
    expect(roomOf(laidOut({ overhangIn }))).toBeGreaterThan(0);
    expect(roomOf(laidOut({ overhangIn: overhangIn + 1 / 8 }))).toBeLessThan(0);
  });

  it('clears with a sloped soffit, which meets the wall where the tails do', () => {
    // 10 + 4 - 6.36737.
    expect(way(laidOut(), 'sloped-soffit').roomIn).toBeCloseTo(7.6326, 4);
    expect(roomOf(laidOut({ soffit: { kind: 'sloped', thicknessIn: 0 } }))).toBeCloseTo(7.6326, 4);
  });

  it('clears with a kick-up to the steepest quarter pitch that does, by the root of its quadratic', () => {
    // 4 + 10 - 18 k = 5.5 sqrt(1 + k^2): (324 - 30.25) k^2 - 504 k + 196 - 30.25 = 0, k = 0.4434, 5.32/12.
    const k = (504 - Math.sqrt(504 ** 2 - 4 * 293.75 * 165.75)) / (2 * 293.75);
    const { pitchRisePer12 } = way(laidOut(), 'kick-up');
    expect(pitchRisePer12).toBe(Math.floor(k * 12 * 4) / 4);
    expect(roomOf(laidOut({ kickUpPitchRisePer12: pitchRisePer12 }))).toBeGreaterThan(0);
    expect(roomOf(laidOut({ kickUpPitchRisePer12: pitchRisePer12 + 0.25 }))).toBeLessThan(0);
  });

  it('clears steeper still where the kicked-up tails are raised', () => {
    const raised = laidOut({ kickUpPitchRisePer12: 6.5, kickUpRaiseIn: 1 });
    const flat = laidOut({ kickUpPitchRisePer12: 6.5 });
    expect(roomOf(raised)).toBeCloseTo(roomOf(flat) + 1, 9);
    expect(way(raised, 'kick-up').pitchRisePer12).toBeGreaterThan(way(flat, 'kick-up').pitchRisePer12);
  });

  it('says the numbers in the finding', () => {
    const text = laidOut().findings.find(({ topic }) => topic === 'window-head')?.text;
    expect(text).toContain('comes 2-7/8" below the lowest window or door head');
    expect(text).toContain(
      'Ways out, cheapest first: 3-1/2" left of the tails\' face, their underside cut level; or 13" of overhang; or a sloped soffit, with 7-5/8" to spare; or tails kicked up to 5.25/12.',
    );
  });
});

describe('no way out is proposed', () => {
  it('where there is room, or no head was measured', () => {
    const roomy = layOut(makeEave([16], { windowHeadBelowPlateIn: 30 }));
    expect(roomy.headRoom?.waysOut).toEqual([]);
    expect(roomy.headRoom?.roomIn).toBeGreaterThan(0);
    expect(layOut(makeEave([16])).headRoom).toBeNull();
  });

  it('that leaves too little face for the fascia, or hardly an overhang', () => {
    const kinds = layOut(
      makeEave([16], { heightAbovePlateIn: 4, pitchRisePer12: 12, windowHeadBelowPlateIn: 1 }),
      makeDesign(),
    ).headRoom?.waysOut.map(({ kind }) => kind);
    // 4 + 1 - 3/8 leaves nothing to drop: not even the sloped soffit clears, 5 - 7.78 below the head.
    expect(kinds).toEqual([]);
  });
});

function openTails(section: string) {
  return makeDesign({ extender: { section }, soffit: { kind: 'open' } });
}

describe('open tails that come below a window head', () => {
  it('clear in shallower stock, since they meet the wall as they are deep', () => {
    const eave = makeEave([16, 40], { pitchRisePer12: 7, heightAbovePlateIn: 4, windowHeadBelowPlateIn: 1 });
    const layout = layOut(eave, openTails('2x6'));
    // 5.5 x 1.1577 = 6.367 is more than 4 + 1; 3.5 x 1.1577 = 4.052 is less.
    expect(way(layout, 'shallower-stock').section).toBe('2x4');
    expect(layOut(eave, openTails('2x4')).headRoom?.roomIn).toBeCloseTo(5 - 4.0519, 3);
  });
});
