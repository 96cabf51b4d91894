import type { Bearing, RafterSection } from '../eave/section-types.ts';
import type { Bay, EaveLayout, Extender, FasciaPiece, PlacedRafter } from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf, nearestSixteenth, type Sixteenths } from '../units/sixteenths.ts';
import type { Json } from './json.ts';
import { jointJson } from './nails-json.ts';

/**
 * A laid-out eave as JSON: rafters, extenders with their sections and joints, bays, fascia. [in, deg]
 * @param layout - the eave.
 * @param fastening - how extenders are nailed to their rafters.
 */
export function eaveJson(layout: EaveLayout, fastening: Fastening) {
  const { fasciaLine } = layout;
  return {
    eaveId: layout.eaveId,
    name: layout.name,
    letter: layout.letter,
    wallLengthIn: layout.wallLengthIn,
    overhangLevelIn: layout.overhangLevelIn,
    fasciaLengthIn: layout.fasciaLengthIn,
    fasciaLine: {
      mode: fasciaLine.mode,
      atStartIn: fasciaLine.atStartIn,
      riseInPerIn: fasciaLine.risePerInch,
      highestIn: fasciaLine.highestIn,
      lowestIn: fasciaLine.lowestIn,
    },
    rafters: layout.rafters.map(rafterJson),
    occupied: layout.occupied.map(({ label, kind, leftIn, rightIn }) => ({ label, kind, leftIn, rightIn })),
    extenders: layout.extenders.map((extender) => extenderJson(extender, fastening)),
    unplaced: layout.unplaced.map(({ rafterId, rafterNumber, stationIn, reason, left, right }) => ({
      rafterId,
      rafterNumber,
      stationIn,
      reason,
      left,
      right,
    })),
    bays: layout.bays.map(bayJson),
    fascia: layout.fascia.map(fasciaJson),
  } satisfies Json;
}

function rafterJson(rafter: PlacedRafter) {
  return {
    id: rafter.id,
    number: rafter.number,
    stationIn: rafter.centreIn,
    stationText: formatLength(rafter.centreIn),
    leftFaceIn: rafter.leftFaceIn,
    rightFaceIn: rafter.rightFaceIn,
    thicknessIn: rafter.thicknessIn,
    depthIn: rafter.depthIn,
    pitchRisePer12: rafter.pitchRisePer12,
    heightAbovePlateIn: rafter.heightAbovePlateIn,
    clearBackspanIn: rafter.clearBackspanIn,
  } satisfies Json;
}

function extenderJson(extender: Extender, fastening: Fastening) {
  return {
    mark: extender.mark,
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
    section: sectionJson(extender.section),
    joint: jointJson(extender, fastening),
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
    fasciaNeededIn: section.fasciaNeededIn,
    fasciaSpareIn: section.fasciaSpareIn,
    soffitWidthIn: section.soffitWidthIn,
    soffitBelowPlateIn: section.soffitBelowPlateIn,
    windowHeadClearanceIn: section.windowHeadClearanceIn,
    deepestInsertIn: section.deepestInsertIn,
    outlineIn: section.outline.map(([x, y]) => [x, y]),
  } satisfies Json;
}

/** A shim is cut, so it is told in sixteenths too. */
function bearingJson(bearing: Bearing) {
  return bearing.kind === 'shimmed'
    ? ({ ...bearing, shimSixteenths: nearestSixteenth(bearing.shimIn) } satisfies Json)
    : ({ ...bearing } satisfies Json);
}

function bayJson(bay: Bay) {
  return {
    mark: bay.mark,
    leftRafterId: bay.leftRafterId,
    fromIn: bay.fromIn,
    toIn: bay.toIn,
    clearIn: bay.clearIn,
    clearText: formatLength(bay.clearIn),
    block: bay.block,
    oldBlockOut: bay.oldBlockOut,
  } satisfies Json;
}

function fasciaJson(piece: FasciaPiece) {
  return {
    mark: piece.mark,
    fromIn: piece.fromIn,
    toIn: piece.toIn,
    lengthSixteenths: piece.lengthSixteenths,
    lengthText: cutText(piece.lengthSixteenths),
    leftEnd: piece.leftEnd,
    rightEnd: piece.rightEnd,
  } satisfies Json;
}

/** A cut length as a tape is read, e.g. 1064 -> `5' 6-1/2"`. [1/16 in] */
export function cutText(sixteenths: Sixteenths): string {
  return formatLength(inchesOf(sixteenths));
}
