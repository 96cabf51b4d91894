import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepare } from '../../core/layout/solver/choices.ts';
import { evenedOut } from '../../core/layout/solver/settle.ts';
import { solve } from '../../core/layout/solver/solve.ts';
import { anyWall } from './any-wall.ts';
import { bestOfAllWays } from './all-ways.ts';

describe('the solver', () => {
  it('finds nothing worse than trying all ways does', () => {
    fc.assert(
      fc.property(anyWall, (bare) => {
        const { choices, wall: one } = prepare(bare);
        const { chosen, score } = solve(choices);
        const { squares, ...best } = bestOfAllWays(one, 3);
        expect(score).toMatchObject(best);
        const stops = [one.fromIn, ...evenedOut(chosen, one).map(({ centreIn }) => centreIn), one.toIn];
        const own = stops.slice(1).reduce((sum, stop, index) => sum + (stop - (stops[index] ?? 0)) ** 2, 0);
        // The one counts in 64ths, the other as it is.
        expect(Math.abs(own - squares / 64 ** 2)).toBeLessThan(1 + own / 1000);
      }),
      { numRuns: 60 },
    );
  }, 60_000);
});
