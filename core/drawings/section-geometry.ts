import type { EaveDesign } from '../eave/design-document.ts';
import { edgeBoards } from '../eave/edge-boards.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { Point } from './drawing.ts';

/** Everything that a section of one tail is drawn from. */
export type SectionParts = {
  readonly layout: EaveLayout;
  readonly extender: Extender;
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
};

/** Lines and corners of one tail in the section's axes: x level, outward; y up from the plate's top. [in] */
export type SectionGeometry = {
  readonly rafter: PlacedRafter | undefined;
  readonly overhangIn: number;
  /** Height of the extender's top edge at x. */
  readonly top: (xIn: number) => number;
  /** A point so far along the slope outward from the wall line's top point, and so far square above the top edge. */
  readonly onSlope: (alongIn: number, aboveIn: number) => Point;
  /** A strip along the slope, its thickness above `fromAboveIn` square to it. */
  readonly strip: (
    fromIn: number,
    toIn: number,
    thicknessIn: number,
    fromAboveIn?: number,
  ) => readonly Point[];
  /** The old roof that a kicked-up tail leaves; the extender's own edge where it is not kicked up. */
  readonly roof: {
    readonly slopeFactor: number;
    /** A strip of a thickness on the roof, between two level distances. */
    readonly strip: (fromXIn: number, toXIn: number, thicknessIn: number) => readonly Point[];
  };
  readonly tailTop: Point;
  readonly tailBottom: Point;
  /** The tail's cut runs down in this direction, of length one. */
  readonly down: Point;
  /** The fascia's thickness runs out in this direction, of length one. */
  readonly out: Point;
  readonly fascia: readonly Point[];
  /** None where the design has no sub-fascia. */
  readonly subFascia: readonly Point[];
  /** Of fascia and sub-fascia together. */
  readonly edgeThicknessIn: number;
  readonly fasciaDepthIn: number;
  readonly lowestIn: number;
};

/** Works out the lines and corners that the section and the detail at the plate share. */
export function sectionGeometry({ layout, extender, design }: SectionParts): SectionGeometry {
  const { section } = extender;
  const slope = extender.pitchRisePer12 / 12;
  const cosine = 1 / section.slopeFactor;
  const sine = slope * cosine;
  const overhangIn = section.overhangLevelIn;
  const topAtWall = section.tailTopAbovePlateIn + section.tailDropIn;
  const top = (x: number) => topAtWall - slope * x;
  const plumb = design.tailCut === 'plumb';
  const down: Point = plumb ? [0, -1] : [-sine, -cosine];
  const out: Point = plumb ? [1, -slope] : [cosine, -sine];
  const tailTop: Point = [overhangIn, top(overhangIn)];
  const tailBottom = along(tailTop, down, section.tailFaceIn);
  const { subFasciaIn, thicknessIn } = edgeBoards(design);
  const fasciaDepthIn = dressedSection(design.fascia.stock.section)?.depthIn ?? section.tailFaceIn;
  const subFasciaDepthIn =
    dressedSection(design.fascia.subFascia.stock.section)?.depthIn ?? section.tailFaceIn;
  // The top edge of a board on a plumb tail is bevelled to the slope, so that the deck lies flat over it.
  const board = (fromIn: number, toIn: number, depthIn: number): readonly Point[] => {
    const innerTop = along(tailTop, out, fromIn);
    const outerTop = along(tailTop, out, toIn);
    const innerBottom = along(innerTop, down, depthIn);
    return [
      innerTop,
      outerTop,
      plumb ? [outerTop[0], innerBottom[1]] : along(outerTop, down, depthIn),
      innerBottom,
    ];
  };
  const fascia = board(subFasciaIn, thicknessIn, fasciaDepthIn);
  const subFascia = subFasciaIn > 0 ? board(0, subFasciaIn, subFasciaDepthIn) : [];
  const onSlope = (alongIn: number, aboveIn: number): Point => [
    alongIn * cosine + aboveIn * sine,
    topAtWall - alongIn * sine + aboveIn * cosine,
  ];
  return {
    rafter: layout.rafters.find((rafter) => rafter.id === extender.rafterId),
    overhangIn,
    top,
    onSlope,
    strip: (fromIn, toIn, thicknessIn, fromAboveIn = 0) => [
      onSlope(fromIn, fromAboveIn),
      onSlope(fromIn, fromAboveIn + thicknessIn),
      onSlope(toIn, fromAboveIn + thicknessIn),
      onSlope(toIn, fromAboveIn),
    ],
    roof: roofOf(extender),
    tailTop,
    tailBottom,
    down,
    out,
    fascia,
    subFascia,
    edgeThicknessIn: thicknessIn,
    fasciaDepthIn,
    lowestIn: Math.min(
      ...[...fascia, ...subFascia, tailBottom].map(([, y]) => y),
      -(section.soffitBelowPlateIn ?? 0),
    ),
  };
}

function roofOf({ section }: Extender): SectionGeometry['roof'] {
  const { kickUp } = section;
  const slope = (kickUp?.roofPitchRisePer12 ?? section.pitchRisePer12) / 12;
  const slopeFactor = Math.hypot(1, slope);
  const atWallIn = section.heightAbovePlateIn - (kickUp?.raiseAtWallIn ?? 0);
  return {
    slopeFactor,
    strip: (fromXIn, toXIn, thicknessIn) => {
      // Square to the roof: the upper edge lies thickness x sine further out.
      const [outIn, upIn] = [(thicknessIn * slope) / slopeFactor, thicknessIn / slopeFactor];
      const [from, to]: readonly [Point, Point] = [
        [fromXIn, atWallIn - slope * fromXIn],
        [toXIn, atWallIn - slope * toXIn],
      ];
      return [from, [from[0] + outIn, from[1] + upIn], [to[0] + outIn, to[1] + upIn], to];
    },
  };
}

/** The point so far from another in a direction. [in] */
export function along(point: Point, direction: Point, byIn: number): Point {
  return [point[0] + direction[0] * byIn, point[1] + direction[1] * byIn];
}

/**
 * Outline of an old rafter seen from its end: top edge down to the wall's face or to what is left of its old tail, notched
 * over the plate.
 * @param fromXIn - where the drawn length begins, inside. [in]
 * @param oldTailIn - what is left of the old tail past the wall's framing face, level. [in]
 */
export function oldRafterOutline(rafter: PlacedRafter, fromXIn: number, oldTailIn = 0): readonly Point[] {
  const slope = rafter.pitchRisePer12 / 12;
  const plumbDepth = rafter.depthIn * Math.hypot(1, slope);
  const top = (x: number) => rafter.heightAbovePlateIn - slope * x;
  const bottom = (x: number) => top(x) - plumbDepth;
  const start: readonly Point[] = [
    [fromXIn, bottom(fromXIn)],
    [fromXIn, top(fromXIn)],
    [oldTailIn, top(oldTailIn)],
  ];
  const tail: readonly Point[] =
    oldTailIn > 0
      ? [
          [oldTailIn, bottom(oldTailIn)],
          [0, bottom(0)],
        ]
      : [];
  if (bottom(0) >= 0 || slope === 0) return [...start, ...tail, [0, Math.max(bottom(0), 0)]];
  const seatEnd = (rafter.heightAbovePlateIn - plumbDepth) / slope;
  return [...start, ...tail, [0, 0], [Math.max(seatEnd, fromXIn), 0]];
}
