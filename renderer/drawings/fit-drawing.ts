import type { Drawing } from '../../core/drawings/drawing.ts';
import { paint } from '../../core/drawings/paint.ts';
import type { Painted } from '../../core/drawings/painted.ts';
import { standardScales } from '../../core/drawings/standard-scales.ts';

/** Screen pixels for one point of type: 96 pixels and 72 points an inch. [px/pt] */
export const screenPxPerPt = 96 / 72;

/** A drawing painted for the screen, and what to say of its scale. */
export type OnScreen = {
  readonly painted: Painted;
  readonly scaleText: string;
  /** Place in the standard scales, largest first; past their end where the drawing is too large for all. */
  readonly step: number;
};

/**
 * Paints a drawing at the largest standard scale that fits its room; a very long eave at what fits, said to be so.
 * @param drawing - the drawing. [in]
 * @param widthPx - room. [px]
 * @param heightPx - room. [px]
 */
export function fitDrawing(drawing: Drawing, widthPx: number, heightPx: number): OnScreen {
  const wide = drawing.maxX - drawing.minX;
  const high = drawing.maxY - drawing.minY;
  for (let step = 0; step < standardScales.length; step += 1) {
    const pxPerInch = pxPerInchAt(step);
    // Text only adds to the size, so a bare drawing that is too large need not be painted.
    if (wide * pxPerInch > widthPx || high * pxPerInch > heightPx) continue;
    const onScreen = atStep(drawing, step);
    if (onScreen.painted.widthPx <= widthPx && onScreen.painted.heightPx <= heightPx) return onScreen;
  }
  return atStep(drawing, standardScales.length - 1);
}

/** Paints a drawing at one of the standard scales, by its place; places beyond either end give the end. */
export function atStep(drawing: Drawing, step: number): OnScreen {
  const within = Math.max(0, Math.min(standardScales.length - 1, step));
  return {
    painted: paint(drawing, pxPerInchAt(within), { pxPerPt: screenPxPerPt }),
    scaleText: `Scale ${standardScales[within]?.name ?? ''}`,
    step: within,
  };
}

function pxPerInchAt(step: number): number {
  return (standardScales[step]?.ptPerInch ?? 1) * screenPxPerPt;
}
