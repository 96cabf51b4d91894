import { completeness, type Question, unanswered } from '../../../core/offer/completeness.ts';
import { priceMovers } from '../../../core/offer/price-movers.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';
import { type Documents, withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { type Offered, useOffered } from './offered.ts';

const answerWords = {
  priced: 'In the price',
  excluded: 'Excluded',
  said: 'Said',
  'not-needed': 'Not needed',
} as const;

/** What is usually forgotten, each answered by a line, an exclusion, an entry, or `not needed because`. */
export function QuestionsPanel() {
  const offered = useOffered();
  if (offered === null) return null;
  const questions = completeness(offered.input, offered.result);
  const open = unanswered(questions).length;
  return (
    <Panel
      title="Is anything forgotten?"
      actions={
        <span className={open === 0 ? 'tag' : 'tag tag-care'}>
          {open === 0 ? 'All answered' : `${open} not answered`}
        </span>
      }
    >
      <p className="panel-note">
        Price it, exclude it, or say why it is not needed. What stays open is named when the quote is made.
      </p>
      <ul className="questions">
        {questions.map((question) => (
          <Asked key={question.id} question={question} />
        ))}
      </ul>
      <Movers offered={offered} />
    </Panel>
  );
}

function Asked({ question: { id, asks, answer } }: { readonly question: Question }) {
  const { editor, documents } = useJob();
  const typed = documents.design.offer.notNeeded.find(({ topic }) => topic === id)?.because ?? '';
  return (
    <li className="question">
      <span className="question-asks">
        {asks} {answer === null ? <span className="tag tag-care">open</span> : null}
      </span>
      {answer === null || answer.kind === 'not-needed' ? (
        <div className="question-reason" onBlur={() => editor.seal()}>
          <span className="muted" aria-hidden="true">
            Not needed because
          </span>
          <TextField
            label={`Not needed because: ${asks}`}
            labelHidden
            value={typed}
            maxLength={300}
            path={`design.offer.notNeeded.${id}`}
            onChange={(text) =>
              editor.typeWith('why it is not needed', `design.offer.notNeeded.${id}`, (now) =>
                withReason(now, id, text),
              )
            }
          />
        </div>
      ) : (
        <span className="question-answer muted">
          {answerWords[answer.kind]}: {answer.words}
        </span>
      )}
    </li>
  );
}

function withReason(documents: Documents, topic: string, because: string): Documents {
  const others = documents.design.offer.notNeeded.filter((one) => one.topic !== topic);
  return withValueAt(
    documents,
    'design.offer.notNeeded',
    because === '' ? others : [...others, { topic, because }],
  );
}

function Movers({ offered }: { readonly offered: Offered }) {
  const movers = priceMovers(offered.input, offered.result.estimate);
  if (movers.length === 0) return null;
  return (
    <section aria-label="Lines that move the price most" className="sub-list">
      <h3 className="movers-title">Lines that move the price most</h3>
      <ul className="movers">
        {movers.map(({ lineId, description, priceUpUsd }) => (
          <li key={lineId}>
            {description}: 10 % more makes the price <b className="numeric">{formatUsd(priceUpUsd)}</b>{' '}
            higher.
          </li>
        ))}
      </ul>
    </section>
  );
}
