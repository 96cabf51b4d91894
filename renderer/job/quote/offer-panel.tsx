import { validityOf } from '../../../core/offer/validity.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobChoice } from '../parts/choice.tsx';
import { type Offered, useOffered } from './offered.ts';

const levels = [
  { id: 'sum', label: 'One sum' },
  { id: 'phase', label: 'By phase' },
  { id: 'line', label: 'Line by line' },
] as const;

/** The price, how much of it is broken out, and until when it is good. */
export function OfferPanel() {
  const offered = useOffered();
  const { surroundings } = useJob();
  return (
    <Panel title="Price on the quote">
      <div className="fields">
        <JobChoice
          path="design.offer.printLevel"
          label="Broken out"
          choices={levels}
          hint="Costs, hours and markup never print."
        />
        {offered === null ? null : (
          <div className="field">
            <span className="field-label">Total</span>
            <b className="offer-total">{formatUsd(offered.result.estimate.totalUsd)}</b>
          </div>
        )}
      </div>
      {offered === null ? null : <p>{validityWords(offered, surroundings.settings.money.quoteValidDays)}</p>}
    </Panel>
  );
}

function validityWords({ input, result }: Offered, days: number): string {
  const { until, governs, items } = validityOf(input, result.estimate);
  switch (governs) {
    case 'shop':
      return `Good until ${until}: ${days} days from ${input.asOf}, as your settings say. No supplier's price in it runs out before.`;
    case 'suppliers':
      return `Good until ${until}, before your own ${days} days: then the price of ${items.join(', ')} runs out.`;
    case 'past':
      return `Good until ${until} only: the price of ${items.join(', ')} has run out. Ask the supplier again.`;
    default:
      return governs satisfies never;
  }
}
