import { Paperclip, Plus } from 'lucide-react';
import { useState } from 'react';
import type { BillKind } from '../../../core/jobcost/cost-entries.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { saveFile } from '../../host/save-file.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { BillDialog } from './bill-dialog.tsx';
import { billWords, type Costs, type ShownBill } from './cost-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** What money goes out by: receipts, orders, bills of subcontractors, returns; what was corrected stays, struck through. */
export function BillsPanel({ jobId, costs }: { readonly jobId: string; readonly costs: Costs }) {
  const [entering, setEntering] = useState<{ readonly kind: BillKind } | { readonly bill: ShownBill } | null>(
    null,
  );
  const replaced = new Map(costs.bills.map((bill) => [bill.replaces, bill]));
  return (
    <Panel
      title="Receipts, orders, bills"
      look="flush"
      actions={
        <>
          {(['receipt', 'order', 'sub-bill', 'return'] as const).map((kind) => (
            <Button
              key={kind}
              tone={kind === 'receipt' ? 'main' : 'plain'}
              icon={<Plus size={14} aria-hidden="true" />}
              onPress={() => setEntering({ kind })}
            >
              {billWords[kind]}
            </Button>
          ))}
        </>
      }
    >
      {costs.bills.length === 0 ? (
        <p className="muted panel-words">
          None yet. A receipt takes its lines from what the accepted quote buys: tick what was bought and
          correct the amounts. An order counts as ordered until its receipt comes.
        </p>
      ) : (
        <table className="table">
          <caption className="visually-hidden">Receipts, orders, bills and returns</caption>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">What</th>
              <th scope="col">From</th>
              <th scope="col">Lines</th>
              <th scope="col" className="align-right">
                Total
              </th>
              <th scope="col">
                <span className="visually-hidden">Steps</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {costs.bills.toReversed().map((kept) => (
              <BillRow
                key={kept.id}
                kept={kept}
                later={replaced.get(kept.id)}
                costs={costs}
                onCorrect={() => setEntering({ bill: kept })}
              />
            ))}
          </tbody>
        </table>
      )}
      {entering === null ? null : (
        <BillDialog jobId={jobId} costs={costs} start={entering} onClose={() => setEntering(null)} />
      )}
    </Panel>
  );
}

function BillRow(props: {
  readonly kept: ShownBill;
  readonly later: ShownBill | undefined;
  readonly costs: Costs;
  readonly onCorrect: () => void;
}) {
  const { kept, later, costs } = props;
  const { bill } = kept;
  const gone = later !== undefined || kept.takesBack;
  const open = costs.openOrders.find(({ id }) => id === kept.id);
  const [first] = bill.lines;
  const more = bill.lines.length - 1;
  return (
    <tr className={gone ? 'entry-gone' : undefined}>
      <td className="no-wrap">{bill.datedOn}</td>
      <td>{billWords[bill.kind]}</td>
      <th scope="row">
        {bill.supplier} {bill.number === '' ? null : <span className="muted">{bill.number}</span>}
      </th>
      <td>
        {first?.description}
        {more > 0 ? ` and ${more} more` : ''} <StateTag kept={kept} later={later} />
        {open === undefined ? null : (
          <span className="tag tag-care">{dollars(open.openUsd)} still to come</span>
        )}
      </td>
      <td className="align-right">{dollars(kept.totalUsd)}</td>
      <td className="align-right no-wrap">
        {bill.attachmentId === null ? null : (
          <Button
            tone="quiet"
            icon={<Paperclip size={14} aria-hidden="true" />}
            onPress={() => void openAttachment(bill.attachmentId ?? '')}
          >
            Paper
          </Button>
        )}
        {gone ? null : (
          <Button
            tone="quiet"
            aria-label={`Correct… ${billWords[bill.kind]} of ${bill.supplier}, ${bill.datedOn}`}
            onPress={props.onCorrect}
          >
            Correct…
          </Button>
        )}
      </td>
    </tr>
  );
}

function StateTag({ kept, later }: { readonly kept: ShownBill; readonly later: ShownBill | undefined }) {
  if (kept.takesBack) return <span className="tag entry-state">took a paper back {kept.enteredOn}</span>;
  if (later !== undefined)
    return (
      <span className="tag entry-state">
        {later.takesBack ? 'taken back' : 'corrected'} {later.enteredOn}
      </span>
    );
  return kept.replaces === null ? null : <span className="tag">corrected {kept.enteredOn}</span>;
}

async function openAttachment(id: string): Promise<void> {
  const file = await attempt('costs.openAttachment', { id });
  if (file !== undefined) await saveFile(file.fileName, fromBase64(file.base64), 'application/octet-stream');
}
