import { Decimal } from 'decimal.js';
import { addDays, daysBetween } from '../../units/civil-date.ts';
import { percentile } from './percentile.ts';
import { stepOn } from './price-steps.ts';

/** What something cost from a day on, until the next. [$] */
export type CostStep = { readonly from: string; readonly costUsd: string };

/** How far prices moved in as many days as a quote stays open. */
export type PriceRisk =
  | {
      readonly kind: 'known';
      readonly days: number;
      /** First and last day that a window began on, and how many windows there were. */
      readonly firstStart: string;
      readonly lastStart: string;
      readonly windows: number;
      /** Change over a window, below zero where it fell, to tenths. [%] */
      readonly medianPercent: string;
      /** Nine windows in ten ended no higher than this. [%] */
      readonly highPercent: string;
      /** The worst of them. [%] */
      readonly mostPercent: string;
    }
  /** Too little history to say anything of. */
  | {
      readonly kind: 'too-little';
      readonly days: number;
      /** Days from the first price to the last day looked at, and how many are needed. [d] */
      readonly haveDays: number;
      readonly needDays: number;
      /** How often it changed, and how often it has to have. */
      readonly haveChanges: number;
      readonly needChanges: number;
    };

/** History shorter than this many windows, or with fewer changes, says nothing (common practice, no source: 3 and 2). */
const leastWindowsLong = 3;
const leastChanges = 2;
/** No further back than ten years: older prices say little, and the windows stay few. [d] */
const mostDaysBack = 3653;

/**
 * How far a price rose in the time that quotes stay open. A window begins on every day of the history and ends so many days
 * later; its change is what was paid at its end over what was paid at its beginning, less one. Windows overlap, so a rise
 * that came once counts in every window that holds it.
 * Median and 90th percentile as in `percentile`.
 * Worked: $10 from day 0 on, $11 from day 10, $11.55 from day 18, looked at on day 19, windows of 5 days: they begin on days 0
 * to 14, fifteen of them; five hold the rise of 10 %, two that of 5 %, eight none: the median, at place 8, is 0, and the 90th
 * percentile, at place 14.4, is 10 %.
 * @param steps - what it cost, earliest first. [$]
 * @param asOf - last day of the history looked at.
 * @param days - how long a quote stays open. [d]
 */
export function priceRisk(steps: readonly CostStep[], asOf: string, days: number): PriceRisk {
  const known = steps.filter(({ from, costUsd }) => from <= asOf && !new Decimal(costUsd).isZero());
  const [first] = known;
  const changes = known.filter(
    ({ costUsd }, at) => at > 0 && !new Decimal(costUsd).eq(known[at - 1]?.costUsd ?? costUsd),
  ).length;
  const haveDays = first === undefined ? 0 : daysBetween(first.from, asOf);
  const needDays = leastWindowsLong * days;
  if (first === undefined || haveDays < needDays || changes < leastChanges)
    return {
      kind: 'too-little',
      days,
      haveDays,
      needDays,
      haveChanges: changes,
      needChanges: leastChanges,
    };
  const earliest = addDays(asOf, -mostDaysBack);
  const firstStart = first.from < earliest ? earliest : first.from;
  const lastStart = addDays(asOf, -days);
  const rises = windowRises(known, firstStart, daysBetween(firstStart, lastStart) + 1, days);
  return {
    kind: 'known',
    days,
    firstStart,
    lastStart,
    windows: rises.length,
    medianPercent: tenths(percentile(rises, 0.5)),
    highPercent: tenths(percentile(rises, 0.9)),
    mostPercent: tenths(Decimal.max(...rises)),
  };
}

function windowRises(
  steps: readonly CostStep[],
  firstStart: string,
  windows: number,
  days: number,
): readonly Decimal[] {
  return Array.from({ length: windows }, (_, at) => {
    const start = addDays(firstStart, at);
    const before = stepOn(steps, start);
    const after = stepOn(steps, addDays(start, days));
    if (before === undefined || after === undefined) throw new Error('a window outside of the history');
    return before === after
      ? new Decimal(0)
      : new Decimal(after.costUsd).div(before.costUsd).minus(1).times(100);
  });
}

function tenths(value: Decimal): string {
  const rounded = value.toDecimalPlaces(1, Decimal.ROUND_HALF_UP);
  return rounded.isZero() ? '0.0' : rounded.toFixed(1);
}
