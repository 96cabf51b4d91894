import { describe, expect, test } from 'vitest';
import { deadLoad, memberWeight } from '../../core/checks/loads/dead-load.ts';
import { eaveLoads } from '../../core/checks/loads/eave-loads.ts';
import { dwellingRoofLive, roofLive, standardRoofLive } from '../../core/checks/loads/roof-live-load.ts';
import {
  flatRoofSnow,
  icedEaveLoad,
  slopedRoofSnow,
  snowSlopeFactor,
  type SnowSite,
} from '../../core/checks/loads/snow-load.ts';
import { siteSchema } from '../../core/survey/site.ts';

const framingPsf = (depthIn: number) => (memberWeight(1.5, depthIn, 1) * 144) / 16;

const plainSite = (groundSnowPsf: number): SnowSite => ({
  groundSnowPsf,
  exposureFactor: 1,
  thermalFactor: 1,
  importanceFactor: 1,
});

describe('snow', () => {
  test('of 30 psf on the ground is 21 on a flat roof, and 42 on an iced eave', () => {
    // Source: ASCE 7-16, Eq. 7.3-1, result seen in an open program's test; twice it by 7.4.5, from memory.
    expect(flatRoofSnow(plainSite(30))).toBeCloseTo(21, 10);
    expect(icedEaveLoad(plainSite(30))).toBeCloseTo(42, 10);
  });

  test('of 50 psf is 35 on a flat roof', () => {
    expect(flatRoofSnow(plainSite(50))).toBeCloseTo(35, 10);
  });

  test('the whole chain by hand: 40 psf, sheltered, cold attic, 10/12', () => {
    // ASCE 7-16: 0.7 x 1.2 x 1.1 x 1.0 x 40 = 36.96. Slope 39.81 degrees, full to 37.5 (Fig. 7.4-1, from memory):
    // C_s = (70 - 39.81) / 32.5 = 0.929; p_s = 34.34.
    const site: SnowSite = {
      groundSnowPsf: 40,
      exposureFactor: 1.2,
      thermalFactor: 1.1,
      importanceFactor: 1,
    };
    const slopeDeg = (Math.atan(10 / 12) * 180) / Math.PI;
    expect(flatRoofSnow(site)).toBeCloseTo(36.96, 10);
    expect(snowSlopeFactor(slopeDeg, 1.1)).toBeCloseTo(0.929, 3);
    expect(slopedRoofSnow(site, slopeDeg)).toBeCloseTo(34.34, 2);
  });

  test.each([
    // ASCE 7-16, Fig. 7.4-1, surfaces that are not slippery, from memory. [degrees, C_t, C_s]
    [45, 1, 0.625],
    [30, 1, 1],
    [50, 1, 0.5],
    [37.5, 1.1, 1],
    [53.75, 1.1, 0.5],
    [45, 1.2, 1],
    [57.5, 1.2, 0.5],
    [70, 1, 0],
    [80, 1, 0],
    [45, 1.3, 1],
  ])('at %d degrees and C_t %d the slope factor is %d', (slopeDeg, thermal, factor) => {
    expect(snowSlopeFactor(slopeDeg, thermal)).toBeCloseTo(factor, 10);
  });

  test('on a low roof is never less than 20 psf, or the ground snow where that is less', () => {
    // ASCE 7-16, 7.3.4, from memory.
    expect(slopedRoofSnow(plainSite(25), 9.46)).toBe(20);
    expect(slopedRoofSnow(plainSite(15), 9.46)).toBe(15);
    expect(slopedRoofSnow(plainSite(25), 26.57)).toBeCloseTo(17.5, 10);
  });
});

describe('roof live load', () => {
  test('of the standard is 18 psf at 6/12, 20 to 4/12, and 12 at 12/12', () => {
    // Source: ASCE 7-16, Eq. 4.8-1, L_r = 20 R_1 R_2, seen on secondary pages.
    expect([4, 6, 12, 24].map(standardRoofLive)).toEqual([20, 18, 12, 12]);
  });

  test('of the dwelling code is 20, 16 and 12 psf for small areas', () => {
    // Source: IRC Table R301.6; 20 and 12 seen in transcription.
    expect([3.9, 4, 11.9, 12].map(dwellingRoofLive)).toEqual([20, 16, 16, 12]);
  });

  test('is the larger of the two', () => {
    expect([6, 11].map(roofLive)).toEqual([18, 16]);
  });
});

describe('dead load', () => {
  test('of shingles on a 15/32 panel at 6/12 is worked by hand', () => {
    // Weights of ASCE 7, Table C3.1-1: shingles 3 (2 to 3, secondary), felt 1 (memory), plywood 0.4 an eighth -> 15/32 1.5.
    const dead = deadLoad({
      site: { roofing: 'asphalt-shingle', roofingLayers: 1 },
      sheathingThicknessIn: 15 / 32,
      soffitPsf: 1.5,
      slopeFactor: 1.118034,
    });
    expect(dead.slopedPsf).toBeCloseTo(5.5, 10);
    expect(dead.levelPsf).toBeCloseTo(5.5 * 1.118034 + 1.5, 6);
  });

  test('of 2x6 framing at 16 in. is about 1.4 psf and of 2x8 about 2', () => {
    // Handbook values: 1.4 from memory, 2 seen on a secondary page; ours are a little heavier.
    expect(framingPsf(5.5)).toBeGreaterThanOrEqual(1.4);
    expect(framingPsf(5.5)).toBeLessThan(1.6);
    expect(framingPsf(7.25)).toBeCloseTo(2, 1);
  });
});

describe('load cases', () => {
  const parts = { sheathingThicknessIn: 0.5, soffitPsf: 1.5 };
  const cases = (site: object) => eaveLoads(siteSchema.parse(site), 6, parts).cases;

  test('bear the duration factor of their shortest load', () => {
    // Source: NDS 2018, Table 2.3.2: permanent 0.9, two months (snow) 1.15, seven days 1.25.
    expect(cases({ groundSnowPsf: 30 }).map(({ id, duration }) => [id, duration])).toEqual([
      ['dead', 0.9],
      ['roof-live', 1.25],
      ['worker', 1.25],
      ['snow', 1.15],
      ['iced-eave', 1.15],
    ]);
  });

  test('have no snow where none is entered, and no ice where the eave is not doubled', () => {
    expect(cases({}).map(({ id }) => id)).toEqual(['dead', 'roof-live', 'worker']);
    expect(cases({ groundSnowPsf: 30, icedEave: 'not-doubled' }).map(({ id }) => id)).not.toContain(
      'iced-eave',
    );
  });

  test('take 0.7 of snow from a strength-level map, and 0.6 of such a wind', () => {
    // Source: ASCE 7-22 and 7-16, 2.4.1, from memory.
    const strong = cases({ groundSnowPsf: 40, groundSnowBasis: 'strength', thermalFactor: 1 });
    expect(strong.find(({ id }) => id === 'snow')?.psf).toBeCloseTo(0.7 * 28, 10);
    expect(eaveLoads(siteSchema.parse({ windUpliftPsf: 40 }), 6, parts).upliftPsf).toBe(24);
    expect(
      eaveLoads(siteSchema.parse({ windUpliftPsf: 40, windUpliftBasis: 'allowable' }), 6, parts).upliftPsf,
    ).toBe(40);
  });
});
