import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { variantsOf, variantKeys, type Variant, type VariantKey } from '../../core/job/variants.ts';
import { fullJob, resultOf, type Change } from '../checks/checked-job.ts';

function board(section: string, grade: string, lengthFt: number, priceUsd: number): object {
  return {
    id: `${section}-${lengthFt}`,
    category: 'lumber',
    description: `${section} ${lengthFt} ft`,
    unit: 'each',
    section,
    grade,
    lengthFt,
    prices: [{ observedOn: '2026-04-20', priceUsd: priceUsd.toFixed(2), source: 'list' }],
  };
}

/** Eight rafters, unevenly spaced; a joist right of the second, and on both faces of the fourth. */
const uneven: Change = {
  eave: {
    lengthIn: 216,
    rafters: [12, 34, 58, 84, 118, 140, 164, 190].map((readingIn, index) => ({
      id: `r${index + 1}`,
      readingIn,
      ...(index === 1 ? { joist: 'right' } : {}),
      ...(index === 3 ? { joist: 'both' } : {}),
    })),
  },
  eaveDesign: { layout: { largestGapIn: 48 }, preferredSide: 'right' },
  settings: { labour: { wageUsdPerHour: '40' } },
  priceList: [
    ...[8, 10, 12, 16].map((lengthFt) => board('2x6', 'No.2', lengthFt, lengthFt * 0.9)),
    ...[8, 12, 16].map((lengthFt) => board('1x8', 'primed', lengthFt, lengthFt * 1.6)),
  ],
};

function variants(job: JobFile): Readonly<Record<VariantKey, Variant>> {
  const found = variantsOf(job, 'wall-1');
  if (!found.ok) throw new Error('no variants');
  return Object.fromEntries(found.value.map((variant) => [variant.key, variant])) as Record<
    VariantKey,
    Variant
  >;
}

function figures(variant: Variant) {
  if (!variant.figures.ok) throw new Error(`${variant.name} has no figures`);
  return variant.figures.value;
}

const job = fullJob(uneven);
const found = variants(job);
const extendersOf = ({ design }: Variant) => resultOf({ ...job, design }).eaves[0]?.extenders ?? [];

function methods(variant: Variant) {
  return extendersOf(variant).map(({ method }) => method);
}

describe('variants of a layout', () => {
  test('begin with the design as it stands, which differs nowhere', () => {
    expect(Object.keys(found)).toEqual([...variantKeys]);
    expect(found['as-designed'].differs).toEqual([]);
    expect(found['as-designed'].design).toEqual(job.design);
    const result = resultOf(job);
    expect(figures(found['as-designed'])).toMatchObject({
      tails: result.eaves[0]?.extenders.length,
      totalUsd: result.estimate.totalUsd,
      labourHours: result.takeoff.labourHours,
      findings: result.findings.length,
    });
  });

  test('are each the whole computation of the design that they name', () => {
    for (const variant of Object.values(found)) {
      const result = computeJob({ ...job, design: variant.design });
      if (!result.ok) throw new Error('a variant that does not compute');
      const boards = result.value.cutPlans.reduce((sum, { costUsd }) => sum + Number(costUsd), 0);
      expect(Number(figures(variant).boardsUsd)).toBeCloseTo(boards, 2);
      expect(figures(variant).totalUsd).toBe(result.value.estimate.totalUsd);
      expect(figures(variant).labourHours).toBe(result.value.takeoff.labourHours);
      const stations = result.value.eaves[0]?.extenders.map(({ centreIn }) => centreIn) ?? [];
      const gaps = stations.slice(1).map((station, index) => station - (stations[index] ?? 0));
      expect(figures(variant).largestGapIn).toBe(Math.max(...gaps));
    }
  });

  test('on one side put every tail there that has room, and nothing clashes', () => {
    for (const side of ['left', 'right'] as const) {
      const tails = extendersOf(found[`all-${side}`]);
      const others = tails.filter((tail) => tail.method === 'side' && tail.side !== side);
      // Right of the second rafter lies a joist; on both sides of the fourth.
      expect(others.map(({ rafterNumber }) => rafterNumber)).toEqual(side === 'right' ? [2] : []);
      expect(tails.filter(({ because, clash }) => because === 'pinned' && clash !== null)).toEqual([]);
    }
    expect(found['all-left'].differs.length).toBeGreaterThan(4);
  });

  test('with fillers hang none, and with hung tails fill none', () => {
    expect(methods(found.fillers)).not.toContain('block-hung');
    expect(methods(found.fillers)).toContain('filler');
    expect(methods(found.hung)).not.toContain('filler');
    expect(methods(found.hung)).toContain('block-hung');
  });

  test('with two more tails have two more, the widest gap halved, at more hours and boards', () => {
    const before = figures(found['as-designed']);
    const after = figures(found['two-more']);
    expect(after.tails).toBe(before.tails + 2);
    expect(after.largestGapIn ?? 0).toBeLessThan(before.largestGapIn ?? 0);
    expect(Number(after.labourHours)).toBeGreaterThan(Number(before.labourHours));
    expect(Number(after.boardsUsd)).toBeGreaterThanOrEqual(Number(before.boardsUsd));
    const added = extendersOf(found['two-more']).filter(({ id }) => id.startsWith('more-'));
    expect(added.map(({ because }) => because)).toEqual(['pinned', 'pinned']);
    expect(found['two-more'].differs.filter(({ text }) => text.startsWith('New: a tail hung'))).toHaveLength(
      2,
    );
  });

  test('tell where they differ, by station, in words', () => {
    const moved = found['all-left'].differs.find(({ text }) => text.startsWith('Rafter 1:'));
    expect(moved).toEqual({ stationIn: 10.5, text: `Rafter 1: left, at 10-1/2", was right, at 1' 1-1/2".` });
    for (const { differs } of Object.values(found)) {
      const stations = differs.map(({ stationIn }) => stationIn);
      expect(stations).toEqual(stations.toSorted((a, b) => a - b));
      expect(differs.map(({ text }) => text).join(' ')).not.toMatch(/undefined|NaN/);
    }
  });

  test('leave what the person wants in place: a rafter without a tail gets none in any of them', () => {
    const pins = [{ rafterId: 'r6', side: 'none' }];
    const bare = fullJob({ ...uneven, eaveDesign: { ...uneven.eaveDesign, pins } });
    for (const { design } of Object.values(variants(bare))) {
      const tails = resultOf({ ...bare, design }).eaves[0]?.extenders ?? [];
      expect(tails.filter(({ rafterId, method }) => rafterId === 'r6' && method !== 'block-hung')).toEqual(
        [],
      );
    }
  });

  test('of an eave that is not there are a problem', () => {
    expect(variantsOf(job, 'nowhere')).toMatchObject({ ok: false, problem: { code: 'not-found' } });
  });
});
