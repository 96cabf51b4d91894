import type { SisterPattern } from '../../pricing/shop-settings.ts';
import { staggeredNails } from '../../takeoff/stagger.ts';
import type { EaveLoads, LoadCase } from '../loads/eave-loads.ts';
import { memberWeight } from '../loads/dead-load.ts';
import { heldAtEnd, turnAboutPlate, type PivotedGroup, type Point } from '../nails/nail-group.ts';

/** One tail as a beam: what its statics need. Lengths actual. */
export type TailShape = {
  readonly overhangLevelIn: number;
  /** Rise over run of the extender's own edge. [-] */
  readonly slope: number;
  /** Along the slope. [in] */
  readonly backspanIn: number;
  /** How much further out than the back end nails begin on both edges: d m of a plumb back end. [in] */
  readonly backLossIn: number;
  /** Longest stretch that can be nailed, from there outward: a filler's length; null to the wall line. [in] */
  readonly longestLapIn: number | null;
  /** What keeps the back end down: nails along its lap; or something at its end, a header block or the ridge. */
  readonly backHeld: 'nails' | 'end';
  readonly thicknessIn: number;
  readonly depthIn: number;
  /** Depth over which extender and rafter touch. [in] */
  readonly jointDepthIn: number;
  /** Width of roof that the tail carries. [in] */
  readonly tributaryIn: number;
};

/** Forces of one load case. Vertical loads; moments about the plate's outer edge. */
export type CaseForces = {
  readonly loadCase: LoadCase;
  /** Dead and transient load along the level run. [lb/in] */
  readonly deadLbPerIn: number;
  readonly transientLbPerIn: number;
  /** Whole load on the overhang. [lb] */
  readonly loadLb: number;
  readonly momentLbIn: number;
  readonly holdDownLb: number;
  readonly wallLb: number;
  readonly worstNailLb: number;
};

/** A tail with its joint turned by a moment of 1 lb-in, from which every case follows in proportion. */
export type ReckonedTail = {
  readonly shape: TailShape;
  readonly nails: readonly Point[];
  readonly unit: PivotedGroup;
  readonly cases: readonly CaseForces[];
};

/**
 * Places of a sister joint's nails in the section's axes: x level, 0 at the plate's outer edge and negative inward; y up
 * from the top edge at the wall. Rows spread evenly between the edge distances. Not rounded. [in]
 */
export function nailPlaces(
  shape: Pick<TailShape, 'slope' | 'backspanIn' | 'jointDepthIn' | 'backLossIn' | 'longestLapIn'>,
  pattern: Pick<SisterPattern, 'rows' | 'spacingIn' | 'endDistanceIn'>,
  edgeDistanceIn: number,
): readonly Point[] {
  const factor = Math.hypot(1, shape.slope);
  const [cos, sin] = [1 / factor, shape.slope / factor];
  const edgeIn = Math.min(edgeDistanceIn, shape.jointDepthIn / 2);
  const lapBackIn = Math.max(0, shape.backspanIn - shape.backLossIn);
  const lapIn = Math.min(lapBackIn, shape.longestLapIn ?? lapBackIn);
  return staggeredNails(lapIn, pattern).map(({ row, alongIn }): Point => {
    const inwardIn = lapBackIn - alongIn;
    const share = pattern.rows === 1 ? 0.5 : (row - 1) / (pattern.rows - 1);
    const downIn = edgeIn + share * (shape.jointDepthIn - 2 * edgeIn);
    return [-inwardIn * cos - downIn * sin, inwardIn * sin - downIn * cos];
  });
}

/**
 * Reckons a tail under every load case: load, overturning moment about the plate's outer edge, reactions and worst nail.
 * Source: statics; the joint by the elastic centre method (nails/nail-group.ts). Not rounded.
 * Worked: 16 in. level, 2 ft wide, 30 psf in all -> 80 lb, 640 lb-in.
 * @param shape - of the tail. [in]
 * @param nails - of its joint; none where its end is held. [in]
 * @param loads - of the eave. [psf]
 */
export function reckonTail(shape: TailShape, nails: readonly Point[], loads: EaveLoads): ReckonedTail {
  const unit =
    shape.backHeld === 'nails'
      ? turnAboutPlate(nails, 1)
      : heldAtEnd(shape.backspanIn / Math.hypot(1, shape.slope), 1);
  const { overhangLevelIn: p, tributaryIn } = shape;
  const deadLbPerIn =
    (loads.dead.levelPsf * tributaryIn) / 144 +
    memberWeight(shape.thicknessIn, shape.depthIn, Math.hypot(1, shape.slope));
  const cases = loads.cases.map((loadCase): CaseForces => {
    const transientLbPerIn = (loadCase.psf * tributaryIn) / 144;
    const widthIn = Math.min(p, loadCase.outerWidthIn ?? p);
    const spreadLb = transientLbPerIn * widthIn;
    const loadLb = deadLbPerIn * p + spreadLb + loadCase.pointLb;
    const momentLbIn = (deadLbPerIn * p ** 2) / 2 + spreadLb * (p - widthIn / 2) + loadCase.pointLb * p;
    const holdDownLb = unit.holdDownLb * momentLbIn;
    return {
      loadCase,
      deadLbPerIn,
      transientLbPerIn,
      loadLb,
      momentLbIn,
      holdDownLb,
      wallLb: loadLb + holdDownLb,
      worstNailLb: unit.worstLb * momentLbIn,
    };
  });
  return { shape, nails, unit, cases };
}
