import type { CrossedMember, Lookout, RakeBoard, RakeLayout } from '../rake/rake-types.ts';
import { formatLength } from '../units/format-length.ts';
import { cutText } from './cut-text.ts';
import type { Json } from './json.ts';

/**
 * A laid-out rake as JSON: its line, lookouts or rungs, boards, corner with the eave's fascia, new sheathing. `alongIn`
 * counts up the slope from the tail's top corner; `insideIn` level into the house from the gable wall's framing face. [in]
 * @param rake - laid out.
 */
export function rakeJson(rake: RakeLayout) {
  return {
    rakeId: rake.rakeId,
    name: rake.name,
    mark: rake.mark,
    eaveId: rake.eaveId,
    end: rake.end,
    kind: rake.kind,
    gableRafterId: rake.gable.rafterId,
    gableOuterInsideIn: rake.gable.outerInsideIn,
    gableInnerInsideIn: rake.gable.innerInsideIn,
    gableDepthIn: rake.gable.depthIn,
    gablePitchRisePer12: rake.gable.pitchRisePer12,
    runIn: rake.runIn,
    ridgeThicknessIn: rake.ridgeThicknessIn,
    overhangIn: rake.overhangIn,
    eaveOverhangIn: rake.eaveOverhangIn,
    tailCut: rake.tailCut,
    pitchRisePer12: rake.pitchRisePer12,
    slopeFactorRatio: rake.slopeFactor,
    slopeAngleDeg: rake.slopeAngleDeg,
    tailTopAbovePlateIn: rake.tailTopIn,
    ridgeTopAbovePlateIn: rake.ridgeTopIn,
    alongIn: rake.alongIn,
    wallAlongIn: rake.wallAlongIn,
    bargeAboveGableIn: rake.aboveGableIn,
    notch: rake.notch,
    largestSpacingIn: rake.largestSpacingIn,
    lookouts: rake.lookouts.map(lookoutJson),
    barge: rake.barge.map(boardJson),
    rails: rake.rails.map(boardJson),
    fascia: rake.fascia.map(boardJson),
    corner: { ...rake.corner },
    sheathing:
      rake.strip === null
        ? null
        : {
            widthIn: rake.strip.widthIn,
            outIn: rake.strip.outIn,
            fromAlongIn: rake.strip.fromIn,
            toAlongIn: rake.strip.toIn,
            areaSqFt: rake.strip.areaSqFt,
            joints: rake.strip.jointsIn.map((alongIn) => ({ alongIn })),
          },
  } satisfies Json;
}

function lookoutJson(lookout: Lookout) {
  return {
    mark: lookout.mark,
    alongIn: lookout.alongIn,
    alongText: formatLength(lookout.alongIn),
    levelIn: lookout.levelIn,
    because: lookout.because,
    lengthIn: lookout.lengthIn,
    lengthSixteenths: lookout.lengthSixteenths,
    lengthText: cutText(lookout.lengthSixteenths),
    crosses: lookout.crosses.map(memberJson),
    meets: lookout.meets === null ? null : memberJson(lookout.meets),
    backspanIn: lookout.backspanIn,
    overhangIn: lookout.overhangIn,
    block:
      lookout.block === null
        ? null
        : {
            mark: lookout.block.mark,
            lengthSixteenths: lookout.block.lengthSixteenths,
            lengthText: cutText(lookout.block.lengthSixteenths),
          },
  } satisfies Json;
}

function memberJson({ label, kind, depthIn, outerInsideIn, innerInsideIn }: CrossedMember) {
  return { label, kind, depthIn, outerInsideIn, innerInsideIn } satisfies Json;
}

function boardJson(board: RakeBoard) {
  return {
    mark: board.mark,
    fromAlongIn: board.fromIn,
    toAlongIn: board.toIn,
    lengthSixteenths: board.lengthSixteenths,
    lengthText: cutText(board.lengthSixteenths),
    slantSixteenths: board.slantSixteenths ?? null,
    lowerEnd: board.lowerEnd,
    upperEnd: board.upperEnd,
  } satisfies Json;
}
