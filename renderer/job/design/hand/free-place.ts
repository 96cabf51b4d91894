import type { EaveLayout } from '../../../../core/layout/layout-types.ts';

/**
 * The middle of the widest free stretch of the plate between two stations, to the nearest sixteenth; null where a tail
 * does not fit in any.
 * @param layout - what stands on the plate. [in]
 * @param fromIn - left end of the search. [in]
 * @param toIn - right end of the search. [in]
 * @param thicknessIn - of the tail. [in]
 * @returns e.g. rafters 16 and 40 with a tail right of the first: 18-1/4 to 39-1/4 -> 28-3/4.
 */
export function freePlaceIn(
  layout: Pick<EaveLayout, 'rafters' | 'occupied' | 'extenders'>,
  fromIn: number,
  toIn: number,
  thicknessIn: number,
): number | null {
  const standing = [
    ...layout.rafters.map(({ leftFaceIn, rightFaceIn }) => ({ leftIn: leftFaceIn, rightIn: rightFaceIn })),
    ...layout.occupied,
    ...layout.extenders,
    { leftIn: toIn, rightIn: toIn },
  ]
    .filter(({ leftIn, rightIn }) => rightIn > fromIn && leftIn <= toIn)
    .toSorted((a, b) => a.leftIn - b.leftIn);
  let widest = { fromIn, widthIn: 0 };
  let freeFromIn = fromIn;
  for (const { leftIn, rightIn } of standing) {
    const widthIn = leftIn - freeFromIn;
    if (widthIn > widest.widthIn) widest = { fromIn: freeFromIn, widthIn };
    freeFromIn = Math.max(freeFromIn, rightIn);
  }
  if (widest.widthIn < thicknessIn) return null;
  return Math.round((widest.fromIn + widest.widthIn / 2) * 16) / 16;
}
