import { problemSentence } from '../../../core/problems/sentence.ts';
import { quoteName } from '../../../core/quotes/number-quote.ts';
import { stepsFrom } from '../../../core/quotes/quote-state.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Button } from '../../kit/button.tsx';
import { figuresMissing } from '../../kit/figures-missing.ts';
import { notify } from '../../kit/notices.tsx';
import { presses, type ShownQuote, standsAt } from './quote-words.ts';

/** What a person wants of a quote that needs a window of its own. */
export type QuoteWish =
  | { readonly kind: 'decide'; readonly quote: ShownQuote; readonly decision: 'accepted' | 'declined' }
  | { readonly kind: 'compare'; readonly quote: ShownQuote }
  | { readonly kind: 'send'; readonly quote: ShownQuote; readonly questions: readonly string[] };

/** One quote: where it stands, what it comes to, and what can be done with it. */
export function QuoteRow(props: {
  readonly quote: ShownQuote;
  readonly paperSize: 'letter' | 'a4';
  readonly onWish: (wish: QuoteWish) => void;
}) {
  const { quote, onWish } = props;
  const name = quoteName(quote.number, quote.revision);
  const steps = stepsFrom(quote.state);
  return (
    <li className="quote-row">
      <div className="quote-head">
        <b>{name}</b>
        <span className={presses(quote) ? 'tag tag-care' : 'tag'}>{standsAt(quote)}</span>
        <span className="quote-total">{formatUsd((quote.chosen?.totalUsd ?? quote.totalUsd) as Usd)}</span>
      </div>
      <p className="muted quote-facts">
        Made {quote.madeOn}, good until {quote.validUntil}
        {quote.chosen === null ? '' : `. Taken: ${quote.chosen.name}`}
        {quote.note === '' ? '' : `. ${quote.note}`}
        {quote.lacks > 0 ? <span className="tag tag-care">{figuresMissing(quote.lacks)}</span> : null}
        {quote.intact ? null : <span className="tag tag-care">damaged on the disk: not what was made</span>}
      </p>
      {quote.state === 'draft' && quote.intact ? <Open quoteId={quote.id} /> : null}
      <div className="quote-steps">
        {steps.includes('send') ? (
          <Button tone="main" onPress={() => void send(quote, onWish)}>
            Mark as sent
          </Button>
        ) : null}
        {steps.includes('accept') ? (
          <>
            <Button onPress={() => onWish({ kind: 'decide', quote, decision: 'accepted' })}>Accepted…</Button>
            <Button onPress={() => onWish({ kind: 'decide', quote, decision: 'declined' })}>Declined…</Button>
          </>
        ) : null}
        <Button
          tone="quiet"
          aria-label={`${name} as PDF`}
          onPress={() => void print(quote.id, props.paperSize)}
        >
          PDF
        </Button>
        <Button tone="quiet" onPress={() => onWish({ kind: 'compare', quote })}>
          What changed since…
        </Button>
      </div>
    </li>
  );
}

/** What a draft does not answer of what is usually forgotten. */
function Open({ quoteId }: { readonly quoteId: string }) {
  const ways = useAnswer('quotes.ways', { id: quoteId });
  const open = ways.data?.unanswered ?? [];
  return open.length === 0 ? null : (
    <p className="field-care quote-open">Does not say yet: {open.join(', ')}.</p>
  );
}

async function send(quote: ShownQuote, onWish: (wish: QuoteWish) => void): Promise<void> {
  try {
    const reply = await tell('quotes.send', { id: quote.id });
    if (reply.ok) {
      notify(`${quoteName(quote.number, quote.revision)} counts as sent. It stays as it is from now on.`);
      return;
    }
    const { problem } = reply;
    if (problem.code === 'offer' && problem.fault.what === 'not-all-asked')
      onWish({ kind: 'send', quote, questions: problem.fault.questions });
    else notify(problemSentence(problem), 'problem');
  } catch {
    notify('The quote was not marked. It can be once Eavewright answers again.', 'problem');
  }
}

async function print(id: string, paperSize: 'letter' | 'a4'): Promise<void> {
  const paper = await attempt('quotes.paper', { id, sheet: 'quote', paperSize });
  if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
}
