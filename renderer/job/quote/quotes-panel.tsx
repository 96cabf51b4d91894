import { useState } from 'react';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { allSaved } from '../parts/all-saved.ts';
import { useJob } from '../job-context.ts';
import { DecideDialog } from './decide-dialog.tsx';
import { QuoteChangeDialog } from './quote-change-dialog.tsx';
import { QuoteRow, type QuoteWish } from './quote-row.tsx';
import { SendDialog } from './send-dialog.tsx';

/** The job's quotes: made from the estimate, sent, answered; each stays what it was. */
export function QuotesPanel() {
  const { jobId, editor, computation, surroundings } = useJob();
  const quotes = useAnswer('quotes.list', { jobId });
  const [wish, setWish] = useState<QuoteWish | null>(null);
  const [isMaking, setMaking] = useState(false);
  const make = async (): Promise<void> => {
    setMaking(true);
    try {
      await allSaved(editor);
      const reply = await tell('quotes.make', { jobId });
      if (reply.ok) notify(`${quoteName(reply.value.number, reply.value.revision)} is made as a draft.`);
      else notify(problemSentence(reply.problem), 'problem');
    } catch {
      notify('The quote was not made. It can be made once Eavewright answers again.', 'problem');
    } finally {
      setMaking(false);
    }
  };
  const [newest] = quotes.data ?? [];
  const makeLabel =
    newest === undefined
      ? 'Make a quote'
      : newest.state === 'draft'
        ? 'Make the draft anew'
        : 'Make the next revision';
  const close = (): void => setWish(null);
  return (
    <Panel
      title="Quotes"
      look="flush"
      actions={
        <Button isDisabled={!computation.current || isMaking} onPress={() => void make()}>
          {isMaking ? 'Searching the boards' : makeLabel}
        </Button>
      }
    >
      <Answer query={quotes}>
        {(list) =>
          list.length === 0 ? (
            <p className="muted panel-words">
              None yet. A quote takes a number, stays a draft until it is sent, and from then on prints again
              as it was, to the cent.
            </p>
          ) : (
            <ul className="quotes">
              {list.map((quote) => (
                <QuoteRow
                  key={quote.id}
                  quote={quote}
                  paperSize={surroundings.settings.paperSize}
                  onWish={setWish}
                />
              ))}
            </ul>
          )
        }
      </Answer>
      {wish?.kind === 'decide' ? (
        <DecideDialog
          quote={wish.quote}
          decision={wish.decision}
          today={surroundings.today}
          onClose={close}
        />
      ) : null}
      {wish?.kind === 'compare' ? (
        <QuoteChangeDialog
          quote={wish.quote}
          others={(quotes.data ?? []).filter(({ id }) => id !== wish.quote.id)}
          remake={
            computation.current && !isMaking
              ? {
                  label: makeLabel,
                  run: () => {
                    close();
                    void make();
                  },
                }
              : null
          }
          onClose={close}
        />
      ) : null}
      {wish?.kind === 'send' ? (
        <SendDialog quote={wish.quote} questions={wish.questions} onClose={close} />
      ) : null}
    </Panel>
  );
}
