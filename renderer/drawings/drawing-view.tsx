import { Maximize2, Minus, Plus } from 'lucide-react';
import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Drawing } from '../../core/drawings/drawing.ts';
import { standardScales } from '../../core/drawings/standard-scales.ts';
import { IconButton } from '../kit/icon-button.tsx';
import './drawings.css';
import { atStep, fitDrawing } from './fit-drawing.ts';
import { PaintedSvg } from './painted-svg.tsx';

/** How far an arrow key moves the view. [px] */
const keyStepPx = 60;

/**
 * A drawing to a stated scale that fits its room. Plus, minus and 0 change the scale, arrows and dragging move it.
 * @param heightPx - most height that it takes. [px]
 * @param onRef - called with the ref of a shape that was pressed.
 */
export function DrawingView(props: {
  readonly drawing: Drawing;
  readonly heightPx: number;
  readonly onRef?: ((ref: string) => void) | undefined;
  /** Stands in the line under the drawing, e.g. the steps through the rafters. */
  readonly beside?: ReactNode;
}) {
  const { drawing, heightPx, onRef } = props;
  const view = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  const [step, setStep] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = view.current;
    if (element === null) return undefined;
    setWidthPx(element.clientWidth);
    const observer = new ResizeObserver(() => setWidthPx(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const shown = useMemo(
    () =>
      widthPx === 0 ? null : step === null ? fitDrawing(drawing, widthPx, heightPx) : atStep(drawing, step),
    [drawing, widthPx, heightPx, step],
  );
  const larger = () => setStep(Math.max(0, Math.ceil(shown?.step ?? 1) - 1));
  const smaller = () => setStep(Math.min(standardScales.length - 1, Math.floor(shown?.step ?? 0) + 1));
  const fit = () => setStep(null);
  const drag = useDrag(view);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-keyStepPx, 0],
      ArrowRight: [keyStepPx, 0],
      ArrowUp: [0, -keyStepPx],
      ArrowDown: [0, keyStepPx],
    };
    const move = moves[event.key];
    if (event.key === '+' || event.key === '=') larger();
    else if (event.key === '-') smaller();
    else if (event.key === '0') fit();
    else if (move !== undefined) view.current?.scrollBy(...move);
    else return;
    event.preventDefault();
  };

  return (
    <div className="drawing-frame">
      <div
        ref={view}
        className="drawing-room"
        style={{ maxHeight: heightPx }}
        // A scrolling region has to be reachable by keyboard.
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        tabIndex={0}
        role="group"
        aria-label={`${drawing.title}. Plus and minus change the scale, arrows move the view.`}
        onKeyDown={onKeyDown}
        {...drag}
      >
        {shown === null ? null : <PaintedSvg painted={shown.painted} onRef={onRef} />}
      </div>
      <div className="drawing-line">
        {props.beside}
        <span className="drawing-scale">{shown?.scaleText}</span>
        <IconButton label="Smaller scale" icon={<Minus size={14} aria-hidden="true" />} onPress={smaller} />
        <IconButton label="Larger scale" icon={<Plus size={14} aria-hidden="true" />} onPress={larger} />
        <IconButton label="Fit the drawing" icon={<Maximize2 size={14} aria-hidden="true" />} onPress={fit} />
      </div>
    </div>
  );
}

/** Moves a scrolling region by dragging with the mouse; touch scrolls by itself. */
function useDrag(view: { readonly current: HTMLDivElement | null }) {
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
