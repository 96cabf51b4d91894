import type { EaveDesign } from '../eave/design-document.ts';
import type {
  Bay,
  EaveLayout,
  FasciaPiece,
  FasciaRun,
  HeadRoom,
  LineInPlan,
  OverhangAt,
  PlacedRafter,
} from '../layout/layout-types.ts';
import type { Fastening } from '../pricing/shop-settings.ts';
import { formatLength } from '../units/format-length.ts';
import { cutText } from './cut-text.ts';
import { extenderJson } from './extender-json.ts';
import type { Json } from './json.ts';

/**
 * A laid-out eave as JSON: rafters, extenders with their sections and joints, bays, edge boards, lines. [in, deg]
 * @param layout - the eave.
 * @param design - of the eave.
 * @param fastening - how extenders are nailed to their rafters.
 */
export function eaveJson(layout: EaveLayout, design: EaveDesign, fastening: Fastening) {
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
      highestAfterIn: fasciaLine.highestAfterIn,
      lowestAfterIn: fasciaLine.lowestAfterIn,
    },
    lineInPlan: lineInPlanJson(layout.lineInPlan),
    headRoom: layout.headRoom === null ? null : headRoomJson(layout.headRoom),
    rafters: layout.rafters.map(rafterJson),
    occupied: layout.occupied.map(({ label, kind, leftIn, rightIn }) => ({ label, kind, leftIn, rightIn })),
    extenders: layout.extenders.map((extender) => extenderJson(extender, design, fastening)),
    unplaced: layout.unplaced.map(({ rafterId, rafterNumber, stationIn, reason, left, right }) => ({
      rafterId,
      rafterNumber,
      stationIn,
      reason,
      left,
      right,
    })),
    bays: layout.bays.map(bayJson),
    ends: { left: { ...layout.ends.left }, right: { ...layout.ends.right } },
    fascia: layout.fascia.map(fasciaJson),
    fasciaEnds: runEndsJson(layout.fasciaRun),
    subFascia: layout.subFascia.map(fasciaJson),
    subFasciaEnds: layout.subFasciaRun === null ? null : runEndsJson(layout.subFasciaRun),
  } satisfies Json;
}

/** Where a run of edge boards ends: on the face as seen from outside, and on the back. */
function runEndsJson({ left, right }: FasciaRun) {
  return { left: { ...left }, right: { ...right } } satisfies Json;
}

function overhangAtJson(overhang: OverhangAt | null) {
  return overhang === null ? null : { ...overhang };
}

function lineInPlanJson(line: LineInPlan) {
  return {
    kind: line.kind,
    from: line.from,
    bowed: line.bowed,
    wallMeanOutIn: line.wallMeanOutIn,
    outIn: line.outIn,
    least: overhangAtJson(line.least),
    most: overhangAtJson(line.most),
  } satisfies Json;
}

function headRoomJson(room: HeadRoom) {
  return {
    extenderId: room.extenderId,
    rafterNumber: room.rafterNumber,
    stationIn: room.stationIn,
    roomIn: room.roomIn,
    waysOut: room.waysOut.map((way) => ({ ...way })),
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
    shortSixteenths: piece.shortSixteenths,
    leftEnd: piece.leftEnd,
    rightEnd: piece.rightEnd,
  } satisfies Json;
}
