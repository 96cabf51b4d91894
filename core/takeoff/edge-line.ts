import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import type { JobInput } from '../job/job-file.ts';
import { dripEdgeLapIn, dripEdgePieces, edgeOffer, edgePieceIn } from './drip-edge.ts';
import { hundredths, sumDecimals } from './quantities.ts';
import { counted, eaveLabel, whereText, type EaveToTakeOff } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/**
 * The drip edge along every eave that has one: net running feet, and the whole pieces with their laps.
 * @param eaves - the eaves in order.
 * @param input - for the piece length on the price list. [in]
 * @returns one line, or none where no eave wants drip edge.
 */
export function edgeLines(eaves: readonly EaveToTakeOff[], input: JobInput): readonly TakeoffLine[] {
  const item = edgeOffer(input)?.item;
  const pieceIn = edgePieceIn(item);
  const runs = eaves
    .filter(({ design, layout }) => design.dripEdge && layout.fasciaLengthIn > 0)
    .map(({ layout }) => ({
      layout,
      feet: hundredths(layout.fasciaLengthIn / 12),
      pieces: dripEdgePieces(layout.fasciaLengthIn, pieceIn),
    }));
  if (runs.length === 0) return [];
  const pieces = runs.reduce((sum, run) => sum + run.pieces, 0);
  const lengthIn = runs.reduce(
    (sum, run) => sum + run.layout.fasciaLengthIn + dripEdgeLapIn * (run.pieces - 1),
    0,
  );
  return [
    {
      id: 'drip-edge',
      kind: 'edge',
      phase: 'Sheathing and edge',
      description: `${item?.description ?? 'Drip edge'}, ${counted(pieces, 'piece')} of ${formatLength(pieceIn)}`,
      clientWording: 'Metal drip edge along the new roof edge',
      quantity: decimalText(sumDecimals(runs.map(({ feet }) => feet))),
      unit: 'LF',
      taxable: item?.taxable ?? true,
      where: whereText(runs.map(({ layout, feet }) => ({ layout, amount: `${feet} LF` }))),
      madeOf: runs.map(({ layout, feet, pieces: here }) => ({
        label: `${eaveLabel(layout)}: ${feet} LF in ${counted(here, 'piece')}, each lap ${dripEdgeLapIn}" (IRC R905.2.8.5)`,
        value: counted(here, 'piece'),
        ref: `eave/${layout.eaveId}/lengthIn`,
      })),
      need: { kind: 'edge', lengthIn, pieces },
    },
  ];
}
