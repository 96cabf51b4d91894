import { assert, double, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asBuiltSchema, designSchema } from '../../core/eave/design-document.ts';
import { placeRafters } from '../../core/survey/place-rafters.ts';
import type { Documents } from '../../renderer/job/editor/documents.ts';
import { withValueAt } from '../../renderer/job/editor/documents.ts';
import { dropPlace, rafterAt, sidesOf } from '../../renderer/job/editor/drop-place.ts';
import { addEave, removeEave } from '../../renderer/job/editor/eave-list.ts';
import { removeRafter } from '../../renderer/job/editor/rafter-list.ts';
import {
  addTail,
  hungForRafter,
  idAfterMove,
  isPinned,
  moveTail,
  pinAsItStands,
  pinTail,
  releaseTail,
  removeTail,
  type TailInHand,
} from '../../renderer/job/editor/tail-edits.ts';
import { oneEave } from './fixture.ts';

const thicknessIn = 1.5;

function wallOf(documents: Documents) {
  const eave = documents.survey.eaves[0];
  if (eave === undefined) throw new Error('the fixture has an eave');
  const placed = placeRafters(eave, 0);
  if (!placed.ok) throw new Error('the fixture can be placed');
  return { rafters: placed.value.rafters, wallLengthIn: eave.lengthIn };
}

function designOf(documents: Documents) {
  const design = documents.design.eaves[0];
  if (design === undefined) throw new Error('the fixture has a design');
  expect(designSchema.safeParse(documents.design).success).toBe(true);
  return design;
}

const built = (eaveId: string, extenderId: string) => asBuiltSchema.parse({ eaveId, extenderId });

const house = oneEave(['16', '40', '64']);
const beside: TailInHand = {
  id: 'r2',
  method: 'side',
  rafterId: 'r2',
  side: 'right',
  centreIn: 41.5,
  because: 'preferred',
};
const hungByProgram: TailInHand = {
  id: 'gap-1',
  method: 'block-hung',
  rafterId: 'r1',
  side: 'right',
  centreIn: 28.25,
  because: 'gap',
};

describe('a tail that is let go on the wall', () => {
  const wall = wallOf(house);

  test('is drawn to the side of a rafter within reach, and hangs free beyond it', () => {
    // Rafter 2, 1-1/2 thick, centre 40: its right face at 40-3/4, a tail against it centred at 41-1/2.
    expect(dropPlace(wall, thicknessIn, 42.4, 1)).toEqual({
      kind: 'beside',
      rafterId: 'r2',
      rafterNumber: 2,
      side: 'right',
      stationIn: 41.5,
    });
    expect(dropPlace(wall, thicknessIn, 43, 1)).toEqual({ kind: 'hung', stationIn: 43 });
    expect(dropPlace(wall, thicknessIn, 51.98, 1)).toEqual({ kind: 'hung', stationIn: 52 });
  });

  test('never stands in a rafter nor past the wall, wherever it is let go', () => {
    assert(
      property(
        double({ min: -50, max: 400, noNaN: true }),
        double({ min: 0, max: 3, noNaN: true }),
        (stationIn, reachIn) => {
          const place = dropPlace(wall, thicknessIn, stationIn, reachIn);
          expect(rafterAt(wall, thicknessIn, place.stationIn)).toBeUndefined();
          if (place.kind === 'beside') return;
          expect(place.stationIn).toBeGreaterThanOrEqual(thicknessIn / 2);
          expect(place.stationIn).toBeLessThanOrEqual(wall.wallLengthIn - thicknessIn / 2);
          expect(Number.isInteger(place.stationIn * 16)).toBe(true);
        },
      ),
    );
  });

  test('finds the place of either side again by its station', () => {
    assert(
      property(integer({ min: 0, max: 2 }), integer({ min: 0, max: 1 }), (rafter, side) => {
        const place = sidesOf(wall.rafters[rafter]!, thicknessIn)[side]!;
        expect(dropPlace(wall, thicknessIn, place.stationIn, 1 / 32)).toEqual(place);
      }),
    );
  });
});

describe('a tail taken in hand', () => {
  const other = { kind: 'beside', rafterId: 'r3', rafterNumber: 3, side: 'left', stationIn: 62.5 } as const;

  test('brought to the other side of its rafter is pinned there', () => {
    const place = { ...other, rafterId: 'r2', rafterNumber: 2 } as const;
    expect(designOf(moveTail(house, 0, beside, place)).pins).toEqual([{ rafterId: 'r2', side: 'left' }]);
  });

  test('brought into a bay hangs there, and its rafter goes without', () => {
    const moved = moveTail(house, 0, beside, { kind: 'hung', stationIn: 50 });
    const design = designOf(moved);
    expect(design.addedTails).toEqual([{ id: 't1', stationIn: 50 }]);
    expect(design.pins).toEqual([{ rafterId: 'r2', side: 'none' }]);
    expect(idAfterMove(designOf(house), [], beside, { kind: 'hung', stationIn: 50 })).toBe('t1');
    const again = moveTail(moved, 0, { ...hungByProgram, id: 't1' }, { kind: 'hung', stationIn: 51 });
    expect(designOf(again).addedTails).toEqual([{ id: 't1', stationIn: 51 }]);
  });

  test('brought from a bay to a rafter is no longer hung', () => {
    const hung = addTail(house, 0, 28);
    const moved = moveTail(hung, 0, { ...hungByProgram, id: 't1' }, other);
    expect(designOf(moved).addedTails).toEqual([]);
    expect(designOf(moved).pins).toEqual([{ rafterId: 'r3', side: 'left' }]);
  });

  test('that the program hung becomes the person’s once it is moved or pinned', () => {
    const pinned = pinAsItStands(house, 0, hungByProgram);
    expect(designOf(pinned).addedTails).toEqual([{ id: 't1', stationIn: 28.25 }]);
    expect(isPinned(designOf(pinned), { ...hungByProgram, id: 't1' })).toBe(true);
    expect(isPinned(designOf(house), hungByProgram)).toBe(false);
  });

  test('is left to the program again by releasing it', () => {
    const pinned = pinAsItStands(house, 0, beside);
    expect(designOf(pinned).pins).toEqual([{ rafterId: 'r2', side: 'right', method: 'side' }]);
    expect(releaseTail(pinned, 0, beside).design).toEqual(house.design);
    expect(releaseTail(addTail(house, 0, 28), 0, { ...hungByProgram, id: 't1' }).design).toEqual(
      house.design,
    );
  });

  test('bears an id that no rafter has, and takes what was built of it along when it goes', () => {
    expect(idAfterMove(designOf(house), [{ id: 't4' }], beside, { kind: 'hung', stationIn: 50 })).toBe('t5');
    const eaveId = designOf(house).eaveId;
    const hung = withValueAt(addTail(house, 0, 28), 'design.asBuilt', [
      built(eaveId, 't1'),
      built(eaveId, 'r1'),
    ]);
    const without = releaseTail(hung, 0, { ...hungByProgram, id: 't1' });
    expect(without.design.asBuilt.map(({ extenderId }) => extenderId)).toEqual(['r1']);
  });

  test('is taken away: from its rafter, of one’s own, or one that the program would hang', () => {
    expect(designOf(removeTail(house, 0, beside)).pins).toEqual([{ rafterId: 'r2', side: 'none' }]);
    const own = { ...hungByProgram, id: 't1' };
    expect(removeTail(addTail(house, 0, 28), 0, own).design).toEqual(house.design);
    expect(designOf(removeTail(house, 0, hungByProgram)).layout.baysWithoutTail).toEqual(['r1']);
  });
});

describe('a tail hung for a rafter by its pin', () => {
  // Rafter 2's tail is to hang in the bay on its left, which rafter 1 names.
  const pinned = pinTail(house, 0, 'r2', { side: 'left', method: 'block-hung' });
  const tail: TailInHand = { ...hungByProgram, because: 'pinned' };

  test('is held by that pin, and released with it', () => {
    expect(isPinned(designOf(pinned), tail)).toBe(true);
    expect(hungForRafter(designOf(pinned), [{ id: 'r1' }, { id: 'r2' }], tail)).toBe('r2');
    expect(releaseTail(pinned, 0, tail).design).toEqual(house.design);
  });

  test('leaves its rafter without where it is taken away or brought elsewhere', () => {
    expect(designOf(removeTail(pinned, 0, tail)).pins).toEqual([{ rafterId: 'r2', side: 'none' }]);
    const moved = designOf(moveTail(pinned, 0, tail, { kind: 'hung', stationIn: 50 }));
    expect(moved.pins).toEqual([{ rafterId: 'r2', side: 'none' }]);
    expect(moved.addedTails).toEqual([{ id: 't1', stationIn: 50 }]);
    const back = { kind: 'beside', rafterId: 'r2', rafterNumber: 2, side: 'right', stationIn: 41.5 } as const;
    expect(designOf(moveTail(pinned, 0, tail, back)).pins).toEqual([{ rafterId: 'r2', side: 'right' }]);
  });
});

describe('what named a rafter or an eave', () => {
  test('goes with the rafter', () => {
    const eaveId = designOf(house).eaveId;
    let named = pinTail(house, 0, 'r2', { side: 'left' });
    named = removeTail(named, 0, { ...hungByProgram, rafterId: 'r2' });
    named = withValueAt(named, 'survey.eaves.0.otherOldBlocks', ['r1', 'r2']);
    named = withValueAt(named, 'design.asBuilt', [built(eaveId, 'r1'), built(eaveId, 'r2')]);
    const without = removeRafter(named, 0, 1);
    expect(designOf(without).pins).toEqual([]);
    expect(designOf(without).layout.baysWithoutTail).toEqual([]);
    expect(without.survey.eaves[0]?.otherOldBlocks).toEqual(['r1']);
    expect(without.design.asBuilt.map(({ extenderId }) => extenderId)).toEqual(['r1']);
  });

  test('goes with the eave: as built with its half-typed entries, and the other eaves’ ends that met it', () => {
    const two = addEave(house, []);
    const [first, second] = two.survey.eaves.map(({ id }) => id);
    if (first === undefined || second === undefined) throw new Error('two eaves were added');
    let named = withValueAt(two, 'design.eaves.0.ends.right', { kind: 'inside-corner', meets: second });
    named = withValueAt(named, 'design.asBuilt', [built(second, 'r1'), built(first, 'r1')]);
    named = { ...named, drafts: { ...named.drafts, 'design.asBuilt.1.stationIn': '2 ft' } };
    const without = removeEave(named, 1);
    expect(without.design.eaves[0]?.ends.right).toEqual({ kind: 'free', meets: '' });
    expect(without.design.asBuilt.map(({ eaveId }) => eaveId)).toEqual([first]);
    expect(without.drafts['design.asBuilt.0.stationIn']).toBe('2 ft');
  });

  test('is not taken over by the next eave’s design', () => {
    let named = addTail(pinTail(house, 0, 'r2', { side: 'left' }), 0, 28);
    named = withValueAt(named, 'design.eaves.0.ends.left', { kind: 'outside-corner', meets: 'eave-9' });
    const next = addEave(named, []).design.eaves[1];
    expect(next).toMatchObject({ pins: [], addedTails: [], ends: { left: { kind: 'free', meets: '' } } });
  });
});
