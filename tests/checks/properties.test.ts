import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CheckResult } from '../../core/checks/check-types.ts';
import { runChecks } from '../../core/checks/run-checks.ts';
import { designSchema } from '../../core/eave/design-document.ts';
import { structuralGradeSchema, panelRatingSchema, notchRuleSchema } from '../../core/eave/structure.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { roofingSchema, speciesSchema } from '../../core/survey/site.ts';
import { nails } from '../../core/takeoff/nails.ts';
import { checkOf, fullJob, type Change } from './checked-job.ts';

const nailOver48 = (overhangIn: number) =>
  ratioOf('sister-nails', { eaveDesign: { overhangIn, backspanRatio: 48 / overhangIn } });

const nailAtSpacing = (spacingIn: number) =>
  ratioOf('sister-nails', { settings: { fastening: { sister: { spacingIn } } } });

function ratioOf(check: string, change: Change): number {
  return checkOf(check, change).ratio ?? Number.POSITIVE_INFINITY;
}
const loadChecks = ['bending', 'shear', 'plate-bearing', 'deflection', 'sister-nails'] as const;
const slack = 1 + 1e-9;

/** Ratios of a check at the smaller and at the larger of two figures. */
function ratiosAt(
  check: string,
  a: number,
  b: number,
  change: (figure: number) => Change,
): readonly [number, number] {
  return [ratioOf(check, change(Math.min(a, b))), ratioOf(check, change(Math.max(a, b)))];
}

describe('more load never makes a figure better', () => {
  test.each([...loadChecks, 'sheathing-load'])('%s: more snow', (check) => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), (a, b) => {
        const [less, more] = ratiosAt(check, a, b, (groundSnowPsf) => ({ site: { groundSnowPsf } }));
        expect(less).toBeLessThanOrEqual(more * slack);
      }),
      { numRuns: 25 },
    );
  });

  test.each(['uplift-plate', 'uplift-sister'])('%s: more wind', (check) => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), (a, b) => {
        const [less, more] = ratiosAt(check, a, b, (windUpliftPsf) => ({ site: { windUpliftPsf } }));
        expect(less).toBeLessThanOrEqual(more * slack);
      }),
      { numRuns: 25 },
    );
  });

  test.each(loadChecks)('%s: another layer of roofing, or a wider gap between tails', (check) => {
    const layers = [1, 2, 3].map((roofingLayers) =>
      ratioOf(check, { site: { roofingLayers, groundSnowPsf: 80 } }),
    );
    expect(layers).toEqual(layers.toSorted((a, b) => a - b));
    const gaps = [12, 16, 24, 32].map((gap) =>
      ratioOf(check, {
        site: { groundSnowPsf: 80 },
        stations: [12, 12 + gap, 12 + 2 * gap],
        eave: { lengthIn: 24 + 2 * gap },
      }),
    );
    expect(gaps).toEqual(gaps.toSorted((a, b) => a - b));
  });
});

describe('more reach never makes a figure better', () => {
  test.each(['bending', 'shear', 'deflection', 'overhang-length', 'overhang-span'])(
    '%s: more overhang',
    (check) => {
      fc.assert(
        fc.property(fc.integer({ min: 2, max: 90 }), fc.integer({ min: 2, max: 90 }), (a, b) => {
          const [less, more] = ratiosAt(check, a, b, (overhangIn) => ({ eaveDesign: { overhangIn } }));
          expect(less).toBeLessThanOrEqual(more * slack);
        }),
        { numRuns: 25 },
      );
    },
  );

  test('the worst nail: more overhang over the same backspan', () => {
    const ratios = [12, 16, 20, 24, 36, 48].map(nailOver48);
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
  });

  test('the worst nail: closer nails never take more, spacing halved at a time', () => {
    const ratios = [2, 4, 8, 16].map(nailAtSpacing);
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
  });

  test('the sheathing: a wider gap', () => {
    for (const check of ['sheathing-span', 'sheathing-load']) {
      const ratios = [12, 16, 24, 28, 32, 40].map((gap) =>
        ratioOf(check, { stations: [12, 12 + gap], eave: { lengthIn: 36 + gap } }),
      );
      expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
    }
  });
});

const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const readings = (field: string, least: number, most: number) =>
  fc
    .array(fc.tuple(inches(0, 500), inches(least, most)), { maxLength: 4 })
    .map((all) => all.map(([stationIn, value], index) => ({ id: `x${index}`, stationIn, [field]: value })));

const anyChange: fc.Arbitrary<Change & { readonly stations: readonly number[] }> = fc.record({
  stations: fc
    .array(inches(0, 60), { minLength: 1, maxLength: 6 })
    .map((bays) => bays.reduce<number[]>((all, bay) => [...all, (all.at(-1) ?? 0) + bay + 3], [])),
  survey: fc.record({ yearBuilt: maybe(fc.integer({ min: 1600, max: 2200 })) }),
  site: fc.record({
    groundSnowPsf: maybe(inches(0, 400)),
    groundSnowBasis: fc.constantFrom('nominal', 'strength'),
    thermalFactor: inches(0.8, 1.4),
    icedEave: fc.constantFrom('doubled', 'not-doubled'),
    roofing: fc.constantFrom(...roofingSchema.options),
    roofingLayers: fc.integer({ min: 1, max: 4 }),
    windUpliftPsf: maybe(inches(0, 300)),
    iceBarrierRequired: maybe(fc.boolean()),
    atticAreaSqFt: maybe(inches(1, 100000)),
    ventRatio: fc.constantFrom('1/150', '1/300'),
  }),
  eave: fc.record({
    lengthIn: fc.constant(600),
    obstructions: fc.array(
      fc
        .tuple(inches(0, 200), inches(0.5, 12))
        .map(([fromIn, wideIn]) => ({ id: `o-${fromIn}`, fromIn, toIn: fromIn + wideIn })),
      { maxLength: 8 },
    ),
    pitchRisePer12: inches(0.01, 24),
    heightAbovePlateIn: inches(0, 60),
    plateWidthIn: inches(1.5, 16),
    rafterThicknessIn: inches(0.5, 3),
    rafterDepthIn: inches(1, 24),
    clearBackspanIn: maybe(inches(1, 600)),
    windowHeadBelowPlateIn: maybe(inches(0, 240)),
    rafterSpanIn: maybe(inches(12, 1200)),
    wallReadings: readings('outIn', -3, 3),
    plateReadings: readings('upIn', -60, 60),
    lotLineIn: maybe(inches(0, 12000)),
    serviceDropAboveRoofIn: maybe(inches(0, 600)),
    paintedFasciaDepthIn: maybe(inches(0, 36)),
    oldSpecies: maybe(fc.constantFrom(...speciesSchema.options)),
  }),
  structure: fc.record({
    species: maybe(fc.constantFrom(...speciesSchema.options)),
    grade: fc.constantFrom(...structuralGradeSchema.options),
    wetService: fc.boolean(),
    treated: fc.boolean(),
    panelRating: maybe(fc.constantFrom(...panelRatingSchema.options)),
    soffitVentSqInPerFt: maybe(inches(0, 144)),
    plateTieUpliftLb: inches(0, 10000),
    nailEdgeDistanceIn: inches(0.25, 6),
  }),
  eaveDesign: fc.record({
    overhangIn: inches(1, 96),
    overhangMeasured: fc.constantFrom('level', 'along-slope'),
    tailCut: fc.constantFrom('plumb', 'square'),
    backspanRatio: inches(0.5, 10),
    extender: fc.record({ section: fc.constantFrom('2x2', '2x4', '2x6', '2x8', '2x12', '1x8', '5/4x6') }),
    fasciaLine: fc.constantFrom('as-found', 'parallel', 'level', 'best-fit'),
    fasciaInPlan: fc.constantFrom('straight', 'follow'),
    overhangFrom: fc.constantFrom('reference-line', 'wall-mean'),
    backEnd: fc.constantFrom('parallel', 'square'),
    tailFaceIn: maybe(inches(1.5, 12)),
    kickUpPitchRisePer12: fc.option(inches(0.01, 6), { nil: null, freq: 2 }),
    kickUpRaiseIn: inches(0, 8),
    layout: fc.record({
      allowFiller: fc.boolean(),
      allowBlockHung: fc.boolean(),
      allowOuterFace: fc.boolean(),
      allowFullLength: fc.boolean(),
      allowEndReplacement: fc.boolean(),
      largestGapIn: maybe(inches(8, 96)),
    }),
    soffit: fc.record({ kind: fc.constantFrom('level', 'sloped', 'open') }),
    sheathing: fc.record({ kind: fc.constantFrom('panels', 'planks', 'none') }),
  }),
  design: fc.record({ notchRule: maybe(fc.constantFrom(...notchRuleSchema.options)) }),
  settings: fc.record({
    fastening: fc.record({
      sister: fc.record({
        nail: fc.constantFrom(...nails.map(({ name }) => name), 'no such nail'),
        rows: fc.integer({ min: 1, max: 4 }),
        spacingIn: inches(1, 48),
        endDistanceIn: inches(0.5, 24),
      }),
      plateToenailsOneFace: fc.integer({ min: 0, max: 20 }),
    }),
  }),
});

/** Everything in a result that is a number, and everything that is text. */
function leaves(value: unknown): readonly unknown[] {
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(leaves) : [value];
}

describe('on any design that the section accepts', () => {
  test('no check throws, and no text or number is without sense', () => {
    let computed = 0;
    let hung = 0;
    fc.assert(
      fc.property(anyChange, (change) => {
        const job = fullJob(change);
        const result = computeJob(job);
        if (!result.ok) return;
        computed += 1;
        const checks: readonly CheckResult[] = runChecks(job, result.value);
        hung += checks.filter(({ check, value }) => check === 'block-hung' && value !== null).length;
        const all = leaves(checks);
        expect(all.filter((leaf) => typeof leaf === 'number' && !Number.isFinite(leaf))).toEqual([]);
        expect(
          all.filter((leaf) => typeof leaf === 'string' && /NaN|Infinity|undefined|\[object|∞/.test(leaf)),
        ).toEqual([]);
      }),
      { numRuns: 300 },
    );
    expect(computed).toBeGreaterThan(150);
    expect(hung).toBeGreaterThan(5);
  });
});

describe('decisions', () => {
  test('are kept in the design beside the checks, and an old design has none', () => {
    const decision = { checkId: 'bending/wall-1', who: 'A. Official', date: '2026-05-04', note: 'As drawn.' };
    expect(designSchema.parse({ version: 1, eaves: [], decisions: [decision] }).decisions).toMatchObject([
      decision,
    ]);
    expect(designSchema.parse({ version: 1, eaves: [] })).toMatchObject({ decisions: [], notchRule: null });
  });

  test('change no figure', () => {
    const decision = { checkId: 'bending/wall-1', who: 'A. Official', date: '2026-05-04' };
    expect(checkOf('bending', { design: { decisions: [decision] } })).toEqual(
      checkOf('bending', { design: { decisions: [] } }),
    );
  });
});
