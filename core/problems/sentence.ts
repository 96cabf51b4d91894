import { assertNever } from '../result.ts';
import { entryName } from '../job/entry-name.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { billingSentence } from './billing-fault.ts';
import { costSentence } from './cost-fault.ts';
import { offerSentence } from './offer-fault.ts';
import { priceSentence } from './price-fault.ts';
import type { LengthReason, Problem } from './problem.ts';
import { shortened } from './shortened.ts';

/** The sentence that tells a person what is wrong and what to do: made here and nowhere else. */
export function problemSentence(problem: Problem): string {
  switch (problem.code) {
    case 'length-unreadable':
      return lengthSentence(shortened(problem.typed), problem.reason);
    case 'pitch-unreadable':
      if (problem.typed.trim() === '') return 'Enter a pitch, like 6/12 or 26.6 deg.';
      return `"${shortened(problem.typed)}" is not a pitch. Write it like 6/12, 26.6 deg or 50 %.`;
    case 'pitch-out-of-range':
      return `A pitch of ${shortened(problem.typed)} cannot be built here. Enter more than 0 and at most 24/12.`;
    case 'money-unreadable':
      if (problem.typed.trim() === '') return 'Enter an amount, like 12.50.';
      return `"${shortened(problem.typed)}" is not an amount. Write dollars and cents, like 12.50.`;
    case 'number-unreadable':
      if (problem.typed.trim() === '') return 'Enter a number, like 12.';
      return `"${shortened(problem.typed)}" is not a number. Write plain digits, like 12 or 12.5.`;
    case 'number-not-whole':
      return `${shortened(problem.typed.trim())} is not a whole number. Enter one without a fraction, like 12.`;
    case 'out-of-range':
      return `${problem.what} is out of range. Enter ${rangeWords(problem.least, problem.most)}.`;
    case 'entry-invalid':
      return `${problem.what}: ${withStop(problem.detail)}`;
    case 'no-eaves':
      return 'The survey has no eave yet. Add one to start.';
    case 'no-rafters':
      return `${problem.eave} has no rafters yet. Enter the first rafter's reading.`;
    case 'duplicate-id':
      return `Two entries share the ${problem.what} "${problem.id}". Give one of them another.`;
    case 'rafter-out-of-order':
      return `${problem.eave}, rafter ${problem.rafter} at ${formatLength(problem.stationIn)} stands before the last one at ${formatLength(problem.previousIn)}. Check the reading, or put the rafters in order from station 0.`;
    case 'rafters-overlap':
      return `${problem.eave}, rafter ${problem.rafter} overlaps rafter ${problem.previous} by ${formatLength(problem.overlapIn)}. Measure both stations and thicknesses again.`;
    case 'rafter-past-wall':
      return `${problem.eave}, rafter ${problem.rafter} at ${formatLength(problem.stationIn)} ${offWall(problem)}`;
    case 'no-design':
      return `${problem.eave} has no overhang design yet. Open Design and give it an overhang.`;
    case 'unknown-section':
      return `"${problem.section}" for ${problem.use} is not a lumber size known here. Choose one like 2x6 or 1x8.`;
    case 'overhang-nothing-left':
      return `${problem.eave}: once the fascia is taken off, no overhang is left. Enter a longer overhang.`;
    case 'tail-out-of-reach':
      return tailSentence(problem);
    case 'wall-past-line':
      return `${problem.eave}: at ${formatLength(problem.stationIn)} the wall stands ${formatLength(problem.outIn)} out of its reference line, and nothing of the overhang is left. Read the wall again, give more overhang, or let the fascia follow the wall in Design.`;
    case 'kick-up-not-flatter':
      return `${problem.eave}: a tail kicked up to ${formatPitch(problem.kickUpRisePer12)} is not flatter by 1/2 in 12 than rafter ${problem.rafter} at ${formatPitch(problem.rafterRisePer12)}. Enter a flatter pitch for the kick-up, or none.`;
    case 'rafter-stands-there':
      return `Rafter ${problem.rafter} stands there. Against its sides a tail stands at ${formatLength(problem.leftIn)} or ${formatLength(problem.rightIn)}.`;
    case 'piece-longer-than-stock':
      return `${problem.mark} is ${formatLength(problem.pieceIn)} long, and the longest ${problem.stock} on the price list gives ${formatLength(problem.longestIn)}. ${wayOut(problem)}`;
    case 'not-enough-boards':
      return `The boards of ${problem.stock} that there are do not hold every piece. Put a length to buy on the price list, or set more boards as on hand.`;
    case 'length-left-out':
      return `Left out of the cut plan: ${problemSentence(problem.because)}`;
    case 'no-price':
      return `No price for ${problem.item}. Add it to the price list.`;
    case 'price-of-nothing':
      return `${problem.item} has a price of $0.00, which counts as no price. Enter what it costs on the price list.`;
    case 'price-not-yet':
      return `${problem.item} has no price on or before ${problem.asOf}; its first is of ${problem.firstOn}. Add an earlier price or a later estimate date.`;
    case 'unit-does-not-fit':
      return `${problem.item} is priced by ${problem.unit}, which needs ${problem.needs}. Fill that in on the price list.`;
    case 'no-wage':
      return 'No wage is set, so labour counts as nothing. Enter the wage for an hour in Settings.';
    case 'margin-too-high':
      return `A margin of ${problem.percent} % cannot be reached. Enter less than 100 %.`;
    case 'csv-columns':
      return csvColumnsSentence(problem.missing, problem.unknown);
    case 'csv-no-rows':
      return 'The price list has no rows under its header. Nothing was imported; write one row for each price.';
    case 'csv-row':
      return `Row ${problem.row}, column "${problem.column}": ${problem.detail} Nothing was imported.`;
    case 'csv-broken':
      return `Row ${problem.row} cannot be read as CSV (${problem.detail}). Nothing was imported.`;
    case 'file-not-json':
      return `The file is not a job file: it is not JSON, ${problem.detail}. Choose a file that "Export to a job file" wrote.`;
    case 'file-faults':
      return `${faultsCounted(problem.count)} ${problem.faults.map(faultSentence).join(' ')}`;
    case 'file-not-a-job':
      return `The file is not a job file: ${problem.detail}`;
    case 'file-not-written':
      return `${problem.fileName} could not be written there. Choose another folder, or make room on the disk.`;
    case 'not-found':
      return `That ${problem.what} is not in the shop file any more. Go back to the list.`;
    case 'quote-not-complete':
      return `This quote is not the price of the job: ${problem.lacks === 1 ? 'one figure is' : `${problem.lacks} figures are`} missing. Mend what the estimate names, make the quote again, and send that.`;
    case 'changed-elsewhere':
      return `The ${problem.what} was changed in another window. Open it again to go on from there.`;
    case 'shop-file-in-use':
      return 'The shop file is open in another Eavewright. Use that one, or close it and start again.';
    case 'shop-file-newer':
      return 'The shop file was written by a newer Eavewright and was left as it is. Start the newer program.';
    case 'shop-file-not-ours':
      return 'That file is not an Eavewright shop file and was left as it is. Choose another.';
    case 'shop-file-damaged':
      return 'The shop file is damaged and was left as it is. Restore a backup copy and start again.';
    case 'shop-file-read-only':
      return 'The shop file cannot be written here. Move it to a folder you may write in.';
    case 'disk-full':
      return 'The disk is full. What was saved before is safe; make room and the next change is saved.';
    case 'prices':
      return priceSentence(problem.fault);
    case 'offer':
      return offerSentence(problem.fault);
    case 'costs':
      return costSentence(problem.fault);
    case 'billing':
      return billingSentence(problem.fault);
    case 'not-here':
      return `${problem.what} is not possible in this window.`;
    case 'internal':
      return 'Something went wrong inside the program. Your saved work is safe; try again.';
    default:
      return assertNever(problem);
  }
}

function offWall({ end, wallIn }: Extract<Problem, { code: 'rafter-past-wall' }>): string {
  return end === 'left'
    ? 'does not stand on the wall: it reaches past the left end, station 0. Check the reading, its thickness, and what the tape was read to.'
    : `does not stand on the wall of ${formatLength(wallIn)}: it reaches past the right end. Check the reading or the wall length.`;
}

function withStop(detail: string): string {
  return /[.!?]$/.test(detail) ? detail : `${detail}.`;
}

function wayOut({ use, middleIn }: Extract<Problem, { code: 'piece-longer-than-stock' }>): string {
  const longer = 'add a longer length to the price list';
  switch (use) {
    case 'fascia':
    case 'sub-fascia':
    case 'ledger':
      return middleIn === undefined
        ? `Set a tail in the gap under it, or ${longer}.`
        : `Set a tail in the gap at ${formatLength(middleIn)}, or ${longer}.`;
    case 'block':
      return `Leave its bay open in Design, or ${longer}.`;
    case 'header':
      return `Set its tail elsewhere in Design, or ${longer}.`;
    case 'lookout':
      return `Shorten the rake's overhang, or ${longer}.`;
    case 'ladder':
    case 'barge':
    case 'rake-fascia':
      return `Lower the largest spacing at the rake, so that it can be jointed on one more, or ${longer}.`;
    case 'extender':
    case 'filler':
    case 'shim':
    case 'packer':
    case 'soffit-nailer':
    case undefined:
      return 'Add a longer length to the price list, or shorten the overhang or backspan.';
    default:
      return assertNever(use);
  }
}

function lengthSentence(typed: string, reason: LengthReason): string {
  switch (reason) {
    case 'empty':
      return 'Enter a length, like 5\' 6-1/2" or 66-1/2.';
    case 'negative':
      return `"${typed}" is below zero. Enter a length of zero or more.`;
    case 'ambiguous-dash':
      return `"${typed}" can be read two ways. Write feet with a mark, like 5' 6", or a fraction, like 5-1/2.`;
    case 'inches-over-12':
      return `"${typed}" has 12 inches or more after the feet. Write the inches alone, or carry them into the feet.`;
    case 'fraction-over-1':
      return `"${typed}" has a fraction of 1 or more. Carry it into the inches.`;
    case 'denominator':
      return `"${typed}" has a fraction that no tape shows. Use halves, quarters, eighths, sixteenths, 32nds or 64ths.`;
    case 'form':
      return `"${typed}" is not a length. Write it like 5' 6-1/2", 66-1/2, 5-6-8/16 or 1690 mm.`;
    default:
      return assertNever(reason);
  }
}

function tailSentence(problem: Extract<Problem, { code: 'tail-out-of-reach' }>): string {
  const then = {
    'rises-outward': 'would no longer fall outward',
    'too-steep': 'would fall steeper than 24/12',
    'too-far': 'would stand more than a foot out of its place',
  }[problem.steepness];
  const measure =
    problem.furthestRafter === problem.rafter
      ? 'Measure its'
      : `Rafter ${problem.furthestRafter} lies furthest off, ${upOrDown(problem.furthestLiftIn)}: measure its`;
  return `${problem.eave}, rafter ${problem.rafter}: its tail would have to come ${upOrDown(problem.liftIn)} to the fascia line, and the new piece ${then}. ${measure} pitch and height above plate again, or choose As found for the fascia line in Design, so that each tail follows its own rafter.`;
}

function upOrDown(liftIn: number): string {
  return `${liftIn < 0 ? 'down' : 'up'} ${formatLength(Math.abs(liftIn))}`;
}

/**
 * The sentence for one fault of a file, with the entry that it stands at.
 * @returns e.g. `Survey, eave 1, rafter 4, reading: "2 cubits" is not a length. ...`.
 */
export function faultSentence(fault: Problem): string {
  const sentence = problemSentence(fault);
  return fault.field === undefined || fault.code === 'entry-invalid'
    ? sentence
    : `${entryName(fault.field)}: ${sentence}`;
}

/** How many entries of a file cannot be read, e.g. `2 entries of the file cannot be read.` */
export function faultsCounted(count: number): string {
  return `${count} ${count === 1 ? 'entry' : 'entries'} of the file cannot be read.`;
}

/** No bound is said as one: a blank, or the largest whole number that a machine counts by. */
function rangeWords(least: string, most: string): string {
  if (isNoBound(most)) return `${least} or more`;
  return isNoBound(least) ? `${most} or less` : `${least} to ${most}`;
}

function isNoBound(bound: string): boolean {
  return bound === '' || bound === String(Number.MAX_SAFE_INTEGER);
}

function csvColumnsSentence(missing: readonly string[], unknown: readonly string[]): string {
  const parts: string[] = [];
  if (missing.length > 0) parts.push(`Missing: ${missing.join(', ')}.`);
  if (unknown.length > 0) parts.push(`Not known: ${unknown.map(columnWords).join(', ')}.`);
  return `The columns of the price list do not fit. ${parts.join(' ')} Nothing was imported; export the list to see the columns.`;
}

function columnWords(name: string): string {
  return name.trim() === '' ? 'a column without a name' : shortened(name);
}
