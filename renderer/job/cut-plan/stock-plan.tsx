import type { CutPlan, CuttingProblem } from '../../../core/cutting/cut-plan-types.ts';
import { thumbPurchase } from '../../../core/cutting/thumb-rule.ts';
import {
  buyList,
  comparisonSentences,
  howProven,
  onHandList,
  pinSentences,
  proofSentence,
} from '../../../core/documents/plan-words.ts';
import { sawOf } from '../../../core/job/saw-of.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { usdOfCents } from '../../../core/cutting/with-bound.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';
import { BoardBar } from './board-bar.tsx';
import { PinBoard, withPins } from './pin-board.tsx';

/** One lumber's plan: what to buy, what is known of its cost, what simpler ways cost, and each board drawn. */
export function StockPlan(props: { readonly plan: CutPlan; readonly problem: CuttingProblem | undefined }) {
  const { plan, problem } = props;
  const { computation } = useJob();
  const cutting = computation.good?.input.settings.cutting;
  if (cutting === undefined) return null;
  const saw = sawOf(cutting, plan.stock);
  const longest = Math.max(...plan.boards.map((board) => board.lengthSixteenths));
  const waste = cutting.thumbWastePercent;
  const thumb = problem === undefined ? null : thumbPurchase(problem, plan, waste);
  return (
    <Panel
      title={`${plan.group}: ${plan.boards.length} ${plan.boards.length === 1 ? 'board' : 'boards'}, ${formatUsd(plan.costUsd)}`}
      look="flush"
      actions={<OldMark />}
    >
      <div className="plan-facts">
        <p className="plan-buy">
          <Said text={buyWords(plan)} />
        </p>
        <p>
          <Said text={proofSentence(plan)} />
        </p>
        <details className="plan-proof">
          <summary>How this is known</summary>
          <p>
            <Said text={howProven(plan)} />
          </p>
          <Worths plan={plan} />
        </details>
        {comparisonSentences(plan, thumb, waste).map((sentence) => (
          <p key={sentence}>
            <Said text={sentence} />
          </p>
        ))}
        <UnmetPins plan={plan} />
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
              Cut from the left, crown edge up; lengths to scale, hatched is left over, grey is saw and trim
            </th>
            <th scope="col" className="align-right">
              Left over
            </th>
            <th scope="col">
              <span className="visually-hidden">Pin</span>
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
                {board.onHand ? <span className="tag">on hand</span> : null}
              </td>
              <td className="align-right">{formatUsd(usdOfCents(board.priceCents))}</td>
              <td className="board-cell">
                <BoardBar board={board} longestSixteenths={longest} saw={saw} />
              </td>
              <td className="align-right">{formatLength(inchesOf(board.offcutSixteenths))}</td>
              <td>
                <PinBoard board={board} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Panel>
  );
}

function buyWords(plan: CutPlan): string {
  const [bought, onHand] = [buyList(plan), onHandList(plan)];
  return [
    bought === '' ? 'Buy nothing.' : `Buy ${bought}.`,
    ...(onHand === '' ? [] : [`Take ${onHand} from what is on hand.`]),
  ].join(' ');
}

/** The worths behind a bound in whole numbers, each length once; with them anyone can reckon the bound again. */
function Worths({ plan }: { readonly plan: CutPlan }) {
  const { certificate, boards } = plan;
  if (certificate === null || certificate.worths.length === 0) return null;
  const counts = new Map<string, number>();
  for (const { lengthSixteenths, slantSixteenths = 0 } of boards.flatMap(({ items }) => items)) {
    const key = `${lengthSixteenths}/${slantSixteenths}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return (
    <table className="table worth-table">
      <caption>Worth of each length of piece</caption>
      <thead>
        <tr>
          <th scope="col" className="align-right">
            Length
          </th>
          <th scope="col" className="align-right">
            Pieces
          </th>
          <th scope="col" className="align-right">
            Worth of one
          </th>
        </tr>
      </thead>
      <tbody>
        {certificate.worths.map(({ lengthSixteenths, slantSixteenths, parts }) => (
          <tr key={`${lengthSixteenths}/${slantSixteenths}`}>
            <td className="align-right">{formatLength(inchesOf(lengthSixteenths))}</td>
            <td className="align-right">{counts.get(`${lengthSixteenths}/${slantSixteenths}`) ?? 0}</td>
            <td className="align-right">${(parts / 2 ** 20 / 100).toFixed(4)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Pins that cannot be kept, with the reason, and the way to let them go. */
function UnmetPins({ plan }: { readonly plan: CutPlan }) {
  const { editor } = useJob();
  if (plan.unmetPins.length === 0) return null;
  const unmet = new Set(plan.unmetPins.map(({ pin }) => JSON.stringify([pin.itemId, pin.marks])));
  return (
    <>
      {pinSentences(plan).map((sentence) => (
        <p key={sentence} className="plan-care">
          <Said text={sentence} />
        </p>
      ))}
      <Button
        onPress={() =>
          editor.change('letting pins go that cannot be kept', (now) =>
            withPins(
              now,
              now.design.cutting.pins.filter(
                ({ itemId, marks }) => !unmet.has(JSON.stringify([itemId, marks])),
              ),
            ),
          )
        }
      >
        Let these pins go
      </Button>
    </>
  );
}
