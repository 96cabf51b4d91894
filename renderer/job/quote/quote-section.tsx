import { QuotesPanel } from './quotes-panel.tsx';

/** What the client is offered, and where each quote stands. */
export function QuoteSection() {
  return (
    <div className="stack">
      <QuotesPanel />
    </div>
  );
}
