import { Banner } from '../../kit/banner.tsx';
import { useJob } from '../job-context.ts';
import { NoFigures } from '../parts/no-figures.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { ProblemLink } from '../parts/problem-link.tsx';
import { Said } from '../parts/said.tsx';
import { BoardWishes } from './board-wishes.tsx';
import './cut-plan.css';
import { JobOffcuts } from './job-offcuts.tsx';
import { OnHand } from './on-hand.tsx';
import { SearchLine } from './search-line.tsx';
import { StockPlan } from './stock-plan.tsx';
import { Suppliers } from './suppliers.tsx';
import { TriedSumsContext, useTriedSums } from './use-choice-costs.ts';

/** The boards to buy and how to cut them, lumber by lumber, what is known of their cost, and the person's own choices. */
export function CutPlanSection() {
  const { computation } = useJob();
  const sums = useTriedSums();
  if (computation.good === null) return <NoFigures />;
  const { cutPlans, cuttingProblems, unplanned } = computation.good.result;
  return (
    <TriedSumsContext.Provider value={sums}>
      <div className="stack">
        <OldMark />
        <SearchLine />
        {unplanned.map((stock) => (
          <Banner key={stock.group} tone="problem">
            <strong>{stock.group} cannot be planned: </strong>
            <ProblemLink problem={stock.problem} />
            <span className="muted">
              {' '}
              <Said text={`Pieces without a board: ${stock.marks.join(', ')}.`} />
            </span>
          </Banner>
        ))}
        {cutPlans.length + unplanned.length === 0 ? (
          <p className="muted">Nothing is cut from lumber in this job yet.</p>
        ) : (
          <div className="plan-choices">
            <BoardWishes />
            <div className="stack">
              <OnHand />
              <JobOffcuts />
            </div>
          </div>
        )}
        <Suppliers sums={sums} />
        {cutPlans.map((plan, index) => (
          <StockPlan key={plan.group} plan={plan} problem={cuttingProblems[index]?.problem} />
        ))}
      </div>
    </TriedSumsContext.Provider>
  );
}
