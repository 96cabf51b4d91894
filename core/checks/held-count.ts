import { held, type Answer, step, wholeEave } from './answer.ts';
import type { CheckSource } from './check-types.ts';
import { count } from './measured.ts';

/** A number of nails and the least that is asked for. */
type Count = {
  readonly what: string;
  readonly nails: number;
  readonly least: number;
  readonly nail: string;
  readonly field: string;
  readonly sources: readonly CheckSource[];
  readonly assumptions?: readonly string[];
};

/** Holds a number of nails against the least of a table or of the trade. */
export function heldCount(told: Count): Answer {
  return held({
    what: told.what,
    at: wholeEave,
    value: count(told.nails, 'nail'),
    limit: count(told.least, 'nail'),
    worse: 'less',
    source: told.sources,
    assumptions: told.assumptions ?? [],
    remedy: `${told.least} nails would bring it within (Settings, Fastening).`,
    why: [
      step('Nails', 'as set', told.nail, count(told.nails, 'nail').text, {
        ref: `setting/fastening.${told.field}`,
      }),
    ],
  });
}
