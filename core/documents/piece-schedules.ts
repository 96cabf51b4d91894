import { liftText } from '../drawings/draw-fascia-line.ts';
import type { Bearing } from '../eave/section-types.ts';
import type { Bay, EaveLayout, FasciaPiece } from '../layout/layout-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { assertNever } from '../result.ts';
import { inchesOf, nearestSixteenth } from '../units/sixteenths.ts';
import type { Block, Column } from './sheet.ts';

/** Each extender of an eave: where it goes and what the saw needs. */
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
          String(extender.rafterNumber),
          formatLength(extender.centreIn),
          extender.because === 'moved' ? `${extender.side}, moved` : extender.side,
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

/** Each bay of an eave with its block. */
export function blockSchedule(layout: EaveLayout): Block {
  return {
    kind: 'table',
    columns: [
      text('Bay'),
      right('From station'),
      right('To station'),
      right('Clear length'),
      { title: 'Block', align: 'left', share: 1 },
    ],
    rows: layout.bays.map((bay) => ({
      cells: [
        bay.mark,
        formatLength(bay.fromIn),
        formatLength(bay.toIn),
        formatLength(bay.clearIn),
        blockText(bay),
      ],
    })),
  };
}

function blockText(bay: Bay): string {
  const what = {
    block: 'new block',
    'left-open': 'left open',
    'too-narrow': 'too narrow for a block',
    'old-stays': 'old block stays',
  }[bay.block];
  return bay.oldBlockOut ? `${what}; old block comes out` : what;
}

/** Each fascia board of an eave, from joint to joint. */
export function fasciaSchedule(layout: EaveLayout): Block {
  return {
    kind: 'table',
    columns: [
      text('Mark'),
      right('From station'),
      right('To station'),
      right('Length, long point'),
      text('Left end'),
      { title: 'Right end', align: 'left', share: 1 },
    ],
    rows: layout.fascia.map((piece) => ({
      cells: [
        piece.mark,
        formatLength(piece.fromIn),
        formatLength(piece.toIn),
        formatLength(inchesOf(piece.lengthSixteenths)),
        endText(piece.leftEnd),
        endText(piece.rightEnd),
      ],
    })),
  };
}

function endText(end: FasciaPiece['leftEnd']): string {
  return end === 'bevel' ? 'bevel over a tail' : end === 'butt' ? 'butt over a tail' : 'square';
}

function text(title: string): Column {
  return { title, align: 'left', share: 0 };
}

function right(title: string): Column {
  return { title, align: 'right', share: 0 };
}
