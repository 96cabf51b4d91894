import type { EaveDesign } from '../eave/design-document.ts';
import { lineHeightIn } from '../layout/fascia-line.ts';
import type { EaveLayout, Extender, FasciaPiece } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { plateUpIn } from '../survey/wall-line.ts';
import { formatLength } from '../units/format-length.ts';
import type { Box } from './clip.ts';
import { clipToBox } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { rectangle } from './plan-view.ts';

export type ElevationOptions = {
  /** Stations where panels of the lowest course of the new deck end against one another. [in] */
  readonly panelJointsIn?: readonly number[];
  /** What is written at each tail: its mark alone where `mark`, its station too where absent. */
  readonly tailsBy?: 'mark' | 'station';
  /** The stretch of wall to draw, by station; the whole eave where absent. [in] */
  readonly fromIn?: number;
  readonly toIn?: number;
};

/** Distance of the running dimensions below the fascia. [pt] */
const linePt = 12;

/** How far above the line the panel joints are drawn. [in] */
const jointAboveIn = 3;

/**
 * Draws the fascia from outside: its boards and joints, and behind it, as hidden lines, the tails and the sub-fascia.
 * Heights are above a level line through the plate's top at the wall's left end.
 * @param layout - the eave. [in]
 * @param survey - the old house at this eave. [in]
 * @param design - the overhang's design. [in]
 * @param options - panel joints and stretch. [in]
 */
export function drawElevation(
  layout: EaveLayout,
  survey: EaveSurvey,
  design: EaveDesign,
  options: ElevationOptions = {},
): Drawing {
  const heights = heightsOf(layout, survey);
  const ends = layout.fascia.flatMap(({ fromIn, toIn }) => [fromIn, toIn]);
  const wholeFrom = Math.min(0, ...ends);
  const wholeTo = Math.max(layout.wallLengthIn, ...ends);
  const minX = (options.fromIn ?? 0) <= 0 ? wholeFrom : (options.fromIn ?? 0);
  const maxX =
    (options.toIn ?? layout.wallLengthIn) >= layout.wallLengthIn ? wholeTo : (options.toIn ?? wholeTo);
  // A square tail leans with its cut, so that its face and its fascia show shorter from outside.
  const lean = design.tailCut === 'plumb' ? 1 : 1 / Math.hypot(1, survey.pitchRisePer12 / 12);
  const depthIn = (dressedSection(design.fascia.stock.section)?.depthIn ?? 0) * lean;
  const subDepthIn = (dressedSection(design.fascia.subFascia.stock.section)?.depthIn ?? 0) * lean;
  const tops = [minX, maxX, ...layout.extenders.map(({ centreIn }) => centreIn)].map(heights.lineAt);
  const lows = layout.extenders.map(
    (extender) => heights.tailTop(extender) - extender.section.tailFaceIn * lean,
  );
  const box: Box = {
    minX,
    maxX,
    minY: Math.min(...tops.map((top) => top - Math.max(depthIn, subDepthIn)), ...lows),
    maxY: Math.max(...tops) + jointAboveIn,
  };
  const inside = (station: number): boolean => station >= minX - 1e-6 && (station < maxX || maxX === wholeTo);
  const board = (pieces: readonly FasciaPiece[], depth: number, name: string, hidden: boolean) =>
    pieces.flatMap((piece): readonly Shape[] => {
      const top = line(piece, layout, heights.lineAt);
      const points = clipToBox([...top, ...top.toReversed().map(([x, y]): Point => [x, y - depth])], box);
      return points.length < 3
        ? []
        : [
            {
              kind: 'polygon',
              points,
              pen: hidden ? 'hidden' : 'new',
              fill: hidden ? 'none' : 'paper',
              ref: `piece/${piece.mark}`,
              title: `${name} ${piece.mark}`,
            },
          ];
    });
  return {
    title: `Fascia of ${layout.name} from outside${minX === wholeFrom && maxX === wholeTo ? '' : `, ${formatLength(Math.max(0, minX))} to ${formatLength(Math.min(layout.wallLengthIn, maxX))}`}`,
    description: describe(layout),
    shapes: [
      ...board(layout.fascia, depthIn, 'Fascia', false),
      ...board(layout.subFascia, subDepthIn, 'Sub-fascia', true),
      ...layout.extenders
        .filter(({ centreIn }) => inside(centreIn))
        .flatMap((extender) => tail(extender, heights.tailTop(extender), lean)),
      ...boardMarks(layout, heights.lineAt, box),
      ...(options.panelJointsIn ?? [])
        .filter(inside)
        .flatMap((station) => panelJoint(station, heights.lineAt)),
      stations(layout, box, inside, options.tailsBy ?? 'station'),
    ],
    ...box,
  };
}

type Heights = {
  readonly lineAt: (stationIn: number) => number;
  readonly tailTop: (extender: Extender) => number;
};

function heightsOf(layout: EaveLayout, survey: EaveSurvey): Heights {
  const tailTop = ({ section, centreIn }: Extender): number =>
    section.tailTopAbovePlateIn + plateUpIn(survey.plateReadings, centreIn);
  const asFound = (stationIn: number): number => {
    const before = layout.extenders.findLast(({ centreIn }) => centreIn <= stationIn);
    const after = layout.extenders.find(({ centreIn }) => centreIn > stationIn);
    if (before === undefined || after === undefined) {
      const nearest = before ?? after;
      return nearest === undefined ? 0 : tailTop(nearest);
    }
    const share = (stationIn - before.centreIn) / (after.centreIn - before.centreIn);
    return tailTop(before) + share * (tailTop(after) - tailTop(before));
  };
  const { fasciaLine } = layout;
  return {
    tailTop,
    lineAt: fasciaLine.mode === 'as-found' ? asFound : (station) => lineHeightIn(fasciaLine, station),
  };
}

/** The upper edge of a board from its left end to its right one, by way of the tails where it may bend. */
function line(
  { fromIn, toIn }: FasciaPiece,
  layout: EaveLayout,
  lineAt: (stationIn: number) => number,
): readonly Point[] {
  const between =
    layout.fasciaLine.mode === 'as-found'
      ? layout.extenders.map(({ centreIn }) => centreIn).filter((at) => at > fromIn && at < toIn)
      : [];
  return [fromIn, ...between, toIn].map((station): Point => [station, lineAt(station)]);
}

function tail(extender: Extender, topIn: number, lean: number): readonly Shape[] {
  const { mark, leftIn, rightIn, section } = extender;
  return [
    {
      kind: 'polygon',
      points: rectangle(leftIn, rightIn, topIn - section.tailFaceIn * lean, topIn),
      pen: 'hidden',
      fill: 'none',
      ref: `piece/${mark}`,
      title: `Tail ${mark}`,
    },
  ];
}

/** Marks and lengths of the boards, over the drawn part of each. */
function boardMarks(layout: EaveLayout, lineAt: (stationIn: number) => number, box: Box): readonly Shape[] {
  return layout.fascia.flatMap(({ mark, fromIn, toIn }): readonly Shape[] => {
    const [from, to] = [Math.max(fromIn, box.minX), Math.min(toIn, box.maxX)];
    if (to - from < 6) return [];
    const at = (from + to) / 2;
    return [
      {
        kind: 'text',
        at: [at, lineAt(at) + jointAboveIn + 2.2],
        text: `${mark}  ${formatLength(toIn - fromIn)}`,
        anchor: 'middle',
        sizePt: 8,
        bold: true,
      },
    ];
  });
}

function panelJoint(station: number, lineAt: (stationIn: number) => number): readonly Shape[] {
  return [
    {
      kind: 'line',
      from: [station, lineAt(station)],
      to: [station, lineAt(station) + jointAboveIn],
      pen: 'cut',
    },
    {
      kind: 'text',
      at: [station + 0.8, lineAt(station) + jointAboveIn - 1.6],
      text: 'panel joint',
      anchor: 'start',
      sizePt: 6,
    },
  ];
}

/** Tails, ends and joints of the boards as running dimensions; a joint stands with the tail that it lands on. */
function stations(
  layout: EaveLayout,
  box: Box,
  inside: (stationIn: number) => boolean,
  tailsBy: 'mark' | 'station',
): Shape {
  const joints = layout.fascia.slice(1).map(({ fromIn }) => fromIn);
  const ends = [
    ...layout.fascia.slice(0, 1).map(({ fromIn }) => fromIn),
    ...layout.fascia.slice(-1).map(({ toIn }) => toIn),
  ];
  const onTail = new Map(joints.map((atIn) => [atIn, tailAt(layout, atIn)?.id]));
  const stops = [
    ...ends.map((atIn) => ({ atIn, text: `end  ${formatLength(atIn)}` })),
    ...joints.map((atIn) => ({
      atIn,
      text: `joint  ${tailAt(layout, atIn)?.mark ?? 'no tail'}  ${formatLength(atIn)}`,
    })),
    ...layout.extenders
      .filter(({ id }) => ![...onTail.values()].includes(id))
      .map(({ mark, centreIn }) => ({
        atIn: centreIn,
        text: tailsBy === 'mark' ? mark : `${mark}  ${formatLength(centreIn)}`,
      })),
  ]
    .filter(({ atIn }) => inside(atIn))
    .toSorted((a, b) => a.atIn - b.atIn);
  return {
    kind: 'running',
    origin: [0, box.minY],
    direction: [1, 0],
    fromIn: Math.min(box.minX, ...stops.map(({ atIn }) => atIn)),
    toIn: Math.max(box.minX, ...stops.map(({ atIn }) => atIn)),
    offsetPt: -linePt,
    stops,
  };
}

/** The tail that a station lies on. */
export function tailAt(layout: EaveLayout, stationIn: number): Extender | undefined {
  return layout.extenders.find(
    ({ leftIn, rightIn }) => stationIn >= leftIn - 1e-6 && stationIn <= rightIn + 1e-6,
  );
}

function describe(layout: EaveLayout): string {
  const inner = layout.fascia.slice(1);
  const where = inner.map(
    ({ fromIn }) => `${formatLength(fromIn)} on ${tailAt(layout, fromIn)?.mark ?? 'no tail'}`,
  );
  return [
    `Fascia of ${layout.name} seen from outside, ${formatLength(layout.fasciaLengthIn)} in ${layout.fascia.length} ${layout.fascia.length === 1 ? 'board' : 'boards'}, with ${layout.extenders.length} tails behind it.`,
    inner.length === 0 ? 'It has no joint.' : `Joints at ${where.join(', ')}.`,
  ].join(' ');
}
