import { Lock, Plus } from 'lucide-react';
import { useState } from 'react';
import { changeName } from '../../../core/billing/contract-sum.ts';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { allSaved } from '../parts/all-saved.ts';
import { type AnsweredChange, AnswerChangeDialog } from './answer-change-dialog.tsx';
import { type Billing, changeStands, type ShownChange, signedDollars } from './billing-words.ts';
import { blankChange, type OpenedChange, openedFrom } from './change-form.ts';
import { openPhoto } from './photo.ts';
import { savePaper } from './save-paper.ts';
import { dollars } from '../../kit/amounts.ts';

/** The job's change orders: drafts, sent, answered; approved they belong to the contract and stay as they are. */
export function ChangesPanel(props: {
  readonly billing: Billing;
  readonly onOpen: (change: OpenedChange) => void;
}) {
  const { billing, onOpen } = props;
  const { jobId, editor } = useJob();
  const [answering, setAnswering] = useState<AnsweredChange | null>(null);
  const hasContract = billing.summary !== null;
  const fromDesign = async (): Promise<void> => {
    await allSaved(editor).catch(() => undefined);
    const found = await attempt('billing.changeFromDesign', { jobId });
    if (found === undefined) return;
    if (found.open.length > 0)
      notify(
        `Change order ${found.open.join(' and ')} from the design is not answered yet. Change it or note its answer first, so that nothing is counted twice.`,
        'problem',
      );
    else if (found.lacks > 0)
      notify(
        'Something in the design as it is now had no price when the quote was accepted, so the difference is not known. Write this change by hand.',
        'problem',
      );
    else if (found.order === null)
      notify('The job is designed as it is in the contract; there is nothing to change.');
    else onOpen(openedFrom(null, found.order));
  };
  return (
    <Panel
      title="Change orders"
      look="flush"
      actions={
        <>
          <Button isDisabled={!hasContract} onPress={() => void fromDesign()}>
            From the design as it is now
          </Button>
          <Button
            isDisabled={!hasContract}
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => onOpen(blankChange(billing))}
          >
            New change order
          </Button>
        </>
      }
    >
      {billing.changeOrders.length === 0 ? (
        <p className="muted panel-words">
          None yet. Write down what changes and its price before the work, and let the client sign it: from
          the prices that were agreed for hidden work, by hand, or as the difference that the design has made
          since.
        </p>
      ) : (
        <ul className="quotes">
          {billing.changeOrders.map((change) => (
            <li key={change.id} className="quote-row">
              <div className="quote-head">
                <b>{changeName(change.number, change.order)}</b>
                <StateTag change={change} />
                {change.intact ? null : (
                  <span className="tag tag-care">damaged on the disk: not what was written</span>
                )}
                <span className="quote-total">{signedDollars(change.priceUsd)}</span>
              </div>
              <p className="muted quote-facts">
                Made {change.madeOn}
                {change.order.days === 0 ? '' : `, ${daysWords(change.order.days)}`}
                {change.note === '' ? '' : `. ${change.note}`}
              </p>
              <Steps change={change} onOpen={onOpen} onAnswer={setAnswering} hasContract={hasContract} />
            </li>
          ))}
        </ul>
      )}
      {answering === null ? null : (
        <AnswerChangeDialog {...answering} today={billing.today} onClose={() => setAnswering(null)} />
      )}
    </Panel>
  );
}

function StateTag({ change }: { readonly change: ShownChange }) {
  const isFrozen = change.state !== 'draft';
  return (
    <span className={change.state === 'sent' ? 'tag tag-care' : 'tag'}>
      {isFrozen ? <Lock size={11} aria-hidden="true" className="tag-sign" /> : null}
      {changeStands(change)}
      {change.state === 'approved' ? ', in the contract' : ''}
    </span>
  );
}

function Steps(props: {
  readonly change: ShownChange;
  readonly hasContract: boolean;
  readonly onOpen: (change: OpenedChange) => void;
  readonly onAnswer: (answer: AnsweredChange) => void;
}) {
  const { change, onOpen, onAnswer } = props;
  const { surroundings } = useJob();
  const { state, number } = change;
  const isOpen = state === 'draft' || state === 'sent';
  const { photo } = change.order;
  return (
    <div className="quote-steps">
      {state === 'draft' ? (
        <>
          <Button onPress={() => onOpen(openedFrom(change.id, change.order))}>Change it</Button>
          <Button onPress={() => onAnswer({ change, to: 'sent' })}>Mark as sent…</Button>
        </>
      ) : null}
      {isOpen ? (
        <>
          <Button onPress={() => onAnswer({ change, to: 'approved' })}>Approved…</Button>
          <Button onPress={() => onAnswer({ change, to: 'declined' })}>Declined…</Button>
        </>
      ) : (
        <Button tone="quiet" onPress={() => onOpen(openedFrom(null, change.order))}>
          Another like it
        </Button>
      )}
      <Button
        tone="quiet"
        isDisabled={!props.hasContract || !change.intact}
        aria-label={`Change order ${number} as PDF, ${dollars(change.priceUsd)}`}
        onPress={() => void savePaper('billing.changePaper', change.id, surroundings.settings.paperSize)}
      >
        PDF
      </Button>
      {photo === null ? null : (
        <Button tone="quiet" onPress={() => void openPhoto(photo)}>
          Photo
        </Button>
      )}
    </div>
  );
}

function daysWords(days: number): string {
  const count = Math.abs(days) === 1 ? 'one day' : `${Math.abs(days)} days`;
  return days > 0 ? `${count} longer` : `${count} earlier`;
}
