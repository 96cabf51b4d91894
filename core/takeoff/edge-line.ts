import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import type { JobInput } from '../job/job-file.ts';
import { dripEdgeLapIn, dripEdgePieces, edgeOffer, edgePieceIn } from './drip-edge.ts';
import { hundredths, sumDecimals } from './quantities.ts';
import type { CoveredRake } from './rake-cover.ts';
import { rakeLengthIn } from './rake-quantities.ts';
import { counted, eaveLabel, rakeLabel, whereLabels, type EaveToTakeOff } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/**
 * The drip edge along every eave and up every rake that has one: net running feet, and the whole pieces with their laps.
 * At a rake it goes on over the underlayment, at an eave under it (IRC R905.2.8.5, as seen in transcription).
 * @param eaves - the eaves in order.
 * @param input - for the piece length on the price list. [in]
 * @param rakes - the rakes in order.
 * @returns one line, or none where nothing wants drip edge.
 */
export function edgeLines(
  eaves: readonly EaveToTakeOff[],
  input: JobInput,
  rakes: readonly CoveredRake[] = [],
): readonly TakeoffLine[] {
  const item = edgeOffer(input)?.item;
  const pieceIn = edgePieceIn(item);
  const runs = [
    ...eaves
      .filter(({ design, layout }) => design.dripEdge && layout.fasciaLengthIn > 0)
      .map(({ layout }) => ({
        label: eaveLabel(layout),
        runIn: layout.fasciaLengthIn,
        note: '',
        ref: `eave/${layout.eaveId}/lengthIn`,
      })),
    ...rakes
      .filter(({ design }) => design.dripEdge)
      .map(({ rake }) => ({
        label: rakeLabel(rake),
        runIn: rakeLengthIn(rake),
        note: ', over the underlayment',
        ref: `rake/${rake.rakeId}/barge`,
      })),
  ].map((run) => ({
    ...run,
    feet: hundredths(run.runIn / 12),
    pieces: dripEdgePieces(run.runIn, pieceIn),
  }));
  if (runs.length === 0) return [];
  const pieces = runs.reduce((sum, run) => sum + run.pieces, 0);
  const lengthIn = runs.reduce((sum, run) => sum + run.runIn + dripEdgeLapIn * (run.pieces - 1), 0);
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
      where: whereLabels(runs.map(({ label, feet }) => ({ label, amount: `${feet} LF` }))),
      madeOf: runs.map(({ label, note, feet, pieces: here, ref }) => ({
        label: `${label}: ${feet} LF in ${counted(here, 'piece')}${note}, each lap ${dripEdgeLapIn}" (IRC R905.2.8.5)`,
        value: counted(here, 'piece'),
        ref,
      })),
      need: { kind: 'edge', lengthIn, pieces },
    },
  ];
}
