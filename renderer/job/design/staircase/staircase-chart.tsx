import { type CostStaircase, type CostStep, isOnStep } from '../../../../core/job/cost-staircase.ts';
import { formatInches } from '../../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../../core/units/money.ts';
import { againstToday, knownAs, stepOfToday, stretchOf } from './staircase-words.ts';

/** Height of the drawing, and room above and below the steps. [px] */
const heightPx = 190;
const topPx = 24;
const footPx = 10;

/** A sixteenth: what a step of a single overhang is wide. [in] */
const sixteenthIn = 1 / 16;

/**
 * Boards over overhang as a line of steps, the bound dashed beneath it, today's overhang as a line and each nearest cheaper
 * step with a ring. The whole is one control: arrow keys go from step to step, Enter takes the one chosen, a click too.
 * @param chosen - index of the step that is looked at.
 */
export function StaircaseChart(props: {
  readonly staircase: CostStaircase;
  readonly chosen: number;
  readonly isDisabled: boolean;
  readonly choose: (index: number) => void;
  readonly take: (index: number) => void;
}) {
  const { staircase, chosen, choose } = props;
  const { steps, todayIn } = staircase;
  const scale = scaleOf(steps);
  if (scale === null) return null;
  const { fromIn, toIn, leastUsd, mostUsd } = scale;
  const x = (inches: number): string => `${(100 * (inches - fromIn)) / (toIn - fromIn)}%`;
  const y = (dollars: string): number =>
    topPx + ((mostUsd - Number(dollars)) / (mostUsd - leastUsd)) * (heightPx - topPx - footPx);
  const today = stepOfToday(staircase);
  const step = steps[chosen];
  const last = steps.length - 1;
  const onKey = (key: string): boolean => {
    const to = keySteps(key, chosen, last);
    if (to !== undefined) choose(to);
    else if (key === 'Enter' && !props.isDisabled) props.take(chosen);
    else return false;
    return true;
  };
  return (
    <div className="staircase-figure">
      <div className="staircase-scale" aria-hidden="true">
        <span>{formatUsd(usd(mostUsd))}</span>
        <span>{formatUsd(usd(leastUsd))}</span>
      </div>
      <div
        className="staircase-chart"
        role="slider"
        tabIndex={0}
        aria-label="Steps of the boards’ cost"
        aria-valuemin={0}
        aria-valuemax={last}
        aria-valuenow={chosen}
        aria-valuetext={
          step === undefined
            ? ''
            : [
                stretchOf(step),
                step.boardsUsd === null ? '' : formatUsd(step.boardsUsd),
                againstToday(step, today),
                knownAs(step),
              ]
                .filter((text) => text !== '')
                .join(', ')
        }
        onKeyDown={(event) => {
          if (onKey(event.key)) event.preventDefault();
        }}
        onClick={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          const atIn = fromIn + ((event.clientX - box.left) / box.width) * (toIn - fromIn);
          const nearest = steps.findLastIndex(({ fromOverhangIn }) => fromOverhangIn <= atIn);
          choose(Math.max(0, nearest));
        }}
      >
        <svg width="100%" height={heightPx} aria-hidden="true">
          {step === undefined ? null : (
            <rect
              className="staircase-chosen"
              x={x(step.fromOverhangIn)}
              width={`${(100 * (step.toOverhangIn + sixteenthIn - step.fromOverhangIn)) / (toIn - fromIn)}%`}
              y="0"
              height={heightPx}
            />
          )}
          <line className="staircase-today" x1={x(todayIn)} x2={x(todayIn)} y1={topPx - 6} y2={heightPx} />
          <text
            className="staircase-word"
            x={x(todayIn)}
            y={topPx - 10}
            textAnchor={
              todayIn > (fromIn + 3 * toIn) / 4
                ? 'end'
                : todayIn < (3 * fromIn + toIn) / 4
                  ? 'start'
                  : 'middle'
            }
          >
            today {formatInches(todayIn)}
          </text>
          {steps.map((one, index) => (
            <StepLines key={one.fromOverhangIn} step={one} next={steps[index + 1]} x={x} y={y} />
          ))}
          {staircase.cheaper.map(({ overhangIn }) => {
            const cheaper = steps.find((one) => isOnStep(one, overhangIn));
            return cheaper === undefined || cheaper.boardsUsd === null ? null : (
              <circle
                key={overhangIn}
                className="staircase-ring"
                cx={x(overhangIn)}
                cy={y(cheaper.boardsUsd)}
                r="5"
              />
            );
          })}
        </svg>
        <div className="staircase-foot" aria-hidden="true">
          <span>{formatInches(fromIn)}</span>
          <span>overhang</span>
          <span>{formatInches(toIn - sixteenthIn)}</span>
        </div>
      </div>
    </div>
  );
}

/** A step with its riser, and its bound where that is another figure. */
function StepLines(props: {
  readonly step: CostStep;
  readonly next: CostStep | undefined;
  readonly x: (inches: number) => string;
  readonly y: (dollars: string) => number;
}) {
  const { step, next, x, y } = props;
  const { fromOverhangIn, boardsUsd, boundUsd } = step;
  if (boardsUsd === null) return null;
  const endIn = next?.fromOverhangIn ?? step.toOverhangIn + sixteenthIn;
  return (
    <>
      <line
        className="staircase-step"
        x1={x(fromOverhangIn)}
        x2={x(endIn)}
        y1={y(boardsUsd)}
        y2={y(boardsUsd)}
      />
      {next === undefined || next.boardsUsd === null ? null : (
        <line
          className="staircase-riser"
          x1={x(endIn)}
          x2={x(endIn)}
          y1={y(boardsUsd)}
          y2={y(next.boardsUsd)}
        />
      )}
      {boundUsd === null || boundUsd === boardsUsd || Number(boundUsd) === 0 ? null : (
        <line
          className="staircase-bound"
          x1={x(fromOverhangIn)}
          x2={x(endIn)}
          y1={y(boundUsd)}
          y2={y(boundUsd)}
        />
      )}
    </>
  );
}

/** What the axes reach over; null where no step has a cost. [in, $] */
function scaleOf(steps: readonly CostStep[]) {
  const dollars = steps.flatMap(({ boardsUsd, boundUsd }) =>
    [boardsUsd, boundUsd].flatMap((amount) =>
      amount === null || Number(amount) === 0 ? [] : [Number(amount)],
    ),
  );
  const [first, last] = [steps[0], steps.at(-1)];
  if (dollars.length === 0 || first === undefined || last === undefined) return null;
  const leastUsd = Math.floor(Math.min(...dollars));
  return {
    fromIn: first.fromOverhangIn,
    toIn: last.toOverhangIn + sixteenthIn,
    leastUsd,
    mostUsd: Math.max(leastUsd + 1, Math.ceil(Math.max(...dollars))),
  };
}

/** Where a key leads among the steps; undefined for other keys. */
function keySteps(key: string, at: number, last: number): number | undefined {
  const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -5, PageUp: 5 }[key];
  if (by !== undefined) return Math.max(0, Math.min(last, at + by));
  return key === 'Home' ? 0 : key === 'End' ? last : undefined;
}
