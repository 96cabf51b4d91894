import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { Billing, ShownPayment } from './billing-words.ts';
import { TakeBackDialog } from './take-back-dialog.tsx';
import { useKept } from './use-kept.ts';
import { dollars } from '../../kit/amounts.ts';

/** What the client paid: entered in a line, taken back by a row of its own, never erased. */
export function PaymentsPanel({ jobId, billing }: { readonly jobId: string; readonly billing: Billing }) {
  const [takingBack, setTakingBack] = useState<ShownPayment | null>(null);
  const { payments } = billing;
  const gone = new Set(payments.map(({ takesBack }) => takesBack));
  return (
    <Panel title="Payments">
      <PaymentForm jobId={jobId} billing={billing} />
      {payments.length === 0 ? null : (
        <DataTable
          label="Payments"
          columns={columnsOf(payments, gone, setTakingBack)}
          rows={payments}
          rowKey={({ id }) => id}
          rowState={({ id, takesBack }) => (gone.has(id) || takesBack !== null ? 'faded' : undefined)}
        />
      )}
      <p className="muted payments-rule">
        A payment is counted on the invoice that was due first, then on the next; what is more stays with the
        job for the next bill.
      </p>
      {takingBack === null ? null : (
        <TakeBackDialog payment={takingBack} onClose={() => setTakingBack(null)} />
      )}
    </Panel>
  );
}

/** What is told of each payment; `gone` holds those that were taken back. */
function columnsOf(
  payments: readonly ShownPayment[],
  gone: ReadonlySet<string | null>,
  onTakeBack: (payment: ShownPayment) => void,
): readonly TableColumn<ShownPayment>[] {
  return [
    { id: 'on', title: 'Day', isRowHeader: true, cell: ({ paidOn }) => paidOn },
    {
      id: 'what',
      title: 'What',
      cell: (payment) => {
        const original = payments.find(({ id }) => id === payment.takesBack);
        if (original !== undefined) return `Takes back the payment of ${original.paidOn}`;
        return gone.has(payment.id) ? <span className="tag">taken back</span> : 'Payment';
      },
    },
    { id: 'how', title: 'How', cell: ({ how }) => how },
    { id: 'note', title: 'Note', cell: ({ note }) => note },
    {
      id: 'amount',
      title: 'Amount',
      align: 'right',
      cell: ({ amountUsd, takesBack }) => dollars(takesBack === null ? amountUsd : `-${amountUsd}`),
    },
    {
      id: 'steps',
      title: 'What to do with it',
      titleHidden: true,
      align: 'right',
      cell: (payment) =>
        payment.takesBack !== null || gone.has(payment.id) ? null : (
          <Button
            tone="quiet"
            aria-label={`Take back the payment of ${dollars(payment.amountUsd)} on ${payment.paidOn}`}
            onPress={() => onTakeBack(payment)}
          >
            Take back…
          </Button>
        ),
    },
  ];
}

type Typed = { readonly amountUsd: string; readonly how: string; readonly note: string };
const blank: Typed = { amountUsd: '', how: '', note: '' };

function PaymentForm({ jobId, billing }: { readonly jobId: string; readonly billing: Billing }) {
  const [paidOn, setPaidOn] = useState(billing.today);
  const [typed, setTyped] = useKept<Typed>(`${jobId}/payment`, blank);
  const submit = useSubmit('billing.pay');
  const save = async (): Promise<void> => {
    if ((await submit.send({ jobId, paidOn, ...typed })) === undefined) return;
    notify(`The payment of ${paidOn} is saved.`);
    setTyped(blank);
  };
  const problem = submit.problem(['paidOn', 'amountUsd', 'how', 'note']);
  const owed = billing.summary?.balanceUsd ?? '0';
  return (
    <form
      className="payment-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <TextField
        label="Paid on"
        type="date"
        value={paidOn}
        onChange={setPaidOn}
        problem={paidOn === '' ? 'Give the day.' : submit.problemAt('paidOn')}
      />
      <TextField
        label="Amount, $"
        value={typed.amountUsd}
        onChange={(amountUsd) => setTyped({ ...typed, amountUsd })}
        problem={submit.problemAt('amountUsd')}
        placeholder={Number(owed) > 0 ? `${dollars(owed).slice(1)} is owed` : ''}
        maxLength={16}
      />
      <TextField
        label="How"
        value={typed.how}
        onChange={(how) => setTyped({ ...typed, how })}
        placeholder="check 1042"
        problem={submit.problemAt('how')}
        maxLength={60}
      />
      <TextField
        label="Note"
        value={typed.note}
        onChange={(note) => setTyped({ ...typed, note })}
        problem={submit.problemAt('note')}
        maxLength={500}
      />
      <Button type="submit" isDisabled={typed.amountUsd.trim() === ''}>
        Save the payment
      </Button>
      {problem === null ? null : (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
    </form>
  );
}
