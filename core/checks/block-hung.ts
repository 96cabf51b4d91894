import { numberList } from '../layout/number-list.ts';
import { headerNailsEach } from '../takeoff/header-nails.ts';
import { findNail, type Nail } from '../takeoff/nails.ts';
import { formatLength } from '../units/format-length.ts';
import { found, held, noSource, type Answer, type Check, source, step, wholeEave } from './answer.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { hungDemands, nearerShare, worstDemand, type HungDemand } from './hung-demand.ts';
import { hungRemedy } from './hung-remedy.ts';
import { hungSteps } from './hung-steps.ts';
import { laidOutHungTails, proposedHungTails, type HungTail } from './hung-tails.ts';
import { loadAssumptions, loadSource, mindingSnow } from './load-steps.ts';
import { plain, pounds } from './measured.ts';
import { nailSource, unknownNail } from './nails/unknown-nail.ts';
import { mindingWind, upliftAssumptions, upliftSource } from './uplift-steps.ts';

const what = 'Nails of a tail hung on a header block against their adjusted lateral value';
const proposal =
  'No such tail is laid out, counted or priced: the figure is for deciding whether to build one for a rafter that has none.';
const endGrainSource = source(
  'NDS 2018, end grain factor 0.67 as seen in transcription; its paragraph, 12.5.2.2, from memory',
  'published',
);

/**
 * What a tail hung on a header block asks of its nails: the plate's outer edge carries it, the block holds its back end by
 * nails into the tail's end grain, and hands it to the two rafters, most of it to the nearer. Where none is laid out it is
 * reckoned for the rafters that got no tail. Source: NDS 2018, chapters 11 and 12; statics. Number of nails: settings.
 * Worked: 4987 lb-in. over 32 in. level -> 156 lb into the tail, 78 lb at each end of the block.
 */
export const blockHung: Check = {
  check: 'block-hung',
  group: 'Nails',
  title: 'Tails hung on a block',
  run: (eave) => {
    const laidOut = laidOutHungTails(eave);
    const proposed = proposedHungTails(eave);
    const tails = laidOut.length > 0 ? laidOut : proposed.tails;
    if (tails.length === 0) return proposed.noRoom.length === 0 ? noneToHang(eave) : noBay(proposed.noRoom);
    if (eave.stock.nominalThicknessIn < 2) return noCustom(eave);
    const { headerNail, ...fastening } = eave.input.settings.fastening;
    const nail = findNail(headerNail);
    if (nail === undefined) return unknownNail(what, headerNail);
    const nails = headerNailsEach(fastening, eave.stock.depthIn);
    const worstOf = (some: readonly HungTail[]): HungDemand | undefined =>
      worstDemand(some.flatMap((tail) => hungDemands(eave, tail, nail, nails)));
    const worst = worstOf(tails);
    if (worst === undefined) return noneToHang(eave);
    const other = laidOut.length > 0 ? worstOf(proposed.tails) : undefined;
    return answerOf(eave, { worst, other, nail, nails, noRoom: proposed.noRoom });
  },
};

type Found = {
  readonly worst: HungDemand;
  /** Where tails are laid out: the worst of those that other rafters would want. */
  readonly other: HungDemand | undefined;
  readonly nail: Nail;
  readonly nails: number;
  readonly noRoom: readonly number[];
};

function answerOf(eave: EaveToCheck, { worst, other, nail, nails, noRoom }: Found): Answer {
  const { tail, place, shareLb, nailLb } = worst;
  const told = {
    what,
    at: tail.at,
    value: pounds(shareLb),
    limit: pounds(nails * nailLb),
    source: [nailSource, endGrainSource, noSource, loadSource, upliftSource],
    assumptions: [
      ...(tail.laidOut ? [] : [proposal]),
      blockWords(tail),
      place === 'tail'
        ? "The nails through the block's face into the tail's end govern; those at an end of the block take less."
        : 'The nails through a rafter into an end of the block govern, though they take a part of what goes into the tail.',
      'All of these nails stand in end grain, and the load is shared alike among them. Their number is common practice without a source, set in Settings.',
      ...(tail.middleTaken
        ? ['Something stands on the plate in the middle of that bay: the tail has to stand off the middle.']
        : []),
      ...(tail.beside
        ? [
            "An extender stands in that bay: the block's nails cannot go through rafter and extender together, and need a way of their own.",
          ]
        : []),
      ...(other === undefined
        ? []
        : [
            `${other.tail.at.where} has no tail: one hung beside it would ask ${pounds(other.shareLb).text} of nails that take ${pounds(nails * other.nailLb).text}.`,
          ]),
      ...(noRoom.length === 0 ? [] : [`Not reckoned: ${noBayWords(noRoom)}.`]),
      ...(tail.laidOut
        ? []
        : [
            'No other hung tail is counted on between the extenders on either side, so this is the harder of two readings.',
          ]),
      'Not covered: bending and splitting of the block, what it adds to the two rafters at its ends, and a joist in the way of its nails.',
      ...eave.taken.extender,
      ...eave.taken.oldWood,
      ...loadAssumptions,
      ...upliftAssumptions,
    ],
    why: hungSteps(eave, worst, nail, nails),
  };
  if (nailLb === 0)
    return found({
      ...told,
      verdict: 'beyond',
      remedy:
        'The nails do not reach six diameters into the end grain and count for nothing. Choose longer nails in Settings, or hangers.',
    });
  const answer = held({ ...told, worse: 'more', remedy: () => hungRemedy(eave, worst, nail, nails) });
  return mindingWind(eave, mindingSnow(eave, answer));
}

function blockWords(tail: HungTail): string {
  const { left, right, block, centreIn } = tail;
  const spanIn = block.rightIn - block.leftIn;
  const nearIn = Math.min(centreIn - block.leftIn, block.rightIn - centreIn);
  const stands =
    Math.abs(nearIn - spanIn / 2) < 1 / 32
      ? 'in the middle of it'
      : `${formatLength(nearIn)} from its nearer end, which takes ${plain(nearerShare(tail), 3)} of the load`;
  return `The tail hangs between rafters ${left.number} and ${right.number} on a header block of its own stock of ${formatLength(spanIn)}, and stands ${stands}.`;
}

function noneToHang({ layout }: EaveToCheck): Answer {
  const stuck = layout.unplaced.filter(({ reason }) => reason === 'no-side-free').length;
  return found({
    what,
    at: wholeEave,
    source: [noSource],
    why: [step('Rafters without a free side', 'as laid out', `${stuck}`, 'no tail has to be hung')],
    verdict: 'within',
    remedy: null,
  });
}

function noBay(noRoom: readonly number[]): Answer {
  return found({
    what,
    at: wholeEave,
    source: [noSource],
    assumptions: [proposal],
    why: [],
    verdict: 'not-covered',
    remedy: `No tail can be hung: ${noBayWords(noRoom)}. Free a side of a rafter there, or ask an engineer.`,
  });
}

function noBayWords(noRoom: readonly number[]): string {
  return `beside ${noRoom.length === 1 ? 'rafter' : 'rafters'} ${numberList(noRoom)} no bay is as wide as a tail is thick`;
}

function noCustom({ stock }: EaveToCheck): Answer {
  return found({
    what,
    at: wholeEave,
    source: [noSource],
    why: [],
    verdict: 'not-covered',
    remedy: `Nails of hung tails are reckoned for 2-in. stock; the extenders are ${stock.section}. Choose 2-in. stock, or ask an engineer.`,
  });
}
