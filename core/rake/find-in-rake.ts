import type { Finding } from '../layout/layout-types.ts';
import { numberList } from '../layout/number-list.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { gableTailsOf, type RakeParts } from './rake-parts.ts';
import type { Lookout, RakeLayout } from './rake-types.ts';
import { stripBackOf } from './rake-strip.ts';

/** A ladder carries so much and no more. [in] Source: public guidance, its first publisher not known (ladders for about 8 to 12 in., lookouts beyond 12). */
const longestLadderIn = 12;
/** A barge rafter that leaves the gable rafter's plane by more shows in the sheathing. [in] Common practice, no source. */
const showingIn = 1 / 8;
/** Sheathing and a lookout that span further than this between gable rafter and the first inside ask for a look. [in] Common practice, no source. */
const farInsideIn = 32;
/** A tape's own doubt. [in] */
const tapeIn = 1 / 16;

type Said = { readonly text: string; readonly structural: boolean };
type Laid = Omit<RakeLayout, 'findings'>;

/**
 * What a person should know of a rake before it is built. Structural ones are advisory and carry the caution.
 * @param parts - the rake and its eave.
 * @param laid - as laid out. [in]
 */
export function findInRake(parts: RakeParts, laid: Laid): readonly Finding[] {
  const said = [
    ...atTheEave(parts, laid),
    ...(laid.kind === 'ladder' ? ofLadder(parts, laid) : ofLookouts(parts, laid)),
    ...ofBarge(laid),
    ...ofFascia(laid),
    ...ofDeck(parts, laid),
  ];
  return said.map(({ text, structural }) => ({
    eaveId: laid.eaveId,
    rakeId: laid.rakeId,
    stationIn: null,
    topic: 'rake',
    text: `${laid.name}: ${text}`,
    structural,
  }));
}

function atTheEave(parts: RakeParts, laid: Laid): readonly Said[] {
  const said: Said[] = [];
  const end = parts.eaveDesign.ends[laid.end];
  if (end.kind !== 'rake' || end.meets !== laid.rakeId)
    said.push(
      plainly(
        `the ${laid.end} end of ${laid.eaveName} is not set to meet it, so that eave's fascia does not run out to the corner. Set that end to this rake in Design.`,
      ),
    );
  if (gableTailsOf(parts).length === 0)
    said.push(
      plainly(
        `no new tail stands at its gable rafter (rafter ${laid.gable.number}), so the barge rafter's foot is set by that rafter's own line. Place a tail there in Design.`,
      ),
    );
  if (parts.eaveDesign.kickUpPitchRisePer12 !== null)
    said.push(
      plainly(
        "the eave's tails are kicked up, and the barge rafter is drawn straight from ridge to tail. Kick it up with them on site; its length here does not follow the break.",
      ),
    );
  return said;
}

function ofLookouts(parts: RakeParts, laid: Laid): readonly Said[] {
  const said: Said[] = [];
  const short = laid.lookouts.filter(
    ({ backspanIn, overhangIn }) => backspanIn !== null && overhangIn !== null && backspanIn < overhangIn,
  );
  const shortest = leastBy(short, ({ backspanIn }) => backspanIn ?? 0);
  if (shortest !== undefined)
    said.push(
      structurally(
        `${listed(laid, short)} ${short.length === 1 ? 'reaches' : 'reach'} back only ${formatLength(shortest.backspanIn ?? 0)} for ${formatLength(shortest.overhangIn ?? 0)} of overhang: a lookout should reach in at least as far as it sticks out. Run ${short.length === 1 ? 'it' : 'them'} through to the next member inside, or stick out less.`,
      ),
    );
  const overHouse = laid.lookouts.filter(({ levelIn }) => levelIn < 0);
  const furthest = leastBy(overHouse, ({ backspanIn }) => -(backspanIn ?? 0));
  if (furthest !== undefined && (furthest.backspanIn ?? 0) > farInsideIn)
    said.push(
      structurally(
        `its lookouts span ${formatLength(furthest.backspanIn ?? 0)} from the gable rafter to the first member inside. Over ${farInsideIn}": look up what they and the sheathing may span, or set a rafter between.`,
      ),
    );
  const hanging = laid.lookouts.filter(({ meets }) => meets === null);
  if (hanging.length > 0)
    said.push(
      plainly(
        `${listed(laid, hanging)} ${hanging.length === 1 ? 'lies' : 'lie'} past the wall, where no tail stands further in for ${hanging.length === 1 ? 'its' : 'their'} inner end. Place a tail at the next rafter, or hang a block there.`,
      ),
    );
  if (parts.design.atGableRafter === 'butted' && laid.overhangIn > longestLadderIn)
    said.push(
      structurally(
        `lookouts that are butted to the gable rafter hang on their nails and the sheathing, as a ladder does: for about 8 to 12 in. by public guidance whose first publisher is not known. At ${formatLength(laid.overhangIn)} let them into the gable rafter and run them through.`,
      ),
    );
  if (laid.notch !== null) said.push(...ofNotch(laid, laid.notch.depthIn));
  return said;
}

/** What a notch leaves of the members that it is cut into. */
function ofNotch(laid: Laid, depthIn: number): readonly Said[] {
  const left = laid.gable.depthIn - depthIn;
  if (left <= 0)
    return [
      structurally(
        `a lookout ${formatInches(depthIn)} deep would cut the gable rafter of ${formatInches(laid.gable.depthIn)} through. Lay the lookouts flat, or choose shallower lumber.`,
      ),
    ];
  const inTails = laid.lookouts.filter(({ crosses }) => crosses.some(({ kind }) => kind === 'extender'));
  const tail = inTails.flatMap(({ crosses }) => crosses.filter(({ kind }) => kind === 'extender'))[0];
  return tail === undefined
    ? []
    : [
        structurally(
          `${listed(laid, inTails)} ${inTails.length === 1 ? 'is' : 'are'} let ${formatInches(depthIn)} into the top edge of ${tail.label}, which leaves ${formatInches(Math.max(0, tail.depthIn - depthIn))} of a tail that sticks out past the wall. See the check of what a notch leaves.`,
        ),
      ];
}

function ofLadder(parts: RakeParts, laid: Laid): readonly Said[] {
  const said: Said[] = [];
  if (laid.overhangIn > longestLadderIn)
    said.push(
      structurally(
        `a ladder hangs on the gable rafter's nails and the sheathing: for about 8 to 12 in. by public guidance whose first publisher is not known. At ${formatLength(laid.overhangIn)} use lookouts that run back into the roof.`,
      ),
    );
  const { outerInsideIn, number } = laid.gable;
  if (outerInsideIn > tapeIn)
    said.push(
      plainly(
        `its gable rafter (rafter ${number}) stands ${formatLength(outerInsideIn)} in from the wall's framing face: pack it out flush before the ladder's rail is nailed to it.`,
      ),
    );
  for (const tail of gableTailsOf(parts)) {
    const outside =
      laid.end === 'left' ? tail.leftIn < -tapeIn : tail.rightIn > parts.layout.wallLengthIn + tapeIn;
    said.push(
      plainly(
        outside
          ? `${tail.mark} stands on the outer face of the gable rafter, where the ladder's rail wants to lie. Set that tail on the inner face, or choose lookouts.`
          : `past the wall the rail has only ${tail.mark} to be nailed to, on the far face of the gable rafter: pack between them there.`,
      ),
    );
  }
  return said;
}

function ofBarge(laid: Laid): readonly Said[] {
  const said: Said[] = [];
  if (Math.abs(laid.aboveGableIn) > showingIn)
    said.push(
      plainly(
        `brought to the eave's fascia line, the barge rafter (${formatPitch(laid.pitchRisePer12)}) stands ${formatLength(Math.abs(laid.aboveGableIn))} ${laid.aboveGableIn > 0 ? 'above' : 'below'} the gable rafter at the wall and meets it at the ridge. Set the lookouts to a string between the two.`,
      ),
    );
  if (laid.bargeSize.depthIn < laid.lookoutDepthIn)
    said.push(
      plainly(
        `a barge rafter of ${laid.bargeStock.section} is shallower than the ${laid.kind === 'ladder' ? 'rungs' : 'lookouts'} behind it (${formatInches(laid.lookoutDepthIn)}). Choose one at least as deep.`,
      ),
    );
  if (laid.barge.length > 1)
    said.push(
      plainly(
        `no board is long enough for the barge rafter, so it is jointed on ${laid.barge.length === 2 ? 'a' : 'each of the'} lookout${laid.barge.length === 2 ? '' : 's'} at ${laid.barge
          .slice(1)
          .map(({ fromIn }) => formatLength(fromIn))
          .join(' and ')} up the slope. A longer length on the price list makes it one piece.`,
      ),
    );
  return said;
}

function ofFascia(laid: Laid): readonly Said[] {
  if (laid.fasciaSize === null) return [];
  const said: Said[] = [];
  if (laid.fasciaSize.depthIn < laid.bargeSize.depthIn)
    said.push(
      plainly(
        `its fascia (${formatInches(laid.fasciaSize.depthIn)}) does not cover the barge rafter (${formatInches(laid.bargeSize.depthIn)}).`,
      ),
    );
  if (Math.abs(laid.corner.rakeTallerIn) > tapeIn)
    said.push(
      plainly(
        `at the corner its fascia's end cut is ${formatInches(Math.abs(laid.corner.rakeTallerIn))} ${laid.corner.rakeTallerIn > 0 ? 'taller' : 'shorter'} than the eave's fascia. Rip one of the two, or let the bottom edges step there.`,
      ),
    );
  return said;
}

function ofDeck(parts: RakeParts, laid: Laid): readonly Said[] {
  if (laid.strip === null) return [];
  const { insideIn, landsOn } = stripBackOf(parts);
  const said: Said[] = [];
  if (landsOn === null)
    said.push(
      plainly(
        `the new sheathing meets the old deck ${formatLength(insideIn)} in from the gable, where no rafter lies under the joint. Strip back to the middle of a rafter.`,
      ),
    );
  if (parts.survey.deckPastIn > 0)
    said.push(
      plainly(
        `old deck boards run ${formatLength(parts.survey.deckPastIn)} past the gable wall: they come off with the deck that is stripped back ${formatLength(insideIn)}.`,
      ),
    );
  return said;
}

/** `lookout 3`, `lookouts 1, 2, 5-7`, counted from the eave up as in their marks. */
function listed({ lookouts }: Laid, some: readonly Lookout[]): string {
  const numbers = some.map((one) => lookouts.indexOf(one) + 1).toSorted((a, b) => a - b);
  return `${numbers.length === 1 ? 'lookout' : 'lookouts'} ${numberList(numbers)}`;
}

function leastBy<T>(things: readonly T[], figure: (thing: T) => number): T | undefined {
  return things.toSorted((a, b) => figure(a) - figure(b))[0];
}

function plainly(text: string): Said {
  return { text, structural: false };
}

function structurally(text: string): Said {
  return { text, structural: true };
}
