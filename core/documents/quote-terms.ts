import type { JobInput } from '../job/job-file.ts';
import { paymentPlan } from '../offer/payments.ts';
import type { Estimate } from '../pricing/estimate-types.ts';
import { formatUsd } from '../units/money.ts';
import type { Block } from './sheet.ts';

/** Payments in dollars that add up to the total; said to be open where they do not. */
export function paymentBlocks({ design: { offer } }: JobInput, { totalUsd }: Estimate): readonly Block[] {
  if (offer.payments.length === 0) return [];
  const plan = paymentPlan(offer.payments, totalUsd);
  const heading: Block = { kind: 'heading', text: 'Payments' };
  if (plan.fault !== null)
    return [
      heading,
      {
        kind: 'paragraph',
        text: 'The payments are not settled yet. Do not sign this paper before they are.',
      },
    ];
  return [
    heading,
    {
      kind: 'table',
      columns: [
        { title: 'Due', align: 'left', share: 4 },
        { title: 'Amount', align: 'right', share: 0 },
      ],
      rows: [
        ...plan.payments.map(({ when, amountUsd }) => ({ cells: [when, formatUsd(amountUsd)] })),
        { cells: ['All payments', formatUsd(totalUsd)], style: 'total' },
      ],
    },
  ];
}

/** When it begins and how long it takes, warranty, and the clause for prices that move. */
export function termBlocks(input: JobInput): readonly Block[] {
  const { offer } = input.design;
  const time = [
    offer.start.trim() === '' ? '' : `Start: ${sentence(offer.start)}`,
    offer.workingDays === null
      ? ''
      : `The work takes about ${offer.workingDays} working ${offer.workingDays === 1 ? 'day' : 'days'}, weather aside.`,
  ].filter((text) => text !== '');
  return [
    ...(time.length === 0 ? [] : section('Time', time.join(' '))),
    ...(offer.warranty.trim() === '' ? [] : section('Warranty', sentence(offer.warranty))),
    ...(offer.escalation.wanted ? section('If material prices move', escalationWords(input)) : []),
  ];
}

/**
 * The clause for prices that move: which materials, from which day, beyond how much, how it is shown, and whether a fall
 * counts as a rise does.
 */
export function escalationWords({ asOf, design: { offer } }: Pick<JobInput, 'asOf' | 'design'>): string {
  const { materials, triggerPercent, baseOn, proof, bothWays } = offer.escalation;
  return `The price rests on the prices of ${materials.trim()} on ${baseOn ?? asOf}. Where these have risen by more than ${triggerPercent} % on the day the material is bought, as ${proof.trim()} shows, the part beyond ${triggerPercent} % is added to the price as it was paid, and you are told before the order. ${bothWays ? 'Where they have fallen by more than that, the part beyond it comes off in the same way.' : 'Where they have fallen, the price stays.'}`;
}

/** What the client may do until when, where the contract is signed at his home. */
export function cancellationBlocks({ design: { offer }, settings }: JobInput): readonly Block[] {
  if (!offer.signedAtHome) return [];
  const days = settings.stateRules.find(({ id }) => id === offer.ruleId)?.coolingOffDays ?? 3;
  if (days === 0) return [];
  return section(
    'Your right to cancel',
    `You may cancel this contract without any penalty until midnight of the ${ordinal(days)} business day after the day you sign it. Saturdays count as business days; Sundays and federal holidays do not. Two copies of a notice of cancellation come with this paper. Nothing is ordered or cut before that time is over.`,
  );
}

function section(heading: string, text: string): readonly Block[] {
  return [
    { kind: 'heading', text: heading },
    { kind: 'paragraph', text },
  ];
}

function sentence(text: string): string {
  const plain = text.trim();
  return /[.!?]$/.test(plain) ? plain : `${plain}.`;
}

function ordinal(count: number): string {
  return ['first', 'second', 'third', 'fourth', 'fifth'][count - 1] ?? `${count}th`;
}
