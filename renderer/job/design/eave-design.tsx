import type { EaveDesign } from '../../../core/eave/design-document.ts';
import { ErrorBoundary } from '../../kit/error-boundary.tsx';
import { ChecksLine, ChecksStrip } from '../checks/checks-strip.tsx';
import { Findings } from '../parts/findings.tsx';
import { AsBuiltTable } from './as-built-table.tsx';
import { BayTable } from './bay-table.tsx';
import { CutTable } from './cut-table.tsx';
import { DesignEntries } from './design-entries.tsx';
import { DesignPlan } from './design-plan.tsx';
import './design.css';
import { DrawingsPanel } from './drawings-panel.tsx';
import { TailsInHand, WhileResting } from './hand/tails-in-hand.tsx';
import { RakeDesigns } from './rake-entries.tsx';
import { RakeTables } from './rake-view.tsx';
import { StaircasePanel } from './staircase/staircase-panel.tsx';
import { TailTable } from './tail-table.tsx';
import { VariantTable } from './variant-table.tsx';

/** The design of one eave: its choices, the plan with the tails in hand, the other drawings and what follows. */
export function EaveDesignView(props: { readonly index: number; readonly design: EaveDesign }) {
  const { index, design } = props;
  const { eaveId } = design;
  return (
    <TailsInHand index={index} design={design}>
      <div className="design">
        <div className="design-side">
          <DesignEntries index={index} />
          <RakeDesigns eaveId={eaveId} />
        </div>
        <div className="design-main">
          <ErrorBoundary>
            <ChecksLine eaveId={eaveId} />
          </ErrorBoundary>
          <ErrorBoundary>
            <StaircasePanel key={eaveId} eaveId={eaveId} />
          </ErrorBoundary>
          <DesignPlan />
          <WhileResting>
            <DrawingsPanel />
          </WhileResting>
          <ErrorBoundary>
            <ChecksStrip eaveId={eaveId} />
          </ErrorBoundary>
          <Findings eaveId={eaveId} />
          <WhileResting>
            <TailTable />
            <BayTable />
          </WhileResting>
          <CutTable eaveId={eaveId} />
          <VariantTable eaveId={eaveId} />
          <AsBuiltTable eaveId={eaveId} />
          <RakeTables eaveId={eaveId} />
        </div>
      </div>
    </TailsInHand>
  );
}
