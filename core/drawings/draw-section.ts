import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { placeWords } from '../takeoff/tail-cuts.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { clipToBox } from './clip.ts';
import type { Drawing, Shape } from './drawing.ts';
import { reachesRidge } from './plan-new.ts';
import { type SectionGeometry, type SectionParts, sectionGeometry } from './section-geometry.ts';
import { newWork } from './section-new.ts';
import { oldHouse } from './section-old.ts';
import { sectionDimensions, sectionLabels, type SectionReader } from './section-notes.ts';

/** How far the old rafter is drawn past the extender's back end, level. [in] */
const pastBackIn = 14;

/**
 * Draws the finished eave in section at one extender, to the plate's axes: x level and outward, y up from the plate.
 * @param layout - the eave. [in]
 * @param extender - the tail that is drawn. [in]
 * @param survey - the old house at this eave. [in]
 * @param design - the overhang's design. [in]
 * @param reader - the client's drawing carries fewer dimensions.
 */
export function drawSection(
  layout: EaveLayout,
  extender: Extender,
  survey: EaveSurvey,
  design: EaveDesign,
  reader: SectionReader = 'shop',
): Drawing {
  const parts: SectionParts = { layout, extender, survey, design };
  const geometry = sectionGeometry(parts);
  const { section } = extender;
  const [minX, maxX] = [leftEnd(parts), geometry.overhangIn + geometry.edgeThicknessIn];
  const windowHead = survey.windowHeadBelowPlateIn;
  const wallBottom = Math.min(geometry.lowestIn - 4, windowHead === null ? -10 : -windowHead - 4);
  const deckTop = geometry.top(minX) + survey.deckThicknessIn * section.slopeFactor;

  return {
    title: reader === 'shop' ? `Section at ${extender.mark}, ${layout.name}` : `Section of ${layout.name}`,
    description: describe(parts, geometry),
    shapes: [
      ...[...oldHouse(parts, geometry, minX, wallBottom), ...newWork(parts, geometry)].map((shape) =>
        cutOffAt(shape, minX),
      ),
      ...sectionLabels(parts, geometry, minX, wallBottom, reader),
      ...sectionDimensions(parts, geometry, wallBottom, reader),
    ],
    minX,
    minY: wallBottom,
    maxX,
    maxY: deckTop,
  };
}

/** A whole new rafter is drawn as far in as a tail at 2:1 would be. */
function leftEnd({ extender, survey }: SectionParts): number {
  const { section } = extender;
  const backX = reachesRidge(extender)
    ? -2 * section.overhangLevelIn
    : -section.backspanIn / section.slopeFactor;
  return Math.min(backX - pastBackIn, -survey.plateWidthIn - 8);
}

function cutOffAt(shape: Shape, minX: number): Shape {
  if (shape.kind !== 'polygon' || shape.points.every(([x]) => x >= minX - 1e-6)) return shape;
  const [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return { ...shape, points: clipToBox(shape.points, { minX, maxX: high, minY: low, maxY: high }) };
}

function describe({ extender, layout, design }: SectionParts, geometry: SectionGeometry): string {
  const { section } = extender;
  const bearing =
    section.bearing.kind === 'notched'
      ? `It is notched over the plate: heel cut ${formatLength(section.bearing.heelCutIn)}, level seat ${formatLength(section.bearing.seatIn)}, throat ${formatLength(section.throatIn)}.`
      : section.bearing.kind === 'shimmed'
        ? `It clears the plate by ${formatLength(section.bearing.shimIn)} and needs a shim of that height.`
        : `Its lower edge meets the plate's outer corner.`;
  return [
    `Section through ${layout.name}, ${placeWords(extender)}, seen with the outside to the right.`,
    `Extender ${extender.mark} of ${design.extender.section} at ${formatPitch(extender.pitchRisePer12)},`,
    `${formatLength(section.overhangLevelIn)} out level, ${formatLength(section.backspanIn)} back along the slope.`,
    bearing,
    `Fascia ${design.fascia.stock.section}, ${formatLength(geometry.fasciaDepthIn)} deep, on a ${design.tailCut} tail.`,
  ].join(' ');
}
