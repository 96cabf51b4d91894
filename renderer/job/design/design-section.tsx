import { Button } from '../../kit/button.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { addDesign } from '../editor/eave-list.ts';
import { useJob } from '../job-context.ts';
import { EaveChooser } from '../parts/eave-chooser.tsx';
import { EaveDesignView } from './eave-design.tsx';
import { ExtraCosts } from './extra-costs.tsx';

/** The overhang's design, eave by eave, with section and plan drawn to scale as one types. */
export function DesignSection() {
  const { editor, documents, surroundings, eaveId } = useJob();
  const designIndex = documents.design.eaves.findIndex((one) => one.eaveId === eaveId);
  const design = documents.design.eaves[designIndex];
  return (
    <>
      <EaveChooser canChange={false} houseLabel="Extra costs" />
      {eaveId === null ? (
        <div className="design-terms">
          <ExtraCosts />
        </div>
      ) : design === undefined ? (
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
        <EaveDesignView key={eaveId} index={designIndex} design={design} />
      )}
    </>
  );
}
