import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Budget } from '../../core/jobcost/budget.ts';
import { budgetOf } from '../../core/jobcost/budget.ts';
import { committedByPhase, openOrders } from '../../core/jobcost/committed.ts';
import {
  type Bill,
  billSchema,
  billTotalUsd,
  type KeptBill,
  type KeptTime,
  standingEntries,
} from '../../core/jobcost/cost-entries.ts';
import { countedFromLayout } from '../../core/jobcost/countable.ts';
import { costOfLines } from '../../core/jobcost/spread-tax.ts';
import { type Progress, standingOf } from '../../core/jobcost/standing.ts';
import { decimalText, sumUsd, usd } from '../../core/units/money.ts';
import { sampleText, soundJob, soundResult } from '../job/example-job.ts';

const noPhases = { phases: [] };
const head = { sequence: 1, enteredOn: '2026-05-04', replaces: null, takesBack: false };

function budgetFor(costs: Readonly<Record<string, string>>): Budget {
  const lines = Object.entries(costs).map(([phase, cost]) => ({
    phase,
    kind: 'labour' as const,
    description: phase,
    costUsd: usd(cost),
    hours: decimalText(0),
    changeOrder: null,
  }));
  return { lines, directUsd: sumUsd(lines.map(({ costUsd }) => costUsd)), contingencyUsd: usd(0) };
}

function worked(phase: string, cost: string): KeptTime {
  return {
    ...head,
    id: `${phase}-${cost}`,
    person: 'Ardith',
    workedOn: '2026-05-04',
    phase,
    hours: '1',
    note: '',
    rateUsd: decimalText(cost),
    costUsd: usd(cost),
  };
}

const said = (phase: string, percent: string, toCompleteUsd: string | null = null): Progress => ({
  phase,
  notedOn: '2026-05-05',
  quantity: null,
  percent: decimalText(percent),
  toCompleteUsd: toCompleteUsd === null ? null : usd(toCompleteUsd),
});

const only = (budget: string, actual: string, percent: string, toComplete: string | null = null) => {
  const { phases } = standingOf(
    budgetFor({ Framing: budget }),
    [worked('Framing', actual)],
    [],
    [said('Framing', percent, toComplete)],
    ['Framing'],
    new Map(),
  );
  return phases[0]!;
};

describe('where a phase stands', () => {
  // Earned value by hand: EV = 40 % x 1,000; CV = EV - AC; CPI = EV / AC; EAC = AC + (BAC - EV) / CPI = BAC / CPI.
  test('40 % done of 1,000 for 500 has earned 400, is 100 behind, and will cost 1,250 at that pace', () => {
    expect(only('1000', '500', '40')).toMatchObject({
      earnedUsd: '400.00',
      varianceUsd: '-100.00',
      performance: '0.8',
      forecastUsd: '1250.00',
      forecastFrom: 'pace',
      leftUsd: '-250.00',
    });
  });

  test('that is barely begun is foretold by what was reckoned for the rest, not by its pace', () => {
    expect(only('1000', '100', '5')).toMatchObject({ forecastUsd: '1050.00', forecastFrom: 'plan' });
  });

  test('takes the person’s own word for the rest before any formula', () => {
    expect(only('1000', '500', '40', '350')).toMatchObject({ forecastUsd: '850.00', forecastFrom: 'own' });
  });

  test('that is done costs what was spent', () => {
    expect(only('1000', '900', '100')).toMatchObject({
      forecastUsd: '900.00',
      forecastFrom: 'done',
      leftUsd: '100.00',
    });
  });

  test('is told where percent by work and by money are more than 10 points apart', () => {
    expect(only('1000', '500', '40').percentsDisagree).toBe(false);
    expect(only('1000', '500', '40', '100').percentsDisagree).toBe(true);
  });

  test('is counted by quantity where it has one: 14 tails of 42 are 33.3 %', () => {
    const { phases } = standingOf(
      budgetFor({ Framing: '1000' }),
      [],
      [],
      [{ ...said('Framing', '0'), percent: null, quantity: decimalText(14) }],
      ['Framing'],
      new Map([['Framing', { what: 'tails set', unit: 'tails', total: decimalText(42) }]]),
    );
    expect(phases[0]).toMatchObject({ percent: '33.3', percentFrom: 'quantity', earnedUsd: '333.00' });
  });
});

describe('tails typed back into the layout as set', () => {
  const countable = new Map([['Framing', { what: 'tails set', unit: 'tails', total: decimalText(42) }]]);
  const standing = (progress: readonly Progress[], tails: number) =>
    standingOf(
      budgetFor({ Framing: '1000' }),
      [],
      [],
      countedFromLayout(progress, countable, tails),
      [],
      countable,
    ).phases[0];

  test('count for their phase where nobody said how far it is: 14 of 42 are 33.3 %', () => {
    expect(standing([], 14)).toMatchObject({ percent: '33.3', percentFrom: 'quantity' });
    expect(standing([], 0)).toMatchObject({ percent: null, percentFrom: null });
  });

  test('give way to the word of the person, and leave his word for the rest as it is', () => {
    expect(standing([said('Framing', '50')], 14)).toMatchObject({ percent: '50', percentFrom: 'hand' });
    const rest = { ...said('Framing', '0', '350'), percent: null };
    expect(standing([rest], 14)).toMatchObject({
      percent: '33.3',
      forecastUsd: '350.00',
      forecastFrom: 'own',
    });
  });
});

describe('a whole job', () => {
  test('raises no alarm while money is spent in a phase of which nobody said how far it is', () => {
    const budget = budgetFor({ Framing: '1000', Paint: '1000' });
    const alarmed = (progress: readonly Progress[]): boolean =>
      standingOf(
        budget,
        [worked('Framing', '500'), worked('Paint', '900')],
        [],
        progress,
        ['Framing', 'Paint'],
        new Map(),
      ).whole.percentsDisagree;
    expect(alarmed([said('Framing', '50')])).toBe(false);
    expect(alarmed([said('Framing', '50'), said('Paint', '20', '100')])).toBe(true);
  });
});

describe('the budget of a job', () => {
  test('adds up to the direct cost of the estimate, tax on materials and all, to the cent', () => {
    const { estimate } = soundResult(soundJob(sampleText()));
    expect(budgetOf(estimate, [], noPhases).directUsd).toBe(estimate.directCostUsd);
  });

  test('with any changes is the direct cost and what each change’s lines cost, to the cent', () => {
    const { estimate } = soundResult(soundJob(sampleText()));
    const line = fc.record({
      cents: fc.integer({ min: -90_000, max: 90_000 }),
      tenths: fc.integer({ min: 1, max: 400 }),
    });
    fc.assert(
      fc.property(fc.array(fc.array(line, { minLength: 1, maxLength: 5 }), { maxLength: 6 }), (changes) => {
        const approved = changes.map((lines, index) => ({
          number: index + 1,
          order: {
            reason: 'other' as const,
            description: '',
            days: 0,
            photo: null,
            fromDesign: false,
            lines: lines.map(({ cents, tenths }, at) => ({
              id: `l${at}`,
              phase: 'Framing',
              kind: 'material' as const,
              description: 'more',
              quantity: (tenths / 10).toString(),
              unit: 'each',
              unitPriceUsd: '0',
              unitCostUsd: (cents / 100).toString(),
              unitHours: '0',
              taxable: false,
            })),
          },
        }));
        // In whole tenths of a cent, each line rounded half away from zero.
        const added = changes
          .flat()
          .reduce(
            (sum, { cents, tenths }) =>
              sum + Math.sign(cents) * Math.floor((Math.abs(cents) * tenths + 5) / 10),
            0,
          );
        const expected = new Decimal(estimate.directCostUsd).plus(new Decimal(added).div(100));
        expect(budgetOf(estimate, approved, noPhases).directUsd).toBe(expected.toFixed(2));
      }),
      { numRuns: 50 },
    );
  });

  test('has what an approved change adds under the change’s own phase and kind', () => {
    const { estimate } = soundResult(soundJob(sampleText()));
    const order = {
      reason: 'hidden',
      description: 'Three rotted rafter ends',
      days: 1,
      photo: null,
      fromDesign: false,
      lines: [
        {
          id: 'a',
          phase: 'Framing',
          kind: 'labour',
          description: 'Rotted rafter end',
          quantity: '3',
          unit: 'each',
          unitPriceUsd: '145',
          unitCostUsd: '78.15',
          unitHours: '1.5',
          taxable: false,
        },
      ],
    } as const;
    const budget = budgetOf(
      estimate,
      [{ number: 1, order: { ...order, lines: [...order.lines] } }],
      noPhases,
    );
    expect(new Decimal(budget.directUsd).minus(estimate.directCostUsd).toFixed(2)).toBe('234.45');
    expect(budget.lines.at(-1)).toMatchObject({ changeOrder: 1, hours: '4.5', kind: 'labour' });
  });
});

/** Papers as fast-check makes them up. */
const bills = fc
  .array(
    fc.record({
      kind: fc.constantFrom('receipt', 'order', 'sub-bill', 'return'),
      amounts: fc.array(fc.integer({ min: -50_000, max: 200_000 }), { minLength: 1, maxLength: 4 }),
      tax: fc.integer({ min: 0, max: 9_000 }),
      order: fc.nat({ max: 9 }),
      closes: fc.boolean(),
      replaces: fc.option(fc.nat({ max: 9 })),
      takesBack: fc.boolean(),
    }),
    { maxLength: 10 },
  )
  .map((made) => {
    const replaced = new Set<number>();
    return made.map((one, index): KeptBill => {
      const bill: Bill = billSchema.parse({
        kind: one.kind,
        supplier: 'Fernhollow Lumber',
        datedOn: '2026-05-04',
        taxUsd: (one.tax / 100).toFixed(2),
        orderId: one.order < index ? `b${one.order}` : null,
        closesOrder: one.closes,
        lines: one.amounts.map((cents, line) => ({
          id: `l${line}`,
          phase: line % 2 === 0 ? 'Framing' : 'Soffit',
          kind: 'material',
          description: 'boards',
          amountUsd: (cents / 100).toFixed(2),
        })),
      });
      const may = one.replaces !== null && one.replaces < index && !replaced.has(one.replaces);
      if (may) replaced.add(one.replaces!);
      return {
        ...head,
        id: `b${index}`,
        sequence: index,
        replaces: may ? `b${one.replaces}` : null,
        takesBack: may && one.takesBack,
        bill,
      };
    });
  });

describe('the papers of a job', () => {
  test('cost by line what they come to in all, whatever the tax', () => {
    fc.assert(
      fc.property(bills, (kept) => {
        for (const { bill } of kept) expect(sumUsd(costOfLines(bill))).toBe(billTotalUsd(bill));
      }),
    );
  });

  test('are never lost by corrections: each standing one is the end of its own line of corrections', () => {
    fc.assert(
      fc.property(bills, (kept) => {
        const standing = standingEntries(kept);
        const first = kept.filter(({ replaces }) => replaces === null).length;
        const takenBack = kept.filter(
          ({ takesBack, id }) => takesBack && !kept.some(({ replaces }) => replaces === id),
        ).length;
        expect(standing.length).toBe(first - takenBack);
      }),
    );
  });

  test('leave of an order what has not come, never less than nothing, over its phases to the cent', () => {
    fc.assert(
      fc.property(bills, (kept) => {
        const open = openOrders(kept);
        for (const { openUsd } of open) expect(Number(openUsd)).toBeGreaterThan(0);
        const whole = sumUsd(open.map(({ openUsd }) => openUsd));
        expect(sumUsd(committedByPhase(kept).values())).toBe(whole);
      }),
    );
  });

  test('and hours stand in the phases with nothing left over', () => {
    fc.assert(
      fc.property(bills, (kept) => {
        const { phases, whole } = standingOf(
          budgetFor({ Framing: '1000', Soffit: '300' }),
          [worked('Paint', '45.90')],
          kept,
          [],
          ['Framing', 'Soffit'],
          new Map(),
        );
        const spent = standingEntries(kept).filter(({ bill }) => bill.kind !== 'order');
        const papers = sumUsd(spent.map(({ bill }) => billTotalUsd(bill)));
        expect(whole.actualUsd).toBe(sumUsd([papers, usd('45.90')]));
        expect(sumUsd(phases.map(({ actualUsd }) => actualUsd))).toBe(whole.actualUsd);
      }),
    );
  });
});
