import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { generatedScope } from '../../core/documents/scope-wording.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { inputOfWay, priceWays } from '../../core/offer/offered-ways.ts';
import { formatUsd } from '../../core/units/money.ts';
import { cell, centsOf, computed, sampleJob, tableUnder, wordsOf } from './sample.ts';

const levels = ['sum', 'phase', 'line'] as const;

function quoteOf(change: (job: JobFile) => void) {
  const job = sampleJob();
  change(job);
  const ways = priceWays(job);
  const [offered] = ways.ok ? ways.value : [];
  if (!ways.ok || offered === undefined) throw new Error('the sample can be priced');
  const sheet = makeSheet('quote', inputOfWay(job, offered), offered.result, { ways: ways.value });
  return { job, sheet, ways: ways.value, result: offered.result };
}

/** All that the sample's quote says with something changed. */
function wordsWith(change: (job: JobFile) => void): string {
  return wordsOf(quoteOf(change).sheet);
}

describe('a price that is broken out', () => {
  it.each(levels)('as %s adds up by hand to the same total to the cent', (level) => {
    const { sheet, result } = quoteOf((job) => {
      job.design.offer.printLevel = level;
    });
    const { rows } = tableUnder(sheet, 'Price');
    const amounts = rows.map((row) => row.cells.at(-1) ?? '').filter((text) => text !== '');
    const sum = amounts.slice(0, -1).reduce((cents, amount) => cents + centsOf(amount), 0);
    expect(amounts.at(-1)).toBe(formatUsd(result.estimate.totalUsd));
    expect(sum).toBe(centsOf(amounts.at(-1) ?? ''));
  });

  it.each(levels)('as %s names tax as a line of its own where the client pays it', (level) => {
    const { sheet } = quoteOf((job) => {
      job.design.offer.printLevel = level;
      job.settings.money.taxRule = 'client-pays';
    });
    const { rows } = tableUnder(sheet, 'Price');
    const amount = (name: string) => centsOf(rows.find((row) => cell(row, 0) === name)?.cells.at(-1) ?? '');
    expect(amount('Price before tax') + amount('Sales tax')).toBe(amount('Total'));
    expect(amount('Sales tax')).toBeGreaterThan(0);
  });

  it('as one sum has a single line, and line by line counts what is bought and never an hour', () => {
    const one = quoteOf((job) => {
      job.design.offer.printLevel = 'sum';
    });
    expect(tableUnder(one.sheet, 'Price').rows).toHaveLength(2);
    const { sheet, result } = quoteOf((job) => {
      job.design.offer.printLevel = 'line';
    });
    const words = JSON.stringify(tableUnder(sheet, 'Price').rows);
    expect(words).toContain('of 2x6 No.2');
    const hours = result.estimate.lines.filter(({ kind }) => kind === 'labour');
    for (const { description, quantity, unit } of hours) {
      expect(words).not.toContain(description);
      expect(words).not.toContain(`${quantity} ${unit}`);
    }
    expect(words).not.toMatch(/\d h\b/);
  });
});

describe('the choices of a quote', () => {
  it('stand beside each other, each with its own total and what the client would see of it', () => {
    const { sheet, ways } = quoteOf(() => undefined);
    const { rows } = tableUnder(sheet, 'Your choices');
    expect(rows.map((row) => cell(row, 2))).toEqual(
      ways.map(({ result }) => formatUsd(result.estimate.totalUsd)),
    );
    expect(cell(rows[0], 1)).toBe('As described above');
    expect(cell(rows[1], 1)).toBe('The gable stays as it is.');
  });

  it('name no hours, boards or cost of any of them', () => {
    const { sheet, ways } = quoteOf(() => undefined);
    const words = wordsOf(sheet);
    for (const { result } of ways) {
      expect(words).not.toContain(formatUsd(result.estimate.directCostUsd));
      expect(words).not.toContain(result.takeoff.labourHours);
    }
  });

  it('are not spoken of where there is one way alone', () => {
    const { sheet } = quoteOf((job) => {
      job.design.offer.alternates = [];
    });
    expect(wordsOf(sheet)).not.toMatch(/Your choices|Initials/);
  });

  it('make the one that is offered first the price and the scope of the paper', () => {
    const { sheet, ways } = quoteOf((job) => {
      job.design.offer.offeredId = 'a2';
    });
    expect(cell(tableUnder(sheet, 'Price').rows.at(-1), 2)).toBe(
      formatUsd(ways[0]?.result.estimate.totalUsd ?? ('0.00' as never)),
    );
    expect(wordsOf(sheet)).not.toContain('A level soffit closes the overhang');
  });
});

describe('the scope of a quote', () => {
  it('prints a paragraph in the person’s words, leaves out a blank one, and generates the others', () => {
    const { sheet, job } = quoteOf((changed) => {
      changed.design.offer.scopeTexts = [
        { key: 'eave/south', text: 'The south edge grows by sixteen inches.', writtenFrom: '' },
        { key: 'rake/west', text: ' ', writtenFrom: '' },
      ];
    });
    const words = wordsOf(sheet);
    const generated = generatedScope(job, computed(job));
    expect(generated.map(({ key }) => key)).toEqual(['eave/south', 'rake/west', 'eave/north']);
    expect(words).toContain('The south edge grows by sixteen inches.');
    expect(words).not.toContain('West gable, south rake: ');
    expect(words).toContain('North eave, ');
  });
});

describe('the terms of a quote', () => {
  it('print payments in dollars that make the total, and say so where they do not', () => {
    const { sheet, result } = quoteOf(() => undefined);
    const { rows } = tableUnder(sheet, 'Payments');
    const sum = rows.slice(0, -1).reduce((cents, row) => cents + centsOf(cell(row, 1)), 0);
    expect(sum).toBe(centsOf(formatUsd(result.estimate.totalUsd)));
    const open = quoteOf((job) => {
      job.design.offer.payments = job.design.offer.payments.slice(0, 2);
    });
    expect(wordsOf(open.sheet)).toContain('The payments are not settled yet.');
  });

  it('give prices for hidden work that are in no total', () => {
    const { sheet } = quoteOf(() => undefined);
    expect(tableUnder(sheet, 'If we find hidden damage').rows.map((row) => row.cells)).toContainEqual([
      'Rotted roof plank replaced',
      'foot',
      '$9.50',
    ]);
    expect(wordsOf(sheet)).not.toMatch(/\$52\.00|\$5\.80|\$29\.00/);
  });

  it('say which day’s prices it rests on, both ways or one, and nothing where the price is firm', () => {
    expect(wordsWith(() => undefined)).toContain('prices of lumber and panels on 2026-04-20');
    expect(wordsWith(() => undefined)).toContain('comes off in the same way');
    expect(
      wordsWith((job) => {
        job.design.offer.escalation = {
          ...job.design.offer.escalation,
          baseOn: '2026-03-01',
          bothWays: false,
        };
      }),
    ).toMatch(/on 2026-03-01.*the price stays/);
    expect(
      wordsWith((job) => {
        job.design.offer.escalation.wanted = false;
      }),
    ).not.toContain('If material prices move');
  });

  it('tell the right to cancel where it is signed at the home, by the chosen rule’s days', () => {
    expect(wordsWith(() => undefined)).toContain('midnight of the third business day');
    expect(
      wordsWith((job) => {
        job.settings.stateRules = job.settings.stateRules.map((rule) =>
          rule.id === 'me' ? { ...rule, coolingOffDays: 5 } : rule,
        );
        job.design.offer.ruleId = 'me';
      }),
    ).toContain('midnight of the fifth business day');
    expect(
      wordsWith((job) => {
        job.design.offer.signedAtHome = false;
      }),
    ).not.toContain('Your right to cancel');
  });

  it('say of an allowance whether it covers material alone', () => {
    const { sheet } = quoteOf((job) => {
      job.design.extraCosts.push({
        id: 'lights',
        description: 'Two lights under the soffit',
        phase: 'Soffit',
        kind: 'allowance',
        quantity: '1',
        unit: 'lot',
        unitCostUsd: '120',
        taxable: false,
        covers: 'material',
      });
    });
    expect(wordsOf(sheet)).toMatch(/Two lights under the soffit: \$[\d.]+, for the material alone\./);
  });
});
