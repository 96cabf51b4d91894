import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestFill } from '../../core/cutting/best-fill.ts';
import { allOf } from '../../core/cutting/column.ts';
import { groupSizes } from '../../core/cutting/group-sizes.ts';
import { lengthWorths, longPieceWorths, lowerBound, prove } from '../../core/cutting/lower-bound.ts';
import { purchaseSums } from '../../core/cutting/purchase-sums.ts';
import { relax } from '../../core/cutting/relaxation.ts';
import type { CuttingModel } from '../../core/cutting/cutting-model.ts';
import { cheapestByTryingAll, shortestUse } from './brute-force.ts';
import { anyFullProblem, anyProblem, makeProblem, modelOf } from './make-problem.ts';

describe('lower bounds', () => {
  test('any worth at all gives a bound that is not above the cheapest', () => {
    fc.assert(
      fc.property(
        anyFullProblem(7),
        fc.array(fc.double({ min: 0, max: 5000, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (problem, worth) => {
          const cheapest = cheapestByTryingAll(problem);
          const worths = { worth: Float64Array.from(worth), tax: new Float64Array(20) };
          const bound = lowerBound(modelOf(problem), { worths, finished: false }, cheapest + 5000);
          expect(bound.cents).toBeLessThanOrEqual(cheapest);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('pieces longer than half of the longest board need a board each', () => {
    // 3 pieces of 5 ft 6 in. in boards of up to 10 ft: each needs the 8 ft board at $7.
    const model = modelOf(
      makeProblem(
        [66, 66, 66],
        [
          [8, 700],
          [10, 880],
        ],
      ),
    );
    expect(prove(model, longPieceWorths(model)).cents).toBe(2100);
    expect(prove(model, lengthWorths(model)).cents).toBeLessThan(2100);
  });

  test('length bought costs at least what it costs on the cheapest board', () => {
    // 10 pieces of 24 in., no kerf: 20 ft; at best $16 for 20 ft.
    const model = modelOf(
      makeProblem(
        Array<number>(10).fill(24),
        [
          [8, 700],
          [20, 1600],
        ],
        { kerfIn: 0 },
      ),
    );
    expect(prove(model, lengthWorths(model)).cents).toBe(1600);
  });

  test('a bound moves up to the next amount that enough boards can cost, and a cost down to the one before', () => {
    // 3 boards of 8 ft at $7 or 10 ft at $9 for three pieces of 90 in.: 21, 23, 25 or 27 dollars.
    const model = modelOf(
      makeProblem(
        [90, 90, 90],
        [
          [8, 700],
          [10, 900],
        ],
        { kerfIn: 0 },
      ),
    );
    const sums = purchaseSums(model, 2700);
    expect(sums.notBelow(2100)).toBe(2100);
    expect(sums.notBelow(2101)).toBe(2300);
    expect(sums.below(2500)).toBe(2300);
    expect(sums.notBelow(2501)).toBe(2700);
    expect(sums.notBelow(5000)).toBe(2700);
  });

  test('fractions of boards cost no more than whole ones, and cut exactly the pieces asked for', () => {
    fc.assert(
      fc.property(anyProblem(9), (problem) => {
        const model = modelOf(problem);
        const { demand } = allOf(model);
        const { columns } = relax(model, allOf(model), [], { cells: 1e9 });
        const cents = columns.reduce((sum, { column, boards }) => sum + column.cents * boards, 0);
        expect(cents).toBeLessThanOrEqual(cheapestByTryingAll(problem) + 1e-4);
        for (const [size, wanted] of demand.entries()) {
          const cut = columns.reduce(
            (sum, { column, boards }) => sum + boards * (column.counts[column.sizes.indexOf(size)] ?? 0),
            0,
          );
          expect(cut).toBeCloseTo(wanted, 6);
        }
      }),
      { numRuns: 80 },
    );
  });
});

test('worths of pieces and of scarce boards together come to what the fractions of boards cost', () => {
  fc.assert(
    // Duality of linear programs: at the end both sides are one, also where only so many boards are to be had for nothing.
    fc.property(anyFullProblem(12), fc.boolean(), (problem, isFree) => {
      const asked = modelOf(problem);
      const model = isFree
        ? {
            ...asked,
            limited: true,
            stocks: asked.stocks.map((stock) => ({ ...stock, cents: 0, available: 2 })),
          }
        : asked;
      const left = allOf(model);
      const { columns, worths, finished } = relax(model, left, [], { cells: 1e9 }, (size) => {
        return model.sizes[size]?.span ?? 1;
      });
      expect(finished).toBe(true);
      const missing = model.sizes.map(
        ({ demand }, size) =>
          demand -
          columns.reduce(
            (sum, { column, boards }) => sum + boards * (column.counts[column.sizes.indexOf(size)] ?? 0),
            0,
          ),
      );
      const cost =
        columns.reduce((sum, { column, boards }) => sum + column.cents * boards, 0) +
        missing.reduce((sum, count, size) => sum + count * (model.sizes[size]?.span ?? 1), 0);
      const worth =
        model.sizes.reduce((sum, { demand }, size) => sum + demand * (worths.worth[size] ?? 0), 0) -
        model.stocks.reduce(
          (sum, { available }, stock) =>
            worths.tax[stock] === 0 ? sum : sum + (worths.tax[stock] ?? 0) * available,
          0,
        );
      expect(Math.abs(worth - cost)).toBeLessThanOrEqual(1e-3 * Math.max(1, cost));
    }),
    { numRuns: 150 },
  );
});

describe('the fill of a board', () => {
  test('agrees with trying every choice', () => {
    const anyItem = fc.record({
      span: fc.integer({ min: 1, max: 30 }),
      most: fc.integer({ min: 0, max: 4 }),
      value: fc.integer({ min: 0, max: 50 }),
    });
    fc.assert(
      fc.property(
        fc.array(anyItem, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 60 }),
        (items, room) => {
          const spans = items.map((item) => item.span);
          const most = items.map((item) => item.most);
          const values = items.map((item) => item.value);
          const fill = bestFill(plainModel(spans, room), most, values);
          let best = 0;
          const tryFrom = (index: number, left: number, value: number): void => {
            best = Math.max(best, value);
            const item = items[index];
            if (item === undefined) return;
            for (let count = 0; count <= item.most && count * item.span <= left; count += 1) {
              tryFrom(index + 1, left - count * item.span, value + count * item.value);
            }
          };
          tryFrom(0, room, 0);
          const counts = fill.countsOf(0);
          expect(fill.valueOf(0)).toBe(best);
          expect(counts.reduce((sum, count, index) => sum + count * (values[index] ?? 0), 0)).toBe(best);
          expect(
            counts.reduce((sum, count, index) => sum + count * (spans[index] ?? 0), 0),
          ).toBeLessThanOrEqual(room);
          for (const [index, count] of counts.entries()) expect(count).toBeLessThanOrEqual(most[index] ?? 0);
        },
      ),
      { numRuns: 300 },
    );
  });
});

/** A model of sizes and one stock, nothing slanted. */
function plainModel(spans: readonly number[], room: number): CuttingModel {
  const model = modelOf(makeProblem([1], [[1, 100]]));
  const [size] = model.sizes;
  const [stock] = model.stocks;
  if (size === undefined || stock === undefined) throw new Error('a model without size and stock');
  return {
    ...model,
    sizes: spans.map((span) => ({ ...size, span })),
    stocks: [{ ...stock, room }],
  };
}

const pieceCount = (one: CuttingModel) => one.sizes.reduce((sum, size) => sum + size.demand, 0);

describe('the fill of a board with slanted pieces', () => {
  test('agrees with trying every set of pieces in every order', () => {
    fc.assert(
      fc.property(
        anyFullProblem(7),
        fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 7, maxLength: 7 }),
        (problem, valueOfSize) => {
          const model = modelOf(problem);
          const fill = bestFill(model, allOf(model).demand, valueOfSize);
          const used = shortestUse(problem);
          const valueOfSet = used.map((_, set) =>
            problem.items.reduce((sum, item, index) => {
              if ((set & (1 << index)) === 0) return sum;
              const size = model.sizes.findIndex(
                ({ sample }) =>
                  sample.lengthSixteenths === item.lengthSixteenths &&
                  sample.slantSixteenths === item.slantSixteenths,
              );
              return sum + (valueOfSize[size] ?? Number.NaN);
            }, 0),
          );
          for (const [stock, { lengthSixteenths }] of model.stocks.entries()) {
            const usable = lengthSixteenths - 2 * problem.endTrimSixteenths;
            const best = Math.max(
              ...valueOfSet.filter((_, set) => (used[set] ?? Number.POSITIVE_INFINITY) <= usable),
            );
            expect(fill.valueOf(stock)).toBe(best);
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('sizes drawn together', () => {
  test('are no more than wanted, keep every piece, and round up and down by the same pieces', () => {
    fc.assert(
      fc.property(anyProblem(60), fc.integer({ min: 2, max: 12 }), (problem, most) => {
        const model = modelOf(problem);
        const { roundedUp, roundedDown, members } = groupSizes(model, most);
        expect(members.length).toBeLessThanOrEqual(most);
        expect(members.flat()).toEqual(model.sizes.map((_, index) => index));
        expect(pieceCount(roundedUp)).toBe(problem.items.length);
        expect(pieceCount(roundedDown)).toBe(problem.items.length);
        for (const [group, sizes] of members.entries()) {
          for (const size of sizes) {
            const span = model.sizes[size]?.span ?? Number.NaN;
            expect(roundedUp.sizes[group]?.span).toBeGreaterThanOrEqual(span);
            expect(roundedDown.sizes[group]?.span).toBeLessThanOrEqual(span);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
