import { X } from 'lucide-react';
import type { BoardOnHand } from '../../../core/eave/job-cutting.ts';
import { pieceOfBoard } from '../../../core/stock/stock-piece.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../core/units/money.ts';
import { useAnswer } from '../../host/queries.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { useJob } from '../job-context.ts';

/** A board of the shop's stock that this job has set aside: what it is stands there, and is changed on the rack alone. */
export function StockBoard(props: {
  readonly board: BoardOnHand;
  readonly path: string;
  readonly onRemove: () => void;
}) {
  const { jobId } = useJob();
  const { board } = props;
  const number = pieceOfBoard(board.id);
  const stock = useAnswer('stock.list', { withGone: true });
  const piece = stock.data?.find(({ sequence }) => sequence === number);
  const isElsewhere = piece?.forJob != null && piece.forJob.id !== jobId;
  return (
    <div className="sub-list-row stock-board" data-path={props.path}>
      <span>
        Board {number} of the shop: {`${board.section} ${board.grade}`.trim()}, {formatLength(board.lengthIn)}
        , {formatUsd(usd(board.valueUsd))}
        {piece?.goneOn != null && !isElsewhere ? <span className="tag">used up</span> : null}
        {isElsewhere ? (
          <span className="tag tag-care">set aside for {piece?.forJob?.name}: remove it here</span>
        ) : null}
      </span>
      <IconButton
        label={`Put board ${number} back`}
        icon={<X size={14} aria-hidden="true" />}
        onPress={props.onRemove}
      />
    </div>
  );
}
