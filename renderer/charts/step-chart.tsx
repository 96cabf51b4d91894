import { useEffect, useMemo, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { stepOn } from '../../core/pricing/history/price-steps.ts';
import { daysBetween } from '../../core/units/civil-date.ts';
import { type ChartLine, daysShown, dateTicks, momentsOf, stepPath, valueTicks } from './chart-frame.ts';
import './charts.css';

const height = 240;
const nothing = 'nothing known';
const room = { left: 64, right: 14, top: 12, bottom: 30 } as const;
/** Dashes that tell lines apart without colour. */
const dashes = ['', '7 4', '2 3', '10 3 2 3', '4 2'] as const;

/**
 * Values over time as stepped lines: each holds until the next. Read with the pointer, or with the arrow keys, which go from
 * change to change; what stands there is said below. A table with the same figures belongs beside it.
 */
export function StepChart(props: {
  readonly label: string;
  readonly lines: readonly ChartLine[];
  /** Last day shown. */
  readonly until: string;
  readonly writeValue: (value: number) => string;
  /** A day marked by a line from top to foot. */
  readonly markedDay?: string | undefined;
  readonly onDay?: ((day: string) => void) | undefined;
}) {
  const { lines, until, writeValue, onDay } = props;
  const { box, widthPx } = useWidth();
  const moments = useMemo(() => momentsOf(lines, until), [lines, until]);
  const [chosen, setChosen] = useState<number | null>(null);
  const at = Math.min(chosen ?? moments.length - 1, moments.length - 1);
  const day = moments[at] ?? until;
  const { first, days } = daysShown(lines, until);
  const values = lines.flatMap(({ points }) => points.map(({ value }) => value));
  const ticks = valueTicks(Math.min(...values), Math.max(...values), 4);
  const [low = 0, high = 1] = [ticks[0], ticks.at(-1)];
  const x = (from: string): number =>
    room.left + (daysBetween(first, from) / days) * (widthPx - room.left - room.right);
  const y = (value: number): number =>
    height - room.bottom - ((value - low) / (high - low)) * (height - room.bottom - room.top);
  const choose = (next: number): void => {
    const bounded = Math.min(Math.max(next, 0), moments.length - 1);
    setChosen(bounded);
    const chosenDay = moments[bounded];
    if (chosenDay !== undefined) onDay?.(chosenDay);
  };
  const press = (event: KeyboardEvent): void => {
    const next = nextMoment(event.key, at, moments.length);
    if (next === undefined) return;
    event.preventDefault();
    choose(next);
  };
  const point = (event: PointerEvent<HTMLDivElement>): void => {
    const left = event.clientX - event.currentTarget.getBoundingClientRect().left;
    let nearest = 0;
    for (const [index, moment] of moments.entries())
      if (Math.abs(x(moment) - left) <= Math.abs(x(moments[nearest] ?? until) - left)) nearest = index;
    if (nearest !== at) choose(nearest);
  };
  const said = lines.map((line) => {
    const held = stepOn(line.points, day);
    return { line, held: held?.until !== undefined && day > held.until ? undefined : held };
  });
  return (
    <figure className="step-chart">
      <div
        ref={box}
        className="chart-area"
        role="slider"
        tabIndex={0}
        aria-label={props.label}
        aria-orientation="horizontal"
        aria-valuemin={0}
        aria-valuemax={moments.length - 1}
        aria-valuenow={at}
        aria-valuetext={`${day}: ${said.map(({ line, held }) => `${line.name} ${held?.text ?? nothing}`).join(', ')}`}
        onKeyDown={press}
        onPointerMove={point}
        onPointerDown={point}
      >
        <svg width={widthPx} height={height} aria-hidden="true">
          {ticks.map((tick) => (
            <g key={tick}>
              <line
                className="chart-grid"
                x1={room.left}
                x2={widthPx - room.right}
                y1={y(tick)}
                y2={y(tick)}
              />
              <text className="chart-text" x={room.left - 8} y={y(tick) + 4} textAnchor="end">
                {writeValue(tick)}
              </text>
            </g>
          ))}
          {dateTicks(first, until, Math.max(2, Math.floor(widthPx / 110))).map((tick) => {
            const left = room.left + (tick.at / days) * (widthPx - room.left - room.right);
            return (
              <g key={tick.label}>
                <line
                  className="chart-grid"
                  x1={left}
                  x2={left}
                  y1={height - room.bottom}
                  y2={height - room.bottom + 5}
                />
                <text className="chart-text" x={left} y={height - 8} textAnchor="middle">
                  {tick.label}
                </text>
              </g>
            );
          })}
          <line
            className="chart-axis"
            x1={room.left}
            x2={widthPx - room.right}
            y1={height - room.bottom}
            y2={height - room.bottom}
          />
          {props.markedDay === undefined || props.markedDay < first || props.markedDay > until ? null : (
            <line
              className="chart-marked"
              x1={x(props.markedDay)}
              x2={x(props.markedDay)}
              y1={room.top}
              y2={height - room.bottom}
            />
          )}
          <line className="chart-cursor" x1={x(day)} x2={x(day)} y1={room.top} y2={height - room.bottom} />
          {lines.map((line, index) => (
            <Line key={line.id} line={line} index={index} until={until} x={x} y={y} />
          ))}
        </svg>
      </div>
      <figcaption className="chart-readout">
        <b>{day}</b>
        {said.map(({ line, held }, index) => (
          <span key={line.id} className="chart-reading">
            {lines.length === 1 ? null : (
              <svg width="26" height="8" aria-hidden="true">
                <line
                  className={lineClass(index)}
                  x1="0"
                  x2="26"
                  y1="4"
                  y2="4"
                  strokeDasharray={dashes[index % dashes.length] ?? ''}
                />
              </svg>
            )}
            {line.name} <b>{held?.text ?? nothing}</b>
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

function Line(props: {
  readonly line: ChartLine;
  readonly index: number;
  readonly until: string;
  readonly x: (day: string) => number;
  readonly y: (value: number) => number;
}) {
  const { line, x, y } = props;
  const path = stepPath(line.points, props.until, x, y);
  return (
    <g>
      {path === '' ? null : (
        <path
          className={lineClass(props.index)}
          d={path}
          strokeDasharray={dashes[props.index % dashes.length] ?? ''}
        />
      )}
      {line.points.map(({ from, value, mark }) =>
        mark === undefined ? null : (
          <path key={from} className="chart-dot" d={dotOf(mark, x(from), y(value))} />
        ),
      )}
    </g>
  );
}

function lineClass(index: number): string {
  return index === 0 ? 'chart-line' : 'chart-line chart-line-other';
}

/** A circle for a list, a diamond for a quote, a square for a receipt. */
function dotOf(mark: 'list' | 'quote' | 'receipt', x: number, y: number): string {
  switch (mark) {
    case 'quote':
      return `M${x} ${y - 5}l5 5l-5 5l-5 -5z`;
    case 'receipt':
      return `M${x - 4} ${y - 4}h8v8h-8z`;
    case 'list':
    default:
      return `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z`;
  }
}

function nextMoment(key: string, at: number, count: number): number | undefined {
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return at - 1;
    case 'ArrowRight':
    case 'ArrowUp':
      return at + 1;
    case 'PageUp':
      return at + 10;
    case 'PageDown':
      return at - 10;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return undefined;
  }
}

function useWidth() {
  const box = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(640);
  useEffect(() => {
    const element = box.current;
    if (element === null) return undefined;
    const observer = new ResizeObserver(() => setWidthPx(Math.max(280, element.clientWidth)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { box, widthPx };
}
