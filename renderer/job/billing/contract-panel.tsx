import { FileText } from 'lucide-react';
import { Decimal } from 'decimal.js';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { BillBar } from './bill-bar.tsx';
import { type Billing, signedDollars } from './billing-words.ts';
import { saveStatement } from './save-paper.ts';
import { dollars } from '../../kit/amounts.ts';

type Summary = NonNullable<Billing['summary']>;

/** The contract at a glance: what was agreed, what is billed, held back and paid, what is still to bill and owed. */
export function ContractPanel({
  billing,
  summary,
}: {
  readonly billing: Billing;
  readonly summary: Summary;
}) {
  const { jobId, surroundings } = useJob();
  const pastUsd = (['1-30', '31-60', '61-90', 'over-90'] as const)
    .reduce((sum, age) => sum.plus(summary.aged[age] ?? 0), new Decimal(0))
    .toFixed(2);
  const balance = Number(summary.balanceUsd);
  const approved = billing.changeOrders.filter(({ state }) => state === 'approved').length;
  return (
    <Panel
      title="Contract at a glance"
      look="flush"
      actions={
        <Button
          tone="quiet"
          icon={<FileText size={14} aria-hidden="true" />}
          onPress={() => void saveStatement(jobId, surroundings.settings.paperSize)}
        >
          Statement of the client as PDF
        </Button>
      }
    >
      <dl className="money-facts">
        <Fact name="Quote as accepted" amount={dollars(summary.quotedUsd)} says="before tax" />
        <Fact
          name="Approved changes"
          amount={signedDollars(summary.changesUsd)}
          says={approved === 1 ? 'one change order' : `${approved} change orders`}
        />
        <Fact name="Contract as it stands" amount={dollars(summary.revisedUsd)} says="before tax" isMain />
        <Fact
          name="Billed"
          amount={dollars(summary.billedUsd)}
          says={Number(summary.taxUsd) === 0 ? 'before tax' : `and ${dollars(summary.taxUsd)} of tax`}
        />
        <Fact name="Held back" amount={dollars(summary.retainedUsd)} says="comes with the final bill" />
        <Fact
          name="Still to bill"
          amount={dollars(summary.toBillUsd)}
          says="what is held back is in it"
          isMain
        />
        <Fact name="Paid" amount={dollars(summary.paidUsd)} says="tax in it" />
        <Fact
          name={balance < 0 ? 'Paid ahead' : 'Owed'}
          amount={dollars(new Decimal(summary.balanceUsd).abs().toFixed(2))}
          says={
            balance < 0
              ? 'kept for the next bill'
              : Number(pastUsd) > 0
                ? `${dollars(pastUsd)} past its day`
                : 'nothing past its day'
          }
          isMain
        />
      </dl>
      <BillBar summary={summary} />
    </Panel>
  );
}

function Fact(props: {
  readonly name: string;
  readonly amount: string;
  readonly says: string;
  readonly isMain?: boolean;
}) {
  return (
    <div className={props.isMain === true ? 'money-fact money-fact-main' : 'money-fact'}>
      <dt>{props.name}</dt>
      <dd>
        <b>{props.amount}</b>
        <span className="muted">{props.says}</span>
      </dd>
    </div>
  );
}
