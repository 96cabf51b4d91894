import { useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';
import type { EaveLayout, Extender } from '../../../../core/layout/layout-types.ts';
import type { Problem } from '../../../../core/problems/problem.ts';
import { problemSentence } from '../../../../core/problems/sentence.ts';
import { shortened } from '../../../../core/problems/shortened.ts';
import { fail, ok, type Result } from '../../../../core/result.ts';
import { formatLength } from '../../../../core/units/format-length.ts';
import { parseLength } from '../../../../core/units/parse-length.ts';
import { useKeptDrafts } from '../../../host/kept-drafts.ts';
import type { DropPlace } from '../../editor/drop-place.ts';
import { useJob } from '../../job-context.ts';
import { Said } from '../../parts/said.tsx';
import { moveTo, placeAtStation, thicknessOf } from './tail-moves.ts';
import { useTailHand } from './tail-hand.ts';
import { useTailMoves } from './use-tail-moves.ts';

/**
 * The station of a tail, to be typed: it moves there as the entry is left or Enter is pressed, beside a rafter or hung.
 * What does not read stays as it was typed; Escape lets go of it.
 */
export function StationEntry(props: { readonly tail: Extender; readonly look?: 'cell' | undefined }) {
  const { tail } = props;
  const { jobId } = useJob();
  const { eaveId } = useTailHand();
  const { tails, go } = useTailMoves();
  const drafts = useKeptDrafts(`tails/${jobId}/${eaveId}`);
  const [isLeft, setLeft] = useState(true);
  const draft = drafts.get(tail.id);
  if (tails === null) return null;
  const read = draft === null ? null : readStation(draft, tails.layout, tail);
  const problem = read === null || read.ok || !isLeft ? null : read.problem;
  const settle = (): void => {
    setLeft(true);
    if (read?.ok !== true) return;
    drafts.set(tail.id, null);
    go(moveTo(tails, tail, read.value));
  };
  const label = `Station of ${tail.mark}`;
  return (
    <TextField
      className={`field entry station-entry ${props.look === 'cell' ? 'entry-cell' : ''}`}
      value={draft ?? formatLength(tail.centreIn)}
      onChange={(text) => {
        setLeft(false);
        drafts.set(tail.id, text);
      }}
      onBlur={settle}
      isInvalid={problem !== null}
      isDisabled={tail.inPlace}
      {...(props.look === 'cell' ? { 'aria-label': label } : {})}
    >
      {props.look === 'cell' ? null : <Label className="field-label">Station</Label>}
      <div className="field-box">
        <Input
          className="field-input numeric"
          autoComplete="off"
          spellCheck={false}
          maxLength={200}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') drafts.set(tail.id, null);
          }}
        />
      </div>
      <FieldError className="field-problem">
        {problem === null ? '' : <Said text={problemSentence(problem)} />}
      </FieldError>
    </TextField>
  );
}

function readStation(text: string, layout: EaveLayout, tail: Extender): Result<DropPlace, Problem> {
  const read = parseLength(text);
  if (!read.ok) return read;
  const leastIn = thicknessOf(tail) / 2;
  const mostIn = layout.wallLengthIn - leastIn;
  if (read.value < leastIn - 1e-6 || read.value > mostIn + 1e-6)
    return fail({
      code: 'out-of-range',
      what: shortened(text.trim()),
      least: formatLength(leastIn),
      most: formatLength(mostIn),
    });
  const found = placeAtStation(layout, tail, read.value);
  return 'place' in found ? ok(found.place) : fail(found.problem);
}
