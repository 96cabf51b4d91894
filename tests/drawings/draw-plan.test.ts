import { describe, expect, it } from 'vitest';
import { drawBoards } from '../../core/drawings/draw-boards.ts';
import { drawFasciaLine, exaggeration, liftText } from '../../core/drawings/draw-fascia-line.ts';
import { drawPlan } from '../../core/drawings/draw-plan.ts';
import { paint } from '../../core/drawings/paint.ts';
import { boxesOverlap, textBox } from '../../core/drawings/text-box.ts';
import { plansOf, eavesWithParts } from '../../core/documents/eave-drawings.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { computed, sampleJob } from '../documents/sample.ts';
import { extent, paintedTexts, polygonsTitled, polygonTitled, textsOf } from './painted-shapes.ts';

const job = sampleJob();
const result = computed(job);
const [layout] = result.eaves;
if (layout === undefined) throw new Error('the sample has eaves');

describe('the plan of an eave', () => {
  const drawing = drawPlan(layout, {
    plateWidthIn: 3.625,
    edgeBoards: { subFasciaIn: 0, fasciaIn: 0.75, thicknessIn: 0.75 },
  });

  it('lets every tail stick out by the overhang and reach in by its own backspan, level', () => {
    for (const extender of layout.extenders) {
      const { points } = polygonTitled(drawing, new RegExp(`^${extender.mark},`));
      const ys = points.map(([, y]) => y);
      expect(Math.min(...ys)).toBeCloseTo(-layout.overhangLevelIn, 9);
      const angle = (extender.section.slopeAngleDeg * Math.PI) / 180;
      expect(Math.max(...ys)).toBeCloseTo(extender.section.backspanIn * Math.cos(angle), 9);
      expect(extent(points.map(([x]) => x))).toBeCloseTo(extender.rightIn - extender.leftIn, 9);
    }
  });

  it('numbers every old rafter and writes its station, whether or not it gets a tail', () => {
    const texts = textsOf(drawing);
    for (const rafter of layout.rafters) {
      expect(texts).toContain(String(rafter.number));
      expect(texts).toContain(formatLength(rafter.centreIn));
    }
  });

  it('marks a rafter without a side free by a cross and by words', () => {
    const [missing] = layout.unplaced;
    expect(missing?.reason).toBe('no-side-free');
    expect(textsOf(drawing).filter((text) => text === 'no side free')).toHaveLength(1);
    const crossing = drawing.shapes.filter(
      (shape) =>
        shape.kind === 'line' &&
        Math.abs((shape.from[0] + shape.to[0]) / 2 - (missing?.stationIn ?? 0)) < 1e-9,
    );
    expect(crossing).toHaveLength(2);
  });

  it('marks each piece that moved to the other side by a triangle', () => {
    const moved = layout.extenders.filter((extender) => extender.because === 'moved');
    const triangles = polygonsTitled(drawing, /^Moved to the/);
    expect(moved.length).toBeGreaterThan(0);
    expect(triangles).toHaveLength(moved.length);
    for (const triangle of triangles) expect(triangle.points).toHaveLength(3);
  });

  it('writes the clear length into every bay that gets a block', () => {
    const blocks = polygonsTitled(drawing, /^Block /);
    expect(blocks).toHaveLength(layout.bays.filter((bay) => bay.block === 'block').length);
    for (const [index, block] of blocks.entries()) {
      expect(extent(block.points.map(([x]) => x))).toBeCloseTo(layout.bays[index]?.clearIn ?? 0, 9);
    }
  });

  it('carries a ref on every piece, so that a click can walk back', () => {
    const refs = drawing.shapes.flatMap((shape) =>
      shape.kind === 'polygon' && shape.ref ? [shape.ref] : [],
    );
    for (const extender of layout.extenders) expect(refs).toContain(`piece/${extender.mark}`);
    for (const piece of layout.fascia) expect(refs).toContain(`piece/${piece.mark}`);
    for (const rafter of layout.rafters) expect(refs).toContain(`station/${layout.eaveId}/${rafter.id}`);
  });

  it('loses no rafter where a long eave is drawn in stretches', () => {
    const [parts] = eavesWithParts(job, result.eaves);
    if (parts === undefined) throw new Error('the sample has eaves');
    const plans = plansOf(parts);
    expect(plans.length).toBeGreaterThan(1);
    const numbers = plans.flatMap((plan) =>
      plan.shapes.flatMap((shape) =>
        shape.kind === 'text' && shape.bold === true && /^\d+$/.test(shape.text) ? [Number(shape.text)] : [],
      ),
    );
    expect(numbers).toEqual(layout.rafters.map((rafter) => rafter.number));
  });

  it('lets no text cover another, down to 1/8" = 1\' 0" on paper', () => {
    for (const ptPerInch of [0.75, 1.5, 2.25, 3]) {
      const texts = paintedTexts(paint(drawing, ptPerInch, { pxPerPt: 1 }));
      const covered = texts.flatMap((one, index) =>
        texts
          .slice(index + 1)
          .filter((other) => boxesOverlap(textBox(one), textBox(other)))
          .map((other) => `${one.text} and ${other.text} at ${ptPerInch}`),
      );
      expect(covered).toEqual([]);
    }
  });
});

describe('the drawing of the tail heights', () => {
  it('shows the scatter ten times larger than it is, about the line that is built', () => {
    const drawing = drawFasciaLine(layout);
    const diamonds = polygonsTitled(drawing, /^[AB]-E/);
    expect(diamonds).toHaveLength(layout.extenders.length);
    const heights = diamonds.map(({ points }) => (points[1]?.[1] ?? 0) - 1.5);
    const lifts = layout.extenders.map((extender) => extender.liftAtTailIn);
    expect(extent(heights)).toBeCloseTo(exaggeration * extent(lifts), 6);
  });

  it('says how far a tail goes up or down', () => {
    expect([liftText(0.43), liftText(-0.13), liftText(0.01)]).toEqual(['up 7/16"', 'down 1/8"', '0']);
  });
});

describe('the drawing of the boards', () => {
  it('puts pieces, saw cuts, end trims and what is left on each board so that they fill it', () => {
    const options = { endTrimIn: job.settings.cutting.endTrimIn, kerfIn: job.settings.cutting.kerfIn };
    for (const plan of result.cutPlans) {
      for (const board of plan.boards) {
        const drawing = drawBoards(plan, [board], options);
        const pieces = polygonsTitled(drawing, /^[AB]-[EBF]\d/);
        expect(pieces).toHaveLength(board.items.length);
        let at = options.endTrimIn;
        for (const [index, piece] of pieces.entries()) {
          const xs = piece.points.map(([x]) => x);
          const length = inchesOf(board.items[index]?.lengthSixteenths ?? (0 as never));
          expect(Math.min(...xs)).toBeCloseTo(at, 9);
          expect(extent(xs)).toBeCloseTo(length, 9);
          at += length + options.kerfIn;
        }
        const usable = inchesOf(board.lengthSixteenths) - options.endTrimIn;
        expect(at - options.kerfIn).toBeLessThanOrEqual(usable + 1e-9);
      }
    }
  });

  it('draws the boards of one plan at one scale, however many stand on a drawing', () => {
    const [plan] = result.cutPlans;
    if (plan === undefined) throw new Error('the sample has a plan');
    const options = { endTrimIn: 0.5, kerfIn: 0.125 };
    const widths = [1, 3, plan.boards.length].map((count) => {
      const { minX, maxX } = drawBoards(plan, plan.boards.slice(-count), options);
      return maxX - minX;
    });
    expect(new Set(widths).size).toBe(1);
  });
});
