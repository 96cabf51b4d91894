import { type PointerEvent, type RefObject, useRef } from 'react';

/** Moves a scrolling region by dragging with the mouse; touch scrolls by itself. */
export function useDrag(view: RefObject<HTMLDivElement | null>) {
  const from = useRef<{ x: number; y: number; left: number; top: number } | null>(null);
  return {
    onPointerDown: (event: PointerEvent) => {
      const element = view.current;
      if (element === null || event.button !== 0 || event.pointerType !== 'mouse') return;
      from.current = {
        x: event.clientX,
        y: event.clientY,
        left: element.scrollLeft,
        top: element.scrollTop,
      };
    },
    onPointerMove: (event: PointerEvent) => {
      const start = from.current;
      if (start === null || event.buttons === 0) return;
      view.current?.scrollTo(start.left - (event.clientX - start.x), start.top - (event.clientY - start.y));
    },
    onPointerUp: () => {
      from.current = null;
    },
    onPointerLeave: () => {
      from.current = null;
    },
  };
}
