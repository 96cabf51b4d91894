import { useState } from 'react';
import { useAnswer } from '../../host/queries.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import { askOf, asksForSum, blankBill, readAsk, type TypedBill } from './bill-form.ts';
import { BillParts } from './bill-parts.tsx';
import { BillPreview } from './bill-preview.tsx';
import type { Billing } from './billing-words.ts';
import { SumEntries } from './sum-entries.tsx';
import { useKept } from './use-kept.ts';
import { dollars } from '../../kit/amounts.ts';

const kinds = [
  { id: 'deposit', label: 'Deposit' },
  { id: 'stage', label: 'Stage of the payments' },
  { id: 'progress', label: 'Progress of the work' },
  { id: 'final', label: 'Final bill' },
] as const;

/** A bill in the hand: what it is for at the left, what it comes to at the right; issued only after it was looked at. */
export function BillEditor(props: {
  readonly jobId: string;
  readonly billing: Billing;
  readonly onClose: () => void;
}) {
  const { jobId, billing, onClose } = props;
  const [typed, setTyped] = useKept<TypedBill | null>(`${jobId}/bill`, null);
  const bill = typed ?? blankBill(billing);
  const [issuedOn, setIssuedOn] = useState(billing.today);
  const [isSure, setSure] = useState(false);
  const submit = useSubmit('billing.issue');
  const put = (part: Partial<TypedBill>): void => {
    submit.clear();
    setTyped({ ...bill, ...part });
  };
  const ask = readAsk(bill, billing.parts);
  const preview = useAnswer(
    'billing.preview',
    { jobId, ask: ask ?? { kind: 'final' } },
    ask !== null && !isBlankSum(bill),
    true,
  );
  const shown = ask === null || isBlankSum(bill) ? undefined : preview.data;
  const issue = async (): Promise<void> => {
    setSure(false);
    const issued = await submit.send({
      jobId,
      ask: askOf(bill, billing.parts),
      issuedOn,
      seenUsd: shown?.totalUsd ?? null,
    });
    if (issued === undefined) return;
    setTyped(null);
    notify(`Invoice ${issued.number} is issued. It stays as it is from now on.`);
    onClose();
  };
  const openChanges = billing.changeOrders
    .filter(({ state }) => state === 'draft' || state === 'sent')
    .map(({ number }) => number);
  const known = ['ask.depositUsd', 'ask.stage', 'depositUsd', 'ask.retainagePercent', 'ask.note', 'issuedOn'];
  const problem = submit.problem(known);
  return (
    <Panel title="New bill">
      <div className="bill-editor">
        <div className="stack">
          <div className="fields">
            <SelectField
              label="What is billed"
              value={bill.kind}
              choices={kinds}
              onChange={(kind) => put({ kind })}
            />
            <TextField
              label="Day of the invoice"
              type="date"
              value={issuedOn}
              onChange={setIssuedOn}
              problem={issuedOn === '' ? 'Give the day.' : submit.problemAt('issuedOn')}
              hint={`Due ${billing.settings.dueDays} days later.`}
            />
            {asksForSum(bill) ? (
              <SumEntries
                bill={bill}
                billing={billing}
                problem={submit.problemAt('ask.depositUsd') ?? submit.problemAt('depositUsd')}
                onChange={put}
              />
            ) : null}
            {bill.kind === 'progress' ? (
              <TextField
                label="Held back, %"
                value={bill.retainagePercent}
                onChange={(retainagePercent) => put({ retainagePercent })}
                problem={submit.problemAt('ask.retainagePercent')}
                hint="Of the work to date; comes with the final bill."
                maxLength={8}
              />
            ) : null}
          </div>
          {bill.kind === 'progress' ? <BillParts parts={billing.parts} bill={bill} onChange={put} /> : null}
          {asksForSum(bill) ? null : (
            <Switch
              isSelected={bill.showsQuantities}
              onChange={(showsQuantities) => put({ showsQuantities })}
            >
              Show what is in place: lumber, panels and edge by quantity, from the takeoff
            </Switch>
          )}
          <TextField
            label="Note on the invoice"
            value={bill.note}
            onChange={(note) => put({ note })}
            problem={submit.problemAt('ask.note')}
            multiline
            rows={2}
            maxLength={2000}
          />
        </div>
        <div className="stack">
          <BillPreview
            figures={shown}
            error={ask === null || isBlankSum(bill) ? null : preview.error}
            isBlank={ask === null || isBlankSum(bill)}
          />
          {bill.kind === 'final' && openChanges.length > 0 ? (
            <p className="deposit-over" role="status">
              Change order {openChanges.join(' and ')} is not answered yet. What is approved after the final
              bill needs another one.
            </p>
          ) : null}
          {problem === null ? null : (
            <p className="field-problem" role="alert">
              {problem}
            </p>
          )}
          <div className="change-foot">
            <Button
              tone="main"
              isDisabled={
                shown === undefined || preview.isPlaceholderData || preview.error !== null || issuedOn === ''
              }
              onPress={() => setSure(true)}
            >
              Issue it…
            </Button>
            <Button tone="quiet" onPress={onClose}>
              Put away
            </Button>
          </div>
        </div>
      </div>
      {isSure && shown !== undefined ? (
        <Dialog
          title={`Issue an invoice over ${dollars(shown.totalUsd)}?`}
          isOpen
          onClose={() => setSure(false)}
          actions={
            <>
              <Button tone="main" autoFocus onPress={() => void issue()}>
                Issue the invoice
              </Button>
              <Button onPress={() => setSure(false)}>Not yet</Button>
            </>
          }
        >
          <p>
            It takes the next number and cannot be changed afterwards. What turns out wrong is taken back by a
            credit.
          </p>
        </Dialog>
      ) : null}
    </Panel>
  );
}

function isBlankSum(bill: TypedBill): boolean {
  return asksForSum(bill) && bill.depositUsd.trim() === '';
}
