import { EaveChooser } from '../parts/eave-chooser.tsx';
import { Findings } from '../parts/findings.tsx';
import { PlanView } from '../parts/plan-view.tsx';
import { useJob } from '../job-context.ts';
import { AroundEntries } from './around-entries.tsx';
import { EaveEntries, EaveReadings } from './eave-entries.tsx';
import { HouseEntries } from './house-entries.tsx';
import { RakesOfEave } from './rake-entries.tsx';
import { RafterGrid } from './rafter-grid.tsx';

/** The survey: the house, and each eave as it was measured, with its plan drawn as one types. */
export function SurveySection() {
  const { documents, eaveId } = useJob();
  const index = documents.survey.eaves.findIndex((eave) => eave.id === eaveId);
  const eave = documents.survey.eaves[index];
  return (
    <>
      <EaveChooser canChange houseLabel="Job and house" />
      {eave === undefined ? (
        <HouseEntries />
      ) : (
        <div key={eave.id} className="survey">
          <div className="survey-plan">
            <PlanView eaveId={eave.id} />
          </div>
          <div className="survey-side">
            <EaveEntries index={index} />
            <EaveReadings index={index} />
            <AroundEntries index={index} />
            <RakesOfEave eaveId={eave.id} />
            <Findings eaveId={eave.id} />
          </div>
          <div className="survey-grid">
            <RafterGrid index={index} />
          </div>
        </div>
      )}
    </>
  );
}
