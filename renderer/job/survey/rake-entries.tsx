import { Plus, Trash2 } from 'lucide-react';
import type { RakeSurvey } from '../../../core/survey/survey-document.ts';
import { rakeMark } from '../../../core/rake/rake-mark.ts';
import { rakeEntryLabels as labels } from '../../../core/trace/entry-labels.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { addRake, endsWithoutRake, moveRake, rakesOfEave, removeRake } from '../editor/rake-list.ts';
import { useJob } from '../job-context.ts';
import { JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';

/** The gable edges that rise from the ends of an eave, and a way to add one at an end that has none. */
export function RakesOfEave({ eaveId }: { readonly eaveId: string }) {
  const { editor, documents, surroundings, goTo } = useJob();
  const rakes = rakesOfEave(documents, eaveId);
  const free = endsWithoutRake(documents, eaveId);
  return (
    <>
      {rakes.map(({ rake, index }) => (
        <RakeEntries key={rake.id} rake={rake} index={index} />
      ))}
      {free.length === 0 ? null : (
        <Panel title={rakes.length === 0 ? 'Rakes: none' : 'Another rake'}>
          {rakes.length === 0 ? (
            <p className="muted">
              A gable edge that gets an overhang rises from one end of this eave to the ridge.
            </p>
          ) : null}
          <div className="rake-adds">
            {free.map((end) => (
              <Button
                key={end}
                tone="quiet"
                icon={<Plus size={14} aria-hidden="true" />}
                onPress={() => {
                  editor.change(`adding a rake at the ${end} end`, (now) =>
                    addRake(now, eaveId, end, surroundings.prices),
                  );
                  goTo(`survey.rakes.${documents.survey.rakes.length}.runIn`);
                }}
              >
                {`Add a rake at the ${end} end`}
              </Button>
            ))}
          </div>
        </Panel>
      )}
    </>
  );
}

/** Rakes of a job file that rise from no surveyed eave: each can be given one, or taken out. */
export function LooseRakes() {
  const { documents } = useJob();
  return rakesOfEave(documents, null).map(({ rake, index }) => (
    <RakeEntries key={rake.id} rake={rake} index={index} />
  ));
}

/** What was measured at one rake. */
function RakeEntries({ rake, index }: { readonly rake: RakeSurvey; readonly index: number }) {
  const { editor, documents } = useJob();
  const at = (key: string) => `survey.rakes.${index}.${key}`;
  const { eaves } = documents.survey;
  const isLoose = !eaves.some(({ id }) => id === rake.eaveId);
  return (
    <Panel
      title={`Rake ${rakeMark(index)}: ${rake.name}`}
      actions={
        <IconButton
          label={`Remove ${rake.name} (can be undone)`}
          icon={<Trash2 size={16} aria-hidden="true" />}
          onPress={() => editor.change(`removing ${rake.name}`, (now) => removeRake(now, index))}
        />
      }
    >
      <div className="entries entries-2">
        <JobWords path={at('name')} label={labels.name} maxLength={80} />
        {isLoose ? (
          <SelectField
            label="Eave"
            value={null}
            none="Choose its eave"
            choices={eaves.map(({ id, name }) => ({ id, label: name }))}
            path={at('eaveId')}
            onChange={(eaveId) =>
              editor.change('eave of the rake', (now) => moveRake(now, index, { eaveId, end: rake.end }))
            }
          />
        ) : (
          <SelectField
            label={labels.end}
            value={rake.end}
            choices={[
              { id: 'left', label: 'Left' },
              { id: 'right', label: 'Right' },
            ]}
            path={at('end')}
            hint="Seen from outside the eave."
            onChange={(end) =>
              editor.change(labels.end, (now) => moveRake(now, index, { eaveId: rake.eaveId, end }))
            }
          />
        )}
        <JobEntry path={at('runIn')} label={labels.runIn} hint="To the ridge’s centre line." />
        <JobEntry path={at('ridgeThicknessIn')} label={labels.ridgeThicknessIn} />
        <JobEntry
          path={at('firstInsideIn')}
          label={labels.firstInsideIn}
          blankMeans="by stations"
          hint="Gable wall to its near face."
        />
        <JobEntry path={at('pitchRisePer12')} label={labels.pitchRisePer12} blankMeans="the rafter’s" />
        <JobEntry
          path={at('endRafterThicknessIn')}
          label={labels.endRafterThicknessIn}
          blankMeans="the rafter’s"
        />
        <JobEntry path={at('endRafterDepthIn')} label={labels.endRafterDepthIn} blankMeans="the rafter’s" />
        <JobEntry path={at('deckPastIn')} label={labels.deckPastIn} />
        <JobEntry path={at('finishIn')} label={labels.finishIn} hint="Siding behind a ladder." />
      </div>
      <div className="switches">
        <JobSwitch path={at('studsUnder')} label={labels.studsUnder} />
      </div>
      <JobWords path={at('note')} label={labels.note} maxLength={2000} />
    </Panel>
  );
}
