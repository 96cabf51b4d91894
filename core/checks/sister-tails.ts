import { atTail, found, source, type Answer } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { noTailHeld, sisterHolds, tailsHeldBy, type TailsHeld } from './tails-held.ts';
import type { Tail } from './tail-to-check.ts';
import { sisterNailOf, unknownSisterNails, type SisterNail } from './nails/sister-joint.ts';
import { unknownNail } from './nails/unknown-nail.ts';

/** The tails nailed beside a rafter, through a filler or not, with the nail of each joint. */
export type SisterTails = TailsHeld & { readonly jointOf: (tail: Tail) => SisterNail };

/**
 * The tails of an eave that are nailed beside a rafter; or what a check answers instead, where there is none, where a nail of
 * theirs is not known, or where no nail goes into a lap.
 * @param what - is held against what.
 */
export function sisterTails(
  eave: EaveToCheck,
  what: string,
): { readonly sisters: SisterTails } | { readonly instead: Answer } {
  const held = tailsHeldBy(eave, sisterHolds);
  if (held.tails.length === 0) return { instead: noTailHeld(what, eave, held) };
  const [unknown] = unknownSisterNails(eave, held.tails);
  if (unknown !== undefined) return { instead: unknownNail(what, unknown) };
  const bare = held.tails.find(({ nails }) => nails.length === 0);
  if (bare !== undefined) return { instead: noNail(what, bare, held) };
  const joints = new Map(held.tails.map((tail) => [tail, sisterNailOf(eave, tail)]));
  const jointOf = (tail: Tail): SisterNail => {
    const joint = joints.get(tail);
    if (joint === undefined) throw new Error('the joint of a tail that is not nailed beside a rafter');
    return joint;
  };
  return { sisters: { ...held, jointOf } };
}

function noNail(what: string, tail: Tail, held: TailsHeld): Answer {
  return found({
    what,
    at: atTail(tail.extender),
    source: [source('Geometry of the section', 'entered')],
    assumptions: held.leftOut,
    why: [],
    verdict: 'beyond',
    remedy:
      'No nail goes into the lap: past the joist and the cut of the back end nothing is left of it. A longer backspan gives it room, or hang the tail on header blocks.',
  });
}
