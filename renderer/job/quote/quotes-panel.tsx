import { useState } from 'react';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { stepsFrom } from '../../../core/quotes/quote-state.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { figuresMissing } from '../../kit/figures-missing.ts';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { allSaved } from '../parts/all-saved.ts';
import { useJob } from '../job-context.ts';
import { DecideDialog, type Decision } from './decide-dialog.tsx';
import { QuoteChangeDialog } from './quote-change-dialog.tsx';
import { presses, type ShownQuote, standsAt } from './quote-words.ts';

/** The job's quotes: made from the estimate, sent, answered; each stays what it was. */
export function QuotesPanel() {
  const { jobId, editor, computation, surroundings } = useJob();
  const quotes = useAnswer('quotes.list', { jobId });
  const [deciding, setDeciding] = useState<Decision | null>(null);
  const [comparing, setComparing] = useState<ShownQuote | null>(null);
  const make = async (): Promise<void> => {
    try {
      await allSaved(editor);
      const reply = await tell('quotes.make', { jobId });
      if (reply.ok) notify(`${quoteName(reply.value.number, reply.value.revision)} is made as a draft.`);
      else notify(problemSentence(reply.problem), 'problem');
    } catch {
      notify('The quote was not made. It can be made once Eavewright answers again.', 'problem');
    }
  };
  const print = async (quote: ShownQuote): Promise<void> => {
    const paper = await attempt('quotes.paper', {
      id: quote.id,
      sheet: 'quote',
      paperSize: surroundings.settings.paperSize,
    });
    if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
  };
  const newest = quotes.data?.[0];
  const hasDraft = newest?.state === 'draft';
  return (
    <Panel
      title="Quotes"
      look="flush"
      actions={
        <Button isDisabled={!computation.current} onPress={() => void make()}>
          {hasDraft
            ? 'Make the draft anew'
            : newest === undefined
              ? 'Make a quote'
              : 'Make the next revision'}
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
                <li key={quote.id} className="quote-row">
                  <div className="quote-head">
                    <b>{quoteName(quote.number, quote.revision)}</b>
                    <span className={presses(quote) ? 'tag tag-care' : 'tag'}>{standsAt(quote)}</span>
                    <span className="quote-total">{formatUsd(quote.totalUsd as Usd)}</span>
                  </div>
                  <p className="muted quote-facts">
                    Made {quote.madeOn}, good until {quote.validUntil}
                    {quote.note === '' ? '' : `. ${quote.note}`}
                    {quote.lacks > 0 ? (
                      <span className="tag tag-care">{figuresMissing(quote.lacks)}</span>
                    ) : null}
                    {quote.intact ? null : (
                      <span className="tag tag-care">damaged on the disk: not what was made</span>
                    )}
                  </p>
                  <div className="quote-steps">
                    {stepsFrom(quote.state).includes('send') ? (
                      <Button tone="main" onPress={() => void send(quote)}>
                        Mark as sent
                      </Button>
                    ) : null}
                    {stepsFrom(quote.state).includes('accept') ? (
                      <>
                        <Button onPress={() => setDeciding({ quote, decision: 'accepted' })}>
                          Accepted…
                        </Button>
                        <Button onPress={() => setDeciding({ quote, decision: 'declined' })}>
                          Declined…
                        </Button>
                      </>
                    ) : null}
                    <Button
                      tone="quiet"
                      aria-label={`${quoteName(quote.number, quote.revision)} as PDF`}
                      onPress={() => void print(quote)}
                    >
                      PDF
                    </Button>
                    <Button tone="quiet" onPress={() => setComparing(quote)}>
                      What changed since…
                    </Button>
                  </div>
                </li>
              ))}
            </ul>
          )
        }
      </Answer>
      {deciding === null ? null : (
        <DecideDialog {...deciding} today={surroundings.today} onClose={() => setDeciding(null)} />
      )}
      {comparing === null ? null : <QuoteChangeDialog quote={comparing} onClose={() => setComparing(null)} />}
    </Panel>
  );
}

async function send(quote: ShownQuote): Promise<void> {
  if ((await attempt('quotes.send', { id: quote.id })) === undefined) return;
  notify(`${quoteName(quote.number, quote.revision)} counts as sent. It stays as it is from now on.`);
}
