import { useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { useSubmit } from '../parts/submit.ts';
import type { ShownPayment } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** Takes a payment back by a row of its own, so that what was entered stays to be seen. */
export function TakeBackDialog(props: { readonly payment: ShownPayment; readonly onClose: () => void }) {
  const { payment, onClose } = props;
  const [note, setNote] = useState('');
  const submit = useSubmit('billing.takeBackPayment');
  const takeBack = async (): Promise<void> => {
    if ((await submit.send({ id: payment.id, note })) === undefined) return;
    onClose();
    notify(`The payment of ${payment.paidOn} is taken back.`);
  };
  const problem = submit.problem(['note']);
  return (
    <Dialog
      title={`Take back ${dollars(payment.amountUsd)} of ${payment.paidOn}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void takeBack()}>
            Take it back
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </>
      }
    >
      <p>The payment stays in the list, with the row that takes it back below.</p>
      <TextField
        label="Why"
        value={note}
        onChange={setNote}
        problem={submit.problemAt('note')}
        placeholder="the check came back"
        maxLength={500}
        autoFocus
      />
      {problem === null ? null : (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      )}
    </Dialog>
  );
}
