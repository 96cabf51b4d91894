import { Banner } from '../../kit/banner.tsx';
import { useJob } from '../job-context.ts';
import { NoFigures } from '../parts/no-figures.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { ProblemLink } from '../parts/problem-link.tsx';
import { Said } from '../parts/said.tsx';
import { StockPlan } from './stock-plan.tsx';

/** The boards to buy and how to cut them, lumber by lumber. */
export function CutPlanSection() {
  const { computation } = useJob();
  if (computation.good === null) return <NoFigures />;
  const { cutPlans, unplanned } = computation.good.result;
  return (
    <div className="stack">
      <OldMark />
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
      ) : null}
      {cutPlans.map((plan) => (
        <StockPlan key={plan.group} plan={plan} />
      ))}
    </div>
  );
}
