import type { RakeDesign } from '../eave/design-document.ts';
import type { Stock } from '../eave/stock.ts';
import type { Finding } from '../layout/layout-types.ts';
import type { DressedSection } from '../lumber/dressed-sizes.ts';
import type { Side } from '../survey/survey-document.ts';
import type { Sixteenths } from '../units/sixteenths.ts';

/**
 * Axes of a rake. Along: up the slope on the barge rafter's top edge, 0 at the top corner of its tail. Level in the gable:
 * x from the eave wall's framing face, outward positive, the ridge's centre line at -run. Across: level, square to the
 * gable, from the gable wall's framing face; `inside` counts into the house, `out` away from it.
 */

/** A member that stands across the lookouts' way, and the faces it shows. [in] */
export type CrossedMember = {
  /** As the sheets name it: `rafter 1`, `A-E01`. */
  readonly label: string;
  readonly kind: 'rafter' | 'extender';
  readonly depthIn: number;
  /** Faces, from the gable wall's framing face into the house; negative where it stands outside of it. [in] */
  readonly outerInsideIn: number;
  readonly innerInsideIn: number;
};

/** A lookout or a rung, and the block behind it where the lookout stops at the gable rafter. */
export type Lookout = {
  readonly mark: string;
  /** Centre, along the slope. [in] */
  readonly alongIn: number;
  /** Centre, level from the eave wall's framing face; negative over the house. [in] */
  readonly levelIn: number;
  /** Why here: next to the eave's fascia, next to the ridge, under the joint of two panels, or to keep the spacing. */
  readonly because: 'eave' | 'ridge' | 'panel-joint' | 'spacing';
  /** Level, from its inner to its outer end, without and with the trimming allowance. */
  readonly lengthIn: number;
  readonly lengthSixteenths: Sixteenths;
  /** What it crosses, from outside in: let into each, or nailed to its faces. None for a rung. */
  readonly crosses: readonly CrossedMember[];
  /** The first member inside, which its inner end (or the block's) meets; null for a rung. */
  readonly meets: CrossedMember | null;
  /** Level, from the outer face of what it crosses to the member that it meets; null for a rung. [in] */
  readonly backspanIn: number | null;
  /** Level, from the outer face of what it crosses to the barge rafter's outer face; null for a rung. [in] */
  readonly overhangIn: number | null;
  /** Of a lookout that stops at the gable rafter: the block in line with it, behind. */
  readonly block: { readonly mark: string; readonly lengthSixteenths: Sixteenths } | null;
};

/** A board up the slope: barge rafter, inner rail of a ladder, or rake fascia. */
export type RakeBoard = {
  readonly mark: string;
  /** Its ends on the top edge, along the slope; at a joint the joint's middle. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** Overall, from far corner to far corner, long points in; rounded up. */
  readonly lengthSixteenths: Sixteenths;
  /** Overall less mid-line length, where both ends are parallel plumb cuts: d m, rounded up; else absent. */
  readonly slantSixteenths?: Sixteenths;
  readonly lowerEnd: 'plumb' | 'square' | 'joint';
  readonly upperEnd: 'plumb' | 'joint';
};

/** Where the eave's fascia and the rake's meet at the corner. */
export type RakeCorner = {
  /** True where both are boards that meet in a mitre; false where the eave's fascia ends square at the barge rafter. */
  readonly mitred: boolean;
  /** How far the eave's fascia runs past the gable wall's framing face, on its back and on its face. [in] */
  readonly eaveShortOutIn: number;
  readonly eaveLongOutIn: number;
  /** How far the rake fascia's top edge runs past the tail's top corner, on its back and on its face, along the slope. [in] */
  readonly rakeShortAlongIn: number;
  readonly rakeLongAlongIn: number;
  /** Bevel of the rake fascia's end through its thickness, off square; 45 where both boards are as thick. [deg] */
  readonly mitreDeg: number;
  /** Height of the rake fascia's end cut less that of the eave's fascia; 0 where there is no rake fascia. [in] */
  readonly rakeTallerIn: number;
};

/** New sheathing up one rake, above that of the eave. */
export type RakeStrip = {
  /** Level, across the rake: from the edge to where the old deck stays on; the mean where courses alternate. [in] */
  readonly widthIn: number;
  /** How much of it lies outside of the gable wall's framing face. [in] */
  readonly outIn: number;
  /** Lower and upper end, along the slope. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly areaSqFt: number;
  /** Where panels laid up the slope meet end to end, with the joint to the eave's sheathing first; none of planks. [in] */
  readonly jointsIn: readonly number[];
};

/** The old rafter at the gable. [in] */
export type GableRafter = {
  readonly rafterId: string;
  readonly number: number;
  readonly outerInsideIn: number;
  readonly innerInsideIn: number;
  readonly depthIn: number;
  readonly pitchRisePer12: number;
  readonly heightAbovePlateIn: number;
};

/** A rake, laid out. */
export type RakeLayout = {
  readonly rakeId: string;
  readonly name: string;
  /** What its marks begin with: R1, R2 ... by its place in the survey. */
  readonly mark: string;
  readonly eaveId: string;
  readonly eaveLetter: string;
  readonly eaveName: string;
  readonly end: Side;
  readonly kind: Exclude<RakeDesign['kind'], 'none'>;
  readonly gable: GableRafter;
  /** Level, wall's framing face to the ridge's centre line. [in] */
  readonly runIn: number;
  readonly ridgeThicknessIn: number;
  /** The eave's own overhang at this end, level. [in] */
  readonly eaveOverhangIn: number;
  readonly tailCut: 'plumb' | 'square';
  /** The rake's overhang to the barge rafter's outer face, level. [in] */
  readonly overhangIn: number;
  /** The barge rafter's own pitch: straight from the ridge to the eave's fascia line. [in/12 in] */
  readonly pitchRisePer12: number;
  readonly slopeFactor: number;
  readonly slopeAngleDeg: number;
  /** Heights above the plate of the barge rafter's top edge, at the tail's top corner and at the ridge's centre line. [in] */
  readonly tailTopIn: number;
  readonly ridgeTopIn: number;
  /** Tail's top corner to the ridge's centre line, along the slope. [in] */
  readonly alongIn: number;
  /** Where the wall's framing face lies, along the slope. [in] */
  readonly wallAlongIn: number;
  /** How far the barge rafter's top edge stands above (+) or below (-) the gable rafter's, plumb over the wall. [in] */
  readonly aboveGableIn: number;
  readonly lookoutStock: Stock;
  readonly bargeStock: Stock;
  readonly fasciaStock: Stock | null;
  /** Size of a lookout or rung: along the slope, and into the gable rafter's top edge. [in] */
  readonly lookoutWidthIn: number;
  readonly lookoutDepthIn: number;
  /** Where lookouts are let in; null where they are nailed to faces, and for a ladder. [in] */
  readonly notch: { readonly depthIn: number; readonly widthIn: number } | null;
  readonly bargeSize: DressedSection;
  readonly fasciaSize: DressedSection | null;
  readonly largestSpacingIn: number;
  readonly lookouts: readonly Lookout[];
  readonly barge: readonly RakeBoard[];
  /** Inner rail of a ladder; none with lookouts. */
  readonly rails: readonly RakeBoard[];
  readonly fascia: readonly RakeBoard[];
  readonly corner: RakeCorner;
  /** Null where the design wants no new sheathing. */
  readonly strip: RakeStrip | null;
  readonly findings: readonly Finding[];
};
