import { inTheWay } from '../layout/in-the-way.ts';
import type { PlacedRafter, Unplaced } from '../layout/layout-types.ts';
import type { EaveToCheck, Tail } from './eave-to-check.ts';
import { upliftOn } from './loads/uplift.ts';
import { roofCarried } from './roof-carried.ts';
import { reactions } from './statics/overhang-beam.ts';
import { reckonTail, type CaseForces, type ReckonedTail, type TailShape } from './statics/reckon-tail.ts';

/** The room between two neighbouring rafters in which a tail could hang. [in] */
export type HeaderBay = {
  readonly left: PlacedRafter;
  readonly right: PlacedRafter;
  /** Face to face of the rafters: the header block's span. [in] */
  readonly spanIn: number;
  readonly middleIn: number;
  /** Something stands on the plate in the middle of the bay. */
  readonly middleTaken: boolean;
  /** An extender stands beside one of the two rafters, on the bay's side. */
  readonly beside: boolean;
};

/** A tail of the same design, hung in the middle of a bay beside a rafter that got no extender. */
export type HungTail = ReckonedTail &
  Pick<Tail, 'rafter' | 'gapIn' | 'shapeRef'> & {
    readonly unplaced: Unplaced;
    readonly bay: HeaderBay;
  };

/**
 * The tails that would have to be hung: one for each rafter without a free side, in the better of the two bays beside it
 * (its middle free, no extender within, the preferred side), at the rafter's own pitch. Not rounded.
 * @returns the tails, and the numbers of rafters with no bay wide enough beside them.
 */
export function hungTails(eave: EaveToCheck): {
  readonly tails: readonly HungTail[];
  readonly noRoom: readonly number[];
} {
  const tails: HungTail[] = [];
  const noRoom: number[] = [];
  for (const unplaced of eave.layout.unplaced) {
    const rafter = eave.layout.rafters[unplaced.rafterNumber - 1];
    if (unplaced.reason !== 'no-side-free' || rafter === undefined) continue;
    const bay = bayBeside(eave, rafter);
    if (bay === undefined) noRoom.push(rafter.number);
    else tails.push(hangTail(eave, unplaced, rafter, bay));
  }
  return { tails, noRoom };
}

/**
 * Pull on the nails at the back end of a hung tail, which turns on the plate's outer edge: the block holds it down. [lb]
 * Source: moments about the plate's outer edge. Worked: 640 lb-in., backspan 32 in. level -> 20 lb.
 */
export function holdDownAtBlock({ shape }: Pick<ReckonedTail, 'shape'>, forces: CaseForces): number {
  const backLevelIn = shape.backspanIn / Math.hypot(1, shape.slope);
  return reactions(forces.loadLb, forces.momentLbIn / forces.loadLb, backLevelIn).holdDownLb;
}

/** Push on the same nails under wind, square to the slope: the block holds the back end up. [lb] */
export function holdUpAtBlock(eave: EaveToCheck, tail: ReckonedTail, upliftPsf: number): number {
  const { netLb, armOutIn } = upliftOn(eave, tail, upliftPsf);
  return reactions(netLb, armOutIn, tail.shape.backspanIn).holdDownLb;
}

function bayBeside(eave: EaveToCheck, rafter: PlacedRafter): HeaderBay | undefined {
  const { rafters, occupied, extenders } = eave.layout;
  const { thicknessIn } = eave.stock;
  const standing = inTheWay<{ readonly leftIn: number; readonly rightIn: number }>([
    ...occupied,
    ...extenders,
  ]);
  const newOnes = inTheWay(extenders);
  const bayOf = (left: PlacedRafter | undefined, right: PlacedRafter | undefined): readonly HeaderBay[] => {
    if (left === undefined || right === undefined) return [];
    const bay = { leftIn: left.rightFaceIn, rightIn: right.leftFaceIn };
    const spanIn = bay.rightIn - bay.leftIn;
    if (spanIn < thicknessIn) return [];
    const middleIn = (bay.leftIn + bay.rightIn) / 2;
    const stand = { leftIn: middleIn - thicknessIn / 2, rightIn: middleIn + thicknessIn / 2 };
    const middleTaken = standing(stand).length > 0;
    return [{ left, right, spanIn, middleIn, middleTaken, beside: newOnes(bay).length > 0 }];
  };
  const onLeft = bayOf(rafters[rafter.number - 2], rafter);
  const onRight = bayOf(rafter, rafters[rafter.number]);
  const bays = eave.design.preferredSide === 'left' ? [...onLeft, ...onRight] : [...onRight, ...onLeft];
  return bays.toSorted((a, b) => hindrance(a) - hindrance(b))[0];
}

function hindrance({ middleTaken, beside }: HeaderBay): number {
  return (middleTaken ? 2 : 0) + (beside ? 1 : 0);
}

function hangTail(
  { layout, design, stock, loads }: EaveToCheck,
  unplaced: Unplaced,
  rafter: PlacedRafter,
  bay: HeaderBay,
): HungTail {
  const { middleIn } = bay;
  const half = stock.thicknessIn / 2;
  const { tributaryIn, gapIn } = roofCarried(
    layout,
    { leftIn: middleIn - half, centreIn: middleIn, rightIn: middleIn + half },
    layout.extenders.findLast(({ centreIn }) => centreIn < middleIn),
    layout.extenders.find(({ centreIn }) => centreIn >= middleIn),
  );
  const slope = rafter.pitchRisePer12 / 12;
  const wantedIn = layout.overhangLevelIn * Math.hypot(1, slope) * design.backspanRatio;
  const shape: TailShape = {
    overhangLevelIn: layout.overhangLevelIn,
    slope,
    backspanIn: Math.min(wantedIn, rafter.clearBackspanIn ?? Number.POSITIVE_INFINITY),
    thicknessIn: stock.thicknessIn,
    depthIn: stock.depthIn,
    jointDepthIn: stock.depthIn,
    tributaryIn,
  };
  return {
    // No nails beside a rafter: the block alone holds the back end.
    ...reckonTail(shape, [], loads),
    rafter,
    gapIn,
    shapeRef: `station/${layout.eaveId}/${rafter.id}`,
    unplaced,
    bay,
  };
}
