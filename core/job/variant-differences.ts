import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import { choiceWord } from '../trace/choice-words.ts';
import { formatLength } from '../units/format-length.ts';

/** One tail that a variant sets otherwise. */
export type Difference = {
  /** Where it stands in the variant; where it stood, if it is gone. [in] */
  readonly stationIn: number;
  readonly text: string;
};

/** A tail that stands no further from where it was than this stands there still. [in] */
const samePlaceIn = 1 / 32;

/**
 * Where a layout of an eave differs from another one of the same: tails that are gone, new, moved, or fastened otherwise.
 * @param before - as designed. [in]
 * @param after - the variant. [in]
 * @returns from left to right. Worked: rafter 4's tail moved to its left -> one difference, `Rafter 4: left, was right.`
 */
export function differences(before: EaveLayout, after: EaveLayout): readonly Difference[] {
  const was = new Map(before.extenders.map((extender) => [extender.id, extender]));
  const is = new Map(after.extenders.map((extender) => [extender.id, extender]));
  return [
    ...after.extenders.flatMap((extender): readonly Difference[] => {
      const old = was.get(extender.id);
      if (old === undefined)
        return [{ stationIn: extender.centreIn, text: `New: ${standsWords(extender)}.` }];
      const same =
        old.method === extender.method && Math.abs(old.centreIn - extender.centreIn) <= samePlaceIn;
      return same
        ? []
        : [
            {
              stationIn: extender.centreIn,
              text: `${nameOf(extender)}: ${howWords(extender)}, was ${howWords(old)}.`,
            },
          ];
    }),
    ...before.extenders
      .filter(({ id }) => !is.has(id))
      .map(
        (extender): Difference => ({
          stationIn: extender.centreIn,
          text: `Gone: ${standsWords(extender)}.`,
        }),
      ),
  ].toSorted((a, b) => a.stationIn - b.stationIn);
}

function nameOf({ method, mark, rafterNumber }: Extender): string {
  return method === 'block-hung' ? mark : `Rafter ${rafterNumber}`;
}

function standsWords(extender: Extender): string {
  return extender.method === 'block-hung'
    ? `a tail ${howWords(extender)}`
    : `the tail of rafter ${extender.rafterNumber}, ${howWords(extender)}`;
}

function howWords({ method, side, centreIn }: Extender): string {
  const at = `at ${formatLength(centreIn)}`;
  if (method === 'side') return `${side}, ${at}`;
  const how = choiceWord('method', method) ?? method;
  return method === 'block-hung' ? `${how}, ${at}` : `${how}, ${side}, ${at}`;
}
