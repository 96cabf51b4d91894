import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

const noExtenders = (...ids: readonly string[]) =>
  makeDesign({ pins: ids.map((rafterId) => ({ rafterId, side: 'none' as const })) });

function hung(rest: Parameters<typeof makeDesign>[0] = {}) {
  return makeDesign({ addedTails: [{ id: 'mine', stationIn: 54 }], ...rest });
}

describe('the block between two rafters', () => {
  // Computed here: spacing less the thickness of what stands there.
  it('at 24 in. on centre is 22-1/2 in. between plain rafters', () => {
    const [bay] = layOut(makeEave([40, 64]), noExtenders('r1', 'r2')).bays;
    expect(bay).toMatchObject({
      mark: 'A-B01',
      leftRafterId: 'r1',
      fromIn: 40.75,
      toIn: 63.25,
      clearIn: 22.5,
    });
  });

  it('is 21 in. where an extender takes its thickness out of the bay', () => {
    const [first] = layOut(makeEave([40, 64])).bays;
    expect(first).toMatchObject({ fromIn: 42.25, clearIn: 21, block: 'block' });
  });

  it('is shorter by a joist, too, whichever rafter it lies on', () => {
    const rafters = [
      { id: 'r1', readingIn: 40, joist: 'left' as const },
      { id: 'r2', readingIn: 64, joist: 'left' as const, joistThicknessIn: 2 },
    ];
    const [bay, none] = layOut(makeEave([], { rafters })).bays;
    expect(bay).toMatchObject({ fromIn: 42.25, toIn: 61.25, clearIn: 19 });
    expect(none).toBeUndefined();
  });

  it('stops at what else stands there, and both parts are named by the rafter on their left', () => {
    const obstructions = [{ id: 'o', label: 'vent pipe', fromIn: 50, toIn: 54 }];
    const { bays } = layOut(makeEave([40, 64], { obstructions }), noExtenders('r1', 'r2'));
    expect(bays.map(({ mark, leftRafterId, clearIn }) => [mark, leftRafterId, clearIn])).toEqual([
      ['A-B01', 'r1', 9.25],
      ['A-B02', 'r1', 9.25],
    ]);
  });

  it('starts behind what a rafter stands in the middle of', () => {
    const obstructions = [{ id: 'o', label: 'chimney', fromIn: 30, toIn: 50 }];
    const { bays } = layOut(makeEave([40, 64], { obstructions }), noExtenders('r1', 'r2'));
    expect(bays.map(({ fromIn, toIn }) => [fromIn, toIn])).toEqual([[50, 63.25]]);
  });

  it('is none before the first rafter or after the last, whatever else stands there', () => {
    const obstructions = [
      { id: 'a', fromIn: 2, toIn: 6 },
      { id: 'b', fromIn: 200, toIn: 210 },
    ];
    const { bays } = layOut(makeEave([40, 64], { obstructions }));
    expect(bays.map(({ fromIn, toIn }) => [fromIn, toIn])).toEqual([[42.25, 63.25]]);
  });
});

function withBlocks(openBays: string[], wanted = true) {
  return makeDesign({ blocks: { stock: { section: '2x6' }, wanted, openBays } });
}

describe('a bay gets no block', () => {
  it('where it is left open, named by the rafter on its left', () => {
    const { bays } = layOut(makeEave([40, 64, 88]), withBlocks(['r2']));
    expect(bays.map(({ block }) => block)).toEqual(['block', 'left-open']);
  });

  it('where blocks are not wanted', () => {
    expect(layOut(makeEave([40, 64, 88]), withBlocks([], false)).bays.map(({ block }) => block)).toEqual([
      'left-open',
      'left-open',
    ]);
  });

  it('where it is narrower than 1-1/2 in., which is told', () => {
    const layout = layOut(makeEave([40, 43]), noExtenders('r1', 'r2'));
    expect(layout.bays[0]?.block).toBe('block');
    const narrow = layOut(makeEave([40, 42.75]), noExtenders('r1', 'r2'));
    expect(narrow.bays[0]).toMatchObject({ block: 'too-narrow', clearIn: 1.25 });
    expect(narrow.findings.find(({ topic }) => topic === 'bay-too-narrow')).toMatchObject({
      stationIn: 41.375,
      text: 'Right of rafter 1: a bay is narrower than 1-1/2" and gets no block. Close the gap another way.',
    });
  });
});

describe('a hung tail', () => {
  it('splits its bay into two, each with its own block', () => {
    const { bays } = layOut(makeEave([40, 64]), hung());
    expect(
      bays.map(({ mark, fromIn, toIn, clearIn, block }) => [mark, fromIn, toIn, clearIn, block]),
    ).toEqual([
      ['A-B01', 42.25, 53.25, 11, 'block'],
      ['A-B02', 54.75, 63.25, 8.5, 'block'],
    ]);
  });

  it('is blocked on both sides even where no blocks are wanted, unless its bay is left open', () => {
    const blocks = { stock: { section: '2x6' }, wanted: false };
    const without = layOut(makeEave([40, 64, 88]), hung({ blocks }));
    expect(without.bays.map(({ block }) => block)).toEqual(['block', 'block', 'left-open']);
    const open = layOut(makeEave([40, 64]), hung({ blocks: { ...blocks, openBays: ['r1'] } }));
    expect(open.bays.map(({ block }) => block)).toEqual(['left-open', 'left-open']);
  });

  it('takes out the old block of its bay', () => {
    const pins = [
      { rafterId: 'r1', side: 'left' as const },
      { rafterId: 'r2', side: 'right' as const },
    ];
    const { bays } = layOut(makeEave([40, 64], { hasOldBlocks: true }), hung({ pins }));
    expect(bays.map(({ oldBlockOut }) => oldBlockOut)).toEqual([true, false]);
  });
});

describe("an old block that is in nobody's way stays", () => {
  const pins = [{ rafterId: 'r3', side: 'right' as const }];
  const left = (rest: Parameters<typeof makeEave>[1]) =>
    layOut(makeEave([40, 64, 88], rest), makeDesign({ preferredSide: 'left', pins })).bays;

  it('and its bay gets no new one', () => {
    expect(left({ hasOldBlocks: true }).map(({ block, oldBlockOut }) => [block, oldBlockOut])).toEqual([
      ['block', true],
      ['old-stays', false],
    ]);
  });

  it('also where only this bay has one', () => {
    expect(left({ otherOldBlocks: ['r2'] }).map(({ block }) => block)).toEqual(['block', 'old-stays']);
  });

  it('and is not thought of in a bay without one', () => {
    const bays = left({ hasOldBlocks: true, otherOldBlocks: ['r1', 'r2'] });
    expect(bays.map(({ block, oldBlockOut }) => [block, oldBlockOut])).toEqual([
      ['block', false],
      ['block', false],
    ]);
  });

  it('but comes out where the bay is to be open for a vent', () => {
    const eave = makeEave([40, 64, 88], { hasOldBlocks: true });
    const blocks = { stock: { section: '2x6' }, openBays: ['r2'] };
    const { bays } = layOut(eave, makeDesign({ preferredSide: 'left', pins, blocks }));
    expect(bays[1]).toMatchObject({ block: 'left-open', oldBlockOut: true });
  });
});

describe('an old block has to come out', () => {
  const old = { hasOldBlocks: true };

  it('where an extender stands in its bay, from either rafter', () => {
    expect(layOut(makeEave([40, 64, 88], old)).bays.map(({ oldBlockOut }) => oldBlockOut)).toEqual([
      true,
      true,
    ]);
    const left = layOut(
      makeEave([40, 64, 88], old),
      makeDesign({ preferredSide: 'left', pins: [{ rafterId: 'r3', side: 'right' }] }),
    );
    expect(left.bays.map(({ oldBlockOut }) => oldBlockOut)).toEqual([true, false]);
  });

  it('but not where none stands, or where there were no old blocks', () => {
    expect(layOut(makeEave([40, 64], old), noExtenders('r1', 'r2')).bays[0]?.oldBlockOut).toBe(false);
    expect(layOut(makeEave([40, 64])).bays[0]?.oldBlockOut).toBe(false);
  });

  it('once, even where something else splits the gap between two rafters', () => {
    const obstructions = [{ id: 'o', label: 'vent pipe', fromIn: 50, toIn: 54 }];
    const { bays } = layOut(makeEave([40, 64], { ...old, obstructions }));
    expect(bays.map(({ oldBlockOut }) => oldBlockOut)).toEqual([true, false]);
  });
});

describe('along any wall', () => {
  const rafter = fc.record({
    clearIn: fc.integer({ min: 4 * 16, max: 26 * 16 }).map((sixteenths) => sixteenths / 16),
    thicknessIn: fc.constantFrom(1.5, 1.625, 2),
    joist: fc.constantFrom('none' as const, 'left' as const, 'right' as const, 'both' as const),
  });

  it('bays, members and the two end gaps add up to the wall', () => {
    fc.assert(
      fc.property(fc.array(rafter, { minLength: 1, maxLength: 15 }), (list) => {
        const rafters = list.map(({ clearIn, ...rest }, index) => ({
          id: `r${index}`,
          readingIn: clearIn,
          ...rest,
        }));
        const layout = layOut(makeEave([], { lengthIn: 500, readingMode: 'bays-clear', rafters }));
        const standing = [...layout.occupied, ...layout.extenders];
        // Nothing overlaps here, so what stands adds up by itself.
        const members = standing.reduce((sum, { leftIn, rightIn }) => sum + rightIn - leftIn, 0);
        const bays = layout.bays.reduce((sum, { clearIn }) => sum + clearIn, 0);
        const before = Math.min(...standing.map(({ leftIn }) => leftIn));
        const after = 500 - Math.max(...standing.map(({ rightIn }) => rightIn));
        expect(bays + members + before + after).toBeCloseTo(500, 6);
        for (const { fromIn, toIn, clearIn } of layout.bays) {
          expect(toIn - fromIn).toBe(clearIn);
          expect(
            standing.some(({ leftIn, rightIn }) => leftIn < toIn - 1e-9 && rightIn > fromIn + 1e-9),
          ).toBe(false);
        }
      }),
    );
  });
});
