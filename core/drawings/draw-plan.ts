import type { EaveLayout } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import type { Box } from './clip.ts';
import type { Drawing, Shape } from './drawing.ts';
import { backspanLevel, blocks, extenders, fascia, oldMembers, type OnStretch } from './plan-members.ts';

export type PlanOptions = {
  /** Actual thickness of the fascia. [in] */
  readonly fasciaThicknessIn?: number;
  /** Width of the wall plate. [in] */
  readonly plateWidthIn?: number;
  /** Actual thickness of the blocks. [in] */
  readonly blockThicknessIn?: number;
  /** The stretch of wall to draw, by station; the whole eave where absent. [in] */
  readonly fromIn?: number;
  readonly toIn?: number;
};

/** How far old members are drawn in past the longest backspan. [in] */
const pastBackIn = 10;

/**
 * Draws an eave from above at the plate: the outside is below, station 0 at the left as seen from outside.
 * @param layout - the eave. [in]
 * @param options - sizes and stretch. [in]
 */
export function drawPlan(layout: EaveLayout, options: PlanOptions = {}): Drawing {
  const plate = options.plateWidthIn ?? 3.5;
  const fasciaThickness = options.fasciaThicknessIn ?? 1.5;
  const deepest = Math.max(24, ...layout.extenders.map((extender) => backspanLevel(extender)));
  const fasciaEnds = layout.fascia.flatMap((piece) => [piece.fromIn, piece.toIn]);
  const wholeFrom = Math.min(0, ...fasciaEnds);
  const wholeTo = Math.max(layout.wallLengthIn, ...fasciaEnds);
  const box: Box = {
    minX: options.fromIn === undefined || options.fromIn <= 0 ? wholeFrom : options.fromIn,
    maxX: options.toIn === undefined || options.toIn >= layout.wallLengthIn ? wholeTo : options.toIn,
    minY: -layout.overhangLevelIn - fasciaThickness,
    maxY: deepest + pastBackIn,
  };
  const inside: OnStretch = (station) =>
    station >= box.minX - 1e-6 && (station < box.maxX || box.maxX === wholeTo);
  const shapes: Shape[] = [
    ...oldMembers(layout, box, plate),
    ...blocks(layout, box, inside, options.blockThicknessIn ?? 1.5),
    ...extenders(layout, box, inside),
    ...fascia(layout, box, inside, fasciaThickness),
    ...stations(layout, box, inside),
    ...unplaced(layout, box, inside),
  ];
  const stretch =
    box.minX === wholeFrom && box.maxX === wholeTo
      ? ''
      : `, ${formatLength(Math.max(0, box.minX))} to ${formatLength(Math.min(layout.wallLengthIn, box.maxX))}`;
  return {
    title: `Plan of ${layout.name}${stretch}`,
    description: describe(layout),
    shapes,
    ...box,
  };
}

function stations(layout: EaveLayout, box: Box, inside: OnStretch): readonly Shape[] {
  return layout.rafters.flatMap((rafter): readonly Shape[] => {
    if (!inside(rafter.centreIn)) return [];
    return [
      {
        kind: 'text',
        at: [rafter.centreIn, box.maxY + 2],
        text: String(rafter.number),
        anchor: 'middle',
        sizePt: 8,
        bold: true,
      },
      {
        kind: 'text',
        at: [rafter.centreIn + 1.6, box.maxY + 8.5],
        text: formatLength(rafter.centreIn),
        anchor: 'start',
        sizePt: 6.5,
        rotateDeg: 90,
      },
    ];
  });
}

function unplaced(layout: EaveLayout, box: Box, inside: OnStretch): readonly Shape[] {
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

function describe(layout: EaveLayout): string {
  const moved = layout.extenders.filter((extender) => extender.because === 'moved');
  const joints = Math.max(0, layout.fascia.length - 1);
  return [
    `Plan of ${layout.name} at the plate, outside below, station 0 at the left as seen from outside.`,
    `Wall ${formatLength(layout.wallLengthIn)}, ${layout.rafters.length} old rafters, ${layout.extenders.length} extenders sticking out ${formatLength(layout.overhangLevelIn)} level.`,
    moved.length === 0
      ? 'None had to move to the other side.'
      : `Moved to the other side: ${moved.map((extender) => extender.mark).join(', ')}.`,
    layout.unplaced.length === 0
      ? 'Every rafter has an extender.'
      : `Without an extender: rafter ${layout.unplaced.map((missing) => missing.rafterNumber).join(', ')}.`,
    `Fascia ${formatLength(layout.fasciaLengthIn)} with ${joints} ${joints === 1 ? 'joint' : 'joints'}.`,
  ].join(' ');
}
