import type { EaveDesign } from '../eave/design-document.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import type { EaveLayout, Extender, Finding } from './layout-types.ts';
import { casesOfTails, tellOnce, type Case } from './say-findings.ts';

/** Less than this rounds to nothing on a tape, and is not told. [in] */
const untoldIn = 1 / 32;

/**
 * What kicked-up tails bring along: where the roof's pitch breaks, how much of each tail lies against its rafter, the
 * packers, and full-length rafters, which cannot be kicked up.
 * @param laid - the eave. [in]
 * @param design - of the eave.
 */
export function findKickUp(
  { eaveId, extenders }: Pick<EaveLayout, 'eaveId' | 'extenders'>,
  design: Pick<EaveDesign, 'kickUpPitchRisePer12'>,
): readonly Finding[] {
  const pitch = design.kickUpPitchRisePer12;
  if (pitch === null) return [];
  const casesOf = (figure: (extender: Extender) => number | null): readonly Case[] =>
    casesOfTails(extenders, figure);
  return [
    ...findBreak(eaveId, pitch, extenders),
    ...tellOnce(
      eaveId,
      casesOf(({ section: { kickUp, backspanIn, backspanWantedIn } }) =>
        kickUp?.lap != null &&
        kickUp.leavesRafterIn !== null &&
        kickUp.leavesRafterIn < backspanWantedIn - untoldIn &&
        kickUp.leavesRafterIn < backspanIn + untoldIn
          ? backspanIn
          : null,
      ),
      {
        topic: 'kick-up',
        structural: true,
        say: (lap) =>
          `the kicked-up tail leaves the rafter's side ${lap} inside the wall, along its slope, so it is no longer than that there. Raise it at the wall, or kick it up less, for a longer lap.`,
      },
    ),
    ...tellOnce(
      eaveId,
      casesOf(({ method, section: { kickUp } }) =>
        method !== 'block-hung' && kickUp !== null && kickUp.lap === null ? 0 : null,
      ),
      {
        topic: 'kick-up',
        structural: true,
        say: () =>
          'the kicked-up tail lies nowhere far enough against its rafter to be nailed to it. Raise it less, kick it up less, or hang it on blocks.',
      },
    ),
    ...tellOnce(
      eaveId,
      casesOf(({ method }) => (method === 'full-length' ? 0 : null)),
      {
        topic: 'kick-up',
        structural: true,
        say: () =>
          'a full-length rafter has one pitch from end to end and cannot be kicked up: it is turned to the line here. Stop it at the plate and nail a tail beside it, or choose another method.',
      },
    ),
  ];
}

function findBreak(eaveId: string, pitch: number, extenders: readonly Extender[]): readonly Finding[] {
  const breaks = extenders.flatMap(({ section: { kickUp } }) => (kickUp === null ? [] : [kickUp.breakOutIn]));
  if (breaks.length === 0) return [];
  const packers = extenders.flatMap(({ section: { bearing } }) =>
    bearing.kind === 'shimmed' && bearing.shimIn >= untoldIn ? [bearing.shimIn] : [],
  );
  const parts = [
    `The tails are kicked up to ${formatPitch(pitch)}: the roof's pitch breaks ${breakWords(Math.min(...breaks), Math.max(...breaks))}.`,
    packers.length === 0
      ? 'No tail needs a packer over the plate.'
      : `Packers over the plate: ${packers.length}, ${rangeWords(packers)} high.`,
  ];
  return [{ eaveId, stationIn: null, topic: 'kick-up', text: parts.join(' '), structural: false }];
}

function breakWords(leastIn: number, mostIn: number): string {
  const [least, most] = [breakAt(leastIn), breakAt(mostIn)];
  return least === most ? least : `from ${least} to ${most}`;
}

function breakAt(outIn: number): string {
  return Math.abs(outIn) < untoldIn
    ? 'at the wall line'
    : `${formatLength(Math.abs(outIn))} ${outIn < 0 ? 'inside' : 'outside'} the wall line`;
}

function rangeWords(values: readonly number[]): string {
  const [least, most] = [formatInches(Math.min(...values)), formatInches(Math.max(...values))];
  return least === most ? least : `${least} to ${most}`;
}
