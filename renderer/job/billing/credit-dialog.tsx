import { Decimal } from 'decimal.js';
import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { Billing, ShownInvoice } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** Takes an invoice back, in whole or in part, by a paper of its own. */
export function CreditDialog(props: {
  readonly invoice: ShownInvoice;
  readonly billing: Billing;
  readonly onClose: () => void;
}) {
  const { invoice, billing, onClose } = props;
  const leftUsd = billing.invoices
    .filter(({ credits }) => credits === invoice.number)
    .reduce((left, credit) => left.minus(credit.amountUsd), new Decimal(invoice.amountUsd))
    .toFixed(2);
  const [amountUsd, setAmount] = useState(leftUsd);
  const [reason, setReason] = useState('');
  const [issuedOn, setIssuedOn] = useState(billing.today);
  const [isTried, setTried] = useState(false);
  const submit = useSubmit('billing.credit');
  const credit = async (): Promise<void> => {
    setTried(true);
    if (reason.trim() === '' || issuedOn === '') return;
    const made = await submit.send({ invoiceId: invoice.id, amountUsd, reason, issuedOn });
    if (made === undefined) return;
    onClose();
    notify(`Credit ${made.number} is issued for invoice ${invoice.number}.`);
  };
  const problem = submit.problem(['amountUsd', 'reason', 'issuedOn']);
  return (
    <Dialog
      title={`Credit invoice ${invoice.number}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void credit()}>
            Issue the credit
          </Button>
          <Button onPress={onClose}>Leave the invoice as it is</Button>
        </>
      }
    >
      <p>
        The invoice stays as it is. The credit takes the next number, and its share of the tax goes back with
        it. Up to {dollars(leftUsd)} before tax can be taken back; what is credited can be billed again.
      </p>
      <div className="fields">
        <TextField
          label="To take back, before tax, $"
          value={amountUsd}
          onChange={setAmount}
          problem={submit.problemAt('amountUsd')}
          autoFocus
        />
        <TextField
          label="Day"
          type="date"
          value={issuedOn}
          onChange={setIssuedOn}
          problem={issuedOn === '' ? 'Give the day.' : submit.problemAt('issuedOn')}
        />
        <div className="full">
          <TextField
            label="Why"
            value={reason}
            onChange={setReason}
            problem={isTried && reason.trim() === '' ? 'Say why.' : submit.problemAt('reason')}
            maxLength={1000}
          />
        </div>
      </div>
      {problem === null ? null : (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
    </Dialog>
  );
}
