import { useMemo, useState } from 'react';
import type { Board, CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { drawBoards } from '../../../core/drawings/draw-boards.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../core/units/money.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { DrawingView } from '../../drawings/drawing-view.tsx';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { Figure } from '../parts/figure.tsx';
import { buyList, planSentences } from './plan-words.ts';

/** Boards that are drawn at once; more are a press away. */
const drawnAtOnce = 12;

/** One lumber's plan: what to buy, what it costs against the least that it could, and each board drawn. */
export function StockPlan({ plan }: { readonly plan: CutPlan }) {
  const { computation, walkBack } = useJob();
  const [all, setAll] = useState(false);
  const cutting = computation.good?.input.settings.cutting;
  const boards = all ? plan.boards : plan.boards.slice(0, drawnAtOnce);
  const drawing = useMemo(
    () =>
      drawBoards(plan, boards, {
        endTrimIn: cutting?.endTrimIn ?? 0,
        kerfIn: cutting?.kerfIn ?? 0,
      }),
    [plan, boards, cutting],
  );
  return (
    <Panel
      title={`${plan.group}: ${plan.boards.length} ${plan.boards.length === 1 ? 'board' : 'boards'}, ${formatUsd(plan.costUsd)}`}
      look="flush"
    >
      <div className="plan-facts">
        <p className="plan-buy">Buy {buyList(plan)}.</p>
        {planSentences(plan).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <DrawingView
        drawing={drawing}
        heightPx={520}
        onRef={walkBack}
        beside={
          boards.length < plan.boards.length ? (
            <Button tone="quiet" onPress={() => setAll(true)}>
              {`Draw all ${plan.boards.length} boards`}
            </Button>
          ) : null
        }
      />
      <table className="table">
        <caption className="visually-hidden">Boards of {plan.group}</caption>
        <thead>
          <tr>
            <th scope="col">Board</th>
            <th scope="col" className="align-right">
              Length
            </th>
            <th scope="col" className="align-right">
              Price
            </th>
            <th scope="col">Cut from it, in order</th>
            <th scope="col" className="align-right">
              Left over
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.boards.map((board) => (
            <BoardRow key={board.number} board={board} group={plan.group} />
          ))}
        </tbody>
      </table>
    </Panel>
  );
}

function BoardRow({ board, group }: { readonly board: Board; readonly group: string }) {
  return (
    <tr>
      <th scope="row">{board.number}</th>
      <td className="align-right">
        <Figure refText={`board/${group}/${board.number}`} what={`Board ${board.number} of ${group}`}>
          {formatLength(inchesOf(board.lengthSixteenths))}
        </Figure>
      </td>
      <td className="align-right">{formatUsd(usd(board.priceCents / 100))}</td>
      <td>
        {board.items.map((item, index) => (
          <span key={item.mark} className="no-wrap">
            {index === 0 ? '' : ', '}
            <Figure refText={`piece/${item.mark}`} what={item.mark}>
              <span aria-hidden="true">{item.mark} </span>
              {formatLength(inchesOf(item.lengthSixteenths))}
            </Figure>
          </span>
        ))}
      </td>
      <td className="align-right">{formatLength(inchesOf(board.offcutSixteenths))}</td>
    </tr>
  );
}
