import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EaveDesign } from '../../core/eave/design-document.ts';
import { placeTails } from '../../core/layout/place-tails.ts';
import { prepare } from '../../core/layout/solver/choices.ts';
import { solve } from '../../core/layout/solver/solve.ts';
import { placeAbout, type Wall } from '../../core/layout/solver/wall.ts';
import type { Occupied, PlacedRafter } from '../../core/layout/layout-types.ts';
import { anyWall } from './any-wall.ts';

/** The same wall seen in a mirror: what stood left stands right. */
function mirrored(wall: Wall): Wall {
  const { lengthIn } = wall;
  const turned = <T extends { readonly leftIn: number; readonly rightIn: number }>(one: T): T => ({
    ...one,
    leftIn: lengthIn - one.rightIn,
    rightIn: lengthIn - one.leftIn,
  });
  const rafters = wall.rafters.toReversed().map(
    (rafter, index): PlacedRafter => ({
      ...rafter,
      number: index + 1,
      centreIn: lengthIn - rafter.centreIn,
      leftFaceIn: lengthIn - rafter.rightFaceIn,
      rightFaceIn: lengthIn - rafter.leftFaceIn,
    }),
  );
  const occupied: readonly Occupied[] = wall.occupied.map(turned).toSorted((a, b) => a.leftIn - b.leftIn);
  const preferredSide = wall.design.preferredSide === 'left' ? 'right' : 'left';
  return { ...wall, rafters, occupied, design: { ...wall.design, preferredSide } };
}

const plain = anyWall.map((wall): Wall => ({ ...wall, wholeSheetIn: null }));

function overlap(
  one: { leftIn: number; rightIn: number },
  other: { leftIn: number; rightIn: number },
): number {
  return Math.min(one.rightIn, other.rightIn) - Math.max(one.leftIn, other.leftIn);
}

describe('any wall', () => {
  it('is laid out in a mirror as well as it is', () => {
    fc.assert(
      fc.property(plain, (wall) => {
        const { squares, ...score } = solve(prepare(wall).choices).score;
        const other = solve(prepare(mirrored(wall)).choices).score;
        expect(other).toMatchObject(score);
        // Middles count in 64ths, and half a one is rounded up on both sides of the mirror.
        expect(Math.abs(other.squares - squares)).toBeLessThan(squares / 500);
      }),
    );
  });

  it('is laid out alike each time', () => {
    fc.assert(
      fc.property(anyWall, (wall) => {
        expect(placeTails(structuredClone(wall))).toEqual({
          ...placeTails(wall),
          prepared: expect.anything(),
        });
      }),
      { numRuns: 50 },
    );
  });

  it('gets no tail that runs into old framing, another tail or past an end, and room to nail each hung one', () => {
    fc.assert(
      fc.property(anyWall, (wall) => {
        const { tails } = placeTails(wall);
        for (const [index, tail] of tails.entries()) {
          const reach =
            tail.method === 'block-hung' ? { leftIn: tail.leftIn - 0.5, rightIn: tail.rightIn + 0.5 } : tail;
          const others = [...wall.occupied, ...tails.filter((_, other) => other !== index)];
          for (const other of others) expect(overlap(reach, other)).toBeLessThanOrEqual(1 / 32 + 1e-9);
          expect(tail.leftIn).toBeGreaterThanOrEqual(-1 / 32);
          expect(tail.rightIn).toBeLessThanOrEqual(wall.lengthIn + 1 / 32);
        }
      }),
    );
  });

  it('leaves no rafter without a tail that has a side free, and gives each at most one', () => {
    fc.assert(
      fc.property(anyWall, (wall) => {
        const { tails, unplaced } = placeTails(wall);
        for (const { left, right } of unplaced) expect([left, right]).not.toContain('free');
        const own = tails.map(({ method, standsFor, rafter }) =>
          method === 'block-hung' ? standsFor : rafter.id,
        );
        const named = own.filter((id) => id !== null);
        expect(new Set(named).size).toBe(named.length);
        expect(named.length + unplaced.length).toBe(wall.rafters.length);
      }),
    );
  });
});

describe('what the person set', () => {
  const pin = fc.constantFrom<readonly ['left' | 'right' | 'none', EaveDesign['pins'][number]['method']]>(
    ['left', undefined],
    ['right', undefined],
    ['none', undefined],
    ['left', 'side'],
    ['right', 'filler'],
  );

  it('stands as it was set, whatever it runs into, and nothing that was not set runs into it', () => {
    fc.assert(
      fc.property(
        anyWall,
        fc.array(pin, { minLength: 4, maxLength: 4 }),
        fc.nat({ max: 1000 }),
        (wall, sides, at) => {
          const pins = wall.rafters.flatMap(({ id }, index) => {
            const [side, method] = sides[index] ?? ['none', undefined];
            return index % 2 === 0
              ? [{ rafterId: id, side, ...(method === undefined ? {} : { method }) }]
              : [];
          });
          const stationIn = Math.round((wall.lengthIn * at) / 1000);
          const design = { ...wall.design, pins, addedTails: [{ id: 'mine', stationIn }] };
          const { tails } = placeTails({ ...wall, design });
          for (const { rafterId, side } of pins) {
            const own = tails.filter(
              ({ rafter, method }) => rafter.id === rafterId && method !== 'block-hung',
            );
            expect(own.map((tail) => tail.side)).toEqual(side === 'none' ? [] : [side]);
            expect(own.every(({ because }) => because === 'pinned')).toBe(true);
          }
          expect(tails.find(({ id }) => id === 'mine')).toMatchObject(placeAbout(stationIn, wall));
          const set = tails.filter(({ because }) => because === 'pinned');
          for (const free of tails.filter(({ because }) => because !== 'pinned'))
            for (const one of set) expect(overlap(free, one)).toBeLessThanOrEqual(1 / 32 + 1e-9);
        },
      ),
      { numRuns: 200 },
    );
  });
});
