/** A place in the plane of the joint. [in] */
export type Point = readonly [x: number, y: number];

/** Load on a group: a force through its centroid and a moment about it. [lb, lb-in] */
export type GroupLoad = { readonly forceX: number; readonly forceY: number; readonly moment: number };

export type GroupForces = {
  readonly centroid: Point;
  /** Sum of the squares of the distances to the centroid. [sq in] */
  readonly polar: number;
  /** Resultant on each nail. [lb] */
  readonly eachLb: readonly number[];
  readonly worstLb: number;
  readonly worstIndex: number;
};

/**
 * Shares a force and a moment over the nails of a joint by the elastic centre method: every nail takes the same part of
 * the force, and of the moment a part square to, and in proportion to, its distance from the centroid. Not rounded.
 * Source: statics of a rigid plate on equal springs (textbook method for bolt, weld and nail groups).
 * Worked: four nails at the corners of a 6 x 8 in. oblong, moment 1000 lb-in -> r = 5, 1000 x 5 / (4 x 25) = 50 lb each.
 * @param nails - places; one or more. [in]
 * @param load - at the centroid, counter-clockwise positive. [lb, lb-in]
 */
export function elasticCentre(nails: readonly Point[], load: GroupLoad): GroupForces {
  const n = nails.length;
  const centroid = centroidOf(nails);
  const polar = nails.reduce((sum, [x, y]) => sum + (x - centroid[0]) ** 2 + (y - centroid[1]) ** 2, 0);
  const eachLb = nails.map(([x, y]) => {
    const turn = polar > 1e-12 ? load.moment / polar : 0;
    return Math.hypot(load.forceX / n - turn * (y - centroid[1]), load.forceY / n + turn * (x - centroid[0]));
  });
  const worstIndex = eachLb.reduce((worst, lb, index) => (lb > (eachLb[worst] ?? 0) ? index : worst), 0);
  return { centroid, polar, eachLb, worstLb: eachLb[worstIndex] ?? 0, worstIndex };
}

/** What a joint takes that bears on the plate's outer edge. */
export type PivotedGroup = GroupForces & {
  readonly load: GroupLoad;
  /** Level distance from the plate's outer edge at which the nails' resultant pulls down. [in] */
  readonly armIn: number;
  /** The resultant, straight down. [lb] */
  readonly holdDownLb: number;
};

/**
 * Shares an overturning moment over the nails of a joint whose piece also bears on the plate. The plate carries straight
 * up only, so the nails' resultant is straight down, and the piece turns about the point over the plate's outer edge at
 * the height of the nails' centroid; every nail's force grows with its distance from there. That is the elastic centre
 * method with force F = M n c / J and moment M (J - n c^2) / J, where c is the centroid's level distance and J the sum of
 * squares about the turning point. Not rounded.
 * Worked: nails 30, 22, 14 and 6 in. in, flat, M = 1616 lb-in -> J = 1616, forces 30, 22, 14 and 6 lb, resultant 72 lb.
 * @param nails - places, x = 0 at the plate's outer edge and negative inward. [in]
 * @param momentLbIn - overturning moment about the plate's outer edge. [lb-in]
 */
export function turnAboutPlate(nails: readonly Point[], momentLbIn: number): PivotedGroup {
  const [cx, cy] = centroidOf(nails);
  const about = nails.reduce((sum, [x, y]) => sum + x ** 2 + (y - cy) ** 2, 0);
  const share = about > 1e-9 ? momentLbIn / about : 0;
  // Down is negative; the centroid lies at negative x, so the resultant is negative.
  const load: GroupLoad = {
    forceX: 0,
    forceY: share * nails.length * cx,
    moment: share * (about - nails.length * cx ** 2),
  };
  const holdDownLb = Math.abs(load.forceY);
  return {
    ...elasticCentre(nails, load),
    load,
    holdDownLb,
    armIn: holdDownLb > 0 ? momentLbIn / holdDownLb : 0,
  };
}

/**
 * The same for a piece whose back end alone is held, with no nails along it: the end is pulled down by M / arm.
 * Source: moments about the plate's outer edge. Worked: 640 lb-in. over 32 in. -> 20 lb.
 * @param armIn - level, from the plate's outer edge to the end. [in]
 * @param momentLbIn - overturning moment about the plate's outer edge. [lb-in]
 */
export function heldAtEnd(armIn: number, momentLbIn: number): PivotedGroup {
  const holdDownLb = armIn > 0 ? momentLbIn / armIn : 0;
  return {
    centroid: [-armIn, 0],
    polar: 0,
    eachLb: [],
    worstLb: 0,
    worstIndex: 0,
    load: { forceX: 0, forceY: -holdDownLb, moment: 0 },
    armIn,
    holdDownLb,
  };
}

export function centroidOf(nails: readonly Point[]): Point {
  const n = Math.max(1, nails.length);
  return [nails.reduce((sum, [x]) => sum + x, 0) / n, nails.reduce((sum, [, y]) => sum + y, 0) / n];
}
