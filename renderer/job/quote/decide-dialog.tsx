import { useState } from 'react';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { TextField } from '../../kit/text-field.tsx';
import type { ShownQuote } from './quote-words.ts';

export type Decision = { readonly quote: ShownQuote; readonly decision: 'accepted' | 'declined' };

/** Asks on which day the client answered, and what he said. */
export function DecideDialog(props: Decision & { readonly today: string; readonly onClose: () => void }) {
  const { quote, decision, today, onClose } = props;
  const [on, setOn] = useState(today);
  const [note, setNote] = useState('');
  const name = quoteName(quote.number, quote.revision);
  const decide = async (): Promise<void> => {
    if (on === '') return;
    if ((await attempt('quotes.decide', { id: quote.id, decision, on, note })) === undefined) return;
    onClose();
    notify(`${name} is ${decision}.`);
  };
  return (
    <Dialog
      title={`${name} is ${decision}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void decide()}>
            Note it
          </Button>
          <Button onPress={onClose}>Leave it open</Button>
        </>
      }
    >
      <div className="fields">
        <TextField
          label="On"
          type="date"
          value={on}
          onChange={setOn}
          problem={on === '' ? 'Give the day on which the client answered.' : null}
          autoFocus
        />
        <TextField label="What was said" value={note} onChange={setNote} maxLength={2000} />
      </div>
    </Dialog>
  );
}
