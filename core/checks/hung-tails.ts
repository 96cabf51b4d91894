import { inTheWay } from '../layout/in-the-way.ts';
import type { PlacedRafter } from '../layout/layout-types.ts';
import { atRafter, atTail, type Place } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { upliftOn } from './loads/uplift.ts';
import { roofCarried } from './roof-carried.ts';
import { reactions } from './statics/overhang-beam.ts';
import { reckonTail, type ReckonedTail, type TailShape } from './statics/reckon-tail.ts';
import type { Tail } from './tail-to-check.ts';

/** A tail hung on a header block between two rafters: laid out, or proposed for a rafter that has none. */
export type HungTail = ReckonedTail &
  Pick<Tail, 'rafter' | 'gapIn' | 'shapeRef' | 'backHold'> & {
    readonly laidOut: boolean;
    readonly at: Place;
    readonly left: PlacedRafter;
    readonly right: PlacedRafter;
    /** Ends of the header block, and the tail's centre. [in] */
    readonly block: { readonly leftIn: number; readonly rightIn: number };
    readonly centreIn: number;
    /** Something stands on the plate where a proposed tail would. */
    readonly middleTaken: boolean;
    /** An extender stands beside one of the two rafters, between it and the block or on the bay's side. */
    readonly beside: boolean;
  };

const dustIn = 1e-6;

/** The tails of an eave that are laid out hung on header blocks, each by its own block. */
export function laidOutHungTails({ tails, layout }: EaveToCheck): readonly HungTail[] {
  return tails.flatMap((tail): readonly HungTail[] => {
    const { extender, backHold } = tail;
    const left = layout.rafters[extender.rafterNumber - 1];
    const right = layout.rafters[extender.rafterNumber];
    if (backHold !== 'blocks' || left === undefined || right === undefined) return [];
    const header = extender.headers.find(({ place }) => place === 'back');
    const block = {
      leftIn: header?.leftIn ?? left.rightFaceIn,
      rightIn: header?.rightIn ?? right.leftFaceIn,
    };
    return [
      {
        ...tail,
        laidOut: true,
        at: atTail(extender),
        left,
        right,
        block,
        centreIn: extender.centreIn,
        middleTaken: false,
        beside: block.leftIn > left.rightFaceIn + dustIn || block.rightIn < right.leftFaceIn - dustIn,
      },
    ];
  });
}

/**
 * The tails that would have to be hung: one for each rafter without a free side, in the better of the two bays beside it
 * (its middle free, no extender within, the preferred side), at the rafter's own pitch. Not rounded.
 * @returns the tails, and the numbers of rafters with no bay wide enough beside them.
 */
export function proposedHungTails(eave: EaveToCheck): {
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
    else tails.push(hangTail(eave, rafter, bay));
  }
  return { tails, noRoom };
}

/** Push on the nails at the back end under wind, square to the slope: the block holds the back end up. [lb] */
export function holdUpAtBlock(eave: EaveToCheck, tail: ReckonedTail, upliftPsf: number): number {
  const { netLb, armOutIn } = upliftOn(eave, tail, upliftPsf);
  return reactions(netLb, armOutIn, tail.shape.backspanIn).holdDownLb;
}

/** The room between two neighbouring rafters in which a tail could hang. [in] */
type HeaderBay = Pick<HungTail, 'left' | 'right' | 'middleTaken' | 'beside'> & { readonly middleIn: number };

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
    if (bay.rightIn - bay.leftIn < thicknessIn) return [];
    const middleIn = (bay.leftIn + bay.rightIn) / 2;
    const stand = { leftIn: middleIn - thicknessIn / 2, rightIn: middleIn + thicknessIn / 2 };
    const middleTaken = standing(stand).length > 0;
    return [{ left, right, middleIn, middleTaken, beside: newOnes(bay).length > 0 }];
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
  rafter: PlacedRafter,
  { left, right, middleIn, middleTaken, beside }: HeaderBay,
): HungTail {
  const half = stock.thicknessIn / 2;
  const { tributaryIn, gapIn } = roofCarried(
    layout,
    { leftIn: middleIn - half, centreIn: middleIn, rightIn: middleIn + half },
    layout.extenders.findLast(({ centreIn }) => centreIn < middleIn),
    layout.extenders.find(({ centreIn }) => centreIn >= middleIn),
  );
  const slope = (design.kickUpPitchRisePer12 ?? rafter.pitchRisePer12) / 12;
  const wantedIn = layout.overhangLevelIn * Math.hypot(1, slope) * design.backspanRatio;
  const shape: TailShape = {
    overhangLevelIn: layout.overhangLevelIn,
    slope,
    backspanIn: Math.min(wantedIn, rafter.clearBackspanIn ?? Number.POSITIVE_INFINITY),
    backLossIn: 0,
    longestLapIn: null,
    // No nails beside a rafter: the block alone holds the back end.
    backHeld: 'end',
    thicknessIn: stock.thicknessIn,
    depthIn: stock.depthIn,
    jointDepthIn: stock.depthIn,
    tributaryIn,
  };
  return {
    ...reckonTail(shape, [], loads),
    rafter,
    gapIn,
    shapeRef: `station/${layout.eaveId}/${rafter.id}`,
    backHold: 'blocks',
    laidOut: false,
    at: atRafter(rafter.number, rafter.centreIn),
    left,
    right,
    block: { leftIn: left.rightFaceIn, rightIn: right.leftFaceIn },
    centreIn: middleIn,
    middleTaken,
    beside,
  };
}
