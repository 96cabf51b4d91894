import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

/** `1 right preferred` for each extender, `2 none no-side-free` for each rafter without one. */
function told({ extenders, unplaced }: EaveLayout): readonly string[] {
  return [
    ...extenders.map(({ rafterNumber, side, because }) => `${rafterNumber} ${side} ${because}`),
    ...unplaced.map(({ rafterNumber, reason }) => `${rafterNumber} none ${reason}`),
  ];
}

type Joist = 'none' | 'left' | 'right' | 'both';

function withJoist(joist: Joist) {
  return makeEave([], { rafters: [{ id: 'r1', readingIn: 100, joist }] });
}

function withChimney(fromIn: number): readonly string[] {
  return told(layOut(makeEave([100], { obstructions: [{ id: 'o', label: 'chimney', fromIn, toIn: 120 }] })));
}

function pin(rafterId: string, side: 'left' | 'right' | 'none') {
  return { rafterId, side };
}

describe('an extender stands on the preferred side unless a ceiling joist does', () => {
  it.each([
    ['none', 'right', '1 right preferred'],
    ['none', 'left', '1 left preferred'],
    ['left', 'right', '1 right preferred'],
    ['left', 'left', '1 right moved'],
    ['right', 'right', '1 left moved'],
    ['right', 'left', '1 left preferred'],
    ['both', 'right', '1 none no-side-free'],
    ['both', 'left', '1 none no-side-free'],
  ] as const)('joist %s, preferred %s: %s', (joist, preferredSide, expected) => {
    expect(told(layOut(withJoist(joist), makeDesign({ preferredSide })))).toEqual([expected]);
  });

  it('face against the rafter, as thick as its stock', () => {
    const [extender] = layOut(withJoist('none')).extenders;
    expect(extender).toMatchObject({ mark: 'A-E01', leftIn: 100.75, rightIn: 102.25, centreIn: 101.5 });
  });

  it('and says what stood in the way', () => {
    const [extender] = layOut(withJoist('right')).extenders;
    expect(extender?.clash).toBe('the ceiling joist right of rafter 1, at 8\' 4-3/4" to 8\' 6-1/4"');
    const { findings } = layOut(withJoist('both'));
    expect(findings.find(({ topic }) => topic === 'no-side-free')).toMatchObject({
      stationIn: 100,
      text: expect.stringMatching(
        /^Rafter 1 at 8' 4" has no side free .* Left: the ceiling joist left of rafter 1/,
      ),
    });
  });
});

describe('what else clashes', () => {
  it('an obstruction that reaches into the place by more than 1/32 in.', () => {
    expect(withChimney(102.25)).toEqual(['1 right preferred']);
    expect(withChimney(102.25 - 1 / 32)).toEqual(['1 right preferred']);
    expect(withChimney(102.25 - 1 / 16)).toEqual(['1 left moved']);
  });

  it('a wide obstruction that begins far to the left', () => {
    const obstructions = [
      { id: 'a', fromIn: 20, toIn: 101.5 },
      { id: 'b', fromIn: 60, toIn: 61 },
    ];
    const { extenders } = layOut(makeEave([14, 100], { obstructions }));
    // The first rafter is free on its right; the second has the obstruction on both sides.
    expect(extenders.map(({ rafterNumber }) => rafterNumber)).toEqual([1]);
  });

  it('a neighbouring rafter too close by', () => {
    expect(told(layOut(makeEave([100, 102.5])))).toEqual(['1 left moved', '2 right preferred']);
  });

  it("the end of the wall: the last rafter's extender does not stand past it", () => {
    expect(told(layOut(makeEave([16, 239.25])))).toEqual(['1 right preferred', '2 left moved']);
    const first = layOut(makeEave([0.75, 100]), makeDesign({ preferredSide: 'left' }));
    expect(told(first)).toEqual(['1 right moved', '2 left preferred']);
    expect(first.extenders[0]?.clash).toBe("it would stand past the wall's left end");
  });

  it('an extender of the neighbour: one bay of 2-1/2 in. takes one, and the neighbour keeps its only room', () => {
    const rafters = [
      { id: 'r1', readingIn: 100 },
      { id: 'r2', readingIn: 104, joist: 'right' as const },
    ];
    // The second can only go left, so the first gives way although it comes first.
    expect(told(layOut(makeEave([], { rafters })))).toEqual(['1 left moved', '2 left moved']);
    const hemmed = [
      { ...rafters[0], id: 'r1', readingIn: 100, joist: 'left' as const },
      rafters[1] ?? { id: 'r2', readingIn: 104 },
    ];
    const layout = layOut(makeEave([], { rafters: hemmed }));
    expect(told(layout)).toEqual(['1 right preferred', '2 none no-side-free']);
    expect(layout.unplaced[0]?.left).toBe('the extender of rafter 1, at 8\' 4-3/4" to 8\' 6-1/4"');
  });
});

describe('pins', () => {
  it('are kept, also against the preferred side', () => {
    const layout = layOut(makeEave([50, 100]), makeDesign({ pins: [pin('r1', 'left')] }));
    expect(told(layout)).toEqual(['1 left pinned', '2 right preferred']);
    expect(layout.extenders[0]?.clash).toBeNull();
  });

  it('that clash stay as pinned, with what stands there and a finding at the station', () => {
    const layout = layOut(withJoist('right'), makeDesign({ pins: [pin('r1', 'right')] }));
    expect(told(layout)).toEqual(['1 right pinned']);
    expect(layout.extenders[0]?.clash).toContain('the ceiling joist right of rafter 1');
    expect(layout.findings).toContainEqual(
      expect.objectContaining({ topic: 'pinned-clash', stationIn: 101.5, structural: false }),
    );
  });

  it('of none leave the rafter without an extender and without a complaint', () => {
    const layout = layOut(makeEave([50, 100]), makeDesign({ pins: [pin('r2', 'none')] }));
    expect(told(layout)).toEqual(['1 right preferred', '2 none pinned-none']);
    expect(layout.findings.map(({ topic }) => topic)).not.toContain('no-side-free');
  });

  it('come before what the program fills in, also from the right', () => {
    const layout = layOut(makeEave([100, 104]), makeDesign({ pins: [pin('r2', 'left')] }));
    expect(told(layout)).toEqual(['1 left moved', '2 left pinned']);
  });

  it('of two neighbours into one narrow bay both stay and both tell the clash', () => {
    const pins = [pin('r1', 'right'), pin('r2', 'left')];
    const layout = layOut(makeEave([100, 104]), makeDesign({ pins }));
    expect(layout.extenders.map(({ clash }) => clash)).toEqual([
      'the extender of rafter 2, at 8\' 5-3/4" to 8\' 7-1/4"',
      'the extender of rafter 1, at 8\' 4-3/4" to 8\' 6-1/4"',
    ]);
  });

  it('on rafters that are no longer there do no harm', () => {
    expect(told(layOut(makeEave([100]), makeDesign({ pins: [pin('gone', 'left')] })))).toEqual([
      '1 right preferred',
    ]);
  });
});

describe('no other choice of sides', () => {
  const rafter = fc.record({
    clearIn: fc.constantFrom(0, 1, 1.5, 2, 2.5, 3, 14.5),
    joist: fc.constantFrom<Joist>('none', 'left', 'right', 'both'),
  });

  it('places more extenders, or as many with more on the preferred side (all choices tried)', () => {
    fc.assert(
      fc.property(fc.array(rafter, { minLength: 1, maxLength: 6 }), (list) => {
        const rafters = list.map(({ clearIn, joist }, index) => ({
          id: `r${index}`,
          readingIn: clearIn,
          joist,
        }));
        const layout = layOut(makeEave([], { lengthIn: 90, readingMode: 'bays-clear', rafters }));
        const best = bestByTrial(layout);
        const preferred = layout.extenders.filter(({ side }) => side === 'right').length;
        expect([layout.extenders.length, preferred]).toEqual(best);
      }),
      { numRuns: 300 },
    );
  });
});

/** Tries left, right and none at every rafter and keeps the best that clashes nowhere. */
function bestByTrial({ rafters, occupied, wallLengthIn }: EaveLayout): readonly [number, number] {
  type Place = { readonly from: number; readonly to: number };
  const free = (place: Place, taken: readonly Place[]) =>
    place.from > -1 / 32 &&
    place.to < wallLengthIn + 1 / 32 &&
    taken.every(({ from, to }) => place.to <= from + 1 / 32 || place.from >= to - 1 / 32);
  let best: readonly [number, number] = [0, 0];
  const walk = (index: number, taken: readonly Place[], placed: number, preferred: number): void => {
    const rafter = rafters[index];
    if (rafter === undefined) {
      if (placed > best[0] || (placed === best[0] && preferred > best[1])) best = [placed, preferred];
      return;
    }
    walk(index + 1, taken, placed, preferred);
    const left = { from: rafter.leftFaceIn - 1.5, to: rafter.leftFaceIn };
    const right = { from: rafter.rightFaceIn, to: rafter.rightFaceIn + 1.5 };
    if (free(left, taken)) walk(index + 1, [...taken, left], placed + 1, preferred);
    if (free(right, taken)) walk(index + 1, [...taken, right], placed + 1, preferred + 1);
  };
  walk(
    0,
    occupied.map(({ leftIn, rightIn }) => ({ from: leftIn, to: rightIn })),
    0,
    0,
  );
  return best;
}
