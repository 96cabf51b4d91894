import { addDays, daysBetween } from '../../core/units/civil-date.ts';

/** What a chart shows: a line that holds each value until the next. Numbers here place a dot and are no amounts. */
export type ChartLine = {
  readonly id: string;
  readonly name: string;
  readonly points: readonly {
    readonly from: string;
    readonly value: number;
    /** Last day that it is known of, where it does not hold until the next. */
    readonly until?: string | undefined;
    /** The value as it is read out, with its unit. */
    readonly text: string;
    /** Shape of the dot, by where the value is known from; absent: none. */
    readonly mark?: 'list' | 'quote' | 'receipt' | undefined;
  }[];
};

/** A mark on an axis. */
export type Tick = { readonly at: number; readonly label: string };

/** Round figures that part a range well. */
const roundSteps = [1, 2, 2.5, 5, 10] as const;

/**
 * Values for an upright axis: round ones, a step apart, that hold the whole range between them.
 * @param least - least value shown.
 * @param most - greatest value shown.
 * @param wanted - about how many steps.
 * @returns lowest first, e.g. 6.1 to 6.4 in 4 steps -> 6.1, 6.2, 6.3, 6.4.
 */
export function valueTicks(least: number, most: number, wanted: number): readonly number[] {
  const span = most - least;
  const rough = (span > 0 ? span : Math.max(Math.abs(most), 1) * 0.1) / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = (roundSteps.find((round) => round * power >= rough * 0.999_999) ?? 10) * power;
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(Math.ceil(most / step - 1e-9), first + 1);
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

const monthWords = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * Days for a level axis of dates: first days of months, or, of some weeks alone, days a week or two apart.
 * @param first - first day shown.
 * @param last - last day shown.
 * @param most - most labels that fit.
 */
export function dateTicks(first: string, last: string, most: number): readonly Tick[] {
  const days = daysBetween(first, last);
  if (days > 100) return monthTicks(first, last, most);
  const every = [1, 2, 7, 14, 28].find((step) => days / step <= most) ?? 28;
  return Array.from({ length: Math.floor(days / every) }, (_, at) => {
    const day = addDays(first, (at + 1) * every);
    return { at: (at + 1) * every, label: `${monthWords[monthOf(day)] ?? ''} ${Number(day.slice(8))}` };
  });
}

/**
 * First days of months for a level axis of dates, as many apart as fit.
 * @param first - first day shown.
 * @param last - last day shown.
 * @param most - most labels that fit.
 * @returns days from the first, e.g. from 2026-01-20 the month of February at 12.
 */
export function monthTicks(first: string, last: string, most: number): readonly Tick[] {
  const months = (Number(last.slice(0, 4)) - Number(first.slice(0, 4))) * 12 + monthOf(last) - monthOf(first);
  const every = [1, 2, 3, 6, 12, 24, 60, 120, 600].find((step) => months / step <= most) ?? 1200;
  const ticks: Tick[] = [];
  for (let ahead = 0; ahead <= months; ahead += 1) {
    const count = Number(first.slice(0, 4)) * 12 + monthOf(first) + ahead;
    if (count % every !== 0) continue;
    const year = Math.floor(count / 12);
    const day = `${String(year).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}-01`;
    if (day < first || day > last) continue;
    ticks.push({ at: daysBetween(first, day), label: `${monthWords[count % 12] ?? ''} ${year}` });
  }
  return ticks;
}

/** Month of a date from 0. */
function monthOf(day: string): number {
  return Number(day.slice(5, 7)) - 1;
}

/**
 * The path of a stepped line: level to the next point and up or down to it; broken where a value is not known so far.
 * @param x - place of a day, y - place of a value. [px]
 * @param end - last day shown.
 */
export function stepPath(
  points: ChartLine['points'],
  end: string,
  x: (day: string) => number,
  y: (value: number) => number,
): string {
  return points
    .map((point, at) => {
      const next = points[at + 1];
      const isBroken = point.until !== undefined && next !== undefined && addDays(point.until, 1) < next.from;
      const last = next === undefined || isBroken ? (point.until ?? end) : next.from;
      const before = points[at - 1];
      const joins =
        before !== undefined && (before.until === undefined || addDays(before.until, 1) >= point.from);
      return `${joins ? 'L' : 'M'}${x(point.from)} ${y(point.value)}H${x(last < end ? last : end)}`;
    })
    .join('');
}

/** Every day on which one of the lines changes, earliest first, and the last day shown. */
export function momentsOf(lines: readonly ChartLine[], until: string): readonly string[] {
  const days = new Set(lines.flatMap(({ points }) => points.map(({ from }) => from)));
  return [...days, until].filter((day, at, all) => day <= until && all.indexOf(day) === at).toSorted();
}

/** First and last day that a chart shows; a day at least, so that there is a width. */
export function daysShown(
  lines: readonly ChartLine[],
  until: string,
): { readonly first: string; readonly days: number } {
  const first = lines
    .flatMap(({ points }) => points.map(({ from }) => from))
    .reduce((least, day) => (day < least ? day : least), until);
  const from = first === until ? addDays(until, -1) : first;
  return { first: from, days: Math.max(1, daysBetween(from, until)) };
}
