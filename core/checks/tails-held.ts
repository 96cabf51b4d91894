import { numberList } from '../layout/number-list.ts';
import { found, source, step, wholeEave, type Answer } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import type { BackHold, Tail } from './tail-to-check.ts';

/** The tails that a check reckons, and what it says of those that it leaves out. */
export type TailsHeld = { readonly tails: readonly Tail[]; readonly leftOut: readonly string[] };

/** Every way of being held that statics here reach. */
export const reckonedHolds: readonly BackHold[] = ['nails', 'filler', 'blocks', 'ridge'];

/** Face to face with the rafter, with or without a filler between. */
export const sisterHolds: readonly BackHold[] = ['nails', 'filler'];

/**
 * The tails whose back ends are held in one of these ways. What nobody reckons is told as not covered; what another check
 * reckons is told as that.
 */
export function tailsHeldBy({ tails }: Pick<EaveToCheck, 'tails'>, holds: readonly BackHold[]): TailsHeld {
  const of = (hold: BackHold): readonly Tail[] => tails.filter(({ backHold }) => backHold === hold);
  const elsewhere = [...of('blocks'), ...of('ridge')].filter(({ backHold }) => !holds.includes(backHold));
  return {
    tails: tails.filter(({ backHold }) => holds.includes(backHold)),
    leftOut: [
      ...notReckonedWords(of('not-reckoned')),
      ...(elsewhere.length === 0
        ? []
        : [
            'Tails hung on header blocks and whole rafters are not among these: they have checks of their own.',
          ]),
    ],
  };
}

function notReckonedWords(tails: readonly Tail[]): readonly string[] {
  const because: readonly (readonly [string, (tail: Tail) => boolean])[] = [
    [
      'kicked up, so that its nails stand in a wedge where the two boards overlap',
      ({ extender }) => extender.section.kickUp !== null,
    ],
    [
      'in the place of a gable rafter, held by what is built there',
      ({ extender }) => extender.method === 'end-replacement',
    ],
    ['a whole rafter whose span is not entered', ({ extender }) => extender.method === 'full-length'],
  ];
  return because.flatMap(([why, holds]) => {
    const numbers = tails.filter(holds).map(({ extender }) => extender.rafterNumber);
    return numbers.length === 0
      ? []
      : [
          `Not covered: the tail of ${numbers.length === 1 ? 'rafter' : 'rafters'} ${numberList(numbers)}, ${why}. An engineer reckons that.`,
        ];
  });
}

/** What a check says where none of the eave's tails is held in a way that it reckons. */
export function noTailHeld(what: string, { tails }: Pick<EaveToCheck, 'tails'>, held: TailsHeld): Answer {
  const open = tails.some(({ backHold }) => backHold === 'not-reckoned');
  return found({
    what,
    at: wholeEave,
    source: [source('Statics of the tail', 'published')],
    assumptions: held.leftOut,
    why: [step('Tails that this check reckons', 'as laid out', `of ${tails.length}`, 'none')],
    verdict: open ? 'not-covered' : 'within',
    remedy: open ? 'Not covered here: see the assumptions, and ask an engineer.' : null,
  });
}
