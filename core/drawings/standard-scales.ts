import type { Drawing } from './drawing.ts';
import { paint } from './paint.ts';
import type { Painted } from './painted.ts';

/** A scale of the trade: how many inches on paper stand for one foot of the thing. */
export type StandardScale = {
  readonly name: string;
  /** Points on paper for an inch of the thing, at 72 points an inch. [pt/in] */
  readonly ptPerInch: number;
};

/** The scales that a carpenter's ruler carries, largest first. */
export const standardScales: readonly StandardScale[] = [
  { name: 'full size', ptPerInch: 72 },
  { name: `3" = 1' 0"`, ptPerInch: 18 },
  { name: `1-1/2" = 1' 0"`, ptPerInch: 9 },
  { name: `1" = 1' 0"`, ptPerInch: 6 },
  { name: `3/4" = 1' 0"`, ptPerInch: 4.5 },
  { name: `1/2" = 1' 0"`, ptPerInch: 3 },
  { name: `3/8" = 1' 0"`, ptPerInch: 2.25 },
  { name: `1/4" = 1' 0"`, ptPerInch: 1.5 },
  { name: `3/16" = 1' 0"`, ptPerInch: 1.125 },
  { name: `1/8" = 1' 0"`, ptPerInch: 0.75 },
  { name: `1/16" = 1' 0"`, ptPerInch: 0.375 },
];

/** A drawing painted for paper, and the scale to print under it. */
export type Fitted = { readonly painted: Painted; readonly scaleText: string };

/**
 * Paints a drawing for paper at the largest standard scale that fits; where none does, at what fits, said to be so.
 * @param drawing - the drawing. [in]
 * @param widthPt - room on the paper. [pt]
 * @param heightPt - room on the paper. [pt]
 * @param pxPerPt - how much larger than drawn its type is set. [-]
 * @returns e.g. an eave of 24 ft in a width of 504 pt -> 1/4" = 1' 0".
 */
export function fitToScale(drawing: Drawing, widthPt: number, heightPt: number, pxPerPt = 1): Fitted {
  for (const scale of standardScales) {
    // Text only adds to the size, so a bare drawing that is too large need not be painted.
    if ((drawing.maxX - drawing.minX) * scale.ptPerInch > widthPt) continue;
    if ((drawing.maxY - drawing.minY) * scale.ptPerInch > heightPt) continue;
    const painted = paint(drawing, scale.ptPerInch, { pxPerPt });
    if (painted.widthPx <= widthPt && painted.heightPx <= heightPt) {
      return { painted, scaleText: `Scale ${scale.name}` };
    }
  }
  let ptPerInch = Math.min(
    widthPt / (drawing.maxX - drawing.minX || 1),
    heightPt / (drawing.maxY - drawing.minY || 1),
  );
  let painted = paint(drawing, ptPerInch, { pxPerPt });
  for (let tries = 0; tries < 20 && (painted.widthPx > widthPt || painted.heightPx > heightPt); tries += 1) {
    ptPerInch *= 0.85;
    painted = paint(drawing, ptPerInch, { pxPerPt });
  }
  return { painted, scaleText: 'Not to a standard scale' };
}
