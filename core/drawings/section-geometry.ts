import type { EaveDesign } from '../eave/design-document.ts';
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
  readonly tailTop: Point;
  readonly tailBottom: Point;
  /** The tail's cut runs down in this direction, of length one. */
  readonly down: Point;
  /** The fascia's thickness runs out in this direction, of length one. */
  readonly out: Point;
  readonly fascia: readonly Point[];
  readonly fasciaThicknessIn: number;
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
  const dressed = dressedSection(design.fascia.stock.section);
  const fasciaThicknessIn = dressed?.thicknessIn ?? 0.75;
  const fasciaDepthIn = dressed?.depthIn ?? section.tailFaceIn;
  // The top edge is bevelled to the slope, so that the deck lies flat over it.
  const outerTop = along(tailTop, out, fasciaThicknessIn);
  const innerBottom = along(tailTop, down, fasciaDepthIn);
  const outerBottom: Point = plumb
    ? [outerTop[0], innerBottom[1]]
    : along(innerBottom, out, fasciaThicknessIn);
  const fascia = [tailTop, outerTop, outerBottom, innerBottom];
  return {
    rafter: layout.rafters.find((rafter) => rafter.id === extender.rafterId),
    overhangIn,
    top,
    onSlope: (alongIn, aboveIn) => [
      alongIn * cosine + aboveIn * sine,
      topAtWall - alongIn * sine + aboveIn * cosine,
    ],
    tailTop,
    tailBottom,
    down,
    out,
    fascia,
    fasciaThicknessIn,
    fasciaDepthIn,
    lowestIn: Math.min(outerBottom[1], innerBottom[1], tailBottom[1], -(section.soffitBelowPlateIn ?? 0)),
  };
}

/** The point so far from another in a direction. [in] */
export function along(point: Point, direction: Point, byIn: number): Point {
  return [point[0] + direction[0] * byIn, point[1] + direction[1] * byIn];
}

/**
 * Outline of an old rafter seen from its end: top edge down to the wall's face, notched over the plate.
 * @param fromXIn - where the drawn length begins, inside. [in]
 */
export function oldRafterOutline(rafter: PlacedRafter, fromXIn: number): readonly Point[] {
  const slope = rafter.pitchRisePer12 / 12;
  const plumbDepth = rafter.depthIn * Math.hypot(1, slope);
  const top = (x: number) => rafter.heightAbovePlateIn - slope * x;
  const bottom = (x: number) => top(x) - plumbDepth;
  const start: readonly Point[] = [
    [fromXIn, bottom(fromXIn)],
    [fromXIn, top(fromXIn)],
    [0, top(0)],
  ];
  if (bottom(0) >= 0 || slope === 0) return [...start, [0, Math.max(bottom(0), 0)]];
  const seatEnd = (rafter.heightAbovePlateIn - plumbDepth) / slope;
  return [...start, [0, 0], [Math.max(seatEnd, fromXIn), 0]];
}
