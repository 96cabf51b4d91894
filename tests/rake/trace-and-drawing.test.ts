import { describe, expect, test } from 'vitest';
import { drawLookout } from '../../core/drawings/draw-lookout.ts';
import { drawRake } from '../../core/drawings/draw-rake.ts';
import type { Point } from '../../core/drawings/drawing.ts';
import { explain } from '../../core/trace/explain.ts';
import { polygonsTitled, polygonTitled, textsOf } from '../drawings/painted-shapes.ts';
import { soundResult } from '../job/example-job.ts';
import { makeRake, rakePartsOf, type RakeChange } from './make-rake.ts';
import { prices, rakeJob } from './rake-job.ts';

function drawn(change: RakeChange = {}) {
  const { layout, eave, eaveDesign } = rakePartsOf(change);
  const rake = makeRake(change);
  return { rake, drawing: drawRake(rake, { layout, survey: eave, design: eaveDesign }) };
}

/** Least and most of some points along an axis. */
function extentOf(points: readonly Point[], axis: 0 | 1): readonly [least: number, most: number] {
  const places = points.map((point) => point[axis]);
  return [Math.min(...places), Math.max(...places)];
}

describe('walking back from a rake', () => {
  const job = rakeJob({ priceList: prices, rakeDesign: { sheathing: { itemId: 'sheet' } } });
  const result = soundResult(job);
  const reached = (from: string): ReadonlySet<string> => {
    const seen = new Set<string>();
    const step = (ref: string): void => {
      if (seen.has(ref)) return;
      seen.add(ref);
      const found = explain(ref, job, result);
      if (found === undefined) throw new Error(`nothing behind ${ref}`);
      for (const part of found.parts) if (part.ref !== undefined) step(part.ref);
    };
    step(from);
    return seen;
  };

  test('a lookout leads to its overhang, spacing, the first rafter inside and the tape readings', () => {
    const { mark } = result.rakes[0]!.lookouts.at(-1)!;
    const refs = reached(`piece/${mark}`);
    for (const ref of [
      'rake/gable/design/overhangIn',
      'rake/gable/design/spacingIn',
      'rake/gable/survey/runIn',
      'station/wall-1/r2',
      'reading/wall-1/r2',
      'eave/wall-1/pitchRisePer12',
    ])
      expect([...refs]).toContain(ref);
  });

  test('the barge rafter leads to the run, the ridge and the tail that it meets', () => {
    const refs = [...reached('rake/gable/barge')];
    expect(refs).toEqual(
      expect.arrayContaining([
        'rake/gable/line',
        'rake/gable/survey/ridgeThicknessIn',
        'section/wall-1/r1',
        'design/wall-1/overhangIn',
      ]),
    );
    expect(explain('rake/gable/barge', job, result)!.how).toMatch(
      /13' 3-1\/4" x 1\.1180 = 14' 10-1\/16" along the slope/,
    );
  });

  test('the sheathing leads to where the old deck is stripped back to', () => {
    expect([...reached('line/rake-sheathing-sheet')]).toContain('rake/gable/design/sheathing.stripBackIn');
  });

  test('an entry is named as on the screen', () => {
    expect(explain('rake/gable/survey/runIn', job, result)).toMatchObject({
      title: 'Wall to ridge, level, West rake',
      value: `12' 0"`,
    });
    expect(explain('rake/gable/design/atGableRafter', job, result)!.value).toBe('let in, running through');
  });

  test('leads nowhere from a rake that is gone', () => {
    expect(explain('rake/gone/barge', job, result)).toBeUndefined();
    expect(explain('rake/gable/rail', job, result)).toBeUndefined();
  });
});

describe('the elevation of a rake', () => {
  test('shows the barge rafter from tail to ridge in true place: the tail 16 in. out and 3 in. below the plate', () => {
    const { drawing } = drawn();
    const barge = polygonTitled(drawing, /^Barge rafter/);
    const [left, right] = extentOf(barge.points, 0);
    const [, top] = extentOf(barge.points, 1);
    expect(right).toBeCloseTo(16, 9);
    expect(left).toBeCloseTo(-143.25, 9);
    expect(top).toBeCloseTo(5 + 0.5 * 143.25, 9);
    expect(barge.points).toContainEqual([expect.closeTo(16, 9), expect.closeTo(-3, 9)]);
  });

  test('is the mirror image for a rake at the other end', () => {
    const { drawing } = drawn({ survey: { end: 'right' } });
    const [left, right] = extentOf(polygonTitled(drawing, /^Barge rafter/).points, 0);
    expect(left).toBeCloseTo(-16, 9);
    expect(right).toBeCloseTo(143.25, 9);
  });

  test('counts every lookout up the slope from the tail’s top corner, in running dimensions', () => {
    const { rake, drawing } = drawn();
    const running = drawing.shapes.find((shape) => shape.kind === 'running');
    expect(running?.kind === 'running' ? running.stops.map(({ atIn }) => atIn) : []).toEqual([
      ...rake.lookouts.map(({ alongIn }) => alongIn),
      rake.barge[0]!.toIn,
    ]);
    expect(polygonsTitled(drawing, /^R1-K\d\d: /)).toHaveLength(rake.lookouts.length);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['K01', `run 12' 0"`, `1' 4"`]));
  });

  test('says in words what it shows', () => {
    const { rake, drawing } = drawn();
    expect(drawing.description).toMatch(/seen from outside with the eave on the right/);
    expect(drawing.description).toMatch(new RegExp(`${rake.lookouts.length} lookouts of 2x4`));
    expect(drawing.description).toMatch(/meets the eave's in a mitre of 45 degrees/);
  });

  test('keeps every figure of a shape a number, also of a ladder and of a square tail', () => {
    for (const change of [
      { design: { kind: 'ladder' as const, overhangIn: 9 } },
      { eaveDesign: { fascia: { stock: { section: '1x8' } }, tailCut: 'square' as const } },
      { survey: { ridgeThicknessIn: 0 } },
    ])
      expect(JSON.stringify(drawn(change).drawing)).not.toMatch(/null|NaN/);
  });
});

describe('a lookout in place', () => {
  test('lies from the barge rafter’s inner face to the first rafter inside, under the sheathing', () => {
    const rake = makeRake();
    const drawing = drawLookout(rake, rake.lookouts.at(-1)!, 0.75, 0);
    const lookout = polygonTitled(drawing, new RegExp(`^${rake.lookouts.at(-1)!.mark}$`));
    const across = lookout.points.map(([x]) => x);
    expect(Math.min(...across)).toBe(-10.5);
    expect(Math.max(...across)).toBe(15.25);
    expect(polygonTitled(drawing, /^rafter 1$/).points.map(([x]) => x)).toEqual([0, 1.5, 1.5, 0]);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining([`overhang 1' 0"`, `1' 3-1/4"`]));
  });

  test('has its soffit tight under it, from the barge rafter to what is left on the wall', () => {
    const rake = makeRake();
    const drawing = drawLookout(rake, rake.lookouts.at(-1)!, 0.75, 0.75, 0.375);
    const soffit = polygonTitled(drawing, /^soffit$/);
    expect(soffit.points.map(([x]) => x)).toEqual([-10.5, -0.75, -0.75, -10.5]);
    expect(new Set(soffit.points.map(([, y]) => y))).toEqual(new Set([-1.5, -1.875]));
  });

  test('of a ladder stops at the rail, which lies on what is left on the wall', () => {
    const rake = makeRake({ design: { kind: 'ladder', overhangIn: 9 }, survey: { finishIn: 0.75 } });
    const drawing = drawLookout(rake, rake.lookouts[2]!, 0.75, 0.75);
    expect(polygonTitled(drawing, /^rail 2x4$/).points.map(([x]) => x)).toEqual([-2.25, -0.75, -0.75, -2.25]);
    expect(polygonTitled(drawing, /^R1-K03$/).points.map(([x]) => x)).toEqual([-7.5, -2.25, -2.25, -7.5]);
  });
});
