import { tailAt } from '../drawings/draw-elevation.ts';
import type { Bay, EaveLayout, FasciaPiece, FasciaRun } from '../layout/layout-types.ts';
import { endWords } from '../takeoff/edge-pieces.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { inchesOf, type Sixteenths } from '../units/sixteenths.ts';
import { type CutGroup, isNotched } from './cut-groups.ts';
import type { Block, Column } from './sheet.ts';
import { plateWords } from './tail-words.ts';

type Table = Extract<Block, { kind: 'table' }>;

/** Each tail with what the bench needs: blank, wall line from the back end, seat, and its template. */
export function tailList(layout: EaveLayout, pieces: readonly Piece[], groups: readonly CutGroup[]): Table {
  const byMark = new Map(pieces.map((piece) => [piece.mark, piece]));
  const template = new Map(
    groups
      .filter(isNotched)
      .flatMap(({ number, tails }) => tails.map(({ extender }) => [extender.mark, number] as const)),
  );
  return {
    kind: 'table',
    large: true,
    columns: [
      left('Mark'),
      right('Station'),
      right('Length'),
      right('Wall line'),
      { title: 'At the plate', align: 'left', share: 1 },
      right('Template'),
      left('Hand'),
    ],
    rows: layout.extenders.map((extender) => {
      const piece = byMark.get(extender.mark);
      return {
        cells: [
          extender.mark,
          formatLength(extender.centreIn),
          inches(piece?.lengthSixteenths ?? extender.blankSixteenths),
          formatLength(extender.section.backspanIn),
          plateWords(extender),
          extender.inPlace ? 'in place' : String(template.get(extender.mark) ?? '-'),
          piece?.hand ?? 'either',
        ],
      };
    }),
  };
}

/** Each filler with all its layers, those of sheets too. */
export function fillerList(layout: EaveLayout): Table {
  return {
    kind: 'table',
    large: true,
    columns: [
      left('Mark'),
      left('Tail'),
      right('Length'),
      right('Thickness'),
      { title: 'Built of', align: 'left', share: 1 },
    ],
    rows: layout.extenders.flatMap(({ mark, filler, inPlace }) =>
      filler === null
        ? []
        : [
            {
              cells: [
                filler.mark,
                mark,
                inches(filler.lengthSixteenths),
                formatLength(filler.wantedIn),
                `${filler.layers.map(({ name, thicknessIn }) => `${name} (${formatLength(thicknessIn)})`).join(' and ')}${inPlace ? '; in place' : ''}`,
              ],
            },
          ],
    ),
  };
}

/** Each bay with its block: what stays, what comes out, and what is left open. */
export function blockList(layout: EaveLayout, pieces: readonly Piece[]): Table {
  const byMark = new Map(pieces.map((piece) => [piece.mark, piece]));
  return {
    kind: 'table',
    large: true,
    columns: [
      left('Mark'),
      right('From'),
      right('To'),
      right('Clear'),
      right('Length'),
      { title: 'Block', align: 'left', share: 1 },
    ],
    rows: layout.bays.map((bay) => {
      const piece = byMark.get(bay.mark);
      return {
        cells: [
          bay.mark,
          formatLength(bay.fromIn),
          formatLength(bay.toIn),
          formatLength(bay.clearIn),
          piece === undefined ? '-' : inches(piece.lengthSixteenths),
          blockWords(bay),
        ],
      };
    }),
  };
}

/** What becomes of a bay's block, in words. */
export function blockWords(bay: Bay): string {
  const what = {
    block: 'new block',
    'left-open': 'left open',
    'too-narrow': 'too narrow for a block',
    'old-stays': 'old block stays',
  }[bay.block];
  return bay.oldBlockOut ? `${what}; old block comes out` : what;
}

/** Each board of a run of fascia or sub-fascia, with its points, ends and the tail under its right-hand joint. */
export function boardList(layout: EaveLayout, boards: readonly FasciaPiece[], run: FasciaRun | null): Table {
  return {
    kind: 'table',
    large: true,
    columns: [
      left('Mark'),
      right('From'),
      right('To'),
      right('Long points'),
      right('Short points'),
      { title: 'Left end', align: 'left', share: 1 },
      { title: 'Right end', align: 'left', share: 1 },
      left('Joint on'),
    ],
    rows:
      run === null
        ? []
        : boards.map((board, index) => ({
            cells: [
              board.mark,
              formatLength(board.fromIn),
              formatLength(board.toIn),
              inches(board.lengthSixteenths),
              inches(board.shortSixteenths),
              endWords(board.leftEnd, run.left, run),
              endWords(board.rightEnd, run.right, run),
              index === boards.length - 1 ? '-' : (tailAt(layout, board.toIn)?.mark ?? 'no tail'),
            ],
          })),
  };
}

/** Pieces with their place, length and cuts as the takeoff has them. */
export function pieceList(pieces: readonly Piece[], place: string): Table {
  return {
    kind: 'table',
    large: true,
    columns: [
      left('Mark'),
      right(place),
      right('Length'),
      { title: 'Cuts and place', align: 'left', share: 1 },
      left('Hand'),
    ],
    rows: pieces.map((piece) => ({
      cells: [
        piece.mark,
        formatLength(piece.stationIn),
        inches(piece.lengthSixteenths),
        piece.inPlace === true ? `in place; ${piece.cuts}` : piece.cuts,
        piece.hand ?? 'either',
      ],
    })),
  };
}

function inches(sixteenths: Sixteenths): string {
  return formatLength(inchesOf(sixteenths));
}

function left(title: string): Column {
  return { title, align: 'left', share: 0 };
}

function right(title: string): Column {
  return { title, align: 'right', share: 0 };
}
