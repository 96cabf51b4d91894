import type { Side } from '../../survey/survey-document.ts';
import {
  costOf,
  rafterAt,
  rafterSide,
  waysOf,
  type RafterSide,
  type Standing,
  type Way,
} from './beside-rafter.ts';
import type { RafterWish } from './candidate.ts';
import { heldBesideRafter, type HeldTail } from './held-tails.ts';
import type { Wall } from './wall.ts';

/** One rafter with what is known of its places, before the solver chooses. */
export type RafterPlaces = {
  readonly sides: Readonly<Record<Side, RafterSide>>;
  readonly wish: RafterWish;
  readonly ways: readonly Way[];
  readonly held: HeldTail | undefined;
};

/**
 * What is asked for at a rafter, and where a tail of its own may stand: pins and what was built come first.
 * @param index - of the rafter.
 * @param wall - the wall. [in]
 * @param standing - what stands on it.
 */
export function placesOf(index: number, wall: Wall, standing: Standing): RafterPlaces {
  const { id, condition } = rafterAt(index, wall);
  const sides = {
    left: rafterSide(index, 'left', wall, standing),
    right: rafterSide(index, 'right', wall, standing),
  };
  const pin = wall.design.pins.find(({ rafterId }) => rafterId === id);
  const held = heldBesideRafter(index, sides, wall);
  const served: RafterWish = { want: 'served', hungLeft: false, hungRight: false, sideFree: false };
  if (held !== undefined || pin?.side === 'none') return { sides, wish: served, ways: [], held };
  if (pin?.method === 'block-hung') {
    const wish: RafterWish = {
      ...served,
      want: 'any',
      hungLeft: pin.side === 'left',
      hungRight: pin.side === 'right',
    };
    return { sides, wish, ways: [], held };
  }
  const order = wall.design.preferredSide === 'left' ? [sides.left, sides.right] : [sides.right, sides.left];
  const ways = waysOf(index, pin === undefined ? order : [sides[pin.side]], wall, standing);
  if (pin === undefined) {
    const mayHang = condition !== 'rotten';
    const sideFree = ways.some(({ method }) => method === 'side');
    return { sides, wish: { want: 'any', hungLeft: mayHang, hungRight: mayHang, sideFree }, ways, held };
  }
  // A pin stands whatever is in its way.
  const { place } = sides[pin.side];
  const forced: Way = {
    ...place,
    method: 'side',
    side: pin.side,
    fillerIn: null,
    cost: costOf('side', pin.side, wall),
  };
  const ownWays = ways.filter(({ method }) => method !== 'end-replacement');
  return {
    sides,
    wish: { ...served, want: 'own' },
    ways: ownWays.length > 0 ? ownWays : [forced],
    held,
  };
}

/** Middles of all tails that may stand beside a rafter. [in] */
export function centresOf({ ways, held }: RafterPlaces): readonly number[] {
  return [...ways, ...(held === undefined ? [] : [held])].map(
    ({ leftIn, rightIn }) => (leftIn + rightIn) / 2,
  );
}
