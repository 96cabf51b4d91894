import { Decimal } from 'decimal.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildUp, type BuildUp, type CostSums } from '../../core/pricing/build-up.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { usd } from '../../core/units/money.ts';
import { cents, centsText, minus, ofCents, over, plus, rational, times } from './rational.ts';

const rules = (money: Record<string, string>) => shopSettingsSchema.parse({ money }).money;
const sumsOf = (materials: string, labour: string, other: string, taxable = materials): CostSums => ({
  materialsUsd: usd(materials),
  labourUsd: usd(labour),
  otherUsd: usd(other),
  taxableMaterialsUsd: usd(taxable),
});
const built = (sums: CostSums, money: Record<string, string>): BuildUp => {
  const result = buildUp(sums, rules(money));
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};
const taxed = (taxRule: string) => built(sumsOf('1000', '0', '0', '400'), { taxRule, taxPercent: '7' });

const amount = fc.integer({ min: 0, max: 90_000_000 }).map((value) => centsText(BigInt(value)));
const percent = (most: number) =>
  fc.integer({ min: 0, max: most * 100 }).map((value) => new Decimal(value).div(100).toFixed());

describe('the build-up of the price', () => {
  test('rounds every step to cents, so that the paper adds up by hand', () => {
    const steps = built(sumsOf('653.08', '4103.93', '540.00'), {
      taxPercent: '6.5',
      contingencyPercent: '8',
      overheadPercent: '18',
      profitMethod: 'margin',
      profitPercent: '10',
      roundToUsd: '10',
    });
    // By hand: 653.08 x 6.5 % = 42.4502; 5339.46 x 8 % = 427.1568; 5766.62 x 18 % = 1037.9916;
    // 6804.61 / 0.9 = 7560.6778; up to the next 10.
    expect(steps).toMatchObject({
      materialsTaxUsd: '42.45',
      directUsd: '5339.46',
      contingencyUsd: '427.16',
      overheadUsd: '1037.99',
      fullCostUsd: '6804.61',
      profitUsd: '756.07',
      roundingUsd: '9.32',
      priceUsd: '7570.00',
      profitMarkupPercent: '11.11',
      profitMarginPercent: '10',
    });
  });

  test('a price that stands on the multiple is not lifted to the next', () => {
    const plain = { contingencyPercent: '0', overheadPercent: '0', profitPercent: '0' };
    expect(built(sumsOf('100.00', '0', '0'), { ...plain, roundToUsd: '50' })).toMatchObject({
      roundingUsd: '0.00',
      priceUsd: '100.00',
    });
    expect(built(sumsOf('100.01', '0', '0'), { ...plain, roundToUsd: '50' })).toMatchObject({
      roundingUsd: '49.99',
      priceUsd: '150.00',
    });
  });

  test('tax is a cost only where the contractor pays it', () => {
    expect(taxed('contractor-pays').materialsTaxUsd).toBe('28.00');
    expect(taxed('client-pays').materialsTaxUsd).toBe('0.00');
    expect(taxed('none').materialsTaxUsd).toBe('0.00');
  });

  test('a margin of the whole price or more is refused at its entry', () => {
    for (const profitPercent of ['100', '250'])
      expect(buildUp(sumsOf('1', '1', '1'), rules({ profitMethod: 'margin', profitPercent }))).toEqual({
        ok: false,
        problem: { code: 'margin-too-high', percent: profitPercent, field: 'settings.money.profitPercent' },
      });
  });

  test('nothing costs nothing, and no share is NaN', () => {
    expect(built(sumsOf('0', '0', '0'), {})).toMatchObject({
      priceUsd: '0.00',
      profitMarkupPercent: '0',
      profitMarginPercent: '0',
      grossMarkupPercent: '0',
      grossMarginPercent: '0',
    });
  });

  test('agrees with whole-number fractions to the cent', () => {
    fc.assert(
      fc.property(
        amount,
        amount,
        amount,
        percent(20),
        percent(30),
        percent(60),
        percent(95),
        fc.constantFrom('markup', 'margin'),
        fc.constantFrom('0', '1', '5', '10', '50'),
        (materials, labour, other, tax, contingency, overhead, profit, profitMethod, roundToUsd) => {
          const steps = built(sumsOf(materials, labour, other), {
            taxPercent: tax,
            contingencyPercent: contingency,
            overheadPercent: overhead,
            profitPercent: profit,
            profitMethod,
            roundToUsd,
          });
          const hundred = rational('100');
          const share = (base: bigint, rate: string): bigint =>
            cents(over(times(ofCents(base), rational(rate)), hundred));
          const taxCents = share(cents(rational(materials)), tax);
          const direct = cents(plus(plus(rational(materials), rational(labour)), rational(other))) + taxCents;
          const contingencyCents = share(direct, contingency);
          const overheadCents = share(direct + contingencyCents, overhead);
          const full = direct + contingencyCents + overheadCents;
          const before =
            profitMethod === 'markup'
              ? full + share(full, profit)
              : cents(over(times(ofCents(full), hundred), minus(hundred, rational(profit))));
          const step = BigInt(roundToUsd) * 100n;
          const price = step === 0n ? before : ((before + step - 1n) / step) * step;
          expect(steps).toMatchObject({
            materialsTaxUsd: centsText(taxCents),
            directUsd: centsText(direct),
            contingencyUsd: centsText(contingencyCents),
            overheadUsd: centsText(overheadCents),
            profitUsd: centsText(before - full),
            roundingUsd: centsText(price - before),
            priceUsd: centsText(price),
          });
        },
      ),
    );
  });

  test('says one profit both ways: markup u and margin g with g = u / (1 + u)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1_000_000, max: 90_000_000 }), percent(200), (cost, profitPercent) => {
        const steps = built(sumsOf(centsText(BigInt(cost)), '0', '0'), { profitPercent });
        const markup = Number(steps.profitMarkupPercent) / 100;
        expect(Number(steps.profitMarginPercent) / 100).toBeCloseTo(markup / (1 + markup), 3);
        expect(Number(steps.profitMarkupPercent)).toBeCloseTo(Number(profitPercent), 1);
      }),
    );
  });
});
