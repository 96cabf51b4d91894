import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildFiller } from '../../core/layout/build-filler.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import { plainMeans } from '../../core/layout/layout-means.ts';
import { makeEave } from '../survey/make-eave.ts';
import { besideRafters, makeDesign } from './make-layout.ts';

const stock = (thicknessIn: number) => ({ name: `${thicknessIn}`, itemId: null, thicknessIn });
const yard = [1.5, 0.75, 0.5, 0.25].map(stock);

function built(wantedIn: number, stocks = yard): readonly [readonly number[], number] {
  const { layers, offIn } = buildFiller(wantedIn, stocks);
  return [layers.map(({ thicknessIn }) => thicknessIn), offIn];
}

function eave(rest: Parameters<typeof makeEave>[1] = {}) {
  return makeEave([], { lengthIn: 48, rafters: [{ id: 'a', readingIn: 24, joist: 'both' }], ...rest });
}

function filled(survey = eave(), thicknesses = yard) {
  const design = makeDesign({ layout: { ...besideRafters, allowFiller: true } });
  const layout = layOutEave(survey, design, 'A', null, undefined, { ...plainMeans, fillers: thicknesses });
  if (!layout.ok) throw new Error('not laid out');
  return layout.value;
}

describe('a filler is built up', () => {
  it('to the joist, in the fewest layers, thickest first', () => {
    expect(built(1.5)).toEqual([[1.5], 0]);
    expect(built(1.75)).toEqual([[1.5, 0.25], 0]);
    expect(built(2)).toEqual([[1.5, 0.5], 0]);
  });

  it('with what comes within 1/16 in. before a further layer', () => {
    expect(built(1.5625)).toEqual([[1.5], 0.0625]);
    expect(built(1.4375)).toEqual([[1.5], -0.0625]);
    expect(built(1.78125)[0]).toEqual([1.5, 0.25]);
  });

  it('as near as can be where nothing comes within 1/16 in., and says what is off', () => {
    expect(built(1.75, [stock(1.5)])).toEqual([[1.5], 0.25]);
    expect(built(1.625)).toEqual([[1.5], 0.125]);
  });

  it('of nothing where nothing can be bought', () => {
    expect(built(1.5, [])).toEqual([[], 1.5]);
  });

  it('and no other way of up to four layers is nearer than 1/16 in. with fewer, or nearer at all', () => {
    const sixteenths = fc.integer({ min: 3, max: 26 });
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 40 }),
        fc.uniqueArray(sixteenths, { minLength: 1, maxLength: 4 }),
        (wanted, sizes) => {
          const { layers, offIn } = buildFiller(
            wanted / 16,
            sizes.map((size) => stock(size / 16)),
          );
          const sums: [number, number][] = [];
          const walk = (sum: number, count: number, from: number): void => {
            if (count > 0) sums.push([count, Math.abs(wanted - sum)]);
            if (count < 4)
              for (let at = from; at < sizes.length; at += 1) walk(sum + (sizes[at] ?? 0), count + 1, at);
          };
          walk(0, 0, 0);
          const fitting = sums.filter(([, off]) => off <= 1);
          const bestOff = Math.min(...sums.map(([, off]) => off));
          const own = Math.round(Math.abs(offIn) * 16);
          const fewest = Math.min(...fitting.map(([count]) => count));
          const fits = fitting.length > 0;
          expect({ own: fits ? own <= 1 : own, layers: fits ? layers.length : 0 }).toEqual({
            own: fits ? true : bestOff,
            layers: fits ? fewest : 0,
          });
        },
      ),
    );
  });
});

describe('the filler beside a rafter', () => {
  it('runs from where the rafter is clear of the joist to the back end of the tail', () => {
    // 6/12, HAP 5, rafter and joist 5-1/2 deep: lower edge 5 - 5.5 x 1.118034 = -1.149187 at the wall, and at the
    // joist's top, 5-1/2, after (5.5 + 1.149187) / 0.5 = 13.298374 in., 14.868034 up the slope.
    // Backspan 2 x 16 x 1.118034 = 35.777088; 35.777088 - 14.868034 = 20.909054, 20-7/8 down.
    expect(filled().extenders[0]?.filler).toMatchObject({ wantedIn: 1.5, lengthSixteenths: 20 * 16 + 14 });
    // A joist of 7-1/4 takes 3-1/2 more level, 3.913 along: 16.996.
    expect(filled(eave({ joistDepthIn: 7.25 })).extenders[0]?.filler?.lengthSixteenths).toBe(16 * 16 + 15);
  });

  it('that nothing builds up to is told', () => {
    const layout = filled(eave({ joistThicknessIn: 1.625 }), [stock(1.5)]);
    expect(layout.findings.filter(({ topic }) => topic === 'filler-thickness')).toMatchObject([
      {
        structural: true,
        text: expect.stringContaining(
          'Rafter 1: no boards or panels of the price list build up to a filler of 1-5/8"',
        ),
      },
    ]);
  });

  it('that is hardly longer than nothing is told', () => {
    const flat = filled(eave({ pitchRisePer12: 3 }));
    expect(flat.findings.map(({ text }) => text)).toContainEqual(
      expect.stringContaining('the rafter is clear of the ceiling joist for so little of the backspan'),
    );
  });
});
