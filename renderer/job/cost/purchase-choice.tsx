import { Decimal } from 'decimal.js';
import type { Bill, BillLine } from '../../../core/jobcost/cost-entries.ts';
import { usd } from '../../../core/units/money.ts';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import type { Costs } from './cost-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** What the accepted quote buys, to tick off: a ticked line comes in as it was reckoned, to be corrected by the receipt. */
export function PurchaseChoice(props: {
  readonly costs: Costs;
  readonly bill: Bill;
  readonly onChange: (part: Partial<Bill>) => void;
}) {
  const { costs, bill, onChange } = props;
  const toggle = (line: Costs['purchaseLines'][number], isOn: boolean): void => {
    const others = bill.lines.filter(
      ({ costLineId, description, amountUsd }) =>
        costLineId !== line.costLineId && (description !== '' || amountUsd !== ''),
    );
    const lines = isOn ? [...others, boughtLine(line, others, bill.kind)] : others;
    onChange({
      ...(bill.supplier === '' && isOn ? { supplier: line.supplier } : {}),
      ...(lines.length === 0 ? {} : { lines }),
    });
  };
  return (
    <FoldPanel
      title="From the purchase list"
      says={`${costs.purchaseLines.length} things that the accepted quote buys`}
    >
      <div className="purchase-choice">
        <table className="table">
          <caption className="visually-hidden">What the accepted quote buys</caption>
          <tbody>
            {costs.purchaseLines.map((line) => {
              const isOn = bill.lines.some(({ costLineId }) => costLineId === line.costLineId);
              return (
                <tr key={line.costLineId}>
                  <td>
                    <label>
                      <input
                        type="checkbox"
                        checked={isOn}
                        onChange={(event) => toggle(line, event.target.checked)}
                      />{' '}
                      {line.description}
                    </label>
                  </td>
                  <td>{line.supplier}</td>
                  <td className="align-right no-wrap">
                    {line.quantity} {line.unit}
                  </td>
                  <td className="align-right">{dollars(line.costUsd)}</td>
                  <td className="align-right muted no-wrap">
                    {Number(line.boughtUsd) === 0 ? '' : `${dollars(line.boughtUsd)} bought`}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </FoldPanel>
  );
}

/** A line as it is bought; on a return what is paid back stands below zero. */
function boughtLine(
  line: Costs['purchaseLines'][number],
  others: readonly BillLine[],
  kind: Bill['kind'],
): BillLine {
  const numbers = others.map(({ id }) => Number(id.replace('line-', '')) || 0);
  return {
    id: `line-${Math.max(0, ...numbers) + 1}`,
    phase: line.phase,
    kind: 'material',
    description: line.description,
    quantity: line.quantity,
    unit: line.unit,
    amountUsd: usd(new Decimal(line.costUsd).times(kind === 'return' ? -1 : 1)),
    costLineId: line.costLineId,
    itemId: line.itemId,
    notesPrice: false,
  };
}
