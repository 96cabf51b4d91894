import type { EaveDesign } from '../eave/design-document.ts';
import { chooseSides } from './choose-sides.ts';
import { inTheWay } from './in-the-way.ts';
import type { LayoutMeans } from './layout-means.ts';
import type { Occupied, PlacedRafter, Unplaced } from './layout-types.ts';
import type { TailPlace } from './tail-place.ts';

/** The tails of an eave from left to right, and the rafters that get none. */
export type PlacedTails = { readonly tails: readonly TailPlace[]; readonly unplaced: readonly Unplaced[] };

/** Least clear room for nailing on each side of a hung tail. [in] Common practice, no source. */
const nailingRoomIn = 0.5;

export function placeTails(
  rafters: readonly PlacedRafter[],
  occupied: readonly Occupied[],
  wallLengthIn: number,
  thicknessIn: number,
  design: EaveDesign,
  _means: LayoutMeans,
): PlacedTails {
  const tails: TailPlace[] = [];
  const unplaced: Unplaced[] = [];
  for (const choice of chooseSides(rafters, occupied, wallLengthIn, thicknessIn, design)) {
    const { rafter } = choice;
    if (choice.kind === 'placed') {
      const { side, because, clash, leftIn, rightIn } = choice;
      tails.push({
        id: rafter.id,
        method: 'side',
        rafter,
        rightRafter: null,
        side,
        because,
        clash,
        leftIn,
        rightIn,
        fillerIn: null,
        inPlace: false,
      });
      continue;
    }
    const standing = inTheWay([...occupied, ...tails]);
    const clash = `${choice.left}; ${choice.right}`;
    const filler = (['left', 'right'] as const).flatMap((side) => {
      const joist = occupied.find(
        ({ kind, leftIn, rightIn }) =>
          kind === 'joist' &&
          (side === 'left' ? Math.abs(rightIn - rafter.leftFaceIn) : Math.abs(leftIn - rafter.rightFaceIn)) <
            1e-6,
      );
      if (joist === undefined) return [];
      const leftIn = side === 'left' ? joist.leftIn - thicknessIn : joist.rightIn;
      const place = { leftIn, rightIn: leftIn + thicknessIn };
      return standing(place).length > 0 ? [] : [{ side, fillerIn: joist.rightIn - joist.leftIn, ...place }];
    })[0];
    const next = rafters[rafter.number];
    const place = next && {
      leftIn: (rafter.rightFaceIn + next.leftFaceIn) / 2 - thicknessIn / 2,
      rightIn: (rafter.rightFaceIn + next.leftFaceIn) / 2 + thicknessIn / 2,
    };
    if (choice.reason === 'no-side-free' && filler !== undefined && design.layout.allowFiller)
      tails.push({
        id: rafter.id,
        method: 'filler',
        rafter,
        rightRafter: null,
        because: 'moved',
        clash,
        inPlace: false,
        ...filler,
      });
    else if (
      choice.reason === 'no-side-free' &&
      next &&
      place &&
      design.layout.allowBlockHung &&
      standing({ leftIn: place.leftIn - nailingRoomIn, rightIn: place.rightIn + nailingRoomIn }).length === 0
    )
      tails.push({
        id: `gap-${rafter.number}`,
        method: 'block-hung',
        rafter,
        rightRafter: next,
        side: 'right',
        because: 'moved',
        clash,
        fillerIn: null,
        inPlace: false,
        ...place,
      });
    else
      unplaced.push({
        rafterId: rafter.id,
        rafterNumber: rafter.number,
        stationIn: rafter.centreIn,
        reason: choice.reason,
        left: choice.left,
        right: choice.right,
      });
  }
  return { tails: tails.sort((a, b) => a.leftIn - b.leftIn), unplaced };
}
