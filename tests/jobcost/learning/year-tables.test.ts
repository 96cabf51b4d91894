import { describe, expect, test } from 'vitest';
import { billSchema, type KeptBill, type KeptTime } from '../../../core/jobcost/cost-entries.ts';
import { type YearJob, yearTables, yearWords } from '../../../core/jobcost/learning/year-tables.ts';
import { decimalText, usd } from '../../../core/units/money.ts';

const head = { sequence: 1, enteredOn: '2026-01-02', replaces: null, takesBack: false };

function time(id: string, workedOn: string, change: Partial<KeptTime> = {}): KeptTime {
  const worked = { person: 'Isolde', workedOn, phase: 'Framing', hours: '2', note: '' };
  return { ...head, id, ...worked, rateUsd: decimalText('45.9'), costUsd: usd('91.80'), ...change };
}

function paper(id: string, bill: object): KeptBill {
  return { ...head, id, bill: billSchema.parse({ kind: 'receipt', supplier: 'Fernhollow Lumber', ...bill }) };
}

const line = { id: '1', phase: 'Framing', kind: 'material', description: '2x6, 12 ft', amountUsd: '100' };

const job: YearJob = {
  name: 'North eave',
  customer: 'Tamsin Brackenhall',
  invoices: [
    {
      number: 1,
      kind: 'final',
      credits: null,
      issuedOn: '2025-12-31',
      dueOn: '2026-01-14',
      amountUsd: usd(900),
      taxUsd: usd(0),
    },
    {
      number: 2,
      kind: 'final',
      credits: null,
      issuedOn: '2026-01-01',
      dueOn: '2026-01-15',
      amountUsd: usd(500),
      taxUsd: usd('32.50'),
    },
    {
      number: 3,
      kind: 'credit',
      credits: 2,
      issuedOn: '2026-02-01',
      dueOn: '2026-02-01',
      amountUsd: usd(100),
      taxUsd: usd('6.50'),
    },
  ],
  payments: [
    { paidOn: '2026-01-20', amountUsd: usd(300), how: 'check', note: '', takesBack: null },
    { paidOn: '2026-01-22', amountUsd: usd(300), how: 'check', note: 'bounced', takesBack: 'p1' },
  ],
  times: [time('a', '2026-03-02'), time('b', '2026-03-03', { replaces: 'a' }), time('c', '2027-01-01')],
  bills: [
    paper('r', { datedOn: '2026-03-01', lines: [line], taxUsd: '6.50' }),
    paper('o', { kind: 'order', datedOn: '2026-03-01', lines: [line] }),
    paper('t', {
      kind: 'return',
      datedOn: '2026-03-09',
      lines: [{ ...line, amountUsd: '-20' }],
      taxUsd: '-1.30',
    }),
  ],
};

describe('a year for the accountant', () => {
  const [invoices, payments, hours, costs] = yearTables([job], 2026);

  test('a bill counts in the year it was issued, and a credit takes its amount off, by hand', () => {
    expect(invoices?.rows.map((row) => [row[0], row.at(-1)])).toEqual([
      ['2', '532.50'],
      ['3', '-106.50'],
    ]);
    expect(invoices?.sumUsd).toBe('426.00');
  });

  test('a payment that was taken back stands twice, once with each sign', () => {
    expect(payments?.rows.map((row) => row.at(-1))).toEqual(['300.00', '-300.00']);
    expect(payments?.sumUsd).toBe('0.00');
  });

  test('hours that were corrected count once, as corrected, and other years not at all', () => {
    expect(hours?.rows.map(([day]) => day)).toEqual(['2026-03-03']);
    expect(hours?.sumUsd).toBe('91.80');
  });

  test('an order is no cost yet, and what came back is taken off with its tax', () => {
    // 100 + 6.50 - 20 - 1.30.
    expect(costs?.rows.map((row) => row.slice(-3))).toEqual([
      ['100.00', '6.50', '106.50'],
      ['-20.00', '-1.30', '-21.30'],
    ]);
    expect(costs?.sumUsd).toBe('85.20');
  });

  test('each file says what its columns hold, and every row has a cell for each', () => {
    const tables = yearTables([job], 2026);
    for (const { columns, rows } of tables) for (const row of rows) expect(row).toHaveLength(columns.length);
    const words = yearWords('Thornbury Carpentry', 2026, tables);
    expect(words).toContain('Thornbury Carpentry, year 2026');
    expect(words).toContain('invoices.csv');
    expect(words).toContain('2 rows, adding up to 426.00 dollars.');
  });
});
