import { Decimal } from 'decimal.js';
import { decimalText, type DecimalText, sumUsd, type Usd, usd } from '../units/money.ts';
import type { Budget } from './budget.ts';
import { committedByPhase } from './committed.ts';
import { type KeptBill, type KeptTime, standingEntries } from './cost-entries.ts';
import type { Countable } from './countable.ts';
import { costOfLines } from './spread-tax.ts';

/** What the person last said of how far a phase is. */
export type Progress = {
  readonly phase: string;
  readonly notedOn: string;
  /** Put in place, in the phase's unit; null where he gave a percentage. */
  readonly quantity: DecimalText | null;
  /** [%] */
  readonly percent: DecimalText | null;
  /** What he thinks the rest will cost; null leaves it to the formula. [$] */
  readonly toCompleteUsd: Usd | null;
};

/** Where one phase of a job stands. Names in brackets are those of earned-value practice. */
export type PhaseStanding = {
  readonly phase: string;
  /** Budget (BAC). [$, h] */
  readonly budgetUsd: Usd;
  readonly budgetHours: DecimalText;
  /** Ordered and not yet come. [$] */
  readonly committedUsd: Usd;
  /** Spent (AC). [$, h] */
  readonly actualUsd: Usd;
  readonly actualHours: DecimalText;
  /** How far it is, and by what; null where nobody said. [%] */
  readonly percent: DecimalText | null;
  readonly percentFrom: 'quantity' | 'hand' | null;
  /** Cost so far over cost at the end. [%] */
  readonly percentByCost: DecimalText | null;
  /** True where the two differ by more than 10 points: one of them is wrong, or money runs away. */
  readonly percentsDisagree: boolean;
  /** Budget x percent (EV); 0 where nobody said how far it is. [$] */
  readonly earnedUsd: Usd;
  /** Earned less spent (CV), and earned over spent (CPI) to hundredths; null where nothing is spent or said. */
  readonly varianceUsd: Usd | null;
  readonly performance: DecimalText | null;
  /** What it will have cost at the end (EAC), and by which rule. [$] */
  readonly forecastUsd: Usd;
  readonly forecastFrom: ForecastRule;
  /** Budget less forecast: below 0 it will cost more than reckoned. [$] */
  readonly leftUsd: Usd;
};

/**
 * How a phase's cost at the end is foretold. `own`: spent + what the person says the rest costs. `pace`: spent + (budget -
 * earned) / CPI, the rest goes on as it went. `plan`: spent + (budget - earned), the rest goes as reckoned; used while less
 * than a tenth is done, since a pace from so little says nothing. `done`: spent. `spent`: nobody said how far it is, and more
 * is spent or ordered than the budget.
 */
export type ForecastRule = 'own' | 'pace' | 'plan' | 'done' | 'spent';

/** Where a job stands: phase by phase and whole. */
export type Standing = {
  readonly phases: readonly PhaseStanding[];
  readonly whole: Omit<PhaseStanding, 'phase' | 'percentFrom' | 'forecastFrom'>;
};

/** Two ways to tell how far a phase is are held against each other; more apart than this is told. [points] Common practice, no source. */
const disagreePoints = 10;
/** A pace is not read from less than this. [%] Our own choice. */
const leastForPace = 10;

/**
 * Says where a job stands.
 *
 * Source of the formulas: earned value management (budget at completion, earned value, cost variance, cost performance
 * index, estimate at completion), as in public earned-value handbooks; from memory. Amounts are rounded to cents half up
 * where each is made, the whole is the sum of its phases.
 * Worked: budget 1,000, spent 500, 40 % done -> earned 400, variance -100, CPI 0.80, forecast 1,250.
 * @param budget - by phase. [$, h]
 * @param times - hours that were worked. [h, $]
 * @param bills - receipts, orders, bills and returns. [$]
 * @param progress - the newest word on each phase.
 * @param phases - the shop's, in order; phases that only the entries know follow.
 * @param countable - what each phase is counted by.
 */
export function standingOf(
  budget: Budget,
  times: readonly KeptTime[],
  bills: readonly KeptBill[],
  progress: readonly Progress[],
  phases: readonly string[],
  countable: ReadonlyMap<string, Countable>,
): Standing {
  const standingTimes = standingEntries(times);
  const spent = standingEntries(bills).filter(({ bill }) => bill.kind !== 'order');
  const spentLines = spent.flatMap(({ bill }) => {
    const costs = costOfLines(bill);
    return bill.lines.map(({ phase }, index) => ({ phase, costUsd: costs[index] ?? usd(0) }));
  });
  const committed = committedByPhase(bills);
  const names = new Set([
    ...phases,
    ...budget.lines.map(({ phase }) => phase),
    ...standingTimes.map(({ phase }) => phase),
    ...spentLines.map(({ phase }) => phase),
    ...committed.keys(),
  ]);
  const stood = [...names].map((phase) => {
    const budgeted = budget.lines.filter((line) => line.phase === phase);
    const worked = standingTimes.filter((time) => time.phase === phase);
    return phaseStanding({
      phase,
      budgetUsd: sumUsd(budgeted.map(({ costUsd }) => costUsd)),
      budgetHours: sumOf(budgeted.map(({ hours }) => hours)),
      actualUsd: sumUsd([
        ...worked.map(({ costUsd }) => costUsd),
        ...spentLines.filter((line) => line.phase === phase).map(({ costUsd }) => costUsd),
      ]),
      actualHours: sumOf(worked.map(({ hours }) => hours)),
      committedUsd: committed.get(phase) ?? usd(0),
      said: progress.find((one) => one.phase === phase),
      countable: countable.get(phase),
    });
  });
  const shown = stood.filter(
    (one) =>
      Number(one.budgetUsd) !== 0 ||
      Number(one.actualUsd) !== 0 ||
      Number(one.committedUsd) !== 0 ||
      Number(one.actualHours) !== 0 ||
      one.percent !== null,
  );
  return { phases: shown, whole: wholeOf(shown) };
}

type PhaseFacts = Pick<
  PhaseStanding,
  'phase' | 'budgetUsd' | 'budgetHours' | 'actualUsd' | 'actualHours' | 'committedUsd'
> & { readonly said: Progress | undefined; readonly countable: Countable | undefined };

function phaseStanding({ said, countable, ...facts }: PhaseFacts): PhaseStanding {
  const { percent, percentFrom } = percentOf(said, countable);
  const budget = new Decimal(facts.budgetUsd);
  const actual = new Decimal(facts.actualUsd);
  const earnedUsd = usd(budget.times(percent ?? 0).div(100));
  const known = percent !== null;
  const { forecastUsd, forecastFrom } = forecastOf(facts, percent, earnedUsd, said?.toCompleteUsd ?? null);
  const byCost = shareOf(actual, new Decimal(forecastUsd));
  return {
    ...facts,
    percent,
    percentFrom,
    percentByCost: byCost,
    percentsDisagree: known && byCost !== null && new Decimal(byCost).minus(percent).abs().gt(disagreePoints),
    earnedUsd,
    varianceUsd: known ? usd(new Decimal(earnedUsd).minus(actual)) : null,
    performance: known ? performanceOf(earnedUsd, facts.actualUsd) : null,
    forecastUsd,
    forecastFrom,
    leftUsd: usd(budget.minus(forecastUsd)),
  };
}

function percentOf(
  said: Progress | undefined,
  countable: Countable | undefined,
): Pick<PhaseStanding, 'percent' | 'percentFrom'> {
  if (said?.quantity != null && countable !== undefined) {
    const share = new Decimal(said.quantity).div(countable.total).times(100);
    const percent = Decimal.min(100, share).toDecimalPlaces(1, Decimal.ROUND_HALF_UP);
    return { percent: decimalText(percent), percentFrom: 'quantity' };
  }
  if (said?.percent != null) return { percent: said.percent, percentFrom: 'hand' };
  return { percent: null, percentFrom: null };
}

/** Never less than what is spent and ordered. */
function forecastOf(
  { budgetUsd, actualUsd, committedUsd }: PhaseFacts | Omit<PhaseFacts, 'said' | 'countable'>,
  percent: DecimalText | null,
  earnedUsd: Usd,
  ownToCompleteUsd: Usd | null,
): Pick<PhaseStanding, 'forecastUsd' | 'forecastFrom'> {
  const actual = new Decimal(actualUsd);
  const bound = actual.plus(committedUsd);
  const atLeast = (amount: Decimal): Usd => usd(Decimal.max(amount, bound));
  if (ownToCompleteUsd !== null)
    return { forecastUsd: atLeast(actual.plus(ownToCompleteUsd)), forecastFrom: 'own' };
  const done = new Decimal(percent ?? 0);
  if (done.gte(100)) return { forecastUsd: usd(bound), forecastFrom: 'done' };
  const rest = new Decimal(budgetUsd).minus(earnedUsd);
  const earned = new Decimal(earnedUsd);
  if (done.gte(leastForPace) && actual.gt(0) && earned.gt(0)) {
    // (budget - earned) / (earned / spent), without rounding the index first.
    return { forecastUsd: atLeast(actual.plus(rest.times(actual).div(earned))), forecastFrom: 'pace' };
  }
  if (percent === null) {
    const over = bound.gt(budgetUsd);
    return { forecastUsd: over ? usd(bound) : budgetUsd, forecastFrom: over ? 'spent' : 'plan' };
  }
  return { forecastUsd: atLeast(actual.plus(rest)), forecastFrom: 'plan' };
}

function wholeOf(phases: readonly PhaseStanding[]): Standing['whole'] {
  const sum = (pick: (one: PhaseStanding) => Usd): Usd => sumUsd(phases.map(pick));
  const budgetUsd = sum(({ budgetUsd: amount }) => amount);
  const actualUsd = sum(({ actualUsd: amount }) => amount);
  const earnedUsd = sum(({ earnedUsd: amount }) => amount);
  const forecastUsd = sum(({ forecastUsd: amount }) => amount);
  const known = phases.some(({ percent }) => percent !== null);
  // Held against each other where both are known: money spent in a phase of which nobody said how far it is would mislead.
  const saidPhases = phases.filter(({ percent }) => percent !== null);
  const saidActual = sumUsd(saidPhases.map(({ actualUsd: amount }) => amount));
  const percent = known ? shareOf(new Decimal(earnedUsd), new Decimal(budgetUsd)) : null;
  const byCost = shareOf(new Decimal(actualUsd), new Decimal(forecastUsd));
  return {
    budgetUsd,
    budgetHours: sumOf(phases.map(({ budgetHours }) => budgetHours)),
    committedUsd: sum(({ committedUsd }) => committedUsd),
    actualUsd,
    actualHours: sumOf(phases.map(({ actualHours }) => actualHours)),
    percent,
    percentByCost: byCost,
    // Money spent where nobody said how far it is would raise a false alarm.
    percentsDisagree:
      percent !== null &&
      byCost !== null &&
      phases.every((one) => one.percent !== null || Number(one.actualUsd) === 0) &&
      new Decimal(byCost).minus(percent).abs().gt(disagreePoints),
    earnedUsd,
    varianceUsd: known ? usd(new Decimal(earnedUsd).minus(saidActual)) : null,
    performance: known ? performanceOf(earnedUsd, saidActual) : null,
    forecastUsd,
    leftUsd: usd(new Decimal(budgetUsd).minus(forecastUsd)),
  };
}

function performanceOf(earnedUsd: Usd, actualUsd: Usd): DecimalText | null {
  const actual = new Decimal(actualUsd);
  return actual.lte(0)
    ? null
    : decimalText(new Decimal(earnedUsd).div(actual).toDecimalPlaces(2, Decimal.ROUND_HALF_UP));
}

/** A share in percent, to a tenth half up; null of nothing. */
function shareOf(part: Decimal, whole: Decimal): DecimalText | null {
  return whole.lte(0)
    ? null
    : decimalText(part.div(whole).times(100).toDecimalPlaces(1, Decimal.ROUND_HALF_UP));
}

function sumOf(amounts: readonly string[]): DecimalText {
  return decimalText(amounts.reduce((sum, amount) => sum.plus(amount), new Decimal(0)));
}
