import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faceJointValue } from '../../core/checks/nails/joint-value.ts';
import {
  bendingYield,
  dowelBearing,
  reductionTerm,
  singleShear,
  yieldModes,
  type DowelJoint,
} from '../../core/checks/nails/yield-equations.ts';
import { shearOverGap } from '../../core/checks/nails/gap-equations.ts';
import { findNail } from '../../core/takeoff/nails.ts';

/** NDS 2018, Table 12.3.3A, as seen in transcription. */
const gravity = { SP: 0.55, DFL: 0.5, HF: 0.43, SPF: 0.42 } as const;
type Group = keyof typeof gravity;

function nailOf(name: string) {
  const nail = findNail(name);
  if (nail === undefined) throw new Error(name);
  return nail;
}

/** A joint with the whole penetration, as the published table has it. */
function tableEntry(diameterIn: number, group: Group, sideIn: number): number {
  const fe = dowelBearing(gravity[group]);
  return singleShear({
    diameterIn,
    sideIn,
    mainIn: Math.max(10 * diameterIn, 1.5),
    mainFe: fe,
    sideFe: fe,
    fyb: bendingYield(diameterIn),
  }).lb;
}

describe('dowel bearing strength', () => {
  test('of Douglas fir-larch, 0.50, is 4637 psi by the formula and 4650 as the table rounds it', () => {
    // Source: NDS 2018, Table 12.3.3 and note 2, as seen in transcription.
    expect(16600 * 0.5 ** 1.84).toBeCloseTo(4637, 0);
    expect(dowelBearing(0.5)).toBe(4650);
  });

  test('of the other groups is 3350, 3500 and 5550 psi', () => {
    // Source: as above (rule seen; figures computed from it).
    expect([gravity.SPF, gravity.HF, gravity.SP].map(dowelBearing)).toEqual([3350, 3500, 5550]);
  });

  test('bending yield of nails falls with their diameter', () => {
    // Source: NDS 2018, Table I1, as seen in transcription.
    expect([0.099, 0.142, 0.148, 0.177, 0.192, 0.25].map(bendingYield)).toEqual([
      100_000, 100_000, 90_000, 90_000, 80_000, 70_000,
    ]);
  });

  test('the reduction term is 2.2 up to 0.17 in., then 10 D + 0.5', () => {
    // Source: NDS 2018, Table 12.3.1B. 20d common: 2.42.
    expect(reductionTerm(0.17)).toBe(2.2);
    expect(reductionTerm(0.192)).toBeCloseTo(2.42, 10);
  });
});

describe('single shear of nails, 1-1/2 in. side member, same wood, p 10 D or more', () => {
  /**
   * NDS 2018, Table 12N. Cells 154, 141, 120 (16d common), 97 and 118, 72 (Douglas fir-larch) seen in transcription; the
   * rest are the published equations worked by a separate script, two whole pounds where the table's rounding is not known.
   */
  const table: readonly (readonly [string, number, readonly (readonly [Group, number])[]])[] = [
    [
      '8d common',
      0.131,
      [
        ['SP', 106],
        ['DFL', 97],
        ['HF', 84],
        ['SPF', 82],
      ],
    ],
    [
      '10d common',
      0.148,
      [
        ['SP', 128],
        ['DFL', 118],
        ['HF', 102],
        ['SPF', 100],
      ],
    ],
    [
      '16d common',
      0.162,
      [
        ['SP', 154],
        ['DFL', 141],
        ['HF', 122],
        ['SPF', 120],
      ],
    ],
    [
      '20d common',
      0.192,
      [
        ['SP', 185],
        ['DFL', 170],
        ['HF', 147],
        ['SPF', 144],
      ],
    ],
    [
      '6d common',
      0.113,
      [
        ['SP', 79],
        ['DFL', 72],
        ['HF', 63],
        ['SPF', 61],
      ],
    ],
    [
      '10d box',
      0.128,
      [
        ['SP', 101],
        ['DFL', 93],
        ['HF', 80],
        ['SPF', 79],
      ],
    ],
    [
      '16d box',
      0.135,
      [
        ['SP', 113],
        ['DFL', 103],
        ['HF', 89.5],
        ['SPF', 87.5],
      ],
    ],
    [
      '20d sinker',
      0.177,
      [
        ['SP', 178],
        ['DFL', 163],
        ['HF', 141],
        ['SPF', 138],
      ],
    ],
  ];
  const entries = table.flatMap(([name, diameterIn, cells]) =>
    cells.map(([group, lb]) => [name, group, lb, diameterIn] as const),
  );

  test('the table below holds 32 entries over four species groups and eight nails', () => {
    expect(entries).toHaveLength(32);
  });

  test.each(entries)('a %s in %s carries %d lb, within a pound', (name, group, lb, diameterIn) => {
    expect(nailOf(name).diameterIn).toBe(diameterIn);
    expect(Math.abs(tableEntry(diameterIn, group, 1.5) - lb)).toBeLessThanOrEqual(1);
  });

  test.each([
    // Source: NDS 2018, Table 12N, side members of 3/4 and 1 in., Douglas fir-larch, as seen in transcription.
    [0.113, 0.75, 72],
    [0.131, 0.75, 90],
    [0.148, 0.75, 105],
    [0.162, 0.75, 121],
    [0.113, 1, 72],
    [0.131, 1, 97],
    [0.148, 1, 118],
    [0.162, 1, 141],
  ])('a nail of %d in. through %d in. of Douglas fir-larch carries %d lb', (diameterIn, sideIn, lb) => {
    expect(Math.abs(tableEntry(diameterIn, 'DFL', sideIn) - lb)).toBeLessThanOrEqual(1);
  });

  test('a 16d common in Douglas fir-larch gives way by mode IV at 140.9 lb', () => {
    // Source: NDS 2018 equations; 141 in Table 12N.
    const value = singleShear({
      diameterIn: 0.162,
      sideIn: 1.5,
      mainIn: 2,
      mainFe: 4650,
      sideFe: 4650,
      fyb: 90_000,
    });
    expect(value.governing).toBe('IV');
    expect(value.lb).toBeCloseTo(140.9, 1);
  });
});

function positiveRoot(a: number, b: number, c: number): number {
  return (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
}

/**
 * The six modes from the equilibrium of a dowel in two blocks instead of the standard's k-terms: the general dowel equations,
 * A P^2 + B P + C = 0 without a gap (technical report on lateral connections, from memory), divided by R_d.
 */
function byEquilibrium({ diameterIn: d, mainIn: lm, sideIn: ls, mainFe, sideFe, fyb }: DowelJoint) {
  const [qm, qs, moment] = [mainFe * d, sideFe * d, (fyb * d ** 3) / 6];
  const yielding = {
    Im: qm * lm,
    Is: qs * ls,
    II: positiveRoot(1 / (4 * qs) + 1 / (4 * qm), ls / 2 + lm / 2, -(qs * ls ** 2) / 4 - (qm * lm ** 2) / 4),
    IIIm: positiveRoot(1 / (2 * qs) + 1 / (4 * qm), lm / 2, -moment - (qm * lm ** 2) / 4),
    IIIs: positiveRoot(1 / (4 * qs) + 1 / (2 * qm), ls / 2, -(qs * ls ** 2) / 4 - moment),
    IV: positiveRoot(1 / (2 * qs) + 1 / (2 * qm), 0, -2 * moment),
  };
  return Object.fromEntries(Object.entries(yielding).map(([mode, lb]) => [mode, lb / reductionTerm(d)]));
}

describe('all six yield modes', () => {
  test.each([
    [0.162, 1.5, 1.5, 4650, 4650],
    [0.131, 0.75, 1, 3350, 5550],
    [0.192, 1.5, 0.6, 5550, 3350],
    [0.113, 0.25, 2, 4650, 3500],
    [0.148, 3, 0.3, 3500, 4650],
  ])(
    'a %d in. nail through %d into %d in. agrees mode by mode with the equilibrium of the dowel',
    (diameterIn, sideIn, mainIn, mainFe, sideFe) => {
      const joint = { diameterIn, sideIn, mainIn, mainFe, sideFe, fyb: bendingYield(diameterIn) };
      const oracle = byEquilibrium(joint);
      const { modes, governing, lb } = singleShear(joint);
      for (const mode of yieldModes) expect(modes[mode] / (oracle[mode] ?? Number.NaN)).toBeCloseTo(1, 9);
      expect(lb).toBe(Math.min(...Object.values(modes)));
      expect(modes[governing]).toBe(lb);
    },
  );
});

function twoPly(name: string, group: Group = 'DFL') {
  return faceJointValue({
    nail: nailOf(name),
    sideThicknessIn: 1.5,
    mainThicknessIn: 1.5,
    sideGravity: gravity[group],
    mainGravity: gravity[group],
  });
}

describe('depth in the main member', () => {
  test.each([
    // Source: NDS 2018, 12.1.6.4 and Table 12N note 3 (factors); [nail, depth, factor, table value times factor].
    ['8d common', 1, 0.763, 74],
    ['10d common', 1.5, 1, 118],
    ['16d sinker', 1.5, 1, 118],
    ['16d common', 1.5, 0.926, 131],
    ['20d common', 1.5, 0.781, 132],
  ])(
    'a %s through one 1-1/2 in. ply into another stands %d in. deep: factor %d, %d lb',
    (name, deep, factor, lb) => {
      const value = twoPly(name);
      expect(value.penetrationIn).toBeCloseTo(deep, 10);
      expect(value.penetrationFactor).toBeCloseTo(factor, 3);
      expect(Math.abs(value.lb - lb)).toBeLessThanOrEqual(1);
    },
  );

  test('a 16d common joining two plies carries 130.6 lb, and 150.1 under snow', () => {
    // Worked by hand: 141 x 0.926 = 130.6; x 1.15 (NDS 2018, Table 2.3.2) = 150.1.
    expect(twoPly('16d common').lb).toBeCloseTo(130.5, 0);
    expect(twoPly('16d common').lb * 1.15).toBeCloseTo(150.1, 0);
  });

  test('a 6d common half an inch deep is worth nothing, for six diameters are 0.678 in.', () => {
    // Source: NDS 2018, 12.1.6.4: no value below 6 D.
    const value = twoPly('6d common');
    expect(value.penetrationIn).toBeCloseTo(0.5, 10);
    expect(value.leastPenetrationIn).toBeCloseTo(0.678, 10);
    expect(value.lb).toBe(0);
  });

  test('a thicker old rafter gives a 16d common its whole value', () => {
    const joint = { nail: nailOf('16d common'), sideThicknessIn: 1.5, mainThicknessIn: 1.75 };
    const value = faceJointValue({ ...joint, sideGravity: 0.5, mainGravity: 0.5 });
    expect(value.penetrationFactor).toBe(1);
    expect(value.lb).toBeCloseTo(140.9, 1);
  });
});

describe('a hard side member on a soft main one', () => {
  test('counts the real bearing length, p less one diameter, where that gives less than p / 10 D of the table', () => {
    // Source: NDS 2018, 12.3.5.3: l_m = p - E/2 with E = 2 D; by the equilibrium of the dowel, above.
    const nail = nailOf('8d sinker');
    const joint = {
      nail,
      sideThicknessIn: 1.25,
      mainThicknessIn: 1.25,
      sideGravity: 0.55,
      mainGravity: 0.36,
    };
    const modes = byEquilibrium({
      diameterIn: nail.diameterIn,
      sideIn: 1.25,
      mainIn: 1.125 - nail.diameterIn,
      mainFe: dowelBearing(0.36),
      sideFe: dowelBearing(0.55),
      fyb: 100_000,
    });
    const value = faceJointValue(joint);
    expect(value.lb).toBeCloseTo(Math.min(...Object.values(modes)), 8);
    expect(value.lb).toBeLessThan(value.tabulated.lb * value.penetrationFactor);
  });
});

describe('a nail over a gap', () => {
  const anyJoint = fc.record({
    diameterIn: fc.double({ min: 0.09, max: 0.24, noNaN: true }),
    mainIn: fc.double({ min: 0.4, max: 4, noNaN: true }),
    sideIn: fc.double({ min: 0.4, max: 4, noNaN: true }),
    mainFe: fc.integer({ min: 1500, max: 6000 }),
    sideFe: fc.integer({ min: 1500, max: 6000 }),
    fyb: fc.constantFrom(70_000, 80_000, 90_000, 100_000),
  });

  test('of nothing is worth what NDS 2018, Table 12.3.1A, gives, mode by mode', () => {
    // The general dowel equations are from memory; the standard's, as seen in transcription, are the second construction.
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const [open, closed] = [shearOverGap(joint, 0), singleShear(joint)];
        for (const mode of yieldModes) expect(open.modes[mode] / closed.modes[mode]).toBeCloseTo(1, 9);
        expect(open.governing).toBe(closed.governing);
      }),
    );
  });

  test('is worth less the wider the gap, but where wood alone gives way', () => {
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0.01, max: 2, noNaN: true }), (joint, gapIn) => {
        const [less, more] = [shearOverGap(joint, gapIn), shearOverGap(joint, gapIn * 1.5)];
        for (const mode of ['II', 'IIIm', 'IIIs', 'IV'] as const)
          expect(more.modes[mode]).toBeLessThan(less.modes[mode]);
        expect([more.modes.Im, more.modes.Is]).toEqual([less.modes.Im, less.modes.Is]);
      }),
    );
  });

  test('bent in both members (mode IV) balances its two hinges: P (g + a + b) = 2 M, P = q a = q b', () => {
    // Statics of the dowel: a hinge of moment M in each member where the shear is nothing, a and b inside the faces, the
    // wood pushing back with q for each inch: moments between the hinges P g + P a / 2 + P b / 2 = 2 M with a = P / q.
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0, max: 2, noNaN: true }), (joint, gapIn) => {
        const { modes, reduction } = shearOverGap(joint, gapIn);
        const p = modes.IV * reduction;
        const [a, b] = [p / (joint.mainFe * joint.diameterIn), p / (joint.sideFe * joint.diameterIn)];
        const moment = (joint.fyb * joint.diameterIn ** 3) / 6;
        expect((p * gapIn + (p * a) / 2 + (p * b) / 2) / (2 * moment)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('of 3/4 in. leaves a 16d common in Douglas fir-larch 62 of its 141 lb, worked by hand', () => {
    // q = 4650 x 0.162 = 753.3 lb/in.; M = 90,000 x 0.162^3 / 6 = 63.77 lb-in.; A = 1 / 753.3, B = 0.75, C = -127.55:
    // P = (-0.75 + sqrt(0.5625 + 0.67729)) x 753.3 / 2 = 136.9; over K_D 2.2: 62.2.
    const { lb, governing } = shearOverGap(
      { diameterIn: 0.162, mainIn: 2, sideIn: 1.5, mainFe: 4650, sideFe: 4650, fyb: 90_000 },
      0.75,
    );
    expect(governing).toBe('IV');
    expect(lb).toBeCloseTo(62.2, 1);
  });

  test('of a 1-1/2 in. filler leaves a 30d common 1-1/2 in. in the rafter: 6 D is 1.242, 10 D 2.07', () => {
    const filled = {
      sideThicknessIn: 1.5,
      gapIn: 1.5,
      mainThicknessIn: 1.5,
      sideGravity: gravity.DFL,
      mainGravity: gravity.DFL,
    };
    const through = faceJointValue({ ...filled, nail: nailOf('30d common') });
    expect(through.penetrationIn).toBeCloseTo(1.5, 10);
    expect(through.penetrationFactor).toBeCloseTo(1.5 / 2.07, 10);
    // A 16d common would stand 1/2 in. deep, less than 6 D = 0.972: it counts for nothing.
    expect(faceJointValue({ ...filled, nail: nailOf('16d common') }).lb).toBe(0);
  });
});
