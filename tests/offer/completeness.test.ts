import { expect, test } from 'vitest';
import { completeness, unanswered } from '../../core/offer/completeness.ts';
import { forgottenTopics } from '../../core/offer/forgotten-topics.ts';
import { priceMovers } from '../../core/offer/price-movers.ts';
import { validityOf } from '../../core/offer/validity.ts';
import { Decimal } from 'decimal.js';
import { computed, sampleJob } from '../documents/sample.ts';
import type { JobFile } from '../../core/job/job-file.ts';

function askedOf(change: (job: JobFile) => void) {
  const job = sampleJob();
  change(job);
  return completeness(job, computed(job));
}

function answer(questions: ReturnType<typeof askedOf>, id: string) {
  const question = questions.find((one) => one.id === id);
  return question === undefined ? 'not asked' : (question.answer?.kind ?? 'open');
}

test('the sample leaves nothing open; without its reasons it asks for what they answered', () => {
  expect(unanswered(askedOf(() => undefined))).toEqual([]);
  const bare = askedOf((job) => {
    job.design.offer.notNeeded = [];
  });
  expect(unanswered(bare)).toEqual([
    'delivery',
    'runs to the yard',
    'lead-safe work',
    'asbestos',
    'window heads',
    'gutters',
  ]);
});

test('a line, an exclusion, an assumption or a reason answers; a blank reason does not', () => {
  const asked = askedOf((job) => {
    job.design.exclusions = ['Gutters and downspouts'];
    job.design.offer.assumptions = ['Delivery is free.'];
    job.design.offer.notNeeded = [
      { topic: 'lead', because: ' ' },
      { topic: 'asbestos', because: 'none' },
    ];
  });
  expect(answer(asked, 'dump')).toBe('priced');
  expect(answer(asked, 'gutters')).toBe('excluded');
  expect(answer(asked, 'delivery')).toBe('said');
  expect(answer(asked, 'asbestos')).toBe('not-needed');
  expect(answer(asked, 'lead')).toBe('open');
  expect(answer(asked, 'paint')).toBe('open');
});

test('a house of 1978 or later is not asked about lead (40 CFR 745: built before 1978), one of unknown year is', () => {
  expect([1977, 1978, null].map(leadOf)).toEqual(['open', 'not asked', 'open']);
});

test('what the papers need is asked for: client, address, licence, tax, wage, payments', () => {
  const asked = askedOf((job) => {
    job.job.customer.name = ' ';
    job.job.siteAddress = '';
    job.settings.licenceNumber = '';
    job.settings.money.taxPercent = '0';
    job.design.offer.payments = [];
  });
  for (const id of ['client', 'site', 'licence', 'tax', 'payments']) expect(answer(asked, id)).toBe('open');
  expect(new Set(forgottenTopics.map(({ id }) => id)).size).toBe(forgottenTopics.length);
});

test('10 % more on the largest line moves the price by what contingency, overhead and profit make of it', () => {
  const job = sampleJob();
  job.settings.money = {
    ...job.settings.money,
    taxRule: 'none',
    contingencyPercent: '8',
    overheadPercent: '15',
    profitMethod: 'markup',
    profitPercent: '10',
    roundToUsd: '50',
  };
  const { estimate } = computed(job);
  const movers = priceMovers(job, estimate);
  expect(movers).toHaveLength(3);
  const largest = estimate.lines.toSorted((a, b) => Number(b.costUsd) - Number(a.costUsd))[0];
  expect(movers[0]?.lineId).toBe(largest?.id);
  const factor = new Decimal('1.08').times('1.15').times('1.10').times('0.1');
  for (const { costUsd, priceUpUsd } of movers) {
    // Each step is rounded to cents, so that the sum may be some cents off.
    expect(new Decimal(costUsd).times(factor).minus(priceUpUsd).abs().lt('0.05')).toBe(true);
  }
});

test('the first supplier’s price to run out governs how long the quote is good, else the shop’s own days', () => {
  const job = sampleJob();
  expect(validityOf(job, computed(job).estimate)).toMatchObject({ governs: 'shop', until: '2026-05-05' });
  const panel = job.priceList.find(({ id }) => id === 'sheet-15-32');
  for (const price of panel?.prices ?? []) price.validUntil = '2026-04-28';
  expect(validityOf(job, computed(job).estimate)).toMatchObject({
    governs: 'suppliers',
    until: '2026-04-28',
  });
  expect(validityOf(job, computed(job).estimate).items.join()).toContain(panel?.description);
  for (const price of panel?.prices ?? []) price.validUntil = '2026-04-01';
  expect(validityOf(job, computed(job).estimate)).toMatchObject({ governs: 'past', until: '2026-04-20' });
});

/** Whether lead is asked about at a house of a year whose quote gives no reasons. */
function leadOf(year: number | null): string {
  const asked = askedOf((job) => {
    job.survey.yearBuilt = year;
    job.design.offer.notNeeded = [];
  });
  return answer(asked, 'lead');
}
