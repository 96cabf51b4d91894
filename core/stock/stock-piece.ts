/** A board or offcut that the shop has. */
export type StockPiece = {
  readonly id: string;
  /** Its number, written on the piece itself. */
  readonly sequence: number;
  readonly section: string;
  /** Blank: not known, so it serves any grade that is asked for. */
  readonly grade: string;
  readonly lengthIn: number;
  /** What it is worth to the shop, which is what a job pays for it. [$] */
  readonly valueUsd: string;
  /** The job that it was left over from. */
  readonly fromJob: { readonly id: string; readonly name: string } | null;
  /** The job that it is set aside for, or that it went into. */
  readonly forJob: { readonly id: string; readonly name: string } | null;
  readonly addedOn: string;
  readonly goneOn: string | null;
  readonly note: string;
};

/** Where a piece is: on the rack, set aside for a job, used up on one, or thrown out. Always just one of these. */
export type PieceState = 'available' | 'set-aside' | 'used' | 'thrown-out';

/** Where a piece is. */
export function pieceState({ forJob, goneOn }: Pick<StockPiece, 'forJob' | 'goneOn'>): PieceState {
  if (goneOn === null) return forJob === null ? 'available' : 'set-aside';
  return forJob === null ? 'thrown-out' : 'used';
}

const prefix = 'stock-';

/** The id of a piece among the boards on hand of the job that it is set aside for, e.g. number 12 -> `stock-12`. */
export function boardIdOf(sequence: number): string {
  return `${prefix}${sequence}`;
}

/** The number of the piece that a board on hand of a job is; undefined for one that was typed in by hand. */
export function pieceOfBoard(boardId: string): number | undefined {
  const match = /^stock-([1-9]\d{0,8})$/.exec(boardId);
  return match === null ? undefined : Number(match[1]);
}

/** The id that a board gets where it is no piece of this shop's stock: in a file that goes elsewhere, or a copy. */
export function boardIdElsewhere(boardId: string): string {
  return pieceOfBoard(boardId) === undefined ? boardId : `was-${boardId}`;
}
