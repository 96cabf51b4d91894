import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPackages, type NailPackage } from '../../core/pricing/nail-packages.ts';
import { usd } from '../../core/units/money.ts';

const byPound = (packageLb: number, price: string): NailPackage => ({
  itemId: `${packageLb} lb`,
  packageLb,
  packageCount: null,
  priceUsd: usd(price),
});
const byCount = (packageCount: number, price: string): NailPackage => ({
  itemId: `${packageCount} nails`,
  packageLb: null,
  packageCount,
  priceUsd: usd(price),
});
const chosen = (count: number, pounds: string, offers: readonly NailPackage[]) =>
  Object.fromEntries(
    cheapestPackages(count, pounds, offers).map(({ itemId, packages }) => [itemId, packages]),
  );

describe('packages of nails for the fewest dollars', () => {
  const yard = [byPound(1, '4'), byPound(5, '15'), byPound(25, '60')];

  test('six pounds are a five and a one, and four pounds are a five', () => {
    expect(chosen(300, '6', yard)).toEqual({ '1 lb': 1, '5 lb': 1 });
    expect(chosen(200, '4', yard)).toEqual({ '5 lb': 1 });
    expect(chosen(100, '2', yard)).toEqual({ '1 lb': 2 });
  });

  test('a whole carton wins where the small packages would cost as much', () => {
    expect(chosen(1000, '20', yard)).toEqual({ '25 lb': 1 });
  });

  test('five pounds exactly need no sixth', () => {
    expect(chosen(245, '5', yard)).toEqual({ '5 lb': 1 });
    expect(chosen(246, '5.02', yard)).toEqual({ '1 lb': 1, '5 lb': 1 });
  });

  test('packages by the count and by the pound meet in one need', () => {
    expect(chosen(530, '5', [byCount(500, '12'), byCount(50, '2'), byPound(5, '20')])).toEqual({
      '500 nails': 1,
      '50 nails': 1,
    });
    expect(chosen(530, '5', [byCount(500, '12'), byPound(5, '11')])).toEqual({ '5 lb': 1 });
  });

  test('nothing is bought for no need or from no offer', () => {
    expect(cheapestPackages(0, '0', yard)).toEqual([]);
    expect(cheapestPackages(10, '1', [])).toEqual([]);
  });

  test('a very large need is still covered, at no more than whole cartons would cost', () => {
    const offers = [byPound(0.7, '3'), byPound(5, '15'), byCount(33, '1.10')];
    const bought = cheapestPackages(977_777, '19954.63', offers);
    const held = bought.reduce(
      (nails, { itemId, packages }) =>
        nails + packages * (itemId === '33 nails' ? 33 : (Number.parseFloat(itemId) * 977_777) / 19_954.63),
      0,
    );
    expect(held).toBeGreaterThanOrEqual(977_777 - 1e-6);
    const cost = bought.reduce(
      (sum, { itemId, packages }) =>
        sum + packages * Number(offers.find((offer) => offer.itemId === itemId)?.priceUsd),
      0,
    );
    expect(cost).toBeLessThanOrEqual(Math.ceil(19_954.63 / 5) * 15);
  });

  // Every combination tried, in whole tenths of a pound, as a second construction.
  test('no combination is cheaper, and of equal ones none has fewer packages', () => {
    const offer = fc.record({
      tenths: fc.integer({ min: 2, max: 40 }),
      cents: fc.integer({ min: 50, max: 900 }),
    });
    fc.assert(
      fc.property(
        fc.array(offer, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 90 }),
        (kinds, needTenths) => {
          const offers = kinds.map(({ tenths, cents }, index) => ({
            ...byPound(tenths / 10, String(cents / 100)),
            itemId: String(index),
          }));
          const bought = cheapestPackages(needTenths * 5, String(needTenths / 10), offers);
          const total = (of: 'tenths' | 'cents') =>
            bought.reduce(
              (sum, { itemId, packages }) => sum + packages * (kinds[Number(itemId)]?.[of] ?? 0),
              0,
            );
          const packages = bought.reduce((sum, choice) => sum + choice.packages, 0);
          expect(total('tenths')).toBeGreaterThanOrEqual(needTenths);
          expect([total('cents'), packages]).toEqual(cheapestByTrying(kinds, needTenths));
        },
      ),
    );
  });
});

function cheapestByTrying(
  kinds: readonly { readonly tenths: number; readonly cents: number }[],
  need: number,
): readonly [number, number] {
  let best: readonly [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const tryFrom = (index: number, left: number, cents: number, packages: number): void => {
    if (left <= 0) {
      if (cents < best[0] || (cents === best[0] && packages < best[1])) best = [cents, packages];
      return;
    }
    const kind = kinds[index];
    if (kind === undefined) return;
    for (let count = 0; count <= Math.ceil(left / kind.tenths); count += 1)
      tryFrom(index + 1, left - count * kind.tenths, cents + count * kind.cents, packages + count);
  };
  tryFrom(0, need, 0, 0);
  return best;
}
