import { describe, expect, it } from 'vitest';
import { drawSeatTemplate } from '../../core/drawings/draw-seat-template.ts';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { Extender } from '../../core/layout/layout-types.ts';
import { margins } from '../../electron/paper/paper-size.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { computed, sampleJob } from '../documents/sample.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';
import { has, printed, sheetSaying } from './papers.ts';
import { type PlacedLine, type ReadPage, readPdf } from './read-pdf.ts';

/** 72 points an inch. */
const inch = 72;

/** What svg coordinates are rounded to, twice. [pt] */
const roundedPt = 0.03;

function tail(survey: Parameters<typeof makeEave>[1], section = '2x6', overhangIn = 16): Extender {
  const layout = layOut(
    makeEave([40], survey),
    makeDesign({ extender: { section }, overhangIn, fascia: { stock: { section: '2x12' } } }),
  );
  const [extender] = layout.extenders;
  if (extender === undefined) throw new Error('the eave has a tail');
  return extender;
}

async function template(extender: Extender, paperSize: 'letter' | 'a4' = 'letter') {
  return printed(
    sheetSaying([
      { kind: 'full-size', heading: 'Template', note: 'note', drawing: drawSeatTemplate(extender, 'seat') },
    ]),
    paperSize,
  );
}

function lengthOf({ x1, y1, x2, y2 }: PlacedLine): number {
  return Math.hypot(x2 - x1, y2 - y1);
}

/** The base lines of the ruler: the level strokes of just 6 in. */
function rulers(page: ReadPage): readonly PlacedLine[] {
  return page.strokes.filter(
    (line) => line.y1 === line.y2 && Math.abs(lengthOf(line) - 6 * inch) < roundedPt,
  );
}

/** Strokes of a length that are not level. */
function slanting(page: ReadPage | undefined, lengthPt: number): readonly PlacedLine[] {
  return (page?.strokes ?? []).filter(
    (line) => Math.abs(line.y1 - line.y2) > 1 && Math.abs(lengthOf(line) - lengthPt) < roundedPt,
  );
}

/** How steep a stroke stands. [deg] */
function angle(line: PlacedLine | undefined): number {
  const { x1, y1, x2, y2 } = line ?? { x1: 0, y1: 0, x2: 0, y2: 0 };
  return (Math.atan2(Math.abs(y2 - y1), Math.abs(x2 - x1)) * 180) / Math.PI;
}

describe('a seat template on paper', () => {
  // 6/12, HAP 5 in., 5-1/2 in. deep: plumb depth 5.5 x 1.118034 = 6.14919; heel 6.14919 - 5 = 1.14919; seat 1.14919 / 0.5 = 2.29837;
  // throat 5 / 1.1180 = 4.472. Worked by hand from similar triangles.
  const extender = tail({});

  for (const paperSize of ['letter', 'a4'] as const) {
    it(`is as large as the thing on ${paperSize}: seat, heel and throat to three hundredths of a point`, async () => {
      const pages = await template(extender, paperSize);
      const page = pages.at(-1);
      const [seat] = slanting(page, 2.29837 * inch);
      const [heel] = slanting(page, 1.14919 * inch);
      expect(seat).toBeDefined();
      expect(heel).toBeDefined();
      // The seat stands as steep to the top edge as the roof falls: 26.565 degrees; the heel is square to it.
      expect(angle(seat)).toBeCloseTo(26.565, 1);
      expect(angle(heel)).toBeCloseTo(90 - 26.565, 1);
      // The wall line runs plumb from the top edge to the seat's corner: 5 in., the height above the plate.
      const [wall] = slanting(page, 5 * inch);
      const topEdge = Math.max(wall?.y1 ?? 0, wall?.y2 ?? 0);
      const edge = page?.strokes.find(
        ({ y1, y2 }) => Math.abs(y1 - topEdge) < roundedPt && Math.abs(y2 - topEdge) < roundedPt,
      );
      expect(edge).toBeDefined();
      const corner = Math.max(seat?.y1 ?? 0, seat?.y2 ?? 0);
      expect(topEdge - corner).toBeCloseTo(4.472 * inch, 1);
    });
  }

  it('has a ruler of just 6 in. (432 pt) and 150 mm (25.4 mm an inch) on every page, and says what to do', async () => {
    const job = sampleJob();
    const pages = readPdf((await renderPdf(makeSheet('templates', job, computed(job)), 'letter')).pdf);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages.slice(1)) {
      const [base] = rulers(page);
      expect(lengthOf(base ?? { x1: 0, y1: 0, x2: 0, y2: 0 })).toBeCloseTo(432, 1);
      const ticks = page.strokes.filter(
        ({ x1, x2, y1, y2 }) =>
          x1 === x2 &&
          Math.max(y1, y2) <= (base?.y1 ?? 0) + 0.01 &&
          Math.max(y1, y2) > (base?.y1 ?? 0) - 0.01,
      );
      const furthest = Math.max(...ticks.map(({ x1 }) => x1)) - (base?.x1 ?? 0);
      expect(furthest).toBeCloseTo((150 / 25.4) * 72, 1);
      expect(has(page, 'Print at 100 %')).toBe(true);
      expect(has(page, '6 in. and 150 mm')).toBe(true);
    }
  });

  it('stays inside the margins of its page, over one page or several', async () => {
    const wide = tail({ pitchRisePer12: 12, heightAbovePlateIn: 11 }, '2x12');
    const pages = [...(await template(extender)), ...(await template(wide, 'a4'))];
    for (const page of pages) {
      for (const { x1, x2, y1, y2 } of page.strokes) {
        expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(margins.left - 1);
        expect(Math.max(x1, x2)).toBeLessThanOrEqual(page.widthPt - margins.right + 1);
        expect(Math.min(y1, y2)).toBeGreaterThanOrEqual(margins.bottom - 12);
        expect(Math.max(y1, y2)).toBeLessThanOrEqual(page.heightPt - 20);
      }
    }
  });

  describe('too large for a page', () => {
    // 12/12 in 2x12: a plumb line slants 11-1/4 in. over the depth of 11-1/4 in., more than letter paper either way.
    const steep = tail({ pitchRisePer12: 12, heightAbovePlateIn: 11 }, '2x12');

    it('goes over several pages, each with its ruler, and says which pages lie beside it', async () => {
      const pages = (await template(steep)).filter((page) => rulers(page).length > 0);
      expect(pages.length).toBeGreaterThanOrEqual(4);
      for (const [index, page] of pages.entries())
        expect(has(page, `page ${index + 1} of ${pages.length}: lay cross over cross with page`)).toBe(true);
    });

    it('comes out at full size once cross lies over cross: the wall line is as long as the plumb depth over the seat', async () => {
      const pages = (await template(steep)).filter((page) => rulers(page).length > 0);
      const columns = pages.length / 2;
      const parts = pages.flatMap((page, index) => {
        const shift = shiftOf(pages, index, columns);
        return page.strokes
          .filter(
            ({ x1, x2, y1, y2 }) =>
              Math.abs(Math.abs(x2 - x1) - Math.abs(y2 - y1)) < 0.05 && Math.abs(x2 - x1) > 5,
          )
          .map((line) => ({
            x1: line.x1 + shift[0],
            y1: line.y1 + shift[1],
            x2: line.x2 + shift[0],
            y2: line.y2 + shift[1],
          }));
      });
      // At 12/12 plumb and level both run at 45 degrees on the piece; those falling to the right are plumb.
      const plumb = parts.filter(({ x1, y1, x2, y2 }) => (x2 - x1) * (y2 - y1) < 0);
      const xs = plumb.flatMap(({ x1, x2 }) => [x1, x2]);
      const ys = plumb.flatMap(({ y1, y2 }) => [y1, y2]);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(11.25 * inch, 0);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(11.25 * inch, 0);
      // All on one line: x + y is the same everywhere.
      const sums = plumb.flatMap(({ x1, y1, x2, y2 }) => [x1 + y1, x2 + y2]);
      expect(Math.max(...sums) - Math.min(...sums)).toBeLessThan(0.3);
    });
  });
});

/** Centres of the crosses on a page: two short strokes of 0.4 in. through one point. */
function crossesOf(page: ReadPage | undefined): readonly (readonly [number, number])[] {
  const short = (page?.strokes ?? []).filter((line) => Math.abs(lengthOf(line) - 0.4 * inch) < roundedPt);
  const level = short.filter(({ y1, y2 }) => Math.abs(y1 - y2) < 0.02);
  const upright = short.filter(({ x1, x2 }) => Math.abs(x1 - x2) < 0.02);
  return level.flatMap((line) => {
    const centre = [(line.x1 + line.x2) / 2, line.y1] as const;
    return upright.some(
      ({ x1, y1, y2 }) => Math.abs(x1 - centre[0]) < 0.05 && Math.abs((y1 + y2) / 2 - centre[1]) < 0.05,
    )
      ? [centre]
      : [];
  });
}

/** By how much a page has to be moved so that its crosses lie on those of the pages before it. */
function shiftOf(pages: readonly ReadPage[], index: number, columns: number): readonly [number, number] {
  if (index === 0) return [0, 0];
  const inRow = index % columns > 0;
  const before = inRow ? index - 1 : index - columns;
  const [dx, dy] = shiftOf(pages, before, columns);
  const own = crossesOf(pages[index]);
  const others = crossesOf(pages[before]);
  const [mine, theirs] = inRow
    ? [furthest(own, ([x]) => -x)[0], furthest(others, ([x]) => x)[0]]
    : [furthest(own, ([, y]) => y)[0], furthest(others, ([, y]) => -y)[0]];
  if (mine === undefined || theirs === undefined) throw new Error('neighbouring pages share crosses');
  return [dx + theirs[0] - mine[0], dy + theirs[1] - mine[1]];
}

type Cross = readonly [number, number];

/** The crosses that lie furthest in a direction, in order. */
function furthest(crosses: readonly Cross[], way: (cross: Cross) => number): readonly Cross[] {
  const most = Math.max(...crosses.map(way));
  return crosses
    .filter((cross) => Math.abs(way(cross) - most) < 1)
    .toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
}
