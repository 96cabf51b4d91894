import { describe, expect, test } from 'vitest';
import { boardFeet } from '../../core/lumber/board-feet.ts';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';
import { buildUp, percentOf } from '../../core/pricing/build-up.ts';
import { pieceUsd } from '../../core/pricing/unit-conversion.ts';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { hourlyCostUsd } from '../../core/pricing/work-costs.ts';
import { sumUsd, usd, type Usd } from '../../core/units/money.ts';
import { priceItem } from '../pricing/make-price.ts';

const price = (direct: string, money: Record<string, string>) => {
  const rules = shopSettingsSchema.parse({
    money: { contingencyPercent: '0', overheadPercent: '0', profitPercent: '0', taxRule: 'none', ...money },
  }).money;
  const none = usd(0);
  const built = buildUp(
    { materialsUsd: usd(direct), labourUsd: none, otherUsd: none, taxableMaterialsUsd: none },
    rules,
  );
  if (!built.ok) throw new Error(built.problem.code);
  return built.value;
};
const feet = (section: string, lengthFt: number) => {
  const dressed = dressedSection(section);
  if (dressed === undefined) throw new Error(section);
  return boardFeet(dressed, lengthFt);
};
const piece = (unit: 'LF' | 'BF' | 'MBF', amount: string) =>
  pieceUsd(priceItem({ unit, section: '2x6', lengthFt: 16 }), amount);

// Algebra of every accounting handbook: margin = markup / (1 + markup). The pairs as a trade table prints them.
describe('markup and margin are two names of one profit', () => {
  test.each([
    ['20', '16.7'],
    ['25', '20.0'],
    ['33', '24.8'],
    ['40', '28.6'],
    ['50', '33.3'],
    ['67', '40.1'],
    ['100', '50.0'],
  ])('%s %% markup on cost is %s %% margin on price', (markup, margin) => {
    const built = price('10000', { profitMethod: 'markup', profitPercent: markup });
    expect(Number(built.profitMarginPercent).toFixed(1)).toBe(margin);
    const back = price('10000', { profitMethod: 'margin', profitPercent: built.profitMarginPercent });
    expect(Number(back.profitMarkupPercent)).toBeCloseTo(Number(markup), 1);
  });

  test('25 % on 100 is 125 as a markup and 133.33 as a margin', () => {
    expect(price('100', { profitMethod: 'markup', profitPercent: '25' }).priceUsd).toBe('125.00');
    expect(price('100', { profitMethod: 'margin', profitPercent: '25' }).priceUsd).toBe('133.33');
  });

  test('a 20 % margin is a 25 % markup, and a third of the price is half of the cost', () => {
    expect(price('9000', { profitMethod: 'margin', profitPercent: '20' }).profitMarkupPercent).toBe('25');
    expect(price('9000', { profitMethod: 'markup', profitPercent: '50' }).profitMarginPercent).toBe('33.33');
  });
});

// Compound and added percentages: plain arithmetic, as any accounting handbook warns.
describe('percentages on percentages', () => {
  test('10 % overhead and 10 % profit on 10,000 compound to 12,100, not 12,000', () => {
    expect(price('10000', { overheadPercent: '10', profitPercent: '10' }).priceUsd).toBe('12100.00');
  });
});

// A worked build-up of the trade, to the cent: overhead 25 % and profit 8 % of the price, so 33 % margin on cost with
// contingency. Calculated by hand with the rules of the trade notes; rounding half up at each step.
describe('a whole build-up by hand', () => {
  const labour = shopSettingsSchema.parse({ labour: { wageUsdPerHour: '34', burdenPercent: '35' } }).labour;

  test('an hour at 34 with 35 % burden is 45.90, and 64 hours are 2,937.60', () => {
    expect(hourlyCostUsd(labour)).toBe('45.9');
    expect(usd(64 * 45.9)).toBe('2937.60');
  });

  test('materials 2,200 with 7 % tax, labour, equipment, subs and permit come to 8,156.60, and to 13,147.96', () => {
    const rules = shopSettingsSchema.parse({
      money: {
        taxPercent: '7',
        contingencyPercent: '8',
        overheadPercent: '0',
        profitMethod: 'margin',
        profitPercent: '33',
      },
    }).money;
    const other = sumUsd(['780.00', '1900.00', '185.00'].map((amount) => usd(amount)));
    const built = buildUp(
      {
        materialsUsd: usd(2200),
        labourUsd: usd('2937.60'),
        otherUsd: other,
        taxableMaterialsUsd: usd(2200),
      },
      rules,
    );
    expect(built).toMatchObject({
      ok: true,
      value: {
        materialsTaxUsd: '154.00',
        directUsd: '8156.60',
        fullCostUsd: '8809.13',
        priceUsd: '13147.96',
        profitMarginPercent: '33',
      },
    });
  });

  test('the same 33 % taken as a markup gives 11,716.14, which is 1,431.82 short and a margin of 24.8 %', () => {
    const wrong = price('8809.13', { profitMethod: 'markup', profitPercent: '33' });
    expect(wrong.priceUsd).toBe('11716.14');
    expect(Number(wrong.profitMarginPercent).toFixed(1)).toBe('24.8');
    expect((13147.96 - Number(wrong.priceUsd)).toFixed(2)).toBe('1431.82');
  });

  test('the employer share of payroll tax, 7.65 % of 1,000, is 76.50', () => {
    // 6.2 % and 1.45 % (US payroll tax, from memory).
    expect(sumUsd([percentOf(usd(1000), '6.2'), percentOf(usd(1000), '1.45')] satisfies Usd[])).toBe('76.50');
  });
});

describe('lumber by the thousand board feet', () => {
  // US Army EN0069A, "Frame Structures": a 2x6 of 10 ft holds 10 BF.
  test('a 2x6 of 10 ft holds 10 BF and costs 7.80 at 780 MBF', () => {
    expect(feet('2x6', 10).toFixed()).toBe('10');
    const item = priceItem({ unit: 'MBF', section: '2x6', lengthFt: 10 });
    expect(pieceUsd(item, '780')).toEqual({ ok: true, value: '7.80' });
  });

  // US Army EN5155, "Carpentry": 8 pieces of 1x4, 14 ft long, hold 37-1/3 BF.
  test('8 pieces of 1x4, 14 ft, hold 37-1/3 BF', () => {
    expect(feet('1x4', 14).times(8).toFixed(3)).toBe('37.333');
  });

  // Nominal size over 12, common practice, no source: 2x6 of 12 and 16 ft.
  test('2x6 of 12 and 16 ft hold 12 and 16 BF, and cost the same by each, LF, BF and MBF of one price', () => {
    expect([feet('2x6', 12).toFixed(), feet('2x6', 16).toFixed()]).toEqual(['12', '16']);
    expect(
      [piece('LF', '0.75'), piece('BF', '0.75'), piece('MBF', '750')].map((p) => p.ok && p.value),
    ).toEqual(['12.00', '12.00', '12.00']);
  });
});
