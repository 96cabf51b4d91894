import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { useJob } from '../job-context.ts';
import { BillEditor } from './bill-editor.tsx';
import type { Billing } from './billing-words.ts';
import { ChangeEditor } from './change-editor.tsx';
import type { OpenedChange } from './change-form.ts';
import { ChangesPanel } from './changes-panel.tsx';
import { ContractPanel } from './contract-panel.tsx';
import { InvoicesPanel } from './invoices-panel.tsx';
import { PaymentsPanel } from './payments-panel.tsx';
import { useKept } from './use-kept.ts';
import './billing.css';

/** Change orders, invoices and payments of the job. */
export function BillingSection() {
  const { jobId } = useJob();
  const billing = useAnswer('billing.get', { jobId });
  return <Answer query={billing}>{(shown) => <Shown jobId={jobId} billing={shown} />}</Answer>;
}

function Shown({ jobId, billing }: { readonly jobId: string; readonly billing: Billing }) {
  const [change, openChange] = useKept<OpenedChange | null>(`${jobId}/change`, null);
  const [isBilling, setBilling] = useKept(`${jobId}/billing`, false);
  // A form that is opened anew starts anew.
  const [turn, setTurn] = useState(0);
  const { summary } = billing;
  if (summary === null && billing.invoices.length === 0)
    return (
      <EmptyState title="Nothing to bill against yet">
        Change orders and invoices stand on an accepted quote. Make a quote under{' '}
        <Link href={`/jobs/${jobId}/quote`}>Quote</Link>, mark it as sent, and note there that the client
        accepted it.
      </EmptyState>
    );
  return (
    <div className="stack">
      {summary === null ? null : <ContractPanel billing={billing} summary={summary} />}
      <ChangesPanel
        billing={billing}
        onOpen={(opened) => {
          openChange(opened);
          setTurn(turn + 1);
        }}
      />
      {change === null ? null : (
        <ChangeEditor
          key={turn}
          jobId={jobId}
          billing={billing}
          opened={change}
          onChange={openChange}
          onClose={() => openChange(null)}
        />
      )}
      <InvoicesPanel billing={billing} onBill={() => setBilling(true)} isBilling={isBilling} />
      {isBilling ? <BillEditor jobId={jobId} billing={billing} onClose={() => setBilling(false)} /> : null}
      <PaymentsPanel jobId={jobId} billing={billing} />
    </div>
  );
}
