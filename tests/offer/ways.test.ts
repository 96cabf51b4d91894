import { describe, expect, it, test } from 'vitest';
import type { Design } from '../../core/eave/design-document.ts';
import { computeJob } from '../../core/job/compute-job.ts';
import { alternateDesign } from '../../core/offer/alternate-design.ts';
import type { AlternateChange } from '../../core/offer/offer-document.ts';
import { priceWays, waysOf } from '../../core/offer/offered-ways.ts';
import { scopeDifferences } from '../../core/offer/scope-differences.ts';
import { computed, sampleJob } from '../documents/sample.ts';

/** Each change beside what a person would do by hand to the design as it is drawn. */
const byHand: readonly (readonly [string, AlternateChange, (design: Design) => void, RegExp])[] = [
  [
    'open tails',
    { what: 'soffit', kind: 'open', itemId: '' },
    (design) => {
      for (const { soffit } of design.eaves) soffit.kind = 'open';
    },
    /^Open rafter tails instead of a level soffit\.$/,
  ],
  [
    'no vents',
    { what: 'vents', itemId: '' },
    (design) => {
      for (const { soffit } of design.eaves) soffit.ventItemId = '';
    },
    /^No vents in the soffit\.$/,
  ],
  [
    'a deeper fascia',
    { what: 'fascia', stock: { section: '1x6', grade: 'primed' } },
    (design) => {
      for (const { fascia } of [...design.eaves, ...design.rakes])
        fascia.stock = { section: '1x6', grade: 'primed' };
    },
    /^Fascia of 1x6 primed instead of 1x8 primed\.$/,
  ],
  [
    'a sub-fascia',
    { what: 'sub-fascia', wanted: true, stock: { section: '2x6', grade: 'No.2' } },
    (design) => {
      for (const { fascia } of design.eaves)
        fascia.subFascia = { wanted: true, stock: { section: '2x6', grade: 'No.2' } };
    },
    /^A 2x6 No\.2 behind the fascia/,
  ],
  [
    'no rake',
    { what: 'rakes', built: false },
    (design) => {
      for (const rake of design.rakes) rake.kind = 'none';
    },
    /^The gable stays as it is\.$/,
  ],
  [
    'no deck',
    { what: 'sheathing', kind: 'none', itemId: '' },
    (design) => {
      for (const { sheathing } of [...design.eaves, ...design.rakes]) sheathing.kind = 'none';
    },
    /^No new roof deck/,
  ],
  [
    'a smaller overhang',
    { what: 'overhang', overhangIn: 12 },
    (design) => {
      for (const eave of design.eaves) eave.overhangIn = 12;
    },
    /^Overhang of 1' 0" instead of/,
  ],
  [
    'no staging',
    { what: 'extra-cost', extraId: 'staging', included: false },
    (design) => {
      design.extraCosts = design.extraCosts.filter(({ id }) => id !== 'staging');
    },
    /^Without: Ladder jacks/,
  ],
];

describe('a choice with', () => {
  it.each(byHand)(
    '%s comes to what the job comes to with its design changed by hand',
    (_, change, edit, words) => {
      const job = sampleJob();
      const hand = sampleJob();
      edit(hand.design);
      const design = alternateDesign(job.design, [change]);
      const way = computed({ ...job, design });
      const drawn = computed(hand);
      expect(way.estimate.totals).toEqual(drawn.estimate.totals);
      expect(way.estimate.lines).toEqual(drawn.estimate.lines);
      expect(way.cutPlans.map(({ boards }) => boards)).toEqual(drawn.cutPlans.map(({ boards }) => boards));
      const [said, ...others] = scopeDifferences(job.design, design, job.priceList);
      expect(said).toMatch(words);
      expect(others.every((other) => words.test(other) || other.startsWith('Overhang'))).toBe(true);
    },
  );
});

test('an extra cost that only a choice takes in stands in that choice alone', () => {
  const job = sampleJob();
  job.design.extraCosts = job.design.extraCosts.map((extra) =>
    extra.id === 'disposal' ? { ...extra, optional: true } : extra,
  );
  job.design.offer.alternates = [
    {
      id: 'a1',
      name: 'With the dump',
      changes: [{ what: 'extra-cost', extraId: 'disposal', included: true }],
    },
  ];
  const ways = priceWays(job);
  const lines = ways.ok ? ways.value.map(({ result }) => result.estimate.lines.map(({ id }) => id)) : [];
  expect(lines.map((ids) => ids.includes('extra-disposal'))).toEqual([false, true]);
  expect(ways.ok && ways.value[1]?.differences).toEqual(['With: Dump fee, one trailer.']);
});

test('the one that is offered first stands first, and what differs is told from it', () => {
  const job = sampleJob();
  job.design.offer.offeredId = 'a1';
  const ways = waysOf(job);
  expect(ways.map(({ name }) => name)).toEqual(['Eaves alone', 'Eaves and gable', 'Open tails, no soffit']);
  expect(ways[0]?.differences).toEqual([]);
  expect(ways[1]?.differences).toEqual(['The gable gets its overhang too.']);
  expect(ways[2]?.differences).toContain('The gable gets its overhang too.');
  job.design.offer.offeredId = 'gone';
  expect(waysOf(job)[0]?.id).toBe('');
});

test('a choice whose design cannot be built stops the quote with its reason, instead of being left out', () => {
  const job = sampleJob();
  job.design.offer.alternates = [
    { id: 'a1', name: 'Odd', changes: [{ what: 'fascia', stock: { section: '9x9', grade: '' } }] },
  ];
  expect(priceWays(job)).toMatchObject({ ok: false, problem: { code: 'unknown-section' } });
});

test('choices leave the job itself as it is', () => {
  const job = sampleJob();
  const before = JSON.stringify(job);
  priceWays(job, computeJob);
  expect(JSON.stringify(job)).toBe(before);
});
