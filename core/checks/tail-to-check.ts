import type { EaveDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import type { DressedSection } from '../lumber/dressed-sizes.ts';
import { assertNever } from '../result.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { inchesOf } from '../units/sixteenths.ts';
import type { EaveLoads } from './loads/eave-loads.ts';
import { roofCarried } from './roof-carried.ts';
import { nailPlaces, reckonTail, type ReckonedTail, type TailShape } from './statics/reckon-tail.ts';

/**
 * How the back end of a tail is kept down. `nails`: face to face with its rafter; `filler`: the same through a filler;
 * `blocks`: on a header block; `ridge`: a whole rafter, at its upper end; `not-reckoned`: kicked up, so that the lap is a
 * wedge, in the place of a gable rafter, or a whole rafter whose span is not entered.
 */
export type BackHold = 'nails' | 'filler' | 'blocks' | 'ridge' | 'not-reckoned';

/** A tail to check: the extender, its rafter, what it carries and how it stands. */
export type Tail = ReckonedTail & {
  readonly extender: Extender;
  readonly rafter: PlacedRafter;
  readonly backHold: BackHold;
  /** To the further of its neighbours, centre to centre; 0 where it stands alone. [in] */
  readonly gapIn: number;
  /** Length over which it bears on the plate or on a shim over it. [in] */
  readonly bearingLengthIn: number;
  /** What its shape is walked back to. */
  readonly shapeRef: string;
  /** True where three or more tails stand and both gaps are no more than 24 in. */
  readonly repetitive: boolean;
};

/** What the tails of an eave are reckoned from. */
export type TailsKnown = {
  readonly input: JobInput;
  readonly layout: EaveLayout;
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  readonly stock: DressedSection;
  readonly loads: EaveLoads;
};

/** The tails of an eave, from left to right, each with its own overhang, pitch and way of being held. */
export function tailsToCheck(known: TailsKnown): readonly Tail[] {
  return known.layout.extenders.map((extender, index) => tailOf(extender, index, known));
}

function tailOf(extender: Extender, index: number, known: TailsKnown): Tail {
  const { layout, stock, design } = known;
  const rafter = layout.rafters[extender.rafterNumber - 1];
  if (rafter === undefined) throw new Error('an extender without its rafter');
  const { section, filler } = extender;
  const { tributaryIn, gapIn } = roofCarried(
    layout,
    extender,
    layout.extenders[index - 1],
    layout.extenders[index + 1],
  );
  const backHold = backHoldOf(extender, known.survey);
  const slope = extender.pitchRisePer12 / 12;
  const shape: TailShape = {
    overhangLevelIn: section.overhangLevelIn,
    slope,
    backspanIn: section.backspanIn,
    backLossIn: design.backEnd === 'parallel' ? stock.depthIn * slope : 0,
    longestLapIn: filler === null ? null : inchesOf(filler.lengthSixteenths),
    backHeld: backHold === 'blocks' || backHold === 'ridge' ? 'end' : 'nails',
    thicknessIn: stock.thicknessIn,
    depthIn: stock.depthIn,
    jointDepthIn: Math.min(stock.depthIn, rafter.depthIn),
    tributaryIn,
  };
  return {
    ...reshaped(known, shape, known.input.settings.fastening.sister),
    extender,
    rafter,
    backHold,
    gapIn,
    shapeRef: `section/${layout.eaveId}/${extender.id}`,
    bearingLengthIn: bearingLength(extender, known.survey),
    repetitive: layout.extenders.length >= 3 && gapIn <= 24,
  };
}

function backHoldOf({ method, section }: Extender, survey: EaveSurvey): BackHold {
  switch (method) {
    case 'block-hung':
      return 'blocks';
    case 'full-length':
      return survey.rafterSpanIn === null ? 'not-reckoned' : 'ridge';
    case 'end-replacement':
      return 'not-reckoned';
    case 'filler':
      return section.kickUp === null ? 'filler' : 'not-reckoned';
    case 'side':
    case 'outer-face':
      return section.kickUp === null ? 'nails' : 'not-reckoned';
    default:
      return assertNever(method);
  }
}

/** The same tail with another shape or pattern, to find what would bring a value within its limit. */
export function reshaped(
  { design, loads }: Pick<TailsKnown, 'design' | 'loads'>,
  shape: TailShape,
  pattern: { readonly rows: number; readonly spacingIn: number; readonly endDistanceIn: number },
): ReckonedTail {
  const places =
    shape.backHeld === 'nails' ? nailPlaces(shape, pattern, design.structure.nailEdgeDistanceIn) : [];
  return reckonTail(shape, places, loads);
}

/** A shim is taken to be as long as the plate is wide; a bottom edge on the plate's corner bears on nothing. */
function bearingLength({ section: { bearing } }: Extender, survey: EaveSurvey): number {
  if (bearing.kind === 'notched') return Math.max(0, bearing.bearingLengthIn);
  return bearing.kind === 'shimmed' ? survey.plateWidthIn : 0;
}
