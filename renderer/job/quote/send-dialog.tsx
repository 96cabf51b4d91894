import { quoteName } from '../../../core/quotes/number-quote.ts';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { notify } from '../../kit/notices.tsx';
import type { ShownQuote } from './quote-words.ts';

/** Names what a quote does not say, before it is sent all the same. */
export function SendDialog(props: {
  readonly quote: ShownQuote;
  readonly questions: readonly string[];
  readonly onClose: () => void;
}) {
  const { quote, questions, onClose } = props;
  const name = quoteName(quote.number, quote.revision);
  const send = async (): Promise<void> => {
    if ((await attempt('quotes.send', { id: quote.id, knowing: true })) === undefined) return;
    onClose();
    notify(`${name} counts as sent. It stays as it is from now on.`);
  };
  return (
    <Dialog
      title={`${name} leaves something open`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={onClose}>
            Go back and answer
          </Button>
          <Button onPress={() => void send()}>I know, mark it as sent</Button>
        </>
      }
    >
      <p>When it was made, nothing in it answered:</p>
      <ul className="lacks">
        {questions.map((question) => (
          <li key={question}>{question}</li>
        ))}
      </ul>
      <p>Answer them under “Is anything forgotten?” and make the draft anew, or send it as it is.</p>
    </Dialog>
  );
}
