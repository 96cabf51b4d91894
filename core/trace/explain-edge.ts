import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { Side } from '../survey/survey-document.ts';
import type { Piece } from '../takeoff/takeoff-types.ts';
import { formatLength } from '../units/format-length.ts';
import { entryValue } from './entry-value.ts';
import type { TracePart } from './trace.ts';

/**
 * What fixes the two ends of a fascia or sub-fascia board: the wall's end and how far it runs past, what the eave meets
 * there, or the tail it is jointed on.
 */
export function edgeParts(piece: Piece, layout: EaveLayout, input: JobInput): readonly TracePart[] {
  const boards = piece.use === 'fascia' ? layout.fascia : layout.subFascia;
  const board = boards.find(({ mark }) => mark === piece.mark);
  const design = input.design.eaves.find(({ eaveId }) => eaveId === layout.eaveId);
  if (board === undefined || design === undefined) return [];
  const endPart = (side: Side): TracePart => {
    const [stationIn, cut] = side === 'left' ? [board.fromIn, board.leftEnd] : [board.toIn, board.rightEnd];
    const name = side === 'left' ? 'Left' : 'Right';
    const tail = layout.extenders.find(({ centreIn }) => Math.abs(centreIn - stationIn) < 1 / 32);
    if ((cut === 'bevel' || cut === 'butt') && tail !== undefined)
      return {
        label: `${name} joint on ${tail.mark}, at ${formatLength(stationIn)}`,
        value:
          tail.method === 'block-hung'
            ? 'hung between rafters'
            : `${tail.side} of rafter ${tail.rafterNumber}`,
        ref: `station/${layout.eaveId}/${tail.method === 'block-hung' ? tail.id : tail.rafterId}`,
      };
    if (design.ends[side].kind !== 'free')
      return {
        label: `${name} end meets`,
        value: entryValue('ends', design.ends[side]),
        ref: `design/${layout.eaveId}/ends.${side}`,
      };
    const past = side === 'left' ? 'pastLeftIn' : 'pastRightIn';
    return {
      label: `Past the ${side} end of the wall`,
      value: formatLength(design.fascia[past]),
      ref: `design/${layout.eaveId}/fascia.${past}`,
    };
  };
  return [
    endPart('left'),
    endPart('right'),
    { label: 'Wall line', value: formatLength(layout.wallLengthIn), ref: `eave/${layout.eaveId}/lengthIn` },
  ];
}
