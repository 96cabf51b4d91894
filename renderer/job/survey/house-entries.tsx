import { Plus } from 'lucide-react';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { addEave } from '../editor/eave-list.ts';
import { useJob } from '../job-context.ts';
import { JobChoice } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';
import { LooseRakes } from './rake-entries.tsx';
import { SiteEntries } from './site-entries.tsx';

const accessChoices = [
  { id: 'easy', label: 'Easy: level ground, room to work' },
  { id: 'ordinary', label: 'Ordinary' },
  { id: 'hard', label: 'Hard: slope, planting or a roof below' },
] as const;

/** Whose job it is, where, and what holds for the whole house. */
export function HouseEntries() {
  const { editor, documents, surroundings, goTo } = useJob();
  return (
    <div className="house">
      {documents.survey.eaves.length > 0 ? null : (
        <div className="empty-state">
          <p className="empty-title">No eave measured yet</p>
          <p>
            Add the first eave, then type its length, pitch, height above plate and the rafters’ readings as
            they stand on the tape.
          </p>
          <div className="empty-actions">
            <Button
              tone="main"
              data-path="survey.eaves"
              icon={<Plus size={14} aria-hidden="true" />}
              onPress={() => {
                editor.change('adding an eave', (now) => addEave(now, surroundings.prices));
                goTo('survey.eaves.0.name');
              }}
            >
              Add the first eave
            </Button>
          </div>
        </div>
      )}
      <div className="house-panels">
        <Panel title="Job">
          <div className="entries entries-2">
            <JobWords path="info.name" label="Job name" maxLength={120} />
            <JobWords path="info.siteAddress" label="Site address" maxLength={300} />
          </div>
          <JobWords path="info.notes" label="Notes for the job" multiline rows={4} maxLength={20000} />
        </Panel>
        <Panel title="Customer">
          <div className="entries entries-2">
            <JobWords path="info.customer.name" label="Name" maxLength={120} />
            <JobWords path="info.customer.address" label="Address" maxLength={300} />
            <JobWords path="info.customer.phone" label="Phone" type="tel" maxLength={60} />
            <JobWords path="info.customer.email" label="E-mail" type="email" maxLength={120} />
          </div>
        </Panel>
        <Panel title="House">
          <div className="entries entries-2">
            <JobEntry
              path="survey.yearBuilt"
              label="Year built"
              blankMeans="not known"
              hint="Before 1978: ask about lead paint before anything is disturbed."
            />
            <JobEntry path="survey.storeys" label="Storeys" />
            <JobChoice path="survey.access" label="Access" choices={accessChoices} />
          </div>
          <JobWords path="survey.notes" label="Survey notes" multiline rows={4} maxLength={20000} />
        </Panel>
      </div>
      <LooseRakes />
      <SiteEntries />
    </div>
  );
}
