import type { BillingFault } from './billing-fault.ts';
import type { CostFault } from './cost-fault.ts';
import type { OfferFault } from './offer-fault.ts';
import type { PriceFault } from './price-fault.ts';
import type { PieceUse } from '../takeoff/takeoff-types.ts';

/**
 * Everything that a person can cause and has to mend. `field`, where present, is the dotted path of the entry in the
 * job document, e.g. `survey.eaves.0.rafters.3.readingIn`, so that the message can stand at the entry.
 * The sentence for each is made in sentence.ts.
 */
export type Problem = ProblemKind & { readonly field?: string };

export type ProblemKind =
  // entries
  | { readonly code: 'length-unreadable'; readonly typed: string; readonly reason: LengthReason }
  | { readonly code: 'pitch-unreadable'; readonly typed: string }
  | { readonly code: 'pitch-out-of-range'; readonly typed: string }
  | { readonly code: 'money-unreadable'; readonly typed: string }
  | { readonly code: 'number-unreadable'; readonly typed: string }
  | { readonly code: 'number-not-whole'; readonly typed: string }
  | { readonly code: 'out-of-range'; readonly what: string; readonly least: string; readonly most: string }
  | { readonly code: 'entry-invalid'; readonly what: string; readonly detail: string }
  // survey
  | { readonly code: 'no-eaves' }
  | { readonly code: 'no-rafters'; readonly eave: string }
  | { readonly code: 'duplicate-id'; readonly what: string; readonly id: string }
  | {
      readonly code: 'rafter-out-of-order';
      readonly eave: string;
      readonly rafter: string;
      readonly stationIn: number;
      readonly previousIn: number;
    }
  | {
      readonly code: 'rafters-overlap';
      readonly eave: string;
      readonly rafter: string;
      readonly previous: string;
      readonly overlapIn: number;
    }
  | {
      readonly code: 'rafter-past-wall';
      readonly eave: string;
      readonly rafter: string;
      readonly stationIn: number;
      readonly wallIn: number;
      /** The end of the wall that it reaches past. */
      readonly end: 'left' | 'right';
    }
  // design
  | { readonly code: 'no-design'; readonly eave: string }
  | { readonly code: 'unknown-section'; readonly section: string; readonly use: string }
  | { readonly code: 'overhang-nothing-left'; readonly eave: string }
  | {
      readonly code: 'tail-out-of-reach';
      readonly eave: string;
      readonly rafter: string;
      /** How far its tail would have to come up (+) or down (-) to the fascia line. [in] */
      readonly liftIn: number;
      readonly steepness: 'rises-outward' | 'too-steep' | 'too-far';
      /** The rafter whose own tail lies furthest off the line, most likely misread, and how far it would have to come. [in] */
      readonly furthestRafter: string;
      readonly furthestLiftIn: number;
    }
  /** The bowed wall stands out as far as the line of the tails, or further. */
  | {
      readonly code: 'wall-past-line';
      readonly eave: string;
      readonly stationIn: number;
      readonly outIn: number;
    }
  | {
      readonly code: 'kick-up-not-flatter';
      readonly eave: string;
      readonly kickUpRisePer12: number;
      /** The flattest rafter of the eave. */
      readonly rafter: string;
      readonly rafterRisePer12: number;
    }
  /** A tail is wanted where an old rafter stands; the two stations are those of a tail against its left and right side. */
  | {
      readonly code: 'rafter-stands-there';
      readonly rafter: string;
      readonly leftIn: number;
      readonly rightIn: number;
    }
  // cutting and prices
  | {
      readonly code: 'piece-longer-than-stock';
      readonly stock: string;
      readonly mark: string;
      readonly pieceIn: number;
      readonly longestIn: number;
      /** What the piece is for, and the middle of it along the wall line. */
      readonly use?: PieceUse;
      readonly middleIn?: number;
    }
  /** Of every length that would hold the pieces there are only so many. */
  | { readonly code: 'not-enough-boards'; readonly stock: string }
  /** A length that the cut plan goes without, because of the problem behind it; the sum is whole all the same. */
  | { readonly code: 'length-left-out'; readonly because: Problem }
  | { readonly code: 'no-price'; readonly item: string }
  | { readonly code: 'price-of-nothing'; readonly item: string }
  | { readonly code: 'price-not-yet'; readonly item: string; readonly asOf: string; readonly firstOn: string }
  | {
      readonly code: 'unit-does-not-fit';
      readonly item: string;
      readonly unit: string;
      readonly needs: string;
    }
  | { readonly code: 'no-wage' }
  | { readonly code: 'margin-too-high'; readonly percent: string }
  // files and store
  | { readonly code: 'csv-columns'; readonly missing: readonly string[]; readonly unknown: readonly string[] }
  | { readonly code: 'csv-no-rows' }
  | { readonly code: 'csv-row'; readonly row: number; readonly column: string; readonly detail: string }
  | { readonly code: 'csv-broken'; readonly row: number; readonly detail: string }
  /** `detail` says where the text ceases to be JSON, e.g. `at line 3`. */
  | { readonly code: 'file-not-json'; readonly detail: string }
  /** The entries of a file that cannot be read, each with its `field`; `count` where there are more than are listed. */
  | { readonly code: 'file-faults'; readonly faults: readonly Problem[]; readonly count: number }
  | { readonly code: 'file-not-a-job'; readonly detail: string }
  | { readonly code: 'file-not-written'; readonly fileName: string }
  | { readonly code: 'not-found'; readonly what: string }
  | { readonly code: 'changed-elsewhere'; readonly what: string }
  | { readonly code: 'quote-not-complete'; readonly lacks: number }
  | { readonly code: 'shop-file-in-use' }
  | { readonly code: 'shop-file-newer' }
  | { readonly code: 'shop-file-not-ours' }
  | { readonly code: 'shop-file-damaged' }
  | { readonly code: 'shop-file-read-only' }
  | { readonly code: 'disk-full' }
  // the money of a job over time, each with its own faults and sentences
  | { readonly code: 'prices'; readonly fault: PriceFault }
  | { readonly code: 'offer'; readonly fault: OfferFault }
  | { readonly code: 'costs'; readonly fault: CostFault }
  | { readonly code: 'billing'; readonly fault: BillingFault }
  | { readonly code: 'not-here'; readonly what: string }
  | { readonly code: 'internal' };

/** Why a text is no length. */
export type LengthReason =
  | 'empty'
  | 'form'
  | 'negative'
  | 'ambiguous-dash'
  | 'inches-over-12'
  | 'fraction-over-1'
  | 'denominator';
