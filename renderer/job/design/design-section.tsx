import { Button } from '../../kit/button.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { ErrorBoundary } from '../../kit/error-boundary.tsx';
import { ChecksLine, ChecksStrip } from '../checks/checks-strip.tsx';
import { addDesign } from '../editor/eave-list.ts';
import { useJob } from '../job-context.ts';
import { EaveChooser } from '../parts/eave-chooser.tsx';
import { Findings } from '../parts/findings.tsx';
import { PlanView } from '../parts/plan-view.tsx';
import { BayTable } from './bay-table.tsx';
import { DesignEntries } from './design-entries.tsx';
import { ExtenderTable } from './extender-table.tsx';
import { ExtraCosts } from './extra-costs.tsx';
import { SectionView } from './section-view.tsx';
import { Terms } from './terms.tsx';

/** The overhang's design, eave by eave, with section and plan drawn to scale as one types. */
export function DesignSection() {
  const { editor, documents, surroundings, eaveId } = useJob();
  const designIndex = documents.design.eaves.findIndex((design) => design.eaveId === eaveId);
  return (
    <>
      <EaveChooser canChange={false} houseLabel="Costs and terms" />
      {eaveId === null ? (
        <div className="design-terms">
          <ExtraCosts />
          <Terms />
        </div>
      ) : designIndex < 0 ? (
        <EmptyState
          title="No overhang designed for this eave yet"
          actions={
            <Button
              tone="main"
              onPress={() =>
                editor.change('starting a design', (now) => addDesign(now, eaveId, surroundings.prices))
              }
            >
              Start the design
            </Button>
          }
        >
          Start one, then give the overhang and choose the lumber.
        </EmptyState>
      ) : (
        <div key={eaveId} className="design">
          <div className="design-side">
            <DesignEntries index={designIndex} />
          </div>
          <div className="design-main">
            <ErrorBoundary>
              <ChecksLine eaveId={eaveId} />
            </ErrorBoundary>
            <SectionView eaveId={eaveId} />
            <ErrorBoundary>
              <ChecksStrip eaveId={eaveId} />
            </ErrorBoundary>
            <Findings eaveId={eaveId} />
            <PlanView eaveId={eaveId} />
            <ExtenderTable eaveId={eaveId} designIndex={designIndex} />
            <BayTable eaveId={eaveId} designIndex={designIndex} />
          </div>
        </div>
      )}
    </>
  );
}
