import type { EaveSurvey } from '../survey/survey-document.ts';
import { sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import { buildFiller } from './build-filler.ts';
import { headerBlocks } from './header-blocks.ts';
import type { FillerStock } from './layout-means.ts';
import type { Extender, Filler, PlacedRafter } from './layout-types.ts';
import { pieceMark } from './marks.ts';
import type { SetTail } from './set-tails.ts';

/** What marks, fillers and header blocks are made from. */
export type ExtenderFrame = {
  readonly survey: EaveSurvey;
  readonly rafters: readonly PlacedRafter[];
  readonly letter: string;
  readonly fillers: readonly FillerStock[];
};

/**
 * Makes the tails of an eave: marks, section, blank, filler, header blocks. Tails beside a rafter are numbered as their
 * rafter (E), hung ones along the wall (T), fillers (P) and header blocks (H) too.
 * @param tails - set on their lines and solved, from left to right. [in]
 * @param frame - of the eave. [in]
 * @returns blanks rounded up to a sixteenth, fillers and blocks down. [1/16 in]
 */
export function makeExtenders(tails: readonly SetTail[], frame: ExtenderFrame): readonly Extender[] {
  const { rafters, letter } = frame;
  const counted = { T: 0, P: 0 };
  const numberOf = (kind: 'T' | 'P'): string => pieceMark(letter, kind, (counted[kind] += 1));
  const extenders = tails.map((tail): Extender => {
    const { method, rafter, fillerIn } = tail.place;
    const mark = method === 'block-hung' ? numberOf('T') : pieceMark(letter, 'E', rafter.number);
    const extender = extenderOf(tail, mark);
    return fillerIn === null
      ? extender
      : { ...extender, filler: fillerOf(fillerIn, extender, frame, numberOf('P')) };
  });
  const headers = headerBlocks(rafters, extenders, letter);
  return extenders.map((extender) => ({ ...extender, headers: headers.get(extender.id) ?? [] }));
}

function extenderOf(tail: SetTail, mark: string): Extender {
  const { place, stationIn, edge, wallOutIn, plateUpIn, section, fit } = tail;
  const { id, method, rafter, standsFor, side, because, clash, leftIn, rightIn, inPlace } = place;
  return {
    id,
    method,
    mark,
    rafterId: rafter.id,
    rafterNumber: rafter.number,
    standsFor,
    side,
    centreIn: stationIn,
    leftIn,
    rightIn,
    because,
    clash,
    section,
    liftAtTailIn: edge.liftAtTailIn,
    pitchRisePer12: edge.pitchRisePer12,
    blankSixteenths: sixteenthsUp(section.blankLengthIn),
    fit,
    wallOutIn,
    plateUpIn,
    overhangLevelIn: section.overhangLevelIn,
    filler: null,
    headers: [],
    inPlace,
  };
}

/**
 * The filler between a rafter and its tail, past the joist. The joist lies level on the plate and the rafter climbs out of
 * its depth; the filler runs from where the rafter's lower edge is clear of the joist's top, to the tail's back end, as
 * deep as the tail; below, the tail lies against the joist. Source: geometry. Rounded down, never below 0.
 * Worked: 6/12, HAP 5, rafter and joist 5-1/2, backspan 35-3/4 -> the rafter's lower edge is 6.149 - 5 below the plate's
 * top at the wall, clear of the joist (5.5 + 1.149) / 0.5 = 13.30 in. further in, 14.87 up the slope -> filler 20-7/8.
 */
function fillerOf(
  wantedIn: number,
  { section, pitchRisePer12, rafterNumber }: Extender,
  { survey, rafters, fillers }: ExtenderFrame,
  mark: string,
): Filler {
  const rafter = rafters[rafterNumber - 1];
  if (rafter === undefined) throw new Error('a filler without its rafter');
  const joistDepthIn = survey.joistDepthIn ?? rafter.depthIn;
  const roofSlope = rafter.pitchRisePer12 / 12;
  const lowerEdgeIn = rafter.heightAbovePlateIn - rafter.depthIn * Math.hypot(1, roofSlope);
  const clearLevelIn = Math.max(0, (joistDepthIn - lowerEdgeIn) / roofSlope);
  const clearAlongIn = clearLevelIn * Math.hypot(1, pitchRisePer12 / 12);
  return {
    mark,
    wantedIn,
    ...buildFiller(wantedIn, fillers),
    lengthSixteenths: sixteenthsDown(Math.max(0, section.backspanIn - clearAlongIn)),
  };
}
