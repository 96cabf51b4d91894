import { clashToleranceIn, type Interval } from '../in-the-way.ts';
import { rafterAt } from './beside-rafter.ts';
import { nailingRoomIn, type Wall } from './wall.ts';

/** Where the middle of a hung tail may be, from one end to the other. [in] */
export type HungRoom = { readonly fromIn: number; readonly toIn: number };

/**
 * Where hung tails may stand between two neighbouring rafters: clear of what stands on the plate by their thickness and
 * room to nail on each side. None beside a rotten rafter, which holds no header block.
 * @param leftIndex - of the rafter on the left.
 * @param wall - the wall. [in]
 * @param solid - what stands on the plate, merged, from left to right. [in]
 * @returns from left to right. Worked: rafters 1-1/2 thick at 16 and 40, tail 1-1/2 -> middles from 18 to 38.
 */
export function hungRooms(leftIndex: number, wall: Wall, solid: readonly Interval[]): readonly HungRoom[] {
  const left = rafterAt(leftIndex, wall);
  const right = rafterAt(leftIndex + 1, wall);
  if (left.condition === 'rotten' || right.condition === 'rotten') return [];
  const needIn = wall.thicknessIn / 2 + nailingRoomIn;
  const rooms: HungRoom[] = [];
  for (let index = stretchUpTo(left.rightFaceIn, solid); index < solid.length; index += 1) {
    const [before, after] = [solid[index], solid[index + 1]];
    if (before === undefined || after === undefined || before.rightIn >= right.leftFaceIn) break;
    const fromIn = before.rightIn + needIn;
    const toIn = after.leftIn - needIn;
    if (toIn >= fromIn - clashToleranceIn) rooms.push({ fromIn, toIn: Math.max(fromIn, toIn) });
  }
  return rooms;
}

/** Index of the stretch that a rafter's right face belongs to. */
function stretchUpTo(faceIn: number, solid: readonly Interval[]): number {
  let low = 0;
  let high = solid.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((solid[middle]?.rightIn ?? 0) < faceIn - 1e-9) low = middle + 1;
    else high = middle;
  }
  return low;
}
