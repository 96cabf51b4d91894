import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { standingOf } from '../../core/jobcost/standing.ts';
import { workInProgress } from '../../core/jobcost/work-in-progress.ts';
import { decimalText, usd } from '../../core/units/money.ts';

/** One phase of a job: its budget, what was spent, how far it is. */
function phaseOf(budgetUsd: string, actualUsd: string, percent: string) {
  const { phases } = standingOf(
    {
      lines: [
        {
          phase: 'Work',
          kind: 'labour',
          description: '',
          costUsd: usd(budgetUsd),
          hours: decimalText(0),
          changeOrder: null,
        },
      ],
      directUsd: usd(budgetUsd),
      contingencyUsd: usd(0),
    },
    [
      {
        id: 'a',
        sequence: 1,
        enteredOn: '2026-05-04',
        replaces: null,
        takesBack: false,
        person: 'Ardith',
        workedOn: '2026-05-04',
        phase: 'Work',
        hours: '1',
        note: '',
        rateUsd: decimalText(actualUsd),
        costUsd: usd(actualUsd),
      },
    ],
    [],
    [
      {
        phase: 'Work',
        notedOn: '2026-05-04',
        quantity: null,
        percent: decimalText(percent),
        toCompleteUsd: null,
      },
    ],
    ['Work'],
    new Map(),
  );
  return phases[0]!;
}

describe('earned value beside examples in print', () => {
  // M. K. Pratt, "Earned value management", Computerworld, 3 April 2006 (seen as an excerpt): four phases of $50, the first
  // done for $60: EV 50, CV -10, CPI 0.83, and 200 / 0.83 = 240.96 with the index rounded; unrounded it is 240.
  test('the first of four phases of $50 done for $60: variance -10, index 0.83, 240 at the end', () => {
    const phase = phaseOf('200', '60', '25');
    expect(phase).toMatchObject({ earnedUsd: '50.00', varianceUsd: '-10.00', performance: '0.83' });
    expect(phase.forecastUsd).toBe('240.00');
    expect(new Decimal(200).div('0.83').toFixed(2)).toBe('240.96');
  });

  // A project management study guide's chapter on cost (page seen: "Info" in its integration part): BAC 500,000, EV 150,000,
  // AC 162,000; CPI 0.93; AC + (BAC - EV) / CPI = 538,344 with the index rounded to 0.93, 540,000 unrounded.
  test('150,000 earned of 500,000 for 162,000: index 0.93, 540,000 at the end; 538,344 with the index rounded first', () => {
    const phase = phaseOf('500000', '162000', '30');
    expect(phase).toMatchObject({ earnedUsd: '150000.00', performance: '0.93', forecastUsd: '540000.00' });
    const rounded = new Decimal(162_000).plus(new Decimal(350_000).div(phase.performance ?? 0));
    expect(rounded.toFixed(0)).toBe('538344');
  });
});

describe('work in progress', () => {
  // Cost-to-cost percentage of completion, from memory of accounting textbooks; numbers worked by hand: 5,200 / 10,200 =
  // 50.98 %, of 14,800 7,545.10; billed 8,000 is 454.90 ahead.
  test('of 14,800 with 5,200 spent and 5,000 to go has earned 7,545 and is billed 455 ahead at 8,000', () => {
    const job = workInProgress({
      contractUsd: usd(14_800),
      actualUsd: usd(5200),
      toCompleteUsd: usd(5000),
      billedUsd: usd(8000),
    });
    expect(job).toEqual({ percentByCost: '51', earnedUsd: '7545.10', overBilledUsd: '454.90' });
  });
});
