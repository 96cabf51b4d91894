import { formatLength } from '../units/format-length.ts';
import { atTail, found, held, noSource, type Answer, type Check, source, step, wholeEave } from './answer.ts';
import { customaryHungNails } from './data/hung-nails.ts';
import type { EaveToCheck } from './eave-to-check.ts';
import { hungDemands, worstDemand, type HungDemand } from './hung-demand.ts';
import { hungRemedy } from './hung-remedy.ts';
import { hungSteps } from './hung-steps.ts';
import { hungTails } from './hung-tails.ts';
import { loadAssumptions, loadSource, mindingSnow } from './load-steps.ts';
import { pounds } from './measured.ts';
import { nailSource, unknownNail } from './nails/unknown-nail.ts';
import type { Nail } from '../takeoff/nails.ts';
import { mindingWind, upliftAssumptions, upliftSource } from './uplift-steps.ts';
import { numberList } from '../layout/number-list.ts';

const what =
  'Nails of a tail hung on a header block, where no side is free, against their adjusted lateral value';
const notLaidOut =
  'The program does not lay out, count or price such a tail yet: the figure is for deciding whether to build one.';
const endGrainSource = source(
  'NDS 2018, end grain factor 0.67 as seen in transcription; its paragraph, 12.5.2.2, from memory',
  'published',
);

/**
 * What a tail hung on a header block, in place of each extender that found no side free, would ask of its nails: the plate's
 * outer edge carries it, the block holds its back end by nails into the tail's end grain, and hands half to each rafter.
 * Source: NDS 2018, chapters 11 and 12; statics. Number of nails: common practice, no source.
 * Worked: 4987 lb-in. over 32 in. level -> 156 lb into the tail, 78 lb at each end of the block.
 */
export const blockHung: Check = {
  check: 'block-hung',
  group: 'Nails',
  title: 'Tails hung on a block',
  run: (eave) => {
    const { tails, noRoom } = hungTails(eave);
    if (tails.length === 0) return noRoom.length === 0 ? noneToHang(eave) : noBay(noRoom);
    const nails = customaryHungNails(eave.stock);
    if (nails === undefined) return noCustom(eave);
    const nail = eave.sisterNail;
    if (nail === undefined) return unknownNail(what, eave.input.settings.fastening.sister.nail);
    const worst = worstDemand(tails.flatMap((tail) => hungDemands(eave, tail, nail, nails)));
    return worst === undefined ? noneToHang(eave) : answerOf(eave, { worst, nail, nails, noRoom });
  },
};

type Found = {
  readonly worst: HungDemand;
  readonly nail: Nail;
  readonly nails: number;
  readonly noRoom: readonly number[];
};

function answerOf(eave: EaveToCheck, { worst, nail, nails, noRoom }: Found): Answer {
  const { tail, place, shareLb, nailLb } = worst;
  const { unplaced, bay } = tail;
  const told = {
    what,
    at: atTail({ rafterNumber: unplaced.rafterNumber, centreIn: unplaced.stationIn }),
    value: pounds(shareLb),
    limit: pounds(nails * nailLb),
    source: [nailSource, endGrainSource, noSource, loadSource, upliftSource],
    assumptions: [
      notLaidOut,
      `The tail stands in the middle between rafters ${bay.left.number} and ${bay.right.number}, on a header block of its own stock of ${formatLength(bay.spanIn)}, face to face; off the middle the nearer end takes more than half.`,
      place === 'tail'
        ? "The nails through the block's face into the tail's end govern; those at each end of the block take half as much."
        : 'The nails through a rafter into an end of the block govern, though they take half of what goes into the tail.',
      'All of these nails stand in end grain, and the load is shared alike among them. Their number is common practice without a source, and the nail is that of the sister joint.',
      ...(bay.middleTaken
        ? ['Something stands on the plate in the middle of that bay: the tail has to stand off the middle.']
        : []),
      ...(bay.beside
        ? [
            "An extender stands in that bay: the block's nails cannot go through rafter and extender together, and need a way of their own.",
          ]
        : []),
      ...(noRoom.length === 0 ? [] : [`Not reckoned: ${noBayWords(noRoom)}.`]),
      'No other hung tail is counted on between the extenders on either side, so this is the harder of two readings.',
      'Not covered: bending and splitting of the block, what it adds to the two rafters at its ends, a joist in the way of its nails, and the tail itself.',
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
    assumptions: [notLaidOut],
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
    assumptions: [notLaidOut],
    why: [],
    verdict: 'not-covered',
    remedy: `Common practice gives a number of nails for hung tails of 2x4 and deeper; a ${stock.section} has none. Choose 2-in. stock for the extenders, or ask an engineer.`,
  });
}
