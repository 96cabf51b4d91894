import { expect, test } from 'vitest';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { refusalOf, withProfitMethod } from '../../renderer/screens/settings/profit.ts';

const shop = (profitMethod: 'markup' | 'margin', profitPercent: string) =>
  shopSettingsSchema.parse({ money: { profitMethod, profitPercent } });
const percent = 'money.profitPercent';
const method = 'money.profitMethod';

// price = cost / (1 - margin): algebra; at 100 % there is no price.
test('a margin of 100 % or more is refused at its field, one below is taken', () => {
  expect(refusalOf(percent, shop('margin', '20'), '100')).toEqual({
    code: 'margin-too-high',
    percent: '100',
  });
  expect(refusalOf(percent, shop('margin', '20'), '150 %')).toMatchObject({ percent: '150' });
  expect(refusalOf(percent, shop('margin', '20'), '99.9')).toBe(null);
});

test('a markup may be any', () => {
  expect(refusalOf(percent, shop('markup', '20'), '150')).toBe(null);
});

test('a markup of 150 % cannot become a margin of 150 %', () => {
  expect(refusalOf(method, shop('markup', '150'), 'margin')).toMatchObject({ code: 'margin-too-high' });
  expect(refusalOf(method, shop('markup', '50'), 'margin')).toBe(null);
  expect(refusalOf(method, shop('margin', '50'), 'markup')).toBe(null);
});

test('a percentage that was refused as a margin is taken once it is a markup, since it is what the field shows', () => {
  const taken = withProfitMethod(shop('margin', '20'), 'markup', '150');
  expect([taken.settings.money.profitMethod, taken.settings.money.profitPercent, taken.tookTyped]).toEqual([
    'markup',
    '150',
    true,
  ]);
  const left = withProfitMethod(shop('margin', '20'), 'markup', 'a lot');
  expect([left.settings.money.profitPercent, left.tookTyped]).toEqual(['20', false]);
});
