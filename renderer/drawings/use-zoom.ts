import { type RefObject, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Drawing } from '../../core/drawings/drawing.ts';
import { standardScales } from '../../core/drawings/standard-scales.ts';
import { atStep, fitDrawing, type OnScreen, paintLike } from './fit-drawing.ts';

/** The turn of a wheel that goes one scale on. [px] */
const wheelStepPx = 60;

/** A point of the thing drawn, and where in the view it is to stay. */
type Anchor = {
  readonly xIn: number;
  readonly yIn: number;
  readonly viewX: number;
  readonly viewY: number;
};

/**
 * The scale of a drawing in its room: fitted until another is chosen; then what lies under the pointer, or in the middle,
 * stays where it is.
 * @param view - the scrolling region; its first element is the drawing.
 * @param like - the painting whose scale is kept, while something in the drawing is being moved.
 */
export function useZoom(options: {
  readonly view: RefObject<HTMLDivElement | null>;
  readonly drawing: Drawing;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly like: OnScreen | null;
}) {
  const { view, drawing, widthPx, heightPx, like } = options;
  const [step, setStep] = useState<number | null>(null);
  const anchor = useRef<Anchor | null>(null);
  const shown = useMemo(() => {
    if (widthPx === 0) return null;
    if (like !== null) return paintLike(drawing, like);
    return step === null ? fitDrawing(drawing, widthPx, heightPx) : atStep(drawing, step);
  }, [drawing, widthPx, heightPx, step, like]);

  // What stands on the screen, for a wheel that turns on before anything else is done.
  const onScreen = useRef(shown);
  const zoom = useCallback(
    (larger: boolean, at?: { readonly clientX: number; readonly clientY: number }) => {
      const now = onScreen.current;
      if (now === null) return;
      anchor.current = anchorAt(view.current, now, at);
      const next = larger ? Math.ceil(now.step) - 1 : Math.floor(now.step) + 1;
      setStep(Math.max(0, Math.min(standardScales.length - 1, next)));
    },
    [view],
  );

  useLayoutEffect(() => {
    onScreen.current = shown;
    const element = view.current;
    const { current } = anchor;
    anchor.current = null;
    if (element === null || current === null || shown === null) return;
    const { originPx, pxPerInch } = shown.painted;
    const sheet = offsetIn(element);
    element.scrollTo(
      sheet.x + originPx[0] + current.xIn * pxPerInch - current.viewX,
      sheet.y + originPx[1] - current.yIn * pxPerInch - current.viewY,
    );
  }, [shown, view]);

  useEffect(() => {
    const element = view.current;
    if (element === null) return undefined;
    let turned = 0;
    // React listens to wheels passively; a page that scrolls along would carry the drawing away.
    const onWheel = (event: WheelEvent): void => {
      const isMeant = event.ctrlKey || event.metaKey || element.contains(document.activeElement);
      if (!isMeant || event.deltaY === 0) return;
      event.preventDefault();
      turned = Math.sign(turned) === Math.sign(event.deltaY) ? turned + event.deltaY : event.deltaY;
      if (Math.abs(turned) < wheelStepPx) return;
      zoom(turned < 0, event);
      turned = 0;
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [view, zoom]);

  const fit = useCallback(() => setStep(null), []);
  return { shown, zoom, fit };
}

function anchorAt(
  element: HTMLDivElement | null,
  shown: OnScreen,
  at: { readonly clientX: number; readonly clientY: number } | undefined,
): Anchor | null {
  if (element === null) return null;
  const room = element.getBoundingClientRect();
  const viewX = at === undefined ? element.clientWidth / 2 : at.clientX - room.left;
  const viewY = at === undefined ? element.clientHeight / 2 : at.clientY - room.top;
  const { originPx, pxPerInch } = shown.painted;
  const sheet = offsetIn(element);
  return {
    xIn: (viewX + element.scrollLeft - sheet.x - originPx[0]) / pxPerInch,
    yIn: (originPx[1] - (viewY + element.scrollTop - sheet.y)) / pxPerInch,
    viewX,
    viewY,
  };
}

/** Where the drawing begins in what is scrolled: a small one stands in the middle. */
function offsetIn(element: HTMLDivElement): { readonly x: number; readonly y: number } {
  const sheet = element.firstElementChild;
  return sheet instanceof HTMLElement ? { x: sheet.offsetLeft, y: sheet.offsetTop } : { x: 0, y: 0 };
}
