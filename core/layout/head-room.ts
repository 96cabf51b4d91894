import type { EaveDesign } from '../eave/design-document.ts';
import { dressedSections } from '../lumber/dressed-sizes.ts';
import type { HeadRoom, PlacedRafter, WayOut } from './layout-types.ts';
import { setTails, type SetTail, type SetTails, type TailsFrame } from './set-tails.ts';
import { leastKickRisePer12 } from './tail-problems.ts';
import type { TailPlace } from './tail-place.ts';

/** Less than this is no trouble on a tape. [in] */
const untoldIn = 1 / 32;
/** Binary dust that does not make a tail too low. [in] */
const dustIn = 1e-9;
/** Least of a tail's face that still takes a fascia's nails. [in] Common practice, no source. */
const leastFaceIn = 3.5;
/** Less overhang than this is hardly one. [in] Common practice, no source. */
const leastOverhangIn = 4;
/** Flatter than this is no pitch for shingles. [in/12 in] Source: IRC R905.2.2, from memory. */
const flattestRisePer12 = 2;

/** The eave as it is set, from which the ways out are tried. */
export type SetEave = {
  readonly places: readonly TailPlace[];
  readonly rafters: readonly PlacedRafter[];
  readonly frame: TailsFrame;
  readonly set: SetTails;
};

/**
 * The tail that comes lowest against the window or door head, and where it is too low the ways out, cheapest first: part
 * of its underside cut level, less overhang, a sloped soffit, a kick-up; with no level soffit shallower stock and the
 * kick-up. Every number is found by solving the eave again, so each way clears every tail of it: faces to a sixteenth,
 * overhangs to an eighth, pitches to a quarter in twelve, all on the clear side. Order: common practice, no source.
 * Worked: 7/12, HAP 4, 2x6 18 in. out, no soffit thickness, head 10 in. below the plate -> 10.5 + 6.367 - 4 = 12.867, so
 * 2.867 in. too low; 4 + 10 - 10.5 = 3-1/2 in. of the face may stay; or 18 - 2.867 / 0.5833 = 13.08, 13 in. of overhang.
 * @param eave - places, frame and what was solved. [in]
 * @returns null where no head was measured, or no tail stands.
 */
export function headRoom(eave: SetEave): HeadRoom | null {
  const lowest = lowestOf(eave.set.tails);
  if (lowest === undefined) return null;
  const { place, stationIn, section } = lowest;
  const roomIn = section.windowHeadClearanceIn ?? 0;
  return {
    extenderId: place.id,
    rafterNumber: place.rafter.number,
    stationIn,
    roomIn,
    waysOut: roomIn < -untoldIn ? waysOut(eave, lowest) : [],
  };
}

function lowestOf(tails: readonly SetTail[]): SetTail | undefined {
  return tails.reduce<SetTail | undefined>((lowest, one) => {
    const roomIn = one.section.windowHeadClearanceIn;
    if (roomIn === null) return lowest;
    return lowest === undefined || roomIn < (lowest.section.windowHeadClearanceIn ?? 0) - 1e-9 ? one : lowest;
  }, undefined);
}

function waysOut(eave: SetEave, lowest: SetTail): readonly WayOut[] {
  const { design } = eave.frame;
  const ways =
    design.soffit.kind === 'level'
      ? [levelCut(eave, lowest), lessOverhang(eave), slopedSoffit(eave), kickUp(eave)]
      : [shallowerStock(eave), kickUp(eave)];
  return ways.filter((way) => way !== undefined);
}

function levelCut(eave: SetEave, lowest: SetTail): WayOut | undefined {
  const most = Math.floor(lowest.section.tailFaceIn * 16);
  const clears = (sixteenths: number): boolean => roomWith(eave, { tailFaceIn: sixteenths / 16 }) >= -dustIn;
  const face = largest(Math.ceil(leastFaceIn * 16), most, clears);
  return face === undefined ? undefined : { kind: 'level-cut', faceIn: face / 16 };
}

function lessOverhang(eave: SetEave): WayOut | undefined {
  const most = Math.floor(eave.frame.overhangLevelIn * 8);
  const clears = (eighths: number): boolean =>
    roomWith(eave, {}, { overhangLevelIn: eighths / 8 }) >= -dustIn;
  const overhang = largest(leastOverhangIn * 8, most, clears);
  return overhang === undefined ? undefined : { kind: 'less-overhang', overhangIn: overhang / 8 };
}

function slopedSoffit(eave: SetEave): WayOut | undefined {
  const roomIn = roomWith(eave, { soffit: { ...eave.frame.design.soffit, kind: 'sloped' } });
  return roomIn >= -dustIn ? { kind: 'sloped-soffit', roomIn } : undefined;
}

function kickUp(eave: SetEave): WayOut | undefined {
  const { kickUpPitchRisePer12: now } = eave.frame.design;
  const flattest = Math.min(...eave.rafters.map(({ pitchRisePer12 }) => pitchRisePer12));
  const steepest = Math.min(flattest - leastKickRisePer12, (now ?? Infinity) - 1 / 4);
  const clears = (quarters: number): boolean =>
    roomWith(eave, { kickUpPitchRisePer12: quarters / 4 }) >= -dustIn;
  const pitch = largest(flattestRisePer12 * 4, Math.floor(steepest * 4), clears);
  return pitch === undefined ? undefined : { kind: 'kick-up', pitchRisePer12: pitch / 4 };
}

function shallowerStock(eave: SetEave): WayOut | undefined {
  const { stock } = eave.frame;
  const fitting = dressedSections.findLast(
    (one) =>
      one.nominalThicknessIn === stock.nominalThicknessIn &&
      one.depthIn < stock.depthIn &&
      one.depthIn >= leastFaceIn &&
      roomWith(eave, {}, { stock: one }) >= -dustIn,
  );
  return fitting === undefined ? undefined : { kind: 'shallower-stock', section: fitting.section };
}

/** Room of the lowest tail once the design is changed; less than nothing where it cannot be set so. [in] */
function roomWith(
  { places, rafters, frame }: SetEave,
  change: Partial<EaveDesign>,
  other: Partial<TailsFrame> = {},
): number {
  const set = setTails(places, rafters, { ...frame, ...other, design: { ...frame.design, ...change } });
  if (!set.ok) return Number.NEGATIVE_INFINITY;
  return lowestOf(set.value.tails)?.section.windowHeadClearanceIn ?? Number.NEGATIVE_INFINITY;
}

/** The largest whole number that clears, where smaller ones clear more; undefined where the least does not. */
function largest(least: number, most: number, clears: (value: number) => boolean): number | undefined {
  if (most < least || !clears(least)) return undefined;
  let [low, high] = [least, most];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (clears(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
