import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { stockGroup, stockKey } from '../cutting/stock-group.ts';
import { hundredths } from './quantities.ts';
import { counted, eaveLabel, idPart, rakeLabel, whereLabels, type EaveToTakeOff } from './takeoff-context.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { Phase } from '../eave/design-document.ts';
import type { Piece, TakeoffLine } from './takeoff-types.ts';

const uses: readonly {
  readonly use: Piece['use'];
  readonly id: string;
  readonly name: string;
  readonly phase: Phase;
  readonly clientWording: string;
}[] = [
  {
    use: 'extender',
    id: 'extenders',
    name: 'Extenders',
    phase: 'Framing',
    clientWording: 'Lumber for the new rafter extensions that carry the overhang',
  },
  {
    use: 'block',
    id: 'blocks',
    name: 'Blocks',
    phase: 'Framing',
    clientWording: 'Lumber for blocking between the rafters at the wall',
  },
  {
    use: 'fascia',
    id: 'fascia',
    name: 'Fascia',
    phase: 'Fascia and trim',
    clientWording: 'Fascia boards along the new eave edge',
  },
  {
    use: 'lookout',
    id: 'lookouts',
    name: 'Lookouts',
    phase: 'Framing',
    clientWording: 'Lumber for the framing that carries the overhang at the gable',
  },
  {
    use: 'ladder',
    id: 'ladder',
    name: 'Ladder rails and rungs',
    phase: 'Framing',
    clientWording: 'Lumber for the framing that carries the overhang at the gable',
  },
  {
    use: 'barge',
    id: 'barge',
    name: 'Barge rafters',
    phase: 'Framing',
    clientWording: 'Lumber for the outer rafters at the gable',
  },
  {
    use: 'rake-fascia',
    id: 'rake-fascia',
    name: 'Rake fascia',
    phase: 'Fascia and trim',
    clientWording: 'Fascia boards along the gable edge',
  },
];

/**
 * One line for each use and stock of the pieces. Extenders and blocks are counted in pieces; fascia in running feet
 * net of waste, rounded to hundredths half up. Boards to buy come later, from the cut plan.
 * @param pieces - every piece of the job. [1/16 in]
 * @param eaves - the eaves they belong to, in order.
 * @param rakes - the rakes they belong to, in order.
 * @returns lines such as `extenders-2x6-No.2`, 29 pieces.
 */
export function lumberLines(
  pieces: readonly Piece[],
  eaves: readonly EaveToTakeOff[],
  rakes: readonly RakeLayout[] = [],
): readonly TakeoffLine[] {
  return uses.flatMap(({ use, id, name, phase, clientWording }) => {
    const ofUse = pieces.filter((piece) => piece.use === use);
    const byStock = Map.groupBy(ofUse, (piece) => stockKey(piece.stock));
    return [...byStock.values()].flatMap((ofStock): readonly TakeoffLine[] => {
      const stock = ofStock[0]?.stock;
      if (stock === undefined) return [];
      const stockText = stockGroup(stock);
      const feet = runningFeet(ofStock);
      const byFeet = use === 'fascia' || use === 'rake-fascia';
      const line: TakeoffLine = {
        id: `${id}-${idPart(stockText)}`,
        kind: 'lumber',
        phase,
        description: byFeet
          ? `${name} ${stockText}, ${counted(ofStock.length, 'piece')}`
          : `${name} ${stockText}, ${feet} LF net`,
        clientWording,
        quantity: decimalText(byFeet ? feet : ofStock.length),
        unit: byFeet ? 'LF' : 'pieces',
        taxable: true,
        where: whereLabels(
          [
            ...eaves.map(({ layout }) => ({
              label: eaveLabel(layout),
              here: ofStock.filter(({ eaveId, rakeId }) => eaveId === layout.eaveId && rakeId === undefined),
            })),
            ...rakes.map((rake) => ({
              label: rakeLabel(rake),
              here: ofStock.filter(({ rakeId }) => rakeId === rake.rakeId),
            })),
          ]
            .filter(({ here }) => here.length > 0)
            .map(({ label, here }) => ({
              label,
              amount: byFeet ? `${runningFeet(here)} LF` : String(here.length),
            })),
        ),
        madeOf: ofStock.map((piece) => ({
          label: `${piece.mark}: ${piece.cuts}`,
          value: formatLength(inchesOf(piece.lengthSixteenths)),
          ref: `piece/${piece.mark}`,
        })),
        need: { kind: 'lumber', stock, marks: ofStock.map((piece) => piece.mark) },
      };
      return [line];
    });
  });
}

function runningFeet(pieces: readonly Piece[]): string {
  return hundredths(pieces.reduce((sum, piece) => sum + piece.lengthSixteenths, 0) / 192);
}
