import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { stockGroup, stockKey } from '../cutting/stock-group.ts';
import { hundredths } from './quantities.ts';
import { counted, eaveLabel, idPart, rakeLabel, whereLabels, type EaveToTakeOff } from './takeoff-context.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { Method } from '../eave/design-document.ts';
import type { Phase } from '../eave/phases.ts';
import { inPlaceWords } from './tail-pieces.ts';
import type { Piece, TakeoffLine } from './takeoff-types.ts';

const groups: readonly {
  readonly use: Piece['use'];
  /** Of tails: the methods of this line; absent: every piece of the use. */
  readonly methods?: readonly Method[];
  /** Counted in running feet instead of pieces. */
  readonly byFeet?: boolean;
  readonly id: string;
  readonly name: string;
  readonly phase: Phase;
  readonly clientWording: string;
}[] = [
  {
    use: 'extender',
    methods: ['side', 'filler', 'outer-face'],
    id: 'extenders',
    name: 'Extenders',
    phase: 'Framing',
    clientWording: 'Lumber for the new rafter extensions that carry the overhang',
  },
  {
    use: 'extender',
    methods: ['block-hung'],
    id: 'hung-tails',
    name: 'Tails hung between rafters',
    phase: 'Framing',
    clientWording: 'Lumber for new tails hung between the old rafters',
  },
  {
    use: 'extender',
    methods: ['full-length'],
    id: 'whole-rafters',
    name: 'Whole rafters beside old ones',
    phase: 'Framing',
    clientWording: 'Lumber for whole new rafters beside old ones',
  },
  {
    use: 'extender',
    methods: ['end-replacement'],
    id: 'end-rafters',
    name: 'Rafters in the place of end rafters',
    phase: 'Framing',
    clientWording: 'Lumber for new rafters in the place of old ones at the gable',
  },
  {
    use: 'header',
    id: 'headers',
    name: 'Header blocks',
    phase: 'Framing',
    clientWording: 'Lumber for the blocks that carry the hung tails',
  },
  {
    use: 'filler',
    id: 'fillers',
    name: 'Fillers',
    phase: 'Framing',
    clientWording: 'Packing between the old rafters and their new tails',
  },
  {
    use: 'shim',
    id: 'shims',
    name: 'Shims on the plate',
    phase: 'Framing',
    clientWording: 'Shims that bring the new tails to one line',
  },
  {
    use: 'packer',
    id: 'packers',
    name: 'Packers on the plate',
    phase: 'Framing',
    clientWording: 'Packing that lifts the new tails to a flatter pitch',
  },
  {
    use: 'block',
    id: 'blocks',
    name: 'Blocks',
    phase: 'Framing',
    clientWording: 'Lumber for blocking between the rafters at the wall',
  },
  {
    use: 'sub-fascia',
    byFeet: true,
    id: 'sub-fascia',
    name: 'Sub-fascia',
    phase: 'Fascia and trim',
    clientWording: 'Lumber behind the fascia, which keeps it straight',
  },
  {
    use: 'fascia',
    byFeet: true,
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
    byFeet: true,
    id: 'rake-fascia',
    name: 'Rake fascia',
    phase: 'Fascia and trim',
    clientWording: 'Fascia boards along the gable edge',
  },
  {
    use: 'ledger',
    byFeet: true,
    id: 'ledger',
    name: 'Soffit ledger',
    phase: 'Soffit',
    clientWording: 'Lumber that carries the soffit',
  },
  {
    use: 'soffit-nailer',
    id: 'soffit-nailers',
    name: 'Soffit nailers',
    phase: 'Soffit',
    clientWording: 'Lumber that carries the soffit',
  },
];

/**
 * One line for each use and stock of the pieces. Extenders and blocks are counted in pieces; fascia in running feet
 * net of waste, rounded to hundredths half up. What is in place is named and not counted. Boards to buy come later, from
 * the cut plan.
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
  return groups.flatMap(({ use, methods, byFeet = false, id, name, phase, clientWording }) => {
    const ofUse = pieces.filter(
      (piece) => piece.use === use && (methods?.includes(piece.method ?? 'side') ?? true),
    );
    const byStock = Map.groupBy(ofUse, (piece) => stockKey(piece.stock));
    return [...byStock.values()].flatMap((all): readonly TakeoffLine[] => {
      const ofStock = all.filter(({ inPlace }) => inPlace !== true);
      const stock = ofStock[0]?.stock;
      if (stock === undefined) return [];
      const stockText = stockGroup(stock);
      const feet = runningFeet(ofStock);
      const there = inPlaceWords(all);
      const line: TakeoffLine = {
        id: `${id}-${idPart(stockText)}`,
        kind: 'lumber',
        phase,
        description: byFeet
          ? `${name} ${stockText}, ${counted(ofStock.length, 'piece')}${there}`
          : `${name} ${stockText}, ${feet} LF net${there}`,
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
