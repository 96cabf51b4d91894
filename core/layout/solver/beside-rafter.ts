import type { Method } from '../../eave/design-document.ts';
import type { Side } from '../../survey/survey-document.ts';
import { clashToleranceIn, type Interval } from '../in-the-way.ts';
import type { Occupied, PlacedRafter } from '../layout-types.ts';
import { pastEnd, placeAbout, placeFrom, stretch, type Wall } from './wall.ts';

/** One side of a rafter: where a tail would stand on it, and what is in the way. */
export type RafterSide = {
  readonly side: Side;
  /** Face against the rafter. */
  readonly place: Interval;
  /** What stands there, or that it lies past the wall's end; null where it is free. */
  readonly clash: string | null;
  /** Of a side on the outside of an end rafter that lies past the wall's end, with nothing else there. */
  readonly outerFace: boolean;
  /** The ceiling joist against this face, and the place on its far side; null where none lies there. */
  readonly joist: {
    readonly thicknessIn: number;
    readonly place: Interval;
    readonly clash: string | null;
  } | null;
};

/** Finds what an interval runs into. */
export type Standing = (interval: Interval) => readonly Occupied[];

/**
 * Looks at one side of a rafter.
 * @param index - of the rafter.
 * @param wall - the wall. [in]
 * @param standing - what stands on it.
 */
export function rafterSide(index: number, side: Side, wall: Wall, standing: Standing): RafterSide {
  const rafter = rafterAt(index, wall);
  const faceIn = side === 'left' ? rafter.leftFaceIn : rafter.rightFaceIn;
  const place = placeFrom(side === 'left' ? faceIn - wall.thicknessIn : faceIn, wall);
  const past = pastEnd(place, wall);
  const first = standing(place)[0];
  const joist = joistAgainst(faceIn, side, wall, standing);
  const isEnd = side === 'left' ? index === 0 : index === wall.rafters.length - 1;
  return {
    side,
    place,
    clash: clashOf(place, wall, standing),
    outerFace: isEnd && past === side && first === undefined,
    joist,
  };
}

/** What is in the way of a place: the first thing that stands there, or the end of the wall. */
export function clashOf(place: Interval, wall: Wall, standing: Standing): string | null {
  const first = standing(place)[0];
  if (first !== undefined) return `${first.label}, ${stretch(first)}`;
  const past = pastEnd(place, wall);
  return past === null ? null : `it would stand past the wall's ${past} end`;
}

function joistAgainst(faceIn: number, side: Side, wall: Wall, standing: Standing): RafterSide['joist'] {
  const reach = placeFrom(side === 'left' ? faceIn - wall.thicknessIn : faceIn, wall);
  const joist = standing(reach).find(
    (one) =>
      one.kind === 'joist' &&
      Math.abs((side === 'left' ? one.rightIn : one.leftIn) - faceIn) <= clashToleranceIn,
  );
  if (joist === undefined) return null;
  const place = placeFrom(side === 'left' ? joist.leftIn - wall.thicknessIn : joist.rightIn, wall);
  return { thicknessIn: joist.rightIn - joist.leftIn, place, clash: clashOf(place, wall, standing) };
}

/** A way for a rafter to get its tail. */
export type Way = Interval & {
  readonly method: Method;
  readonly side: Side;
  readonly fillerIn: number | null;
  readonly cost: number;
};

/**
 * The ways that a rafter may get a tail of its own, where nothing stands in the way: beside it, past a joist with a
 * filler, past the wall's end, a whole new rafter, or in its place. To a rafter that is doubtful or rotten nothing is
 * fastened. Of one place the cheapest way is enough, and all that are allowed are given.
 * @param index - of the rafter.
 * @param sides - as `rafterSide` found them.
 * @param wall - the wall. [in]
 * @param standing - what stands on it.
 */
export function waysOf(
  index: number,
  sides: readonly RafterSide[],
  wall: Wall,
  standing: Standing,
): readonly Way[] {
  const { allowFiller, allowFullLength, allowOuterFace } = wall.design.layout;
  const sound = rafterAt(index, wall).condition === 'sound';
  const ways = sides.flatMap(({ side, place, clash, outerFace, joist }): readonly Way[] => {
    const way = (method: Method, at: Interval, fillerIn: number | null = null): Way => ({
      ...at,
      method,
      side,
      fillerIn,
      cost: costOf(method, side, wall),
    });
    const whole = clash === null ? place : joist?.clash === null ? joist.place : null;
    return [
      ...(sound && clash === null ? [way('side', place)] : []),
      ...(sound && allowFiller && joist !== null && joist.clash === null
        ? [way('filler', joist.place, joist.thicknessIn)]
        : []),
      ...(sound && allowOuterFace && outerFace ? [way('outer-face', place)] : []),
      ...(allowFullLength && wall.spanKnown && whole !== null && !(sound && clash === null)
        ? [way('full-length', whole)]
        : []),
    ];
  });
  return [...ways, ...replacement(index, wall, standing)];
}

function replacement(index: number, wall: Wall, standing: Standing): readonly Way[] {
  const rafter = rafterAt(index, wall);
  const isEnd = index === 0 || index === wall.rafters.length - 1;
  const place = placeAbout(rafter.centreIn, wall);
  const others = standing(place).filter(
    ({ kind, leftIn }) => kind !== 'rafter' || leftIn !== rafter.leftFaceIn,
  );
  if (!isEnd || !wall.design.layout.allowEndReplacement || !wall.spanKnown || others.length > 0) return [];
  const side = wall.design.preferredSide;
  return [
    {
      ...place,
      method: 'end-replacement',
      side,
      fillerIn: null,
      cost: costOf('end-replacement', side, wall),
    },
  ];
}

/**
 * Weighted cost of a method on a side. [thousandths]
 * @param side - the one not preferred adds its own weight, but for the methods that have no choice of it.
 */
export function costOf(
  method: Method,
  side: Side,
  { weights, design }: Pick<Wall, 'weights' | 'design'>,
): number {
  const weight = {
    side: 0,
    filler: weights.filler,
    'outer-face': weights.outerFace,
    'block-hung': weights.blockHung,
    'full-length': weights.fullLength,
    'end-replacement': weights.endReplacement,
  }[method];
  const choosable = method === 'side' || method === 'filler' || method === 'full-length';
  const other = choosable && side !== design.preferredSide ? weights.otherSide : 0;
  return Math.round((weight + other) * 1000);
}

/** The rafter of this index, which is there. */
export function rafterAt(index: number, { rafters }: Pick<Wall, 'rafters'>): PlacedRafter {
  const rafter = rafters[index];
  if (rafter === undefined) throw new Error(`no rafter ${index}`);
  return rafter;
}
