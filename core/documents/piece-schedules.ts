import { liftText } from '../drawings/draw-fascia-line.ts';
import type { Bearing } from '../eave/section-types.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import type { CoveredEave } from '../takeoff/cover.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import type { CoverBoard } from '../takeoff/panel-layout.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { assertNever } from '../result.ts';
import { inchesOf, nearestSixteenth } from '../units/sixteenths.ts';
import type { Block, Column } from './sheet.ts';

/** Each tail of an eave: where it goes and what the saw needs. */
export function extenderSchedule(layout: EaveLayout): Block {
  return {
    kind: 'table',
    columns: [
      text('Mark'),
      right('Rafter'),
      right('Station'),
      text('Side'),
      right('Blank'),
      right('Wall line'),
      right('Seat'),
      right('Heel'),
      right('Throat'),
      right('Tail drop'),
      right('Own pitch'),
      { title: 'To the string', align: 'left', share: 1 },
    ],
    rows: layout.extenders.map((extender) => {
      const { section } = extender;
      return {
        cells: [
          extender.mark,
          rafterText(extender),
          formatLength(extender.centreIn),
          sideText(extender),
          formatLength(inchesOf(extender.blankSixteenths)),
          formatLength(section.backspanIn),
          ...bearingCells(section.bearing),
          formatLength(section.throatIn),
          formatLength(section.tailDropIn),
          formatPitch(extender.pitchRisePer12),
          liftText(extender.liftAtTailIn),
        ],
      };
    }),
  };
}

/** A hung tail stands between two rafters. */
function rafterText({ method, rafterNumber }: Extender): string {
  return method === 'block-hung' ? `${rafterNumber}-${rafterNumber + 1}` : String(rafterNumber);
}

function sideText({ method, side, because, inPlace }: Extender): string {
  const how = {
    side,
    filler: `${side}, filler`,
    'outer-face': 'outer face',
    'block-hung': 'hung',
    'full-length': `${side}, whole`,
    'end-replacement': 'in its place',
  }[method];
  const moved = because === 'moved' && method === 'side' ? ', moved' : '';
  return `${how}${moved}${inPlace ? ', in place' : ''}`;
}

function bearingCells(bearing: Bearing): readonly [seat: string, heel: string] {
  switch (bearing.kind) {
    case 'notched':
      return [formatLength(bearing.seatIn), formatLength(bearing.heelCutIn)];
    case 'shimmed':
      // What clears the plate by less than half a sixteenth stands on its corner for every tape.
      return nearestSixteenth(bearing.shimIn) === 0
        ? ['on corner', '-']
        : [`shim ${formatLength(bearing.shimIn)}`, '-'];
    case 'on-corner':
      return ['on corner', '-'];
    default:
      return assertNever(bearing);
  }
}

/**
 * Each panel or plank of a cover as laid, from the edge up: where it goes, what is cut, and what its right end bears on.
 * @param layout - of the eave.
 * @param boards - of its sheathing or soffit. [in]
 */
export function coverSchedule(layout: EaveLayout, boards: readonly CoverBoard[]): Block {
  const marks = new Map(layout.extenders.map(({ id, mark }) => [id, mark]));
  return {
    kind: 'table',
    columns: [
      right('Course'),
      right('From station'),
      right('To station'),
      right('Length'),
      right('Width'),
      { title: 'Joint at its right end', align: 'left', share: 1 },
    ],
    rows: boards.map((board) => ({
      cells: [
        String(board.course),
        formatLength(board.fromIn),
        formatLength(board.toIn),
        `${formatLength(board.toIn - board.fromIn)}${board.whole ? ', uncut' : ''}`,
        formatLength(board.highIn - board.lowIn),
        jointText(board.rightJoint, marks),
      ],
    })),
  };
}

function jointText(joint: CoverBoard['rightJoint'], marks: ReadonlyMap<string, string>): string {
  if (joint === null) return 'end';
  return joint.tailId === null ? 'between tails, over a block' : `on ${marks.get(joint.tailId) ?? 'a tail'}`;
}

/** What carries a soffit, alike pieces together; piece by piece they stand on the crew's lists. */
export function stickSchedule(pieces: readonly Piece[]): Block {
  const alike = Map.groupBy(pieces, ({ use, lengthSixteenths }) => `${use} ${lengthSixteenths}`);
  return {
    kind: 'table',
    columns: [text('Marks'), right('Pieces'), right('Length'), { title: 'What', align: 'left', share: 1 }],
    rows: [...alike.values()].map((group) => {
      const [first] = group;
      return {
        cells: [
          first === undefined || group.length === 1
            ? (first?.mark ?? '')
            : `${first.mark} to ${group.at(-1)?.mark ?? ''}`,
          String(group.length),
          formatLength(inchesOf(first?.lengthSixteenths ?? nearestSixteenth(0))),
          first?.use === 'ledger'
            ? 'ledger on the wall, square ends'
            : 'nailers beside the tails, square ends',
        ],
      };
    }),
  };
}

/** What the vents of a soffit come to, in a sentence; nothing where none are counted. */
export function ventWords({ soffit }: CoveredEave): string | null {
  const vents = soffit?.vents ?? null;
  if (vents === null || vents.count === 0) return null;
  const reached = `${vents.reachedSqIn.toFixed(1)} of the ${vents.area.wantedSqIn.toFixed(1)} sq in. of net free area asked of this eave`;
  return vents.lengthIn !== null
    ? `Vents: ${formatLength(vents.lengthIn)} of ${vents.item.description} along the soffit; ${reached}.`
    : `Vents: ${vents.count} of ${vents.item.description}, one every ${formatLength(vents.spacingIn ?? 0)}; ${reached}.`;
}

function text(title: string): Column {
  return { title, align: 'left', share: 0 };
}

function right(title: string): Column {
  return { title, align: 'right', share: 0 };
}
