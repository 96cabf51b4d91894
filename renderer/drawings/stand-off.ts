import type { Drawing, Shape } from '../../core/drawings/drawing.ts';

/** A drawing of 1/4" = 1' on paper, for which texts around a drawing are set. [pt/in] */
const setForPtPerInch = 1.5;

/**
 * Moves the texts around a drawing as far off as they stand on paper at 1/4" = 1', where a smaller scale would draw them
 * into one another and push them into rows. Texts in the drawing stay.
 * @param drawing - the drawing. [in]
 * @param pxPerInch - pixels for one inch of the thing drawn. [px/in]
 * @param pxPerPt - pixels for a point of type. [px/pt]
 */
export function standOff(drawing: Drawing, pxPerInch: number, pxPerPt: number): Drawing {
  const stretch = (setForPtPerInch * pxPerPt) / pxPerInch;
  if (stretch <= 1) return drawing;
  const outside = (at: number, low: number, high: number): number =>
    at > high ? high + (at - high) * stretch : at < low ? low - (low - at) * stretch : at;
  const shapes = drawing.shapes.map(
    (shape): Shape =>
      shape.kind === 'text'
        ? { ...shape, at: [shape.at[0], outside(shape.at[1], drawing.minY, drawing.maxY)] }
        : shape,
  );
  return { ...drawing, shapes };
}
