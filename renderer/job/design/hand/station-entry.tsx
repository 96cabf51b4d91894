import type { EaveLayout, Extender } from '../../../../core/layout/layout-types.ts';
import type { Problem } from '../../../../core/problems/problem.ts';
import { shortened } from '../../../../core/problems/shortened.ts';
import { fail, type Result } from '../../../../core/result.ts';
import { formatLength } from '../../../../core/units/format-length.ts';
import { parseLength } from '../../../../core/units/parse-length.ts';
import { SettledField } from '../../../fields/settled-field.tsx';
import { useKeptDrafts } from '../../../host/kept-drafts.ts';
import type { DropPlace } from '../../editor/drop-place.ts';
import { useJob } from '../../job-context.ts';
import { useTailHand } from './tail-hand.ts';
import { moveTo, placeAtStation, thicknessOf } from './tail-moves.ts';
import { useTailMoves } from './use-tail-moves.ts';

/** The station of a tail, to be typed: as the entry is left the tail moves there, beside a rafter or hung. */
export function StationEntry(props: { readonly tail: Extender; readonly look?: 'cell' | undefined }) {
  const { tail } = props;
  const { jobId } = useJob();
  const { eaveId } = useTailHand();
  const { tails, go } = useTailMoves();
  const drafts = useKeptDrafts(`tails/${jobId}/${eaveId}`);
  if (tails === null) return null;
  return (
    <SettledField
      label={props.look === 'cell' ? `Station of ${tail.mark}` : 'Station'}
      labelHidden={props.look === 'cell'}
      look={props.look}
      text={formatLength(tail.centreIn)}
      draft={drafts.get(tail.id)}
      onDraft={(draft) => drafts.set(tail.id, draft)}
      read={(text) => readPlace(text, tails.layout, tail)}
      onTake={(place) => go(moveTo(tails, tail, place))}
      isDisabled={tail.inPlace}
    />
  );
}

function readPlace(text: string, layout: EaveLayout, tail: Extender): Result<DropPlace, Problem> {
  const leastIn = thicknessOf(tail) / 2;
  const read = readStation(text, leastIn, layout.wallLengthIn - leastIn);
  return read.ok ? placeAtStation(layout, tail, read.value) : read;
}

/**
 * Reads a station along a wall.
 * @param leastIn - the first that it may be. [in]
 * @param mostIn - the last that it may be. [in]
 */
export function readStation(text: string, leastIn: number, mostIn: number): Result<number, Problem> {
  const read = parseLength(text);
  if (!read.ok || (read.value >= leastIn - 1e-6 && read.value <= mostIn + 1e-6)) return read;
  return fail({
    code: 'out-of-range',
    what: shortened(text.trim()),
    least: formatLength(leastIn),
    most: formatLength(mostIn),
  });
}
