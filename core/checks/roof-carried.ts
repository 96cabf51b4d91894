import type { EaveLayout, Extender } from '../layout/layout-types.ts';

/** What stands nearest a tail, and how much of the roof comes to it. [in] */
export type RoofCarried = {
  /** Half the way to each neighbour, or to the roof edge. [in] */
  readonly tributaryIn: number;
  /** To the further of its neighbours, centre to centre; 0 where it stands alone. [in] */
  readonly gapIn: number;
};

/**
 * The width of roof that a tail carries. Not rounded. Source: statics (even spans).
 * Worked: neighbours 24 in. to the left and 20 to the right -> 22 in., gap 24.
 * @param layout - of the eave. [in]
 * @param place - of the tail along the wall. [in]
 * @param before - the extender on its left, @param after - on its right; undefined at the ends.
 */
export function roofCarried(
  layout: Pick<EaveLayout, 'fascia' | 'wallLengthIn'>,
  place: Pick<Extender, 'leftIn' | 'centreIn' | 'rightIn'>,
  before: Pick<Extender, 'centreIn'> | undefined,
  after: Pick<Extender, 'centreIn'> | undefined,
): RoofCarried {
  const { leftIn, centreIn, rightIn } = place;
  const firstIn = Math.min(layout.fascia[0]?.fromIn ?? 0, leftIn);
  const lastIn = Math.max(layout.fascia.at(-1)?.toIn ?? layout.wallLengthIn, rightIn);
  const fromIn = before === undefined ? firstIn : (before.centreIn + centreIn) / 2;
  const toIn = after === undefined ? lastIn : (after.centreIn + centreIn) / 2;
  return {
    tributaryIn: Math.max(0, toIn - fromIn),
    gapIn: Math.max(
      before === undefined ? 0 : centreIn - before.centreIn,
      after === undefined ? 0 : after.centreIn - centreIn,
    ),
  };
}
