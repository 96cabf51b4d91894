import { describe, expect, it } from 'vitest';
import { drawBoards } from '../../core/drawings/draw-boards.ts';
import { drawFasciaLine, liftText, waveExaggeration } from '../../core/drawings/draw-fascia-line.ts';
import { drawPlan, planSizes } from '../../core/drawings/draw-plan.ts';
import { paint } from '../../core/drawings/paint.ts';
import { boxesOverlap, textBox } from '../../core/drawings/text-box.ts';
import { plansOf, eavesWithParts } from '../../core/documents/eave-drawings.ts';
import { formatInches, formatLength } from '../../core/units/format-length.ts';
import { sawOf } from '../../core/job/saw-of.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { computed, sampleJob } from '../documents/sample.ts';
import { oldHouse, tailBy } from './old-house.ts';
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
    const bare = oldHouse(
      {},
      { layout: { allowFiller: false, allowBlockHung: false, allowFullLength: false } },
    );
    const plan = drawPlan(bare.layout, planSizes(bare.survey, bare.design));
    const missing = bare.layout.unplaced.filter(({ reason }) => reason === 'no-side-free');
    expect(missing.map(({ rafterId }) => rafterId)).toEqual(['r4', 'r6']);
    expect(textsOf(plan).filter((text) => text === 'no side free')).toHaveLength(missing.length);
    for (const { stationIn } of missing) {
      const crossing = plan.shapes.filter(
        (shape) => shape.kind === 'line' && Math.abs((shape.from[0] + shape.to[0]) / 2 - stationIn) < 1e-9,
      );
      expect(crossing).toHaveLength(2);
    }
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
    const withBlock = layout.bays.filter((bay) => bay.block === 'block');
    expect(blocks).toHaveLength(withBlock.length);
    for (const [index, block] of blocks.entries()) {
      expect(extent(block.points.map(([x]) => x))).toBeCloseTo(withBlock[index]?.clearIn ?? 0, 9);
      expect(textsOf(drawing)).toContain(formatInches(withBlock[index]?.clearIn ?? 0));
    }
    const staying = layout.bays.filter((bay) => bay.block === 'old-stays');
    expect(staying.length).toBeGreaterThan(0);
    expect(polygonsTitled(drawing, /^Old block of bay/)).toHaveLength(staying.length);
    expect(textsOf(drawing).filter((text) => text === 'stays')).toHaveLength(staying.length);
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

describe('the plan of an old house', () => {
  const house = oldHouse();
  const { layout: old, survey, design } = house;
  const drawing = drawPlan(old, { ...planSizes(survey, design), panelJointsIn: [96] });

  it('tells tails by their method: another area and a word beside the mark, never colour alone', () => {
    const filled = oldHouse({}, { layout: { allowFiller: true } });
    const withFiller = drawPlan(filled.layout, planSizes(filled.survey, filled.design));
    const fillOf = (plan: typeof drawing, mark: string) => polygonTitled(plan, new RegExp(`^${mark},`)).fill;
    const hung = tailBy(house, 'block-hung');
    expect(fillOf(drawing, hung.mark)).toBe('hung');
    expect(fillOf(drawing, tailBy(house, 'side').mark)).toBe('new');
    expect(textsOf(drawing)).toContain(`${hung.mark}  hung  ${formatLength(hung.centreIn)}`);
    const onFiller = tailBy(filled, 'filler');
    expect(textsOf(withFiller)).toContain(`${onFiller.mark}  filler  ${formatLength(onFiller.centreIn)}`);
  });

  it('lays each filler between the rafter and its tail, as thick as the joist and as long as it is cut', () => {
    const filled = oldHouse({}, { layout: { allowFiller: true } });
    const plan = drawPlan(filled.layout, planSizes(filled.survey, filled.design));
    const extender = tailBy(filled, 'filler');
    const { points, fill } = polygonTitled(plan, new RegExp(`^Filler ${extender.filler?.mark}`));
    expect(fill).toBe('filler');
    expect(extent(points.map(([x]) => x))).toBeCloseTo(1.5, 9);
    expect(extent(points.map(([, y]) => y)) * extender.section.slopeFactor).toBeCloseTo(
      inchesOf(extender.filler?.lengthSixteenths ?? (0 as never)),
      9,
    );
  });

  it('lays each header block against the back end of its tail, from face to face', () => {
    const hung = tailBy(house, 'block-hung');
    const [header] = hung.headers;
    const { points } = polygonTitled(drawing, new RegExp(`^Header block ${header?.mark}`));
    const tail = polygonTitled(drawing, new RegExp(`^${hung.mark},`));
    expect(Math.min(...points.map(([, y]) => y))).toBeCloseTo(Math.max(...tail.points.map(([, y]) => y)), 9);
    expect(Math.min(...points.map(([x]) => x))).toBeCloseTo(header?.leftIn ?? Number.NaN, 9);
    expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(header?.rightIn ?? Number.NaN, 9);
  });

  it('bows the plate as the wall was read, and tells every reading', () => {
    const plate = polygonTitled(drawing, /^Wall plate$/).points;
    for (const { stationIn, outIn } of survey.wallReadings)
      expect(plate.some(([x, y]) => x === stationIn && Math.abs(y + outIn) < 1e-12)).toBe(true);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['wall 0', 'wall out 3/4"', 'wall out 1/4"']));
  });

  it('ends the tails on one straight line though the wall bows, each with its own overhang', () => {
    for (const extender of old.extenders) {
      const { points } = polygonTitled(drawing, new RegExp(`^${extender.mark},`));
      expect(Math.min(...points.map(([, y]) => y))).toBeCloseTo(-16, 9);
    }
    expect(
      new Set(old.extenders.map(({ overhangLevelIn }) => overhangLevelIn.toFixed(4))).size,
    ).toBeGreaterThan(4);
  });

  it('has the sub-fascia between the tails and the fascia: 1-1/2 and 3/4 in. thick (PS 20-20, Table 3)', () => {
    const [sub, fascia] = [/^Sub-fascia /, /^Fascia /].map((title) =>
      extent(polygonTitled(drawing, title).points.map(([, y]) => y)),
    );
    expect(sub).toBeCloseTo(1.5, 9);
    expect(fascia).toBeCloseTo(0.75, 9);
  });

  it('shows where panels end against one another', () => {
    const joint = drawing.shapes.filter(
      (shape) => shape.kind === 'line' && shape.pen === 'cut' && shape.from[0] === 96 && shape.to[0] === 96,
    );
    expect(joint).toHaveLength(1);
    expect(
      textsOf(drawing).filter((text) => text.endsWith('panel') || text.startsWith('panel')),
    ).toHaveLength(1);
  });

  it('lets no text cover another', () => {
    for (const ptPerInch of [1.5, 2.25, 3]) {
      const texts = paintedTexts(paint(drawing, ptPerInch, { pxPerPt: 4 / 3 }));
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
  it('shows the scatter exaggerated, about the line that is built', () => {
    const drawing = drawFasciaLine(layout);
    const diamonds = polygonsTitled(drawing, /^[AB]-[ET]/);
    expect(diamonds).toHaveLength(layout.extenders.length);
    const heights = diamonds.map(({ points }) => (points[1]?.[1] ?? 0) - 1.5);
    const lifts = layout.extenders.map((extender) => extender.liftAtTailIn);
    expect(extent(heights)).toBeCloseTo(waveExaggeration(layout) * extent(lifts), 6);
  });

  it('says how far a tail goes up or down', () => {
    expect([liftText(0.43), liftText(-0.13), liftText(0.01)]).toEqual(['up 7/16"', 'down 1/8"', '0']);
  });
});

describe('the drawing of the boards', () => {
  it('draws each piece at its overall length, each behind the one before it, within the ends that are trimmed', () => {
    const { kerfIn, endTrimIn } = job.settings.cutting;
    for (const plan of result.cutPlans) {
      for (const board of plan.boards) {
        const drawing = drawBoards(plan, [board], sawOf(job.settings.cutting, plan.stock));
        const pieces = polygonsTitled(drawing, /^(?:[AB]|R\d+)-[A-Z]\d/);
        expect(pieces).toHaveLength(board.items.length);
        // Corners run from the bottom left to the right, and back along the top.
        let [bottom, top] = [endTrimIn - kerfIn, endTrimIn - kerfIn];
        for (const [index, { points }] of pieces.entries()) {
          const [bottomLeft = 0, bottomRight = 0, topRight = 0, topLeft = 0] = points.map(([x]) => x);
          const length = inchesOf(board.items[index]?.lengthSixteenths ?? (0 as never));
          expect(extent(points.map(([x]) => x))).toBeCloseTo(length, 9);
          expect(bottomLeft).toBeGreaterThanOrEqual(bottom + kerfIn - 1e-9);
          expect(topLeft).toBeGreaterThanOrEqual(top + kerfIn - 1e-9);
          [bottom, top] = [bottomRight, topRight];
        }
        const usable = inchesOf(board.lengthSixteenths) - endTrimIn;
        expect(Math.max(bottom, top)).toBeLessThanOrEqual(usable + 1e-9);
      }
    }
  });

  it('draws the boards of one plan at one scale, however many stand on a drawing', () => {
    const [plan] = result.cutPlans;
    if (plan === undefined) throw new Error('the sample has a plan');
    const saw = sawOf(job.settings.cutting, plan.stock);
    const widths = [1, 3, plan.boards.length].map((count) => {
      const { minX, maxX } = drawBoards(plan, plan.boards.slice(-count), saw);
      return maxX - minX;
    });
    expect(new Set(widths).size).toBe(1);
  });
});
