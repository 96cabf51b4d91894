import type { AsBuilt, Design } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import { counted } from '../takeoff/takeoff-context.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';

/** What was typed back of one tail of the layout, by the order of the wall. */
export type TailAsBuilt = {
  readonly eaveId: string;
  readonly extender: Extender;
  /** Null where nothing was typed back of it. */
  readonly asBuilt: AsBuilt | null;
};

/** What the site has told, and what is left for the saw. */
export type StillToCut = {
  readonly tails: readonly TailAsBuilt[];
  readonly tailsInPlace: number;
  /** Pieces that have yet to be cut, and those that are in place, in the order of the takeoff. */
  readonly toCut: readonly Piece[];
  readonly inPlace: readonly Piece[];
  /** Typed back of tails that the layout has no more. */
  readonly withoutTail: readonly AsBuilt[];
};

/**
 * Holds what was built against the layout and its pieces. A piece is in place as soon as the takeoff says so of it: a tail
 * that was typed back as such, with its filler, shim and header blocks. Everything else is still to be cut.
 * @param eaves - laid out.
 * @param pieces - of the takeoff.
 * @param design - for what was typed back.
 */
export function stillToCut(
  eaves: readonly EaveLayout[],
  pieces: readonly Piece[],
  { asBuilt }: Pick<Design, 'asBuilt'>,
): StillToCut {
  const typed = new Map(asBuilt.map((entry) => [key(entry.eaveId, entry.extenderId), entry]));
  const tails = eaves.flatMap(({ eaveId, extenders }) =>
    extenders.map(
      (extender): TailAsBuilt => ({ eaveId, extender, asBuilt: typed.get(key(eaveId, extender.id)) ?? null }),
    ),
  );
  const known = new Set(tails.map(({ eaveId, extender }) => key(eaveId, extender.id)));
  return {
    tails,
    tailsInPlace: tails.filter(({ extender }) => extender.inPlace).length,
    toCut: pieces.filter(({ inPlace }) => inPlace !== true),
    inPlace: pieces.filter(({ inPlace }) => inPlace === true),
    withoutTail: asBuilt.filter(({ eaveId, extenderId }) => !known.has(key(eaveId, extenderId))),
  };
}

function key(eaveId: string, extenderId: string): string {
  return JSON.stringify([eaveId, extenderId]);
}

/**
 * How far the work has come, in a sentence: `12 of 33 tails are in place; 21 tails and 64 other pieces are still to be
 * cut.`
 */
export function stillToCutSentence({ tails, tailsInPlace, toCut }: StillToCut): string {
  const tailsLeft = toCut.filter(({ use }) => use === 'extender').length;
  const others = toCut.length - tailsLeft;
  const left =
    toCut.length === 0
      ? 'nothing is left to be cut'
      : `${counted(tailsLeft, 'tail')} and ${counted(others, 'other piece')} are still to be cut`;
  return `${tailsInPlace} of ${counted(tails.length, 'tail')} ${tails.length === 1 ? 'is' : 'are'} in place; ${left}.`;
}
