import { formatInches } from '../units/format-length.ts';
import type { Filler } from '../layout/layout-types.ts';
import type { Tail } from './tail-to-check.ts';

/** The filler between a tail and its rafter; null where they touch. */
export function fillerOf({ extender }: Pick<Tail, 'extender'>): Filler | null {
  return extender.filler;
}

/** Thickness of the filler between a tail and its rafter, as asked for; 0 where they touch. [in] */
export function fillerThicknessIn(tail: Pick<Tail, 'extender'>): number {
  return fillerOf(tail)?.wantedIn ?? 0;
}

/** What is taken of the filler that the nails go through; nothing where there is none. */
export function fillerAssumptions(tail: Pick<Tail, 'extender'>): readonly string[] {
  const filler = fillerOf(tail);
  if (filler === null) return [];
  return [
    `The nails go through a filler of ${formatInches(filler.wantedIn)}, which is taken as a gap that hands nothing on, the harder reading (general dowel equations, from memory). They stand only where the filler lies.`,
    "Not covered: what the filler's own nails hand on from layer to layer, loose layers, and the nails where a joist lies between.",
  ];
}

/** The way out where nails do not reach deep enough to count. */
export function tooShort(tail: Pick<Tail, 'extender'>): string {
  const nothing = 'The nails do not reach six diameters into the rafter and count for nothing.';
  return fillerOf(tail) === null
    ? `${nothing} Choose longer nails in Settings.`
    : `${nothing} They would have to be longer by the filler; bolts through all three, or a tail hung on header blocks, are the other ways.`;
}
