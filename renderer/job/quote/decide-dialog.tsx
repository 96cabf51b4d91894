import { useState } from 'react';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { useAnswer } from '../../host/queries.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { TextField } from '../../kit/text-field.tsx';
import type { ShownQuote } from './quote-words.ts';

export type Decision = { readonly quote: ShownQuote; readonly decision: 'accepted' | 'declined' };

/** The design as it was drawn has a blank id, which a list cannot hold. */
const wayPrefix = 'way ';

/** Asks on which day the client answered, and what he said. */
export function DecideDialog(props: Decision & { readonly today: string; readonly onClose: () => void }) {
  const { quote, decision, today, onClose } = props;
  const [on, setOn] = useState(today);
  const [note, setNote] = useState('');
  const ways = useAnswer('quotes.ways', { id: quote.id }, decision === 'accepted');
  const offers = ways.data?.ways ?? [];
  const [wayId, setWayId] = useState<string | null>(null);
  const isOpen = decision === 'accepted' && ways.isPending;
  const name = quoteName(quote.number, quote.revision);
  const decide = async (): Promise<void> => {
    if (on === '' || isOpen) return;
    if ((await attempt('quotes.decide', { id: quote.id, decision, on, note, wayId })) === undefined) return;
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
        {offers.length < 2 ? null : (
          <SelectField
            label="What the client takes"
            value={`${wayPrefix}${wayId ?? offers[0]?.id ?? ''}`}
            choices={offers.map(({ id, name: way, totalUsd }) => ({
              id: `${wayPrefix}${id}`,
              label: `${way}, ${formatUsd(totalUsd as Usd)}`,
            }))}
            onChange={(id) => setWayId(id.slice(wayPrefix.length))}
            hint="It becomes the contract of the job."
          />
        )}
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
