import type { PlacedRafter } from '../layout/layout-types.ts';
import type { NailPosition } from '../takeoff/stagger.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { clipToBox } from './clip.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { toPieceAxes } from './piece-axes.ts';
import { oldRafterOutline, type SectionParts } from './section-geometry.ts';

/** The nails of one lap and how they stand. */
export type LapNails = {
  readonly nail: string;
  readonly rows: number;
  /** Clear distance from a nail to the wood's edge. [in] */
  readonly edgeDistanceIn: number;
  /** Where the lap ends and begins, along the slope inward from the wall line. [in] */
  readonly lap: { readonly fromIn: number; readonly toIn: number };
  /** Counted from the lap's back end. [in] */
  readonly nails: readonly NailPosition[];
};

/** How far past the wall line and past the back end is drawn. [in] */
const pastWallIn = 7;
const pastBackIn = 3;

/** Half the size of a nail's head on the drawing; not to scale. [in] */
const headIn = 0.35;

/**
 * Draws the lap of an extender on its rafter from the face, the top edge level: every nail of every row with its distance
 * from the lap's back end, end and edge distances, and the filler behind where there is one. Nail heads are drawn larger.
 * @param parts - the tail with its eave. [in]
 * @param joint - the nails. [in]
 */
export function drawNailPattern(parts: SectionParts, joint: LapNails): Drawing {
  const { extender, layout } = parts;
  const { section } = extender;
  const turn = toPieceAxes(section);
  const depthIn = section.plumbDepthIn / section.slopeFactor;
  const rafter = layout.rafters.find(({ id }) => id === extender.rafterId);
  const backIn = -joint.lap.toIn;
  // A kicked-up tail lies across its rafter, which shows above and below it.
  const besideIn = section.kickUp === null ? 0 : (rafter?.depthIn ?? 0) / 2;
  const box = {
    minX: backIn - pastBackIn,
    maxX: pastWallIn,
    minY: -Math.max(depthIn, rafter?.depthIn ?? 0) - besideIn,
    maxY: besideIn,
  };
  const lapping = lappingWood(turn, rafter, depthIn);
  const rowY = (row: number, x: number): number => {
    const { topY, lowY } = lapping(x);
    const edgeIn = Math.min(joint.edgeDistanceIn, (topY - lowY) / 2);
    const share = joint.rows === 1 ? 0.5 : (row - 1) / (joint.rows - 1);
    return topY - edgeIn - share * (topY - lowY - 2 * edgeIn);
  };
  const count = joint.nails.length;
  return {
    title: `Nails of ${extender.mark} to rafter ${extender.rafterNumber}: ${count} of ${joint.nail}`,
    description: describe(parts, joint),
    shapes: [
      ...(rafter === undefined
        ? []
        : [
            {
              kind: 'polygon' as const,
              points: clipToBox(oldRafterOutline(rafter, 2 * box.minX).map(turn), box),
              pen: 'hidden' as const,
              fill: 'old' as const,
              title: `Old rafter ${rafter.number}`,
            },
          ]),
      ...fillerBehind(parts, backIn, depthIn),
      {
        kind: 'polygon',
        points: clipToBox(section.outline.map(turn), box),
        pen: 'new',
        fill: 'none',
        ref: `section/${layout.eaveId}/${extender.id}`,
        title: `Extender ${extender.mark}`,
      },
      ...wallLine(turn, depthIn),
      ...joint.nails.map(
        ({ row, alongIn }): Shape => ({
          kind: 'polygon',
          points: headAt([backIn + alongIn, rowY(row, backIn + alongIn)], row),
          pen: 'new',
          fill: 'paper',
          title: `Row ${row}, ${formatLength(alongIn)}`,
        }),
      ),
      ...runningRows(joint, backIn, -depthIn),
      rowNote(joint, section.kickUp === null ? (row) => rowY(row, backIn / 2) : null, depthIn, box.maxX),
    ],
    ...box,
  };
}

/**
 * The wood that lies against wood at a place along the piece: between the lower of the two top edges and the higher of
 * the two bottom edges.
 */
function lappingWood(
  turn: (point: Point) => Point,
  rafter: PlacedRafter | undefined,
  depthIn: number,
): (x: number) => { readonly topY: number; readonly lowY: number } {
  if (rafter === undefined) return () => ({ topY: 0, lowY: -depthIn });
  const slope = rafter.pitchRisePer12 / 12;
  const line = (atWallIn: number): ((x: number) => number) => {
    const [outer, inner] = [turn([0, atWallIn]), turn([-12, atWallIn + 12 * slope])];
    const rise = (outer[1] - inner[1]) / (outer[0] - inner[0]);
    return (x) => outer[1] + rise * (x - outer[0]);
  };
  const top = line(rafter.heightAbovePlateIn);
  const low = line(rafter.heightAbovePlateIn - rafter.depthIn * Math.hypot(1, slope));
  return (x) => ({ topY: Math.min(0, top(x)), lowY: Math.max(-depthIn, low(x)) });
}

function fillerBehind({ extender }: SectionParts, backIn: number, depthIn: number): readonly Shape[] {
  const { filler } = extender;
  if (filler === null) return [];
  const toIn = backIn + inchesOf(filler.lengthSixteenths);
  return [
    {
      kind: 'polygon',
      points: [
        [backIn, 0],
        [toIn, 0],
        [toIn, -depthIn],
        [backIn, -depthIn],
      ],
      pen: 'hidden',
      fill: 'filler',
      ref: `piece/${filler.mark}`,
      title: `Filler ${filler.mark}`,
    },
  ];
}

/** The plumb line at the wall's framing face. */
function wallLine(turn: (point: Point) => Point, depthIn: number): readonly Shape[] {
  const [footX, footY] = turn([0, 0]);
  const slant = footY === 0 ? 0 : footX / footY;
  return [
    { kind: 'line', from: [0, 0], to: [-depthIn * slant, -depthIn], pen: 'centre' },
    { kind: 'text', at: [0.6, 1.2], text: 'wall line', anchor: 'start', sizePt: 7 },
  ];
}

/** A round head for odd rows, a square one for even rows. */
function headAt([x, y]: Point, row: number): readonly Point[] {
  const corners = row % 2 === 0 ? 4 : 12;
  const turnBy = row % 2 === 0 ? Math.PI / 4 : 0;
  return Array.from({ length: corners }, (_, index): Point => {
    const angle = turnBy + (index * 2 * Math.PI) / corners;
    return [x + headIn * Math.cos(angle), y + headIn * Math.sin(angle)];
  });
}

/** Odd rows run above the piece, even rows below it. */
function runningRows(joint: LapNails, backIn: number, lowIn: number): readonly Shape[] {
  const lapIn = joint.lap.toIn - joint.lap.fromIn;
  return [1, 0].flatMap((parity): readonly Shape[] => {
    const stops = joint.nails
      .filter(({ row }) => row % 2 === parity)
      .map(({ alongIn }) => alongIn)
      .filter((alongIn, index, all) => all.indexOf(alongIn) === index)
      .toSorted((a, b) => a - b);
    if (stops.length === 0) return [];
    return [
      {
        kind: 'running',
        origin: [backIn, parity === 1 ? 0 : lowIn],
        direction: [1, 0],
        fromIn: 0,
        toIn: lapIn,
        offsetPt: parity === 1 ? 14 : -14,
        stops: [
          ...stops.map((atIn) => ({ atIn, text: formatLength(atIn) })),
          // The line's end is the lap's, so that the end distance behind the last nail shows.
          { atIn: lapIn, text: formatLength(lapIn) },
        ],
      },
    ];
  });
}

/** The rows as running dimensions from the top edge down; in words where they do not run parallel to it. */
function rowNote(
  joint: LapNails,
  rowY: ((row: number) => number) | null,
  depthIn: number,
  atX: number,
): Shape {
  if (rowY === null) {
    return {
      kind: 'text',
      at: [atX + 1, -depthIn / 2],
      text: `rows ${formatLength(joint.edgeDistanceIn)} inside the wood that laps`,
      anchor: 'start',
      sizePt: 7.5,
    };
  }
  const downs = [...Array.from({ length: joint.rows }, (_, index) => -rowY(index + 1)), depthIn];
  return {
    kind: 'running',
    origin: [atX, 0],
    direction: [0, -1],
    fromIn: 0,
    toIn: depthIn,
    offsetPt: 10,
    stops: downs.map((atIn) => ({ atIn, text: formatLength(atIn) })),
  };
}

function describe({ extender }: SectionParts, { nails, nail, rows, lap }: LapNails): string {
  const rowWords = Array.from({ length: rows }, (_, index) => {
    const own = nails.filter(({ row }) => row === index + 1).map(({ alongIn }) => formatLength(alongIn));
    return `Row ${index + 1} from the back end: ${own.length === 0 ? 'none' : own.join(', ')}.`;
  });
  return [
    `The lap of ${extender.mark} on rafter ${extender.rafterNumber}, ${formatLength(lap.toIn - lap.fromIn)} long, seen from the face: ${nails.length} nails, ${nail}.`,
    ...rowWords,
    ...(extender.filler === null ? [] : [`The filler ${extender.filler.mark} lies behind the extender.`]),
  ].join(' ');
}
