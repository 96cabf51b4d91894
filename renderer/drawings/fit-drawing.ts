import type { Drawing } from '../../core/drawings/drawing.ts';
import { paint } from '../../core/drawings/paint.ts';
import type { Painted } from '../../core/drawings/painted.ts';
import { standardScales } from '../../core/drawings/standard-scales.ts';
import { standOff } from './stand-off.ts';

/** Screen pixels for one point of type: 96 pixels and 72 points an inch. [px/pt] */
export const screenPxPerPt = 96 / 72;

/**
 * Type on a screen is drawn larger against the drawing than on paper, where the eye is nearer: the smallest, of 6 points,
 * is 10 pixels high. [px/pt]
 */
export const typePxPerPt = 1.7;

/** A drawing painted for the screen, and what to say of its scale. */
export type OnScreen = {
  readonly painted: Painted;
  readonly scaleText: string;
  /** Place in the standard scales, largest first; a half is between two of them. */
  readonly step: number;
};

/** Between two standard scales a screen takes what fills its room, found by halving this often. */
const halvings = 7;

/**
 * Paints a drawing as large as its room takes: a screen needs no standard scale, so that none of the room is lost; the
 * scale is stated all the same. A drawing whose texts are higher than its room at every scale takes the width alone, and
 * one too large for the smallest standard scale is painted at that.
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
    if (fits(onScreen.painted, widthPx, heightPx)) return between(drawing, onScreen, widthPx, heightPx);
  }
  return Number.isFinite(heightPx)
    ? fitDrawing(drawing, widthPx, Infinity)
    : atStep(drawing, standardScales.length - 1);
}

/** The largest painting that fits, from a standard scale that does up to the next, which does not. */
function between(drawing: Drawing, standard: OnScreen, widthPx: number, heightPx: number): OnScreen {
  if (standard.step === 0) return standard;
  let best = standard;
  let low = pxPerInchAt(standard.step);
  let high = pxPerInchAt(standard.step - 1);
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    const painted = paintForScreen(drawing, middle);
    if (fits(painted, widthPx, heightPx)) {
      low = middle;
      const ratio = (72 * screenPxPerPt) / middle;
      best = {
        painted,
        scaleText: `Scale 1 : ${ratio.toFixed(ratio < 10 ? 1 : 0)}`,
        step: standard.step - 0.5,
      };
    } else {
      high = middle;
    }
  }
  return best;
}

function paintForScreen(drawing: Drawing, pxPerInch: number): Painted {
  return paint(standOff(drawing, pxPerInch, typePxPerPt), pxPerInch, { pxPerPt: typePxPerPt });
}

function fits(painted: Painted, widthPx: number, heightPx: number): boolean {
  return painted.widthPx <= widthPx && painted.heightPx <= heightPx;
}

/** Paints a drawing at one of the standard scales, by its place; places beyond either end give the end. */
export function atStep(drawing: Drawing, step: number): OnScreen {
  const within = Math.max(0, Math.min(standardScales.length - 1, step));
  return {
    painted: paintForScreen(drawing, pxPerInchAt(within)),
    scaleText: `Scale ${standardScales[within]?.name ?? ''}`,
    step: within,
  };
}

/**
 * Paints a drawing at the scale of another painting, so that nothing jumps while something in it is moved.
 * @param drawing - the drawing. [in]
 * @param like - the painting whose scale is kept.
 */
export function paintLike(drawing: Drawing, like: OnScreen): OnScreen {
  return { ...like, painted: paintForScreen(drawing, like.painted.pxPerInch) };
}

function pxPerInchAt(step: number): number {
  return (standardScales[step]?.ptPerInch ?? 1) * screenPxPerPt;
}
