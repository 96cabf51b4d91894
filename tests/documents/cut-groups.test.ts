import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutGroups, isNotched, type TailToCut } from '../../core/documents/cut-groups.ts';
import { eavesWithParts, type EaveParts } from '../../core/documents/eave-drawings.ts';
import { fewestSets } from '../../core/documents/fewest-sets.ts';
import { markList } from '../../core/documents/mark-list.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';
import { computed, sampleJob } from './sample.ts';

/** An eave whose rafters stand so high above the plate; each tail follows its own. */
function eaveOf(heightsIn: readonly number[]): EaveParts {
  const survey = makeEave([], {
    lengthIn: 24 * (heightsIn.length + 1),
    rafters: heightsIn.map((heightAbovePlateIn, index) => ({
      id: `r${index}`,
      readingIn: 24 * (index + 1),
      heightAbovePlateIn,
    })),
  });
  const design = makeDesign({ fasciaLine: 'as-found' });
  return { survey, design, layout: layOut(survey, design) };
}

function figures({ extender }: TailToCut): readonly number[] {
  const { bearing, heightAbovePlateIn, plumbDepthIn, slopeFactor, pitchRisePer12 } = extender.section;
  const run = (plumbDepthIn / slopeFactor) * (pitchRisePer12 / 12);
  return bearing.kind === 'notched' ? [bearing.heelCutIn, bearing.seatIn, heightAbovePlateIn, run] : [run];
}

function off(one: TailToCut, other: TailToCut): number {
  const [a, b] = [figures(one), figures(other)];
  return Math.max(...a.map((figure, index) => Math.abs(figure - (b[index] ?? Number.NaN))));
}

describe('tails that share a template', () => {
  it('are none of them off it by more than the tolerance, in any line, and each is in one group', () => {
    const heights = fc.array(
      fc.integer({ min: 4 * 64, max: 5 * 64 }).map((sixtyFourths) => sixtyFourths / 64),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(heights, fc.constantFrom(0, 1 / 32, 1 / 16, 1 / 4), (heightsIn, toleranceIn) => {
        const parts = eaveOf(heightsIn);
        const groups = cutGroups([parts], toleranceIn);
        for (const { model, tails, mostOffIn } of groups) {
          expect(tails).toContain(model);
          const offs = tails.map((tail) => off(model, tail));
          expect(Math.max(...offs)).toBeLessThanOrEqual(toleranceIn + 1e-9);
          expect(mostOffIn).toBeCloseTo(Math.max(...offs), 9);
        }
        expect(groups.flatMap(({ tails }) => tails.map(({ extender }) => extender.mark)).sort()).toEqual(
          parts.layout.extenders.map(({ mark }) => mark).sort(),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('are drawn from the middle one: heights of 5, 5-1/32 and 5-1/16 in. on a 12/12 roof make one group at 1/32 in.', () => {
    const survey = makeEave([], {
      pitchRisePer12: 12,
      rafters: [5, 5 + 1 / 32, 5 + 1 / 16].map((heightAbovePlateIn, index) => ({
        id: `r${index}`,
        readingIn: 30 * (index + 1),
        heightAbovePlateIn,
      })),
    });
    const design = makeDesign({ fasciaLine: 'as-found' });
    const groups = cutGroups([{ survey, design, layout: layOut(survey, design) }], 1 / 32);
    expect(groups).toHaveLength(1);
    expect(groups[0]?.model.extender.mark).toBe('A-E02');
  });

  it('never are of two stocks, nor of a notched and a shimmed tail', () => {
    const low = eaveOf([5, 5]);
    const high = eaveOf([8, 8]);
    expect(cutGroups([low, high], 0.5)).toHaveLength(2);
    const wide = { ...low, design: makeDesign({ extender: { section: '2x8' } }) };
    expect(cutGroups([low, wide], 0.5)).toHaveLength(2);
  });

  it('leave out what is in place', () => {
    const parts = eaveOf([5, 5, 5]);
    const layout = {
      ...parts.layout,
      extenders: parts.layout.extenders.map((extender, index) => ({ ...extender, inPlace: index === 1 })),
    };
    const [group] = cutGroups([{ ...parts, layout }], 1 / 16);
    expect(group?.tails.map(({ extender }) => extender.mark)).toEqual(['A-E01', 'A-E03']);
  });

  it('are numbered from the largest group, over all eaves of a job', () => {
    const job = sampleJob();
    const result = computed(job);
    const groups = cutGroups(eavesWithParts(job, result.eaves), job.settings.cutting.templateToleranceIn);
    expect(groups.map(({ number }) => number)).toEqual(groups.map((_, index) => index + 1));
    const counts = groups.filter(isNotched).map(({ tails }) => tails.length);
    expect(groups.filter(isNotched).map(({ number }) => number)).toEqual(counts.map((_, index) => index + 1));
    expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    expect(groups.reduce((sum, { tails }) => sum + tails.length, 0)).toBe(
      result.eaves.reduce((sum, { extenders }) => sum + extenders.length, 0),
    );
  });
});

describe('the fewest sets that hold everything', () => {
  it('are as few as trying every choice gives', () => {
    const sets = fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 5 }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(sets, (some) => {
        // Each thing has a set of its own as well, so that there always is a cover.
        const all = [...some, ...Array.from({ length: 7 }, (_, thing) => [thing])];
        const chosen = fewestSets(7, all);
        expect(new Set(chosen.flatMap((place) => all[place] ?? [])).size).toBe(7);
        let fewest = Number.POSITIVE_INFINITY;
        for (let mask = 0; mask < 2 ** all.length; mask += 1) {
          const places = all.flatMap((_, place) => ((mask >> place) & 1 ? [place] : []));
          if (places.length >= fewest) continue;
          if (new Set(places.flatMap((place) => all[place] ?? [])).size === 7) fewest = places.length;
        }
        expect(chosen).toHaveLength(fewest);
      }),
      { numRuns: 30 },
    );
  });

  it('are two where taking the largest first would take three', () => {
    expect(fewestSets(6, [[1, 2, 3, 4], [0, 1, 2], [3, 4, 5], [0], [5]])).toEqual([1, 2]);
  });
});

describe('a list of marks', () => {
  it('draws runs of a kind together', () => {
    expect(markList(['A-E01', 'A-E02', 'A-E03', 'A-T01', 'B-E05', 'B-E07'])).toBe('A-E 1-3; A-T 1; B-E 5, 7');
    expect(markList(['A-P02b'])).toBe('A-P02b');
  });
});
