import type { EaveDesign, EaveEnd, Method } from '../eave/design-document.ts';
import type { Side } from '../survey/survey-document.ts';
import type { LargestGap } from './largest-gap.ts';
import type { RafterSection } from '../eave/section-types.ts';
import type { Sixteenths } from '../units/sixteenths.ts';

/** An old rafter, placed on the wall line. Stations run from the wall's left end, seen from outside. [in] */
export type PlacedRafter = {
  readonly id: string;
  /** 1-based number from station 0, as marked on the sheets. */
  readonly number: number;
  readonly centreIn: number;
  readonly leftFaceIn: number;
  readonly rightFaceIn: number;
  readonly thicknessIn: number;
  readonly depthIn: number;
  readonly pitchRisePer12: number;
  readonly heightAbovePlateIn: number;
  readonly clearBackspanIn: number | null;
  readonly condition: 'sound' | 'doubtful' | 'rotten';
};

/** A thing that stands on the plate: [left, right] along the wall line. [in] */
export type Occupied = {
  readonly label: string;
  readonly kind: 'rafter' | 'joist' | 'obstruction';
  readonly leftIn: number;
  readonly rightIn: number;
};

/** What a filler is built of, thickest first. */
export type Filler = {
  readonly mark: string;
  /** Thickness asked for: that of the joist it makes up for. [in] */
  readonly wantedIn: number;
  /** Names of lumber sections or panel items, and their actual thickness. [in] */
  readonly layers: readonly {
    readonly name: string;
    readonly itemId: string | null;
    readonly thicknessIn: number;
  }[];
  /** Wanted less built; beyond 1/16 in. either way a finding tells it. [in] */
  readonly offIn: number;
  readonly lengthSixteenths: Sixteenths;
};

/** A block between two rafters that a hung tail is nailed to. */
export type HeaderBlock = {
  readonly mark: string;
  /** `back` at the tail's back end; `plate` over the plate. */
  readonly place: 'back' | 'plate';
  readonly leftIn: number;
  readonly rightIn: number;
  /** From the wall's framing face up the slope to the block's near face. [in] */
  readonly alongIn: number;
  readonly lengthSixteenths: Sixteenths;
  /** Id of the tail that this block is listed with, where one block carries two tails of a bay: it is cut once. */
  readonly sharedWith: string | null;
};

/** A new tail: beside an old rafter, in its place, or hung between two. */
export type Extender = {
  /** The rafter's id where it is fastened to one; the added tail's id, or one of ours, where it is hung. */
  readonly id: string;
  readonly method: Method;
  readonly mark: string;
  /** The rafter it is fastened to; of a hung tail the one on its left. */
  readonly rafterId: string;
  readonly rafterNumber: number;
  /** Id of the rafter that a hung tail stands for, which has no tail of its own; null where it stands for none. */
  readonly standsFor: string | null;
  readonly side: Side;
  readonly centreIn: number;
  readonly leftIn: number;
  readonly rightIn: number;
  /**
   * Why here: the person's pin or what was built, the preferred side, another place because of a clash, or a tail put
   * in for the largest gap, for a panel joint, or for evenness.
   */
  readonly because: 'pinned' | 'built' | 'preferred' | 'moved' | 'gap' | 'panel-joint' | 'even';
  /** What stood in the way on the side not taken, or on a pinned side. */
  readonly clash: string | null;
  readonly section: RafterSection;
  /** How far the fascia line lifts (+) or lowers (-) the tail against its rafter's own line. [in] */
  readonly liftAtTailIn: number;
  /** Pitch of the extender's own edge, once its tail stands on the fascia line. [in/12 in] */
  readonly pitchRisePer12: number;
  readonly blankSixteenths: Sixteenths;
  readonly fit: PlateFit;
  /** How far the wall's framing face stands out of the reference line here. [in] */
  readonly wallOutIn: number;
  /** How far the plate's top stands here above a level line through its top at the wall's left end. [in] */
  readonly plateUpIn: number;
  /** This tail's own level overhang, from the bowed wall to the line of the tails. [in] */
  readonly overhangLevelIn: number;
  readonly filler: Filler | null;
  readonly headers: readonly HeaderBlock[];
  /** Cut, nailed and typed back in: no longer to be cut. */
  readonly inPlace: boolean;
};

/** A rafter that gets no extender, and why. */
export type Unplaced = {
  readonly rafterId: string;
  readonly rafterNumber: number;
  readonly stationIn: number;
  readonly reason: 'pinned-none' | 'no-side-free';
  readonly left: string;
  readonly right: string;
};

/** The clear distance between two neighbouring members' faces at the plate. */
export type Bay = {
  readonly mark: string;
  /** Id of the rafter on its left, which names it. */
  readonly leftRafterId: string;
  readonly fromIn: number;
  readonly toIn: number;
  readonly clearIn: number;
  /** `old-stays`: an old block stands there already and is in nobody's way. */
  readonly block: 'block' | 'left-open' | 'too-narrow' | 'old-stays';
  /** A new tail stands between its two rafters, or the bay is to be open, so an old block there has to come out. */
  readonly oldBlockOut: boolean;
};

/**
 * How a board of the edge ends: `mitre` at an outside corner or a rake, with its long point on the face; `inside-mitre`
 * with its long point on the back.
 */
export type BoardEnd = 'square' | 'bevel' | 'butt' | 'mitre' | 'inside-mitre';

/** One board of fascia or sub-fascia, from joint to joint. */
export type FasciaPiece = {
  readonly mark: string;
  /** Joints, or the ends on the face as seen from outside. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  /** Overall, from long point to long point where the ends slant. */
  readonly lengthSixteenths: Sixteenths;
  /** From short point to short point; the same where both ends are square. */
  readonly shortSixteenths: Sixteenths;
  readonly leftEnd: BoardEnd;
  readonly rightEnd: BoardEnd;
};

/** Where a run of fascia or sub-fascia ends. Stations along the wall, past its ends where negative or beyond. [in] */
export type RunEnd = {
  readonly kind: 'square' | 'mitre';
  /** On the face, as seen from outside, and on the back: apart where mitred. */
  readonly faceIn: number;
  readonly backIn: number;
};

/** A run of fascia (F) or sub-fascia (U), and what it may be broken on. [in] */
export type FasciaRun = {
  readonly letter: string;
  readonly kind: 'F' | 'U';
  readonly left: RunEnd;
  readonly right: RunEnd;
  readonly tailCentresIn: readonly number[];
  readonly thicknessIn: number;
  readonly bevelJoints: boolean;
  /** Longest usable board; null where the price list has none. */
  readonly longestIn: number | null;
};

/**
 * The straight line in elevation that the tails' top corners are brought to. Heights are above a level line through the
 * plate's top at the wall's left end; where the plate was not read, that is the plate's top everywhere.
 */
export type FasciaLine = {
  readonly mode: EaveDesign['fasciaLine'];
  readonly atStartIn: number;
  readonly risePerInch: number;
  /** Scatter of the tails' own heights about the line before (largest up and down). [in] */
  readonly highestIn: number;
  readonly lowestIn: number;
  /**
   * Scatter once every tail is brought to the line and its seat or shim is cut to a sixteenth; as before where no tail
   * is brought to it. [in]
   */
  readonly highestAfterIn: number;
  readonly lowestAfterIn: number;
};

/** One end of the range of the tails' own overhangs. [in] */
export type OverhangAt = {
  readonly extenderId: string;
  readonly stationIn: number;
  readonly overhangIn: number;
};

/** Where the tails' top corners run in plan, against the reference line of the wall readings. */
export type LineInPlan = {
  /** `straight`: parallel to the reference line; `follow`: every tail sticks out alike, so the line has the wall's bow. */
  readonly kind: EaveDesign['fasciaInPlan'];
  /** What the stated overhang is measured from. */
  readonly from: EaveDesign['overhangFrom'];
  /** True where the wall was read and does not stand straight on the reference line. */
  readonly bowed: boolean;
  /** Mean of the wall's framing face over the wall line. [in] */
  readonly wallMeanOutIn: number;
  /** Of a straight line: level, from the reference line out to it; null where it follows the wall. [in] */
  readonly outIn: number | null;
  /** The shortest and the longest of the tails' own overhangs; null where no tail stands. */
  readonly least: OverhangAt | null;
  readonly most: OverhangAt | null;
};

/** How a tail meets plate and rafter, as it is cut. [1/16 in] */
export type PlateFit = {
  /** Heel cut and level seat; 0 where there is no seat cut. */
  readonly heelSixteenths: Sixteenths;
  readonly seatSixteenths: Sixteenths;
  /** Shim or packer between plate and tail, plumb; 0 where the tail is notched or meets the corner. */
  readonly shimSixteenths: Sixteenths;
  /** How far the tail's top edge stands above (+) or below (-) the old rafter's, plumb at the wall line. */
  readonly aboveRafterSixteenths: Sixteenths;
};

/** A way to get the soffit or the tails of an eave clear of its window or door heads, with the number that just does. */
export type WayOut =
  /** Leave no more than this of the tail's cut face, and cut its underside level. */
  | { readonly kind: 'level-cut'; readonly faceIn: number }
  /** State no more overhang than this, level, to the framing. */
  | { readonly kind: 'less-overhang'; readonly overhangIn: number }
  /** Slope the soffit with the tails; so much room is left then. */
  | { readonly kind: 'sloped-soffit'; readonly roomIn: number }
  /** Kick the tails up to this pitch or flatter. */
  | { readonly kind: 'kick-up'; readonly pitchRisePer12: number }
  /** Cut the tails from this section. */
  | { readonly kind: 'shallower-stock'; readonly section: string };

/** The tail whose soffit comes lowest against the window or door head. */
export type HeadRoom = {
  readonly extenderId: string;
  readonly rafterNumber: number;
  readonly stationIn: number;
  /** Negative where it is too low. [in] */
  readonly roomIn: number;
  /** Cheapest first; none where there is room. */
  readonly waysOut: readonly WayOut[];
};

/** Something to tell the person about the design or survey that does not stop the computation. */
export type Finding = {
  readonly eaveId: string;
  /** The rake it is about; absent for the eave itself. */
  readonly rakeId?: string;
  /** Station it is about, null for the whole eave. [in] */
  readonly stationIn: number | null;
  readonly topic:
    | 'no-side-free'
    | 'pinned-clash'
    | 'measure-again'
    | 'backspan-short'
    | 'no-bearing'
    | 'seat-short'
    | 'throat'
    | 'fascia-cover'
    | 'fascia-gap'
    | 'window-head'
    | 'insertion'
    | 'under-deck'
    | 'tail-short'
    | 'wide-gap'
    | 'bay-too-narrow'
    | 'unplaced'
    | 'panel-joint'
    | 'filler-thickness'
    | 'method'
    | 'pin-out-of-place'
    | 'overhang-limit'
    | 'wall-bow'
    | 'corner'
    | 'kick-up'
    | 'old-block'
    | 'rake'
    | 'soffit-not-counted'
    | 'vents';
  readonly text: string;
  /** Advisory structural results carry the caution wherever shown. */
  readonly structural: boolean;
  /** Path of the entry that is asked for, where one is missing. */
  readonly field?: string;
};

/** A joint between two panels of the new sheathing. */
export type PanelJoint = {
  /** Middle of the gap between the panels. [in] */
  readonly stationIn: number;
  /** The tail that both panels bear on; null where none stands under it. */
  readonly extenderId: string | null;
};

/** An eave, laid out. */
export type EaveLayout = {
  readonly eaveId: string;
  readonly name: string;
  /** Letter that the eave's marks begin with: A, B ... */
  readonly letter: string;
  readonly wallLengthIn: number;
  readonly overhangLevelIn: number;
  readonly rafters: readonly PlacedRafter[];
  readonly occupied: readonly Occupied[];
  readonly extenders: readonly Extender[];
  readonly unplaced: readonly Unplaced[];
  readonly bays: readonly Bay[];
  /** What neighbouring tails may stand apart, centre to centre, and what holds them to it. */
  readonly largestGap: LargestGap;
  /** Joints between the panels of the lowest course, as laid on the tails; none where they need not land on tails. */
  readonly panelJoints: readonly PanelJoint[];
  readonly fascia: readonly FasciaPiece[];
  /** On its face, from end to end. [in] */
  readonly fasciaLengthIn: number;
  /** What the fascia was broken on, so that other joints can be chosen. */
  readonly fasciaRun: FasciaRun;
  /** The 2x behind the fascia; none where none is wanted. */
  readonly subFascia: readonly FasciaPiece[];
  readonly subFasciaRun: FasciaRun | null;
  readonly fasciaLine: FasciaLine;
  readonly lineInPlan: LineInPlan;
  /** Null where no head was measured, or no tail stands. */
  readonly headRoom: HeadRoom | null;
  readonly ends: { readonly left: EaveEnd; readonly right: EaveEnd };
  readonly findings: readonly Finding[];
};
