import { problemSentence } from '../../../core/problems/sentence.ts';
import { billSums } from '../../../core/documents/invoice-sheet.ts';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { decimalText, usd } from '../../../core/units/money.ts';
import { problemOf } from '../../host/queries.ts';
import { dollars } from '../../kit/amounts.ts';

type Figures = CommandOutput<'billing.preview'>;

/** What the bill comes to, line by line as its paper will say, or why it cannot be issued. */
export function BillPreview(props: {
  readonly figures: Figures | undefined;
  readonly error: Error | null;
  readonly isBlank: boolean;
}) {
  const { figures, error, isBlank } = props;
  const problem = problemOf(error);
  return (
    <section className="bill-preview" aria-label="What it comes to" aria-live="polite">
      <h3>What it comes to</h3>
      {isBlank ? <p className="muted">Enter what is billed.</p> : null}
      {problem === undefined ? null : <p className="field-problem">{problemSentence(problem)}</p>}
      {figures === undefined || problem !== undefined ? null : <Sums figures={figures} />}
    </section>
  );
}

function Sums({ figures }: { readonly figures: Figures }) {
  return (
    <>
      <table className="table">
        <caption className="visually-hidden">The contract and this bill</caption>
        <tbody>
          <Line label="Quote as accepted" amount={figures.quotedUsd} />
          {figures.changes.map(({ number, description, priceUsd }) => (
            <Line key={number} label={description} amount={priceUsd} />
          ))}
          <Line label="Contract as it stands" amount={figures.revisedUsd} look="sum" />
          {billSums(sumsOf(figures)).map(([label, amount, style]) => (
            <Line
              key={label}
              label={label}
              amount={amount}
              look={style === 'total' ? 'total' : style === undefined ? undefined : 'sum'}
            />
          ))}
        </tbody>
      </table>
      <p className="muted">Left of the contract after it: {dollars(figures.balanceToFinishUsd)}</p>
    </>
  );
}

function Line(props: {
  readonly label: string;
  readonly amount: string;
  readonly look?: 'sum' | 'total' | undefined;
}) {
  return (
    <tr className={props.look === undefined ? undefined : `bill-${props.look}`}>
      <th scope="row">{props.label}</th>
      <td className="align-right">{dollars(props.amount)}</td>
    </tr>
  );
}

/** Figures as they cross the bridge, as the paper takes them. */
function sumsOf(figures: Figures): Parameters<typeof billSums>[0] {
  return {
    kind: figures.kind,
    stage: figures.stage,
    retainagePercent: decimalText(figures.retainagePercent),
    workToDateUsd: usd(figures.workToDateUsd),
    retainedUsd: usd(figures.retainedUsd),
    depositBeforeUsd: usd(figures.depositBeforeUsd),
    billedBeforeUsd: usd(figures.billedBeforeUsd),
    amountUsd: usd(figures.amountUsd),
    taxUsd: usd(figures.taxUsd),
    totalUsd: usd(figures.totalUsd),
  };
}
