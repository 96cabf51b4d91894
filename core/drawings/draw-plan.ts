import type { EaveDesign } from '../eave/design-document.ts';
import { type EdgeBoards, edgeBoards } from '../eave/edge-boards.ts';
import type { Extender } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey, WallReading } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import type { Box } from './clip.ts';
import type { Drawing, Shape } from './drawing.ts';
import { edge, panelJoints } from './plan-edge.ts';
import { blocks, extenders, methodTags, reachesRidge } from './plan-new.ts';
import { oldFraming } from './plan-old.ts';
import { backspanLevel, type PlanLayout, type PlanView, tailEnd } from './plan-view.ts';

export type PlanOptions = {
  /** Actual thicknesses of fascia and sub-fascia. [in] */
  readonly edgeBoards?: EdgeBoards;
  /** Width of the wall plate. [in] */
  readonly plateWidthIn?: number;
  /** Actual thickness of the blocks. [in] */
  readonly blockThicknessIn?: number;
  /** How far the wall was read to stand out of a straight line; a straight wall where absent. [in] */
  readonly wallReadings?: readonly Pick<WallReading, 'stationIn' | 'outIn'>[];
  /** Stations where panels of the new deck end against one another, and how far in, along the slope, they reach. [in] */
  readonly panelJointsIn?: readonly number[];
  readonly tieBackIn?: number;
  /** What is written at each tail: its mark and method alone where `mark`, its station too where absent. */
  readonly tailsBy?: 'mark' | 'station';
  /** The stretch of wall to draw, by station; the whole eave where absent. [in] */
  readonly fromIn?: number;
  readonly toIn?: number;
};

/** How far old members are drawn in past the longest backspan. [in] */
const pastBackIn = 6;

/** Distance of the running dimensions: clear of the rafters' numbers above, and of the fascia below. [pt] */
const rafterLinePt = 18;
const tailLinePt = 12;

/** The sizes that a plan is drawn with, as measured and designed. */
export function planSizes(survey: EaveSurvey, design: EaveDesign): PlanOptions {
  return {
    plateWidthIn: survey.plateWidthIn,
    wallReadings: survey.wallReadings,
    edgeBoards: edgeBoards(design),
    blockThicknessIn: dressedSection(design.blocks.stock.section)?.thicknessIn ?? 1.5,
    tieBackIn: design.sheathing.tieBackIn,
  };
}

/**
 * Draws an eave from above at the plate: the outside is below, station 0 at the left as seen from outside.
 * @param layout - the eave. [in]
 * @param options - sizes and stretch. [in]
 */
export function drawPlan(layout: PlanLayout, options: PlanOptions = {}): Drawing {
  const { view, isWhole } = viewOf(layout, options);
  const { box } = view;
  const stretch = isWhole
    ? ''
    : `, ${formatLength(Math.max(0, box.minX))} to ${formatLength(Math.min(layout.wallLengthIn, box.maxX))}`;
  return {
    title: `Plan of ${layout.name}${stretch}`,
    description: describe(layout),
    shapes: [
      ...oldFraming(view),
      ...blocks(view),
      ...extenders(view),
      ...edge(view),
      ...panelJoints(view, options.panelJointsIn ?? [], options.tieBackIn ?? 0),
      ...rafterStations(view),
      ...tailStations(view, options.tailsBy ?? 'station', options.panelJointsIn ?? []),
      ...unplaced(view),
    ],
    ...box,
  };
}

function viewOf(layout: PlanLayout, options: PlanOptions): { view: PlanView; isWhole: boolean } {
  const boards = options.edgeBoards ?? { subFasciaIn: 0, fasciaIn: 0, thicknessIn: 0 };
  const wallReadings = options.wallReadings ?? [];
  // A whole new rafter is drawn as far in as the others reach.
  const tails = layout.extenders.filter((extender) => !reachesRidge(extender));
  const deepest = Math.max(24, ...tails.map((extender) => backspanLevel(extender)));
  const lowest = Math.min(
    -layout.overhangLevelIn,
    ...layout.extenders.map(tailEnd),
    ...wallReadings.map(({ outIn }) => -outIn),
  );
  const fasciaEnds = layout.fascia.flatMap((piece) => [piece.fromIn, piece.toIn]);
  const wholeFrom = Math.min(0, ...fasciaEnds);
  const wholeTo = Math.max(layout.wallLengthIn, ...fasciaEnds);
  const box: Box = {
    minX: options.fromIn === undefined || options.fromIn <= 0 ? wholeFrom : options.fromIn,
    maxX: options.toIn === undefined || options.toIn >= layout.wallLengthIn ? wholeTo : options.toIn,
    minY: lowest - boards.thicknessIn,
    maxY: deepest + pastBackIn,
  };
  return {
    isWhole: box.minX === wholeFrom && box.maxX === wholeTo,
    view: {
      layout,
      box,
      plateIn: options.plateWidthIn ?? 3.5,
      edgeBoards: boards,
      blockIn: options.blockThicknessIn ?? 1.5,
      wallReadings,
      inside: (station) => station >= box.minX - 1e-6 && (station < box.maxX || box.maxX === wholeTo),
    },
  };
}

/** The old rafters' numbers, and their centres as running dimensions. */
function rafterStations({ layout, box, inside }: PlanView): readonly Shape[] {
  const rafters = layout.rafters.filter(({ centreIn }) => inside(centreIn));
  return [
    ...rafters.map(
      ({ number, centreIn }): Shape => ({
        kind: 'text',
        at: [centreIn, box.maxY + 2],
        text: String(number),
        anchor: 'middle',
        sizePt: 8,
        bold: true,
      }),
    ),
    runningAlong(
      box,
      box.maxY,
      rafterLinePt,
      rafters.map(({ centreIn }) => ({ atIn: centreIn, text: formatLength(centreIn) })),
    ),
  ];
}

/**
 * The new tails' marks and centres as running dimensions; a method that is not the plain one is named, and so is a joint
 * of panels, which has a stop of its own where no tail is under it.
 */
function tailStations(
  { layout, box, inside }: PlanView,
  tailsBy: 'mark' | 'station',
  jointsIn: readonly number[],
): readonly Shape[] {
  const tails = layout.extenders.filter(({ centreIn }) => inside(centreIn));
  const loose = jointsIn.filter((at) => inside(at) && !layout.extenders.some((tail) => isOn(tail, at)));
  const stops = [
    ...tails.map((tail) => ({
      atIn: tail.centreIn,
      text: [
        tail.mark,
        methodTags[tail.method],
        tailsBy === 'mark' ? '' : formatLength(tail.centreIn),
        jointsIn.some((at) => isOn(tail, at)) ? 'panel' : '',
      ]
        .filter((word) => word !== '')
        .join('  '),
    })),
    ...loose.map((at) => ({ atIn: at, text: `panel  ${formatLength(at)}` })),
  ].toSorted((a, b) => a.atIn - b.atIn);
  return stops.length === 0 ? [] : [runningAlong(box, box.minY, -tailLinePt, stops)];
}

function isOn({ leftIn, rightIn }: Extender, at: number): boolean {
  return at >= leftIn && at <= rightIn;
}

function runningAlong(
  box: Box,
  y: number,
  offsetPt: number,
  stops: readonly { readonly atIn: number; readonly text: string }[],
): Shape {
  return {
    kind: 'running',
    origin: [0, y],
    direction: [1, 0],
    fromIn: Math.max(0, box.minX),
    toIn: Math.max(0, box.minX, ...stops.map(({ atIn }) => atIn)),
    offsetPt,
    stops,
  };
}

function unplaced({ layout, box, inside }: PlanView): readonly Shape[] {
  return layout.unplaced.flatMap((missing): readonly Shape[] => {
    if (!inside(missing.stationIn)) return [];
    const x = missing.stationIn;
    const y = -layout.overhangLevelIn / 2;
    return [
      { kind: 'line', from: [x - 3, y - 3], to: [x + 3, y + 3], pen: 'new' },
      { kind: 'line', from: [x - 3, y + 3], to: [x + 3, y - 3], pen: 'new' },
      {
        kind: 'text',
        at: [x + 1, box.minY - 3],
        text: missing.reason === 'no-side-free' ? 'no side free' : 'none wanted',
        anchor: 'end',
        sizePt: 6.5,
        rotateDeg: 90,
        bold: true,
      },
    ];
  });
}

function describe(layout: PlanLayout): string {
  const moved = layout.extenders.filter((extender) => extender.because === 'moved');
  const others = layout.extenders.filter(({ method }) => method !== 'side');
  const joints = Math.max(0, layout.fascia.length - 1);
  return [
    `Plan of ${layout.name} at the plate, outside below, station 0 at the left as seen from outside.`,
    `Wall ${formatLength(layout.wallLengthIn)}, ${layout.rafters.length} old rafters, ${layout.extenders.length} extenders sticking out ${formatLength(layout.overhangLevelIn)} level.`,
    moved.length === 0
      ? 'None had to move to the other side.'
      : `Moved to the other side: ${moved.map((extender) => extender.mark).join(', ')}.`,
    ...(others.length === 0
      ? []
      : [
          `Fastened otherwise: ${others.map(({ mark, method }) => `${mark} ${methodTags[method]}`).join(', ')}.`,
        ]),
    layout.unplaced.length === 0
      ? 'Every rafter has an extender.'
      : `Without an extender: rafter ${layout.unplaced.map((missing) => missing.rafterNumber).join(', ')}.`,
    `Fascia ${formatLength(layout.fasciaLengthIn)} with ${joints} ${joints === 1 ? 'joint' : 'joints'}.`,
  ].join(' ');
}
