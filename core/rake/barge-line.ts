import { lineHeightIn } from '../layout/fascia-line.ts';
import type { Extender, PlacedRafter } from '../layout/layout-types.ts';
import { gableTailsOf, type RakeParts } from './rake-parts.ts';

/** The straight line of the barge rafter's top edge in the gable, heights above the plate. [in] */
export type BargeLine = {
  /** Level, from the eave wall's framing face to the tail's top corner. */
  readonly eaveOverhangIn: number;
  readonly tailTopIn: number;
  readonly ridgeTopIn: number;
  readonly runIn: number;
  /** [in/12 in] */
  readonly pitchRisePer12: number;
  readonly slopeFactor: number;
  /** From the tail's top corner to the ridge's centre line, along the slope. */
  readonly alongIn: number;
};

/**
 * The barge rafter's top edge: straight from where the gable rafter's top edge meets the ridge's centre line to the top
 * corner of its tail, which lies on the eave's fascia line; so the sheathing lies flat over gable rafter, lookouts and
 * barge. Where the fascia line lifts no tail, that is the gable rafter's own line. Source: geometry, trade.md 1. Not
 * rounded.
 * Worked: 6/12, HAP 5, run 144, P 16, tail not lifted -> ridge at 5 + 72 = 77, tail at 5 - 8 = -3, 160 x 1.118 = 178.885.
 * @param parts - the rake and its eave. [in]
 * @param gable - the old rafter at the gable. [in]
 * @param bargeOutIn - from the gable wall's framing face to the middle of the barge rafter, level. [in]
 */
export function bargeLineOf(parts: RakeParts, gable: PlacedRafter, bargeOutIn: number): BargeLine {
  const { survey, layout } = parts;
  const { runIn } = survey;
  const slope = (survey.pitchRisePer12 ?? gable.pitchRisePer12) / 12;
  const tail = gableTailsOf(parts)[0];
  const eaveOverhangIn = tail?.overhangLevelIn ?? layout.overhangLevelIn;
  const ridgeTopIn = gable.heightAbovePlateIn + slope * runIn;
  const tailTopIn =
    tail === undefined
      ? gable.heightAbovePlateIn - slope * eaveOverhangIn
      : tail.section.tailTopAbovePlateIn + lineRiseIn(parts, tail, bargeOutIn);
  const rise = (ridgeTopIn - tailTopIn) / (runIn + eaveOverhangIn);
  const slopeFactor = Math.hypot(1, rise);
  return {
    eaveOverhangIn,
    tailTopIn,
    ridgeTopIn,
    runIn,
    pitchRisePer12: rise * 12,
    slopeFactor,
    alongIn: (runIn + eaveOverhangIn) * slopeFactor,
  };
}

/** How much higher a sloping fascia line stands at the barge rafter than at the last tail. [in] */
function lineRiseIn({ survey, layout }: RakeParts, tail: Extender, bargeOutIn: number): number {
  const { fasciaLine, wallLengthIn } = layout;
  if (fasciaLine.mode === 'as-found') return 0;
  const bargeStationIn = survey.end === 'left' ? -bargeOutIn : wallLengthIn + bargeOutIn;
  return lineHeightIn(fasciaLine, bargeStationIn) - lineHeightIn(fasciaLine, tail.centreIn);
}

/** Height of the barge rafter's top edge above the plate, over a place in the gable. [in] */
export function bargeTopIn(
  line: Pick<BargeLine, 'tailTopIn' | 'pitchRisePer12' | 'eaveOverhangIn'>,
  levelIn: number,
): number {
  return line.tailTopIn + (line.pitchRisePer12 / 12) * (line.eaveOverhangIn - levelIn);
}

/** Where a place along the slope lies in the gable, level from the eave wall's framing face, outward positive. [in] */
export function levelOf(line: Pick<BargeLine, 'eaveOverhangIn' | 'slopeFactor'>, alongIn: number): number {
  return line.eaveOverhangIn - alongIn / line.slopeFactor;
}
