import type { EaveDesign, Method } from '../../../core/eave/design-document.ts';
import type { Extender } from '../../../core/layout/layout-types.ts';
import type { DropPlace } from './drop-place.ts';
import { type Documents, withValueAt } from './documents.ts';
import { removeFrom } from './list-edits.ts';
import { nextId } from './next-id.ts';

/** How a rafter's tail is to stand by the person's will; without a method the program chooses it. */
export type TailPin = { readonly side: 'left' | 'right' | 'none'; readonly method?: Method };

/** The tail that is taken in hand. */
export type TailInHand = Pick<Extender, 'id' | 'method' | 'rafterId' | 'side' | 'centreIn' | 'because'>;

/** Rafters of an eave in order, as survey and layout both know them. */
type Rafters = readonly { readonly id: string }[];

/** Whether a tail hangs between rafters. */
export function isHung({ method }: Pick<Extender, 'method'>): boolean {
  return method === 'block-hung';
}

/**
 * The rafter whose pin has a tail hung in the bay beside it; undefined where the tail stands by a rafter, is one that the
 * person added, or that the program hung of its own.
 */
export function hungForRafter(
  design: Pick<EaveDesign, 'pins' | 'addedTails'>,
  rafters: Rafters,
  tail: Pick<TailInHand, 'id' | 'method' | 'rafterId' | 'because'>,
): string | undefined {
  if (!isHung(tail) || tail.because !== 'pinned' || design.addedTails.some(({ id }) => id === tail.id))
    return undefined;
  const next = rafters[rafters.findIndex(({ id }) => id === tail.rafterId) + 1];
  return design.pins.find(
    ({ rafterId, side, method }) =>
      method === 'block-hung' &&
      ((rafterId === tail.rafterId && side === 'right') || (rafterId === next?.id && side === 'left')),
  )?.rafterId;
}

function raftersOf(documents: Documents, design: EaveDesign): Rafters {
  return documents.survey.eaves.find(({ id }) => id === design.eaveId)?.rafters ?? [];
}

/**
 * The id that the next tail of the person's own gets.
 * @param rafters - of the eave, whose tails bear the rafters' ids.
 */
export function nextTailId(design: EaveDesign, rafters: Rafters): string {
  return nextId(
    't',
    [...design.addedTails, ...rafters].map(({ id }) => id),
  );
}

/** Pins how a rafter's tail stands, or with null lets the program choose again. */
export function pinTail(
  documents: Documents,
  designIndex: number,
  rafterId: string,
  pin: TailPin | null,
): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  const others = design.pins.filter((one) => one.rafterId !== rafterId);
  const pins = pin === null ? others : [...others, { rafterId, ...pin }];
  return withValueAt(documents, `design.eaves.${designIndex}.pins`, pins);
}

/** Hangs a tail of the person's own between rafters. */
export function addTail(documents: Documents, designIndex: number, stationIn: number): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  return withValueAt(documents, `design.eaves.${designIndex}.addedTails`, [
    ...design.addedTails,
    { id: nextTailId(design, raftersOf(documents, design)), stationIn },
  ]);
}

/**
 * Brings a tail to another place. One that is hung of its own, or that the program hung, becomes the person's; one that
 * leaves its rafter leaves it without.
 */
export function moveTail(
  documents: Documents,
  designIndex: number,
  tail: TailInHand,
  place: DropPlace,
): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  const added = design.addedTails.findIndex(({ id }) => id === tail.id);
  if (place.kind === 'hung' && added >= 0)
    return withValueAt(
      documents,
      `design.eaves.${designIndex}.addedTails.${added}.stationIn`,
      place.stationIn,
    );
  // The rafter that it leaves stays without; one that hung of its own leaves none.
  const fromRafter = isHung(tail) ? hungForRafter(design, raftersOf(documents, design), tail) : tail.rafterId;
  const goesOn = place.kind === 'beside' && place.rafterId === fromRafter;
  const left =
    added >= 0
      ? removeAdded(documents, designIndex, added)
      : fromRafter === undefined || goesOn
        ? documents
        : pinTail(documents, designIndex, fromRafter, { side: 'none' });
  return place.kind === 'hung'
    ? addTail(left, designIndex, place.stationIn)
    : pinTail(left, designIndex, place.rafterId, { side: place.side });
}

/** The id that a tail bears once it was brought to a place. */
export function idAfterMove(
  design: EaveDesign,
  rafters: Rafters,
  tail: TailInHand,
  place: DropPlace,
): string {
  if (place.kind === 'beside') return place.rafterId;
  return design.addedTails.some(({ id }) => id === tail.id) ? tail.id : nextTailId(design, rafters);
}

/** Holds a tail where it stands, whatever else changes. */
export function pinAsItStands(documents: Documents, designIndex: number, tail: TailInHand): Documents {
  return isHung(tail)
    ? moveTail(documents, designIndex, tail, { kind: 'hung', stationIn: tail.centreIn })
    : pinTail(documents, designIndex, tail.rafterId, { side: tail.side, method: tail.method });
}

/** Leaves a tail to the program again: one of the person's own goes, and the program hangs one where it is needed. */
export function releaseTail(documents: Documents, designIndex: number, tail: TailInHand): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  if (!isHung(tail)) return pinTail(documents, designIndex, tail.rafterId, null);
  const added = design.addedTails.findIndex(({ id }) => id === tail.id);
  if (added >= 0) return removeAdded(documents, designIndex, added);
  const forRafter = hungForRafter(design, raftersOf(documents, design), tail);
  return forRafter === undefined ? documents : pinTail(documents, designIndex, forRafter, null);
}

/**
 * Takes a tail away: one of the person's own goes, a rafter's is wanted no more, and in a bay where the program hangs one
 * it hangs none from now on.
 */
export function removeTail(documents: Documents, designIndex: number, tail: TailInHand): Documents {
  const design = documents.design.eaves[designIndex];
  if (design === undefined) return documents;
  if (design.addedTails.some(({ id }) => id === tail.id)) return releaseTail(documents, designIndex, tail);
  const ofRafter = isHung(tail) ? hungForRafter(design, raftersOf(documents, design), tail) : tail.rafterId;
  return ofRafter === undefined
    ? leaveBay(documents, designIndex, tail.rafterId, true)
    : pinTail(documents, designIndex, ofRafter, { side: 'none' });
}

/** Lets the program hang no tail of its own in the bay right of a rafter, or lets it again. */
export function leaveBay(
  documents: Documents,
  designIndex: number,
  rafterId: string,
  isLeft: boolean,
): Documents {
  const list = documents.design.eaves[designIndex]?.layout.baysWithoutTail;
  if (list === undefined) return documents;
  const others = list.filter((one) => one !== rafterId);
  return withValueAt(
    documents,
    `design.eaves.${designIndex}.layout.baysWithoutTail`,
    isLeft ? [...others, rafterId] : others,
  );
}

/** Whether the person holds a tail in its place. */
export function isPinned(design: EaveDesign, tail: TailInHand): boolean {
  return isHung(tail)
    ? tail.because === 'pinned' || design.addedTails.some(({ id }) => id === tail.id)
    : design.pins.some(({ rafterId }) => rafterId === tail.rafterId);
}

/** With the tail goes what was typed back of it: its id can come back with another one. */
function removeAdded(documents: Documents, designIndex: number, at: number): Documents {
  const design = documents.design.eaves[designIndex];
  const tail = design?.addedTails[at];
  if (design === undefined || tail === undefined) return documents;
  const without = removeFrom(documents, `design.eaves.${designIndex}.addedTails`, at);
  const built = without.design.asBuilt.findIndex(
    ({ eaveId, extenderId }) => eaveId === design.eaveId && extenderId === tail.id,
  );
  return built < 0 ? without : removeFrom(without, 'design.asBuilt', built);
}
