import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepare } from '../../core/layout/solver/choices.ts';
import { evenedOut } from '../../core/layout/solver/settle.ts';
import { solve } from '../../core/layout/solver/solve.ts';
import { makeEave } from '../survey/make-eave.ts';
import { bestOfAllWays } from './all-ways.ts';
import { makeDesign } from './make-layout.ts';
import { makeWall } from './make-wall.ts';

type Joist = 'none' | 'left' | 'right' | 'both';

const rafter = fc.record({
  clearIn: fc.constantFrom(3, 6, 9, 14.5, 18, 22.5, 30),
  joist: fc.constantFrom<Joist>('none', 'none', 'left', 'right', 'both', 'both'),
});

const wall = fc
  .record({
    rafters: fc.array(rafter, { minLength: 1, maxLength: 4 }),
    restIn: fc.constantFrom(0, 1, 2, 8),
    largestGapIn: fc.constantFrom(16, 20, 24, 30),
    sheetLengthIn: fc.constantFrom(32, 48, 61),
    kind: fc.constantFrom<'panels' | 'planks'>('panels', 'planks'),
    allowFiller: fc.boolean(),
    allowBlockHung: fc.boolean(),
    otherSide: fc.constantFrom(0, 1),
    pipe: fc.option(fc.constantFrom(20, 27, 40, 52), { nil: undefined }),
  })
  .map(({ rafters, restIn, largestGapIn, sheetLengthIn, kind, otherSide, pipe, ...allow }) => {
    const lengthIn = Math.max(
      12,
      restIn + rafters.map(({ clearIn }) => clearIn + 1.5).reduce((sum, one) => sum + one),
    );
    const survey = makeEave([], {
      lengthIn,
      readingMode: 'bays-clear',
      rafters: rafters.map(({ clearIn, joist }, index) => ({ id: `r${index}`, readingIn: clearIn, joist })),
      obstructions:
        pipe === undefined || pipe + 3 > lengthIn
          ? []
          : [{ id: 'p', label: 'pipe', fromIn: pipe, toIn: pipe + 3 }],
    });
    const design = makeDesign({
      sheathing: { kind },
      layout: { ...allow, allowFullLength: false, largestGapIn },
    });
    const built = makeWall(survey, design, { sheetLengthIn });
    return { ...built, weights: { ...built.weights, otherSide } };
  });

describe('the solver', () => {
  it('finds nothing worse than trying all ways does', () => {
    fc.assert(
      fc.property(wall, (one) => {
        const { chosen, score } = solve(prepare(one).choices);
        const { squares, ...best } = bestOfAllWays(one, 3);
        expect(score).toMatchObject(best);
        const stops = [one.fromIn, ...evenedOut(chosen, one).map(({ centreIn }) => centreIn), one.toIn];
        const own = stops.slice(1).reduce((sum, stop, index) => sum + (stop - (stops[index] ?? 0)) ** 2, 0);
        // The one counts in 64ths, the other as it is.
        expect(Math.abs(own - squares / 64 ** 2)).toBeLessThan(1 + own / 1000);
      }),
      { numRuns: Number(process.env['RUNS'] ?? 60) },
    );
  }, 60_000);
});
