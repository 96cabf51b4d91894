import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { onHandIdOf } from '../pricing/boards-on-hand.ts';
import { stockGroup } from '../cutting/stock-group.ts';
import type { Piece, TakeoffLine } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { formatUsd, usd } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { edgeParts } from './explain-edge.ts';
import type { Explanation, TracePart } from './trace.ts';

/** A line of the takeoff. `line/ID` */
export function explainLine(id: string, result: JobResult): Explanation | undefined {
  const line = result.takeoff.lines.find((candidate) => candidate.id === id);
  return line === undefined
    ? undefined
    : {
        ref: `line/${id}`,
        title: line.description,
        value: `${line.quantity} ${line.unit}`,
        how: lineInWords(line),
        parts: line.madeOf,
      };
}

/** A piece to cut. `piece/MARK` */
export function explainPiece(mark: string, input: JobInput, result: JobResult): Explanation | undefined {
  const piece = result.takeoff.pieces.find((candidate) => candidate.mark === mark);
  const layout = result.eaves.find(({ eaveId }) => eaveId === piece?.eaveId);
  if (piece === undefined || layout === undefined) return undefined;
  const rake = result.rakes.find(({ rakeId }) => rakeId === piece.rakeId);
  const length = formatLength(inchesOf(piece.lengthSixteenths));
  return {
    ref: `piece/${mark}`,
    title: `${mark}, ${stockGroup(piece.stock)}, ${rake?.name ?? layout.name}`,
    value: length,
    how: pieceInWords(piece, length),
    parts:
      piece.use === 'fascia' || piece.use === 'sub-fascia'
        ? edgeParts(piece, layout, input)
        : [solvedPart(piece, length)],
  };
}

/** A board to buy, with what is cut from it. `board/GROUP/N` */
export function explainBoard(rest: string, input: JobInput, result: JobResult): Explanation | undefined {
  const cut = rest.lastIndexOf('/');
  const plan = result.cutPlans.find(({ group }) => group === rest.slice(0, cut));
  const board = plan?.boards.find(({ number }) => String(number) === rest.slice(cut + 1));
  if (plan === undefined || board === undefined) return undefined;
  const { cutting } = input.settings;
  const net = board.items.reduce((sum, { lengthSixteenths }) => sum + lengthSixteenths, 0);
  const price = formatUsd(usd(board.priceCents / 100));
  return {
    ref: `board/${rest}`,
    title: `Board ${board.number}, ${plan.group}, ${formatLength(inchesOf(board.lengthSixteenths))}`,
    value: price,
    how: `${board.items.length} ${board.items.length === 1 ? 'piece' : 'pieces'} of ${formatLength(net / 16)} together; left over ${formatLength(inchesOf(board.offcutSixteenths))} once kerf and end trim are taken off.`,
    parts: [
      ...board.items.map(({ mark, lengthSixteenths }) => ({
        label: mark,
        value: formatLength(inchesOf(lengthSixteenths)),
        ref: `piece/${mark}`,
      })),
      board.onHand
        ? {
            label: 'Worth of the board on hand',
            value: price,
            ref: `design/onHand/${onHandIdOf(board.itemId)}`,
          }
        : { label: 'Price of the board', value: price, ref: `price/${board.itemId}` },
      { label: 'Kerf of the saw', value: formatLength(cutting.kerfIn), ref: 'setting/cutting.kerfIn' },
      {
        label: 'Trimmed off each end',
        value: formatLength(cutting.endTrimIn),
        ref: 'setting/cutting.endTrimIn',
      },
    ],
  };
}

function lineInWords(line: TakeoffLine): string {
  const where = line.where === '' ? '' : ` ${line.where}.`;
  switch (line.need.kind) {
    case 'lumber':
      return `Counted piece by piece.${where} Boards to buy follow from the cut plan.`;
    case 'nails':
      return `Counted use by use; with the loss allowance ${line.need.count} nails, ${line.need.pounds} lb, are bought.${where}`;
    case 'sheets':
      return `Ripped from ${line.need.sheets} ${line.need.sheets === 1 ? 'sheet' : 'sheets'}.${where}`;
    case 'planks':
      return `Course by course, ${line.need.lengthFt} ft with waste.${where}`;
    case 'edge':
      return `Bought in ${line.need.pieces} ${line.need.pieces === 1 ? 'piece' : 'pieces'}, laps in.${where}`;
    case 'vents':
      return `As many as the net free area asks for.${where}`;
    case 'labour':
      return `Quantity times hours for one, times what slows the work.${where}`;
    case 'extra':
      return 'Entered by hand.';
    default:
      return '';
  }
}

function pieceInWords(piece: Piece, length: string): string {
  switch (piece.use) {
    case 'extender':
      return `The blank of its section, ${length}: ${piece.cuts}.`;
    case 'block':
      return `The clear bay, rounded down to a sixteenth, ${length}: ${piece.cuts}.`;
    case 'fascia':
      return `From joint to joint, long points included, ${length}: ${piece.cuts}.`;
    default:
      return `${length}: ${piece.cuts}.`;
  }
}

/** What gave a piece its length: its section or bay, and of the parts of a tail what fixed those. */
function solvedPart(piece: Piece, length: string): TracePart {
  if (piece.rakeId !== undefined) return { label: 'Its place at the rake', value: length, ref: piece.ref };
  const ofTail = (kind: string): string => piece.ref.replace(/^section\//, `${kind}/`);
  switch (piece.use) {
    case 'block':
      return { label: 'Its bay', value: length, ref: piece.ref };
    case 'filler':
      return { label: 'The filler', value: length, ref: ofTail('filler') };
    case 'header':
      return { label: 'Between its rafters', value: length, ref: ofTail('header') };
    case 'shim':
    case 'packer':
      return { label: 'How its tail meets the plate', value: length, ref: ofTail('fit') };
    case 'ledger':
    case 'soffit-nailer':
      return { label: 'Its lumber', value: length, ref: piece.ref };
    default:
      return { label: 'Its section', value: length, ref: piece.ref };
  }
}
