import { describe, expect, test } from 'vitest';
import { addEave } from '../../renderer/job/editor/eave-list.ts';
import { draftProblems, enter } from '../../renderer/job/editor/enter.ts';
import { stockKey, stockOffers } from '../../renderer/job/design/stock-list.ts';
import { fieldOfProblem, placeOfField } from '../../renderer/job/parts/place-of-field.ts';
import { placedSentence } from '../../renderer/job/parts/problem-link.tsx';
import { figuresIn } from '../../renderer/job/parts/said.tsx';
import { screenOfField } from '../../renderer/job/parts/shop-places.ts';
import { priceItemSchema } from '../../core/pricing/price-list.ts';
import { emptyDocuments, oneEave } from './fixture.ts';

const stud = priceItemSchema.parse({
  id: 'stud-8',
  category: 'lumber',
  description: '2x6 8 ft',
  unit: 'each',
  section: '2x6',
  grade: 'No.2',
  lengthFt: 8,
  prices: [{ priceUsd: '7.20', observedOn: '2026-04-01' }],
});

describe('where an entry stands', () => {
  test('is said with its eave, its name and its section', () => {
    const documents = enter(addEave(emptyDocuments(), []), 'survey.eaves.0.name', 'South eave');
    const overhang = draftProblems(documents).find(({ field }) => field.endsWith('overhangIn'));
    if (overhang === undefined) throw new Error('the overhang is not asked for');
    expect(placedSentence(overhang, documents, [])).toMatch(
      /^South eave, overhang, on Design: Enter a length/,
    );
    expect(placeOfField('survey.eaves.0.rafters.3.readingIn', documents, [])).toEqual({
      name: 'South eave, rafter 4, reading',
      screen: 'Survey',
    });
  });

  test('is Settings or the price list where the shop’s own numbers are at fault', () => {
    const documents = oneEave(['16']);
    const margin = {
      code: 'margin-too-high',
      percent: '100',
      field: 'settings.money.profitPercent',
    } as const;
    expect(placedSentence(margin, documents, [])).toMatch(/^Profit, on Settings: /);
    expect(screenOfField('settings.money.profitPercent', [])).toBe('/settings/money');
    expect(screenOfField('settings.fastening', [])).toBe('/settings/nails');
    const stale = {
      code: 'price-not-yet',
      item: '2x6 8 ft',
      asOf: '2026-01-01',
      firstOn: '2026-04-01',
    } as const;
    expect(screenOfField(fieldOfProblem(stale, [stud]) ?? '', [stud])).toBe('/prices/stud-8');
    expect(screenOfField(fieldOfProblem({ code: 'no-price', item: '2x12' }, [stud]) ?? '', [stud])).toBe(
      '/prices',
    );
  });
});

describe('lumber to choose from', () => {
  test('is every dressed size even with an empty price list', () => {
    const offers = stockOffers([], { section: '2x6', grade: '' });
    expect(offers.map((offer) => offer.key)).toContain('2x4');
    expect(offers.some((offer) => offer.isPriced)).toBe(false);
  });

  test('begins with what has a price', () => {
    const offers = stockOffers([stud], { section: '2x8', grade: 'No.2' });
    expect(offers[0]).toMatchObject({ key: '2x6 No.2', isPriced: true });
    expect(offers.filter((offer) => offer.isPriced)).toHaveLength(1);
    expect(offers.map((offer) => stockKey(offer.stock))).toContain('2x8 No.2');
  });
});

test.each([
  [`Rafter 6 at 8' 2-1/2" has no side free.`, [`8' 2-1/2"`]],
  ['Moved: A-E05 and A-B12', ['A-E05', 'A-B12']],
  [`seat 3-1/2", heel 7/8", pitch 6/12`, [`3-1/2"`, `7/8"`, '6/12']],
  ['Write it like 66-1/2, 5-6-8/16 or 1690 mm.', ['66-1/2', '5-6-8/16']],
  ['Nothing to keep together', []],
])('in %j the figures are kept together', (text, figures) => {
  expect(figuresIn(text).filter((_, index) => index % 2 === 1)).toEqual(figures);
  expect(figuresIn(text).join('')).toBe(text);
});
