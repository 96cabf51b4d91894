import type { CutPlan } from '../../../core/cutting/cut-plan-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, usd } from '../../../core/units/money.ts';
import { inchesOf, nearestSixteenth } from '../../../core/units/sixteenths.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';
import { BoardBar } from './board-bar.tsx';
import { buyList, planSentences } from './plan-words.ts';

/** One lumber's plan: what to buy, what it costs against the least that it could, and each board drawn. */
export function StockPlan({ plan }: { readonly plan: CutPlan }) {
  const { computation } = useJob();
  const cutting = computation.good?.input.settings.cutting;
  const longest = Math.max(...plan.boards.map((board) => board.lengthSixteenths));
  return (
    <Panel
      title={`${plan.group}: ${plan.boards.length} ${plan.boards.length === 1 ? 'board' : 'boards'}, ${formatUsd(plan.costUsd)}`}
      look="flush"
      actions={<OldMark />}
    >
      <div className="plan-facts">
        <p className="plan-buy">
          <Said text={`Buy ${buyList(plan)}.`} />
        </p>
        {planSentences(plan).map((sentence) => (
          <p key={sentence}>
            <Said text={sentence} />
          </p>
        ))}
      </div>
      <table className="table board-table">
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
            <th scope="col" className="board-cell">
              Cut from it, from the left in the order of the saw; lengths to scale, hatched is left over
            </th>
            <th scope="col" className="align-right">
              Left over
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.boards.map((board) => (
            <tr key={board.number}>
              <th scope="row">{board.number}</th>
              <td className="align-right">
                <Figure
                  refText={`board/${plan.group}/${board.number}`}
                  what={`Board ${board.number} of ${plan.group}`}
                >
                  {formatLength(inchesOf(board.lengthSixteenths))}
                </Figure>
              </td>
              <td className="align-right">{formatUsd(usd(board.priceCents / 100))}</td>
              <td className="board-cell">
                <BoardBar
                  board={board}
                  longestSixteenths={longest}
                  endTrimSixteenths={nearestSixteenth(cutting?.endTrimIn ?? 0)}
                  kerfSixteenths={nearestSixteenth(cutting?.kerfIn ?? 0)}
                />
              </td>
              <td className="align-right">{formatLength(inchesOf(board.offcutSixteenths))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Panel>
  );
}
