import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestFill } from '../../core/cutting/best-fill.ts';
import { cuttingModel, type CuttingModel } from '../../core/cutting/cutting-model.ts';
import { groupSizes } from '../../core/cutting/group-sizes.ts';
import { lengthBound, longPieceBound, lowerBoundCents } from '../../core/cutting/lower-bound.ts';
import { relax } from '../../core/cutting/relaxation.ts';
import { cheapestByTryingAll } from './brute-force.ts';
import { anyProblem, makeProblem } from './make-problem.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

function modelOf(problem: CuttingProblem): CuttingModel {
  const model = cuttingModel(problem);
  if (!model.ok) throw new Error('no model');
  return model.value;
}

describe('lower bounds', () => {
  test('any worth at all gives a bound that is not above the cheapest', () => {
    fc.assert(
      fc.property(
        anyProblem(8),
        fc.array(fc.double({ min: 0, max: 5000, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (problem, worth) => {
          const cheapest = cheapestByTryingAll(problem);
          expect(lowerBoundCents(modelOf(problem), worth, cheapest + 5000)).toBeLessThanOrEqual(cheapest);
        },
      ),
      { numRuns: 150 },
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
    expect(longPieceBound(model)).toBe(2100);
    expect(lengthBound(model)).toBeLessThan(2100);
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
    expect(lengthBound(model)).toBe(1600);
  });

  test('fractions of boards cost no more than whole ones, and cut exactly the pieces asked for', () => {
    fc.assert(
      fc.property(anyProblem(9), (problem) => {
        const model = modelOf(problem);
        const demand = model.sizes.map((size) => size.demand);
        const { columns } = relax(model, demand, [], { cells: 1e9 });
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
          const fill = bestFill(spans, most, values, room);
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
          const counts = fill.countsForRoom(room);
          expect(fill.valueForRoom[room]).toBe(best);
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

const pieceCount = (one: CuttingModel) => one.sizes.reduce((sum, size) => sum + size.demand, 0);

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
