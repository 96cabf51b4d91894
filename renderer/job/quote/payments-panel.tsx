import { Plus, X } from 'lucide-react';
import type { PlannedPayment } from '../../../core/offer/offer-document.ts';
import { type PaymentPlan, paymentPlan } from '../../../core/offer/payments.ts';
import { readyPayments } from '../../../core/offer/ready-lists.ts';
import { depositLimitUsd, type StateRule } from '../../../core/offer/state-rules.ts';
import { offerSentence } from '../../../core/problems/offer-fault.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Documents, withValueAt } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { nextId } from '../editor/next-id.ts';
import { useJob } from '../job-context.ts';
import { JobChoice } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';
import { useOffered } from './offered.ts';

const list = 'design.offer.payments';
const kinds = [
  { id: 'percent', label: 'Percent' },
  { id: 'amount', label: 'Dollars' },
  { id: 'rest', label: 'The rest' },
] as const;

/** When the client pays what: in dollars that add up to the price, the first held against the state's limit. */
export function PaymentsPanel() {
  const { editor, documents, surroundings } = useJob();
  const offered = useOffered();
  const { offer } = documents.design;
  const { payments } = offer;
  const totalUsd = offered?.result.estimate.totalUsd ?? null;
  const plan = totalUsd === null ? null : paymentPlan(payments, totalUsd);
  const rule = surroundings.settings.stateRules.find(({ id }) => id === offer.ruleId);
  return (
    <Panel
      title="Payments"
      actions={
        <Button
          icon={<Plus size={14} aria-hidden="true" />}
          onPress={() => editor.change('adding a payment', addPayment)}
        >
          Add a payment
        </Button>
      }
    >
      {payments.length === 0 ? (
        <>
          <p className="muted">None yet: deposit, stages, the last when the work is done.</p>
          <Button
            tone="quiet"
            onPress={() =>
              editor.change('taking a plan of payments', (now) => withValueAt(now, list, readyPlan()))
            }
          >
            Begin with 10 %, 30 %, 30 % and the rest
          </Button>
        </>
      ) : null}
      {payments.map((payment, at) => (
        <fieldset key={payment.id} className="sub-list-row payment-row">
          <legend className="visually-hidden">Payment {at + 1}</legend>
          <JobWords path={`${list}.${at}.when`} label={at === 0 ? 'Deposit, due' : 'Due'} maxLength={120} />
          <JobChoice path={`${list}.${at}.kind`} label="Takes" choices={kinds} />
          {payment.kind === 'rest' ? (
            <span className="field" />
          ) : (
            <JobEntry
              path={`${list}.${at}.value`}
              label={payment.kind === 'percent' ? 'Percent' : 'Dollars'}
              before={payment.kind === 'amount' ? '$' : undefined}
              after={payment.kind === 'percent' ? '%' : undefined}
            />
          )}
          <span className="payment-sum">
            <span className="field-label">Comes to</span>
            <output className="numeric">{sumOf(plan, at)}</output>
          </span>
          <IconButton
            label={`Remove the payment ${at + 1}: ${payment.when}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change('removing a payment', (now) => removeFrom(now, list, at))}
          />
          <Care
            sentences={[
              plan?.fault?.at === at ? offerSentence(plan.fault.fault) : null,
              at === 0 ? depositCare(plan, rule, totalUsd) : null,
            ]}
          />
        </fieldset>
      ))}
      {plan === null || payments.length === 0 ? null : (
        <p className="muted payment-foot">
          {plan.fault === null
            ? `Together ${formatUsd(totalUsd ?? ('0.00' as Usd))}, the price of the quote.`
            : ''}
        </p>
      )}
    </Panel>
  );
}

function Care({ sentences }: { readonly sentences: readonly (string | null)[] }) {
  const said = sentences.filter((sentence) => sentence !== null);
  return said.length === 0 ? null : (
    <p className="field-care row-care" role="status">
      {said.join(' ')}
    </p>
  );
}

/** The first payment is what is asked for before work begins. */
function depositCare(
  plan: PaymentPlan | null,
  rule: StateRule | undefined,
  totalUsd: Usd | null,
): string | null {
  const deposit = plan?.payments[0];
  const limit = totalUsd === null ? null : depositLimitUsd(rule, totalUsd);
  if (deposit === undefined || limit === null || rule === undefined) return null;
  return Number(deposit.amountUsd) > Number(limit)
    ? `${rule.name} lets you ask for ${formatUsd(limit)} at most before work begins, as noted ${rule.asOf}${rule.verified ? '' : ', not verified yet'}. Verify with your state, or lower the deposit.`
    : null;
}

function sumOf(plan: PaymentPlan | null, at: number): string {
  const amount = plan?.payments[at]?.amountUsd;
  return amount === undefined ? '' : formatUsd(amount);
}

function addPayment(documents: Documents): Documents {
  const { payments } = documents.design.offer;
  const payment: PlannedPayment = {
    id: nextId(
      'p',
      payments.map(({ id }) => id),
    ),
    when: 'When the work is done and cleaned up',
    kind: payments.some(({ kind }) => kind === 'rest') ? 'percent' : 'rest',
    value: '0',
  };
  return appendTo(documents, list, payment);
}

function readyPlan(): readonly PlannedPayment[] {
  return readyPayments.map((payment, at) => ({ id: `p${at + 1}`, ...payment }));
}
