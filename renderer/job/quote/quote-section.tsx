import { readyAssumptions, readyExclusions } from '../../../core/offer/ready-lists.ts';
import { useJob } from '../job-context.ts';
import { Lacks } from '../parts/lacks.tsx';
import { NoFigures } from '../parts/no-figures.tsx';
import { Allowances } from './allowances.tsx';
import { HiddenWork } from './hidden-work.tsx';
import { OfferPanel } from './offer-panel.tsx';
import { PaymentsPanel } from './payments-panel.tsx';
import { PriceRisk } from './price-risk.tsx';
import { QuestionsPanel } from './questions-panel.tsx';
import './quote.css';
import { QuotesPanel } from './quotes-panel.tsx';
import { ScopePanel } from './scope-panel.tsx';
import { TermsPanel } from './terms-panel.tsx';
import { WaysPanel } from './ways-panel.tsx';
import { WordList } from './word-list.tsx';

/** What the client is offered, and where each quote stands. */
export function QuoteSection() {
  const { computation } = useJob();
  if (computation.good === null)
    return (
      <div className="stack">
        <QuotesPanel />
        <NoFigures />
      </div>
    );
  return (
    <div className="stack">
      <Lacks />
      <div className="estimate">
        <div className="stack">
          <ScopePanel />
          <WaysPanel />
          <Allowances />
          <HiddenWork />
          <WordList
            path="design.exclusions"
            title="Not in the price"
            one="exclusion"
            blank="New exclusion"
            none="Nothing excluded yet beyond what the program adds where a phase has no price."
            ready={readyExclusions}
          />
          <WordList
            path="design.offer.assumptions"
            title="What the price rests on"
            one="assumption"
            blank="New assumption"
            none="Nothing assumed yet: access, power, weather, the roofer's part."
            ready={readyAssumptions}
          />
          <PaymentsPanel />
          <TermsPanel />
        </div>
        <div className="estimate-side">
          <QuotesPanel />
          <OfferPanel />
          <PriceRisk />
          <QuestionsPanel />
        </div>
      </div>
    </div>
  );
}
