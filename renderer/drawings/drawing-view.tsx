import { Maximize2, Minus, Plus } from 'lucide-react';
import {
  type CSSProperties,
  type KeyboardEvent,
  type ReactNode,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import type { Drawing } from '../../core/drawings/drawing.ts';
import { IconButton } from '../kit/icon-button.tsx';
import './drawings.css';
import type { OnScreen } from './fit-drawing.ts';
import { PaintedSvg } from './painted-svg.tsx';
import { useDrag } from './use-drag.ts';
import { useZoom } from './use-zoom.ts';

/** How far an arrow key moves the view. [px] */
const keyStepPx = 60;

/**
 * A drawing to a stated scale that fits its room. Plus, minus and 0 change the scale, and so does the wheel with Ctrl or
 * once the drawing was pressed; arrows and dragging move it.
 * @param heightPx - most height that it takes. [px]
 * @param onRef - called with the ref of a shape that was pressed.
 */
export function DrawingView(props: {
  readonly drawing: Drawing;
  readonly heightPx: number;
  readonly onRef?: ((ref: string) => void) | undefined;
  /** Stands in the line under the drawing, e.g. the steps through the rafters. */
  readonly beside?: ReactNode;
  /** Laid over the drawing, in its own pixels: handles of what can be moved. */
  readonly over?: ((onScreen: OnScreen) => ReactNode) | undefined;
  /** The painting whose scale is kept while something is being moved. */
  readonly like?: OnScreen | null | undefined;
}) {
  const { drawing, heightPx, onRef } = props;
  const view = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const element = view.current;
    if (element === null) return undefined;
    setWidthPx(element.clientWidth);
    const observer = new ResizeObserver(() => setWidthPx(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const { shown, zoom, fit } = useZoom({ view, drawing, widthPx, heightPx, like: props.like ?? null });
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
    if (event.key === '+' || event.key === '=') zoom(true);
    else if (event.key === '-') zoom(false);
    else if (event.key === '0') fit();
    // What lies over the drawing has arrow keys of its own.
    else if (move !== undefined && event.target === event.currentTarget) view.current?.scrollBy(...move);
    else return;
    event.preventDefault();
  };

  return (
    <div className="drawing-frame">
      <div
        ref={view}
        className="drawing-room"
        style={roomStyle(heightPx, props.like ?? null)}
        // A scrolling region has to be reachable by keyboard.
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        tabIndex={0}
        role="group"
        aria-label={`${drawing.title}. Plus and minus change the scale, arrows move the view.`}
        onKeyDown={onKeyDown}
        {...drag}
      >
        {shown === null ? null : (
          <div className="drawing-sheet">
            <PaintedSvg painted={shown.painted} onRef={onRef} />
            {props.over?.(shown)}
          </div>
        )}
      </div>
      <div className="drawing-line">
        {props.beside}
        <span className="drawing-scale">{shown?.scaleText}</span>
        <IconButton
          label="Smaller scale"
          icon={<Minus size={14} aria-hidden="true" />}
          onPress={() => zoom(false)}
        />
        <IconButton
          label="Larger scale"
          icon={<Plus size={14} aria-hidden="true" />}
          onPress={() => zoom(true)}
        />
        <IconButton label="Fit the drawing" icon={<Maximize2 size={14} aria-hidden="true" />} onPress={fit} />
      </div>
    </div>
  );
}

/** While something is moved the room stays as high as it is, so that nothing under it jumps. */
function roomStyle(heightPx: number, like: OnScreen | null): CSSProperties {
  const held = like === null ? undefined : Math.min(heightPx, like.painted.heightPx);
  return { maxHeight: held ?? heightPx, ...(held === undefined ? {} : { minHeight: held }) };
}
