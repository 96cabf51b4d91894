import type { Method } from '../eave/design-document.ts';
import type { Stock } from '../eave/stock.ts';
import type { Phase } from '../eave/phases.ts';
import type { RateMark } from '../pricing/shop-settings.ts';
import type { Problem } from '../problems/problem.ts';
import type { TracePart } from '../trace/trace.ts';
import type { DecimalText } from '../units/money.ts';
import type { Sixteenths } from '../units/sixteenths.ts';

/** What a piece is for. */
export type PieceUse =
  | 'extender'
  | 'block'
  | 'fascia'
  | 'filler'
  | 'header'
  | 'shim'
  | 'packer'
  | 'sub-fascia'
  | 'ledger'
  | 'soffit-nailer'
  | 'lookout'
  | 'ladder'
  | 'barge'
  | 'rake-fascia';

/** A piece that is cut from lumber, with where it goes. Marks are unique in a job. */
export type Piece = {
  /** The eave's letter, a letter for the kind of piece (core/layout/marks.ts) and a number: `A-E07`. */
  readonly mark: string;
  readonly use: PieceUse;
  readonly stock: Stock;
  readonly lengthSixteenths: Sixteenths;
  /** Between the short points, where an end slants through the board's thickness. */
  readonly shortSixteenths?: Sixteenths;
  readonly eaveId: string;
  /** Present for a piece of a rake on that eave; then the station counts up the slope from the tail's top corner. */
  readonly rakeId?: string;
  readonly stationIn: number;
  /** For the saw, in words of the trade: `plumb tail 26.6 deg`, `seat 3-1/16", heel 1-1/2"`. */
  readonly cuts: string;
  /** Overall length less mid-line length, where both ends are parallel plumb cuts: d m. [1/16 in] */
  readonly slantSixteenths?: Sixteenths;
  /** Pieces that are no mirror image of themselves are marked for the saw. */
  readonly hand?: 'left' | 'right';
  /** Of a tail: how it is fastened. */
  readonly method?: Method;
  /** Cut and set already: counted here, but no longer to be cut or bought. */
  readonly inPlace?: boolean;
  /** Ref of what gave its length: `section/...`, `bay/...`. */
  readonly ref: string;
};

/** One line of the takeoff: what is needed, in the client's words, with phase, tax flag and trace. */
export type TakeoffLine = {
  readonly id: string;
  readonly kind: 'lumber' | 'nails' | 'sheet' | 'plank' | 'edge' | 'vents' | 'labour' | 'extra';
  readonly phase: Phase;
  readonly description: string;
  readonly clientWording: string;
  /** Net quantity as used. */
  readonly quantity: DecimalText;
  readonly unit: string;
  readonly taxable: boolean;
  /** Where it is used: `Eave A: 17, Eave B: 12`. */
  readonly where: string;
  readonly madeOf: readonly TracePart[];
  /** What the buying step needs. */
  readonly need: Need;
};

/** What a takeoff line asks the price list for. */
export type Need =
  | { readonly kind: 'lumber'; readonly stock: Stock; readonly marks: readonly string[] }
  | { readonly kind: 'nails'; readonly nail: string; readonly count: number; readonly pounds: DecimalText }
  | { readonly kind: 'sheets'; readonly itemId: string; readonly sheets: number; readonly areaSqFt: number }
  | {
      readonly kind: 'planks';
      readonly itemId: string;
      readonly lengthFt: DecimalText;
      readonly areaSqFt: number;
    }
  | { readonly kind: 'edge'; readonly lengthIn: number; readonly pieces: number }
  /** So many vents, or pieces of strip; `lengthFt` of a strip that is sold by the foot, else null. */
  | {
      readonly kind: 'vents';
      readonly itemId: string;
      readonly count: number;
      readonly lengthFt: DecimalText | null;
    }
  | {
      readonly kind: 'labour';
      readonly task: string;
      readonly hours: DecimalText;
      /** Hours for one unit of the task, and what stands behind them. [h/unit] */
      readonly unitHours: number;
      readonly rateMark: RateMark;
    }
  | { readonly kind: 'extra'; readonly extraId: string };

/** Everything the job needs, before it is priced. */
export type Takeoff = {
  readonly pieces: readonly Piece[];
  readonly lines: readonly TakeoffLine[];
  /** What could not be counted, by name, instead of being left out silently. */
  readonly lacks: readonly Problem[];
  readonly labourHours: DecimalText;
  readonly crewDays: DecimalText;
};
