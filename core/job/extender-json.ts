import type { EaveDesign } from '../eave/design-document.ts';
import type { Bearing, RafterSection } from '../eave/section-types.ts';
import type { Extender, Filler } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import { formatLength } from '../units/format-length.ts';
import { nearestSixteenth } from '../units/sixteenths.ts';
import { cutText } from './cut-text.ts';
import type { Json } from './json.ts';
import { jointJson } from './nails-json.ts';

/**
 * A tail of an eave as JSON: where it stands, how it is fastened, what is cut, its section and its nails. [in, deg]
 * @param extender - the tail.
 * @param design - of its eave.
 * @param fastening - how it is nailed to its rafter.
 */
export function extenderJson(extender: Extender, design: EaveDesign, fastening: Fastening) {
  return {
    id: extender.id,
    mark: extender.mark,
    method: extender.method,
    inPlace: extender.inPlace,
    rafterId: extender.rafterId,
    rafterNumber: extender.rafterNumber,
    side: extender.side,
    because: extender.because,
    clash: extender.clash,
    stationIn: extender.centreIn,
    stationText: formatLength(extender.centreIn),
    leftIn: extender.leftIn,
    rightIn: extender.rightIn,
    liftAtTailIn: extender.liftAtTailIn,
    pitchRisePer12: extender.pitchRisePer12,
    blankSixteenths: extender.blankSixteenths,
    blankText: cutText(extender.blankSixteenths),
    wallOutIn: extender.wallOutIn,
    overhangLevelIn: extender.overhangLevelIn,
    fit: { ...extender.fit },
    filler: extender.filler === null ? null : fillerJson(extender.filler),
    headers: extender.headers.map((header) => ({ ...header })),
    section: sectionJson(extender.section),
    joint: jointJson(extender, design, fastening),
  } satisfies Json;
}

function sectionJson(section: RafterSection) {
  return {
    slopeFactorRatio: section.slopeFactor,
    slopeAngleDeg: section.slopeAngleDeg,
    overhangLevelIn: section.overhangLevelIn,
    overhangAlongIn: section.overhangAlongIn,
    plumbDepthIn: section.plumbDepthIn,
    bearing: bearingJson(section.bearing),
    throatIn: section.throatIn,
    backspanWantedIn: section.backspanWantedIn,
    backspanIn: section.backspanIn,
    backspanRatio: section.backspanRatio,
    finishedLengthIn: section.finishedLengthIn,
    blankLengthIn: section.blankLengthIn,
    squareTailSetbackIn: section.squareTailSetbackIn,
    tailDropIn: section.tailDropIn,
    tailTopAbovePlateIn: section.tailTopAbovePlateIn,
    tailBottomAbovePlateIn: section.tailBottomAbovePlateIn,
    tailFaceIn: section.tailFaceIn,
    levelCutIn: section.levelCutIn,
    fasciaNeededIn: section.fasciaNeededIn,
    fasciaSpareIn: section.fasciaSpareIn,
    soffitWidthIn: section.soffitWidthIn,
    soffitBelowPlateIn: section.soffitBelowPlateIn,
    windowHeadClearanceIn: section.windowHeadClearanceIn,
    deepestInsertIn: section.deepestInsertIn,
    kickUp:
      section.kickUp === null
        ? null
        : { ...section.kickUp, lap: section.kickUp.lap === null ? null : { ...section.kickUp.lap } },
    outlineIn: section.outline.map(([x, y]) => [x, y]),
  } satisfies Json;
}

function fillerJson(filler: Filler) {
  return {
    mark: filler.mark,
    wantedIn: filler.wantedIn,
    layers: filler.layers.map((layer) => ({ ...layer })),
    offIn: filler.offIn,
    lengthSixteenths: filler.lengthSixteenths,
    lengthText: cutText(filler.lengthSixteenths),
  } satisfies Json;
}

/** A shim is cut, so it is told in sixteenths too. */
function bearingJson(bearing: Bearing) {
  return bearing.kind === 'shimmed'
    ? ({ ...bearing, shimSixteenths: nearestSixteenth(bearing.shimIn) } satisfies Json)
    : ({ ...bearing } satisfies Json);
}
