import { describe, expect, it } from 'vitest';
import { drawPlateDetail } from '../../core/drawings/draw-plate-detail.ts';
import { drawSection } from '../../core/drawings/draw-section.ts';
import { paint } from '../../core/drawings/paint.ts';
import { eavesWithParts, typicalExtender } from '../../core/documents/eave-drawings.ts';
import type { EaveParts } from '../../core/documents/eave-drawings.ts';
import type { Extender } from '../../core/layout/layout-types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { computed, sampleJob } from '../documents/sample.ts';
import { extent, paintedPolygons, polygonTitled, textsOf } from './painted-shapes.ts';

function partsWith(change?: (job: ReturnType<typeof sampleJob>) => void): EaveParts & { extender: Extender } {
  const job = sampleJob();
  change?.(job);
  const [parts] = eavesWithParts(job, computed(job).eaves);
  const extender = parts && typicalExtender(parts.layout);
  if (parts === undefined || extender === undefined) throw new Error('the sample has no tail');
  return { ...parts, extender };
}

function sectionOf({ layout, extender, survey, design }: ReturnType<typeof partsWith>) {
  return drawSection(layout, extender, survey, design);
}

describe('the section of an eave', () => {
  const parts = partsWith();
  const { section } = parts.extender;
  const drawing = sectionOf(parts);

  it('stands on the plate: the plate is under y = 0, from the framing face inwards', () => {
    const plate = polygonTitled(drawing, /^Wall plate$/);
    expect(Math.max(...plate.points.map(([, y]) => y))).toBe(0);
    expect(Math.max(...plate.points.map(([x]) => x))).toBe(0);
    expect(extent(plate.points.map(([x]) => x))).toBeCloseTo(parts.survey.plateWidthIn, 9);
  });

  it('sticks out as far as it is designed to, in ink: overhang in inches times the scale', () => {
    const painted = paint(drawing, 4.5, { pxPerPt: 1 });
    const extender = paintedPolygons(painted).find((polygon) => polygon.title?.startsWith('Extender'));
    const plate = paintedPolygons(painted).find((polygon) => polygon.title === 'Wall plate');
    const tail = Math.max(...(extender?.points.map(([x]) => x) ?? []));
    const face = Math.max(...(plate?.points.map(([x]) => x) ?? []));
    expect(tail - face).toBeCloseTo(section.overhangLevelIn * 4.5, 6);
  });

  it('has no new wood inside the plate', () => {
    const { points } = polygonTitled(drawing, /^Extender/);
    const [back, front] = [-parts.survey.plateWidthIn, 0];
    for (const [x, y] of points) {
      expect(x > back + 1e-9 && x < front - 1e-9 && y < -1e-9).toBe(false);
    }
  });

  it('has its fascia against the tail, from the top corner down past the lowest corner of the cut', () => {
    const { points } = polygonTitled(drawing, /^Fascia/);
    const [inner] = points;
    expect(inner?.[0]).toBeCloseTo(section.overhangLevelIn, 9);
    expect(inner?.[1]).toBeCloseTo(section.tailTopAbovePlateIn, 9);
    const lowest = Math.min(...points.map(([, y]) => y));
    expect(lowest).toBeCloseTo(
      section.tailBottomAbovePlateIn - parts.design.fascia.dropIn - section.fasciaSpareIn,
      9,
    );
  });

  it('lets the new deck lie on the extender: its lower edge is the top edge of the tail', () => {
    const [start, , , end] = polygonTitled(drawing, /^New deck$/).points;
    const slope = parts.extender.pitchRisePer12 / 12;
    for (const point of [start, end]) {
      const [x, y] = point ?? [Number.NaN, Number.NaN];
      expect(y).toBeCloseTo(section.tailTopAbovePlateIn + slope * (section.overhangLevelIn - x), 9);
    }
  });

  it('draws the soffit where the solved section says its underside is', () => {
    const { points } = polygonTitled(drawing, /^Soffit$/);
    expect(Math.min(...points.map(([, y]) => y))).toBeCloseTo(-(section.soffitBelowPlateIn ?? Number.NaN), 9);
  });

  it("carries its dimensions in a carpenter's fractions", () => {
    const texts = textsOf(drawing);
    expect(texts).toContain(`${formatLength(parts.layout.overhangLevelIn)} level`);
    expect(texts).toContain(`backspan ${formatLength(section.backspanIn)}`);
    expect(texts).toContain(`drop ${formatLength(section.tailDropIn)}`);
    expect(texts).toContain(`HAP ${formatLength(section.tailTopAbovePlateIn + section.tailDropIn)}`);
    expect(texts).toContain('window head');
  });

  it('gives the client what he gets and not how it is built', () => {
    const texts = textsOf(drawSection(parts.layout, parts.extender, parts.survey, parts.design, 'client'));
    expect(texts).toContain(`${formatLength(parts.layout.overhangLevelIn)} level`);
    expect(texts.join(' ')).not.toMatch(/backspan|HAP|A-E/);
  });

  it('tells in words what it shows, for those who cannot see it', () => {
    expect(drawing.description).toContain(formatLength(section.overhangLevelIn));
    expect(drawing.description).toMatch(/notched over the plate|needs a shim|meets the plate/);
  });

  it('leans the fascia with a square tail: its thickness runs down the slope', () => {
    const square = partsWith((job) => {
      for (const eave of job.design.eaves) eave.tailCut = 'square';
    });
    const { points } = polygonTitled(sectionOf(square), /^Fascia/);
    const [top = [0, 0], outer = [0, 0], , bottom = [0, 0]] = points;
    const along = [outer[0] - top[0], outer[1] - top[1]];
    const down = [bottom[0] - top[0], bottom[1] - top[1]];
    // Square to one another, and the thickness falls with the roof.
    expect((along[0] ?? 0) * (down[0] ?? 0) + (along[1] ?? 0) * (down[1] ?? 0)).toBeCloseTo(0, 9);
    expect((along[1] ?? 0) / (along[0] ?? 1)).toBeCloseTo(-square.extender.pitchRisePer12 / 12, 9);
  });

  it('shows a shim where the tail clears the plate', () => {
    const high = partsWith((job) => {
      for (const eave of job.survey.eaves) {
        eave.heightAbovePlateIn = 8;
        for (const rafter of eave.rafters) rafter.heightAbovePlateIn = null;
      }
    });
    expect(high.extender.section.bearing.kind).toBe('shimmed');
    const shim = polygonTitled(sectionOf(high), /^Bearing shim$/);
    const outside = shim.points.filter(([x]) => x === 0).map(([, y]) => y);
    const { bearing } = high.extender.section;
    expect(extent(outside)).toBeCloseTo(bearing.kind === 'shimmed' ? bearing.shimIn : Number.NaN, 9);
  });
});

describe('the detail at the plate', () => {
  const parts = partsWith();
  const { section } = parts.extender;
  const drawing = drawPlateDetail(parts.layout, parts.extender, parts.survey, parts.design);

  it('names seat, heel, throat, height above plate and plumb depth', () => {
    if (section.bearing.kind !== 'notched') throw new Error('the sample is notched');
    expect(textsOf(drawing)).toEqual(
      expect.arrayContaining([
        `seat ${formatLength(section.bearing.seatIn)}`,
        `heel ${formatLength(section.bearing.heelCutIn)}`,
        `throat ${formatLength(section.throatIn)}`,
        `plumb depth ${formatLength(section.plumbDepthIn)}`,
      ]),
    );
  });

  it('measures what its dimensions say: the distance between the points of each is its figure', () => {
    for (const shape of drawing.shapes) {
      if (shape.kind !== 'dimension') continue;
      const length = Math.hypot(shape.to[0] - shape.from[0], shape.to[1] - shape.from[1]);
      expect(shape.text.endsWith(` ${formatLength(length)}`), `${shape.text} is drawn ${length}`).toBe(true);
    }
  });

  it('shows nothing outside its window', () => {
    for (const shape of drawing.shapes) {
      if (shape.kind !== 'polygon') continue;
      for (const [x, y] of shape.points) {
        expect(x).toBeGreaterThanOrEqual(drawing.minX - 1e-9);
        expect(x).toBeLessThanOrEqual(drawing.maxX + 1e-9);
        expect(y).toBeGreaterThanOrEqual(drawing.minY - 1e-9);
        expect(y).toBeLessThanOrEqual(drawing.maxY + 1e-9);
      }
    }
  });
});
