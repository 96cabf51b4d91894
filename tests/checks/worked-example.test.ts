import { describe, expect, test } from 'vitest';
import { checkOf } from './checked-job.ts';

/** Nails 2 in. from the ends, as the reckoning below has them. */
const nails = { settings: { fastening: { sister: { endDistanceIn: 2 } } } };

const figures = (check: string) => {
  const { value, limit } = checkOf(check, nails);
  return [value?.number ?? Number.NaN, limit?.number ?? Number.NaN] as const;
};

/**
 * One tail worked outside the program, with a pocket calculator's steps: Douglas fir-larch No.2 2x6 at 6/12, height above
 * plate 4-1/2, overhang 16 level, backspan 2 to 1, tails 24 in. apart; the first carries 25-1/2 in. of roof (from the wall's
 * end to half way to the next). Shingles 3, underlayment 1, 15/32 panel 1.5, soffit 1.5 psf. Snow 40 psf, C_t 1.1.
 *
 * Dead: 5.5 x 1.118 + 1.5 = 7.649 psf -> x 25.5 / 144 = 1.3545 lb/in., the 2x6 itself 0.1868, in all 1.5414 lb/in.
 * Worker: M = 1.5414 x 16^2 / 2 + 300 x 16 = 4997.3 lb-in.; 324.7 lb.
 * Formulas: NDS 2018 and ASCE 7-16 as each check names them; figures for weights from memory.
 */
describe('a tail worked by hand', () => {
  test('bends with 1234 psi of 1682: a worker at its end', () => {
    // Throat 4.5 x cos = 4.025; 6 x 4997.3 / (1.5 x 4.025^2) = 1233.9. 900 x 1.25 x 1.3 x 1.15 = 1681.9.
    const [stress, most] = figures('bending');
    expect(stress).toBeCloseTo(1233.9, 1);
    expect(most).toBeCloseTo(1681.9, 1);
    expect(checkOf('bending').where).toBe(`Rafter 1 at 1' 1-1/2"`);
  });

  test('is sheared with 150.6 psi of 225', () => {
    // 1.5 x 324.7 / (1.5 x 4.025) x (5.5 / 4.025)^2 = 150.6; 180 x 1.25 = 225.
    const [stress, most] = figures('shear');
    expect(stress).toBeCloseTo(150.6, 1);
    expect(most).toBe(225);
  });

  test('loads its worst nail with 76.7 lb of 163, four nails that turn about the plate', () => {
    // Nails 33.78, 17.78 (1 in. down), 25.78 and 9.78 (4-1/2 in. down) along the slope from the plate: J = 2047.5;
    // the furthest 31.43 in.: 4997.3 x 31.43 / 2047.5 = 76.7. One nail: 140.89 x 1.50 / 1.62 x 1.25 = 163.1.
    const [load, most] = figures('sister-nails');
    expect(load).toBeCloseTo(76.7, 1);
    expect(most).toBeCloseTo(163.1, 1);
  });

  test('presses on the plate with 106.5 psi of 625', () => {
    // Held down 202.2 lb; (324.7 + 202.2) / (1.5 x 3.298) = 106.5.
    const [stress, most] = figures('plate-bearing');
    expect(stress).toBeCloseTo(106.5, 1);
    expect(most).toBe(625);
  });

  test('sags by 0.0103 in. under ice', () => {
    // 2 x 0.7 x 1.1 x 40 = 61.6 psf -> 10.908 lb/in. level, 8.727 square to the slope; a 17.889, b 24.719 x 1.118 = 27.637;
    // 8.727 x 17.889^3 x (4 x 27.637 + 3 x 17.889) / (24 x 1,600,000 x 20.797) = 0.01027.
    expect(figures('deflection')[0]).toBeCloseTo(0.01027, 5);
  });

  test('is pulled from the plate by 58 lb, of 273.6 that three toenails hold', () => {
    // 0.6 x 30 = 18 psf on 17.889 x 25.5 / 144 = 3.168 sq ft = 57.0 lb, less 0.6 x 22.06 of weight: 43.78;
    // x (1 + 8.944 / 27.637) = 57.96. Toenails: 3 x 39.5 x 2.153 x 1.6 x 0.67 = 273.6.
    const [pull, most] = figures('uplift-plate');
    expect(pull).toBeCloseTo(57.96, 2);
    expect(most).toBeCloseTo(273.6, 1);
  });

  test('loads its worst nail with 62.1 lb of 208.7 under wind, the plate holding nothing', () => {
    // 43.78 / 4 and 43.78 x (8.944 + 24.26) r / sum r^2 as arrows; one nail 130.5 x 1.6.
    const [load, most] = figures('uplift-sister');
    expect(load).toBeCloseTo(62.1, 1);
    expect(most).toBeCloseTo(208.7, 1);
  });

  test('wet service takes three tenths of a nail', () => {
    // NDS 2018, Table 11.3.3, as seen in transcription: 0.7.
    const dry = figures('sister-nails')[1];
    expect(checkOf('sister-nails', { structure: { wetService: true } }).limit?.number).toBeCloseTo(
      dry * 0.7,
      8,
    );
  });

  test('in a weaker old rafter its nails are worth less, and in a wide gap it is not repetitive', () => {
    const weaker = checkOf('sister-nails', { eave: { oldSpecies: 'spruce-pine-fir' } });
    expect(weaker.limit?.number).toBeLessThan(figures('sister-nails')[1]);
    // Without C_r: 900 x 1.25 x 1.3.
    expect(checkOf('bending', { stations: [12, 40, 68, 96] }).limit?.number).toBeCloseTo(1462.5, 6);
  });
});
