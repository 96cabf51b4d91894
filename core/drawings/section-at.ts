import type { EaveDesign } from '../eave/design-document.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { drawOldSection } from './draw-old-section.ts';
import { drawSection } from './draw-section.ts';
import type { Drawing } from './drawing.ts';

/** What stands nearest to a station: a new tail, or an old rafter that gets none. */
export type SectionPlace =
  | { readonly kind: 'tail'; readonly stationIn: number; readonly extender: Extender }
  | { readonly kind: 'rafter'; readonly stationIn: number; readonly rafter: PlacedRafter };

/** Every place of an eave that a section can be drawn at, from left to right. */
export function sectionPlaces(layout: EaveLayout): readonly SectionPlace[] {
  const bare = new Set(layout.unplaced.map(({ rafterId }) => rafterId));
  return [
    ...layout.extenders.map(
      (extender): SectionPlace => ({ kind: 'tail', stationIn: extender.centreIn, extender }),
    ),
    ...layout.rafters
      .filter(({ id }) => bare.has(id))
      .map((rafter): SectionPlace => ({ kind: 'rafter', stationIn: rafter.centreIn, rafter })),
  ].toSorted((a, b) => a.stationIn - b.stationIn);
}

/**
 * The place nearest to a station, the left one of two that are as near.
 * @param places - as `sectionPlaces` gives them.
 * @param stationIn - along the wall. [in]
 * @returns undefined where the eave has nothing to draw.
 */
export function placeAt(places: readonly SectionPlace[], stationIn: number): SectionPlace | undefined {
  let nearest: SectionPlace | undefined;
  for (const place of places) {
    if (
      nearest === undefined ||
      Math.abs(place.stationIn - stationIn) < Math.abs(nearest.stationIn - stationIn)
    )
      nearest = place;
  }
  return nearest;
}

/** The section at a place of an eave. */
export function drawSectionAt(
  place: SectionPlace,
  layout: EaveLayout,
  survey: EaveSurvey,
  design: EaveDesign,
): Drawing {
  return place.kind === 'tail'
    ? drawSection(layout, place.extender, survey, design)
    : drawOldSection(layout, place.rafter, survey);
}
