import { useState } from 'react';
import type { BoardOnHand } from '../../../core/eave/job-cutting.ts';
import { plainWords } from '../../../core/pricing/plain-words.ts';
import { boardIdOf, pieceState, type StockPiece } from '../../../core/stock/stock-piece.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../core/units/money.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { Switch } from '../../kit/switch.tsx';
import { useJob } from '../job-context.ts';

/** Lets him pick boards on the rack for this job; they are set aside once the job is saved. */
export function TakeBoardsDialog(props: {
  /** Ids of boards that the job has already. */
  readonly taken: ReadonlySet<string>;
  readonly onTake: (boards: readonly BoardOnHand[]) => void;
  readonly onClose: () => void;
}) {
  const { good } = useJob().computation;
  const stock = useAnswer('stock.list', {});
  const [picked, setPicked] = useState<ReadonlySet<number>>(new Set());
  const wanted = new Set(
    [...(good?.result.cutPlans ?? []), ...(good?.result.unplanned ?? [])].map((plan) =>
      plainWords(plan.stock.section),
    ),
  );
  const fits = (piece: StockPiece): boolean =>
    pieceState(piece) === 'available' &&
    wanted.has(plainWords(piece.section)) &&
    !props.taken.has(boardIdOf(piece.sequence));
  const take = (): void => {
    props.onTake((stock.data ?? []).filter((piece) => picked.has(piece.sequence)).map(boardOf));
    props.onClose();
  };
  return (
    <Dialog
      title="Boards of the shop for this job"
      isOpen
      onClose={props.onClose}
      actions={
        <>
          <Button tone="main" isDisabled={picked.size === 0} onPress={take}>
            {picked.size === 1 ? 'Take 1 board' : `Take ${picked.size} boards`}
          </Button>
          <Button onPress={props.onClose}>Take none</Button>
        </>
      }
    >
      <Answer query={stock}>
        {(pieces) => {
          const offered = pieces.filter(fits);
          if (offered.length === 0)
            return (
              <p className="muted">
                No board on the rack fits the lumber of this job. Boards are noted under Price list, Boards on
                hand.
              </p>
            );
          return (
            <ul className="take-boards">
              {offered.map((piece) => (
                <li key={piece.id}>
                  <Switch
                    isSelected={picked.has(piece.sequence)}
                    onChange={(isPicked) => {
                      const next = new Set(picked);
                      if (isPicked) next.add(piece.sequence);
                      else next.delete(piece.sequence);
                      setPicked(next);
                    }}
                  >
                    {`${piece.sequence}: ${`${piece.section} ${piece.grade}`.trim()}, ${formatLength(piece.lengthIn)}, ${formatUsd(usd(piece.valueUsd))}${piece.note === '' ? '' : `, ${piece.note}`}`}
                  </Switch>
                </li>
              ))}
            </ul>
          );
        }}
      </Answer>
      <p className="muted">
        The cut plan uses what costs least, so a board that is worth little comes first. A job that is put
        away gives its boards back.
      </p>
    </Dialog>
  );
}

function boardOf(piece: StockPiece): BoardOnHand {
  return {
    id: boardIdOf(piece.sequence),
    section: piece.section,
    grade: piece.grade,
    lengthIn: piece.lengthIn,
    count: 1,
    valueUsd: piece.valueUsd,
  };
}
