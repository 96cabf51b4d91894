import { FolderInput, Plus } from 'lucide-react';
import { useDeferredValue, useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand } from '../../commands/command-handlers.ts';
import { attempt } from '../../host/attempt.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { FileButton } from '../../kit/file-button.tsx';
import { focusSearch } from '../../kit/focus-search.ts';
import { Panel } from '../../kit/panel.tsx';
import { Screen } from '../../kit/screen.tsx';
import { SearchField } from '../../kit/search-field.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { Switch } from '../../kit/switch.tsx';
import { ImportFault, type RefusedFile } from './import-fault.tsx';
import { JobsEmpty } from './jobs-empty.tsx';
import { JobsTable, type JobSummary } from './jobs-table.tsx';
import { noneWords, oneWords, waitChoices, waitingJobs, type Waits } from './waiting-jobs.ts';
import { NameJobDialog, type NameJob } from './name-job-dialog.tsx';

/** The list of jobs: find one, begin one, copy one, put one away, move one between machines. */
export function JobsScreen() {
  const [, goTo] = useLocation();
  const [search, setSearch] = useState('');
  const [showsArchived, setShowsArchived] = useState(false);
  const [naming, setNaming] = useState<NameJob | null>(null);
  const [waits, setWaits] = useState<Waits>('all');
  const wanted = useDeferredValue(search.trim());
  const [refused, setRefused] = useState<RefusedFile | null>(null);
  const jobs = useAnswer('jobs.list', { search: wanted, archived: false });
  const archived = useAnswer('jobs.list', { search: wanted, archived: true }, showsArchived);

  const open = (made: { readonly id: string } | undefined): void => {
    if (made !== undefined) goTo(`/jobs/${made.id}`);
  };
  const openSample = async (): Promise<void> => open(await attempt('jobs.openSample', {}));
  const openFinished = async (): Promise<void> => {
    const made = await attempt('jobs.openFinishedSample', {});
    if (made !== undefined) goTo(`/jobs/${made.id}/cost`);
  };
  const importJob = async (text: string, fileName: string): Promise<void> => {
    try {
      const reply = await tell('jobs.import', { text });
      setRefused(reply.ok ? null : { fileName, problem: reply.problem });
      if (reply.ok) open(reply.value);
    } catch {
      setRefused({ fileName, problem: 'lost' });
    }
  };
  useCommand('job.new', () => setNaming({ kind: 'new' }));
  useCommand('job.open-sample', () => void openSample());
  useCommand('job.open-finished-sample', () => void openFinished());
  useCommand('edit.search', focusSearch);

  return (
    <Screen
      title="Jobs"
      actions={
        <>
          <FileButton
            endings={['.json', 'application/json']}
            icon={<FolderInput size={16} aria-hidden="true" />}
            onText={(text, name) => void importJob(text, name)}
          >
            Import job file
          </FileButton>
          <Button
            tone="main"
            icon={<Plus size={16} aria-hidden="true" />}
            onPress={() => setNaming({ kind: 'new' })}
          >
            New job
          </Button>
        </>
      }
    >
      {refused === null ? null : <ImportFault refused={refused} onClose={() => setRefused(null)} />}
      <div className="filters">
        <SearchField label="Search name, customer or address" value={search} onChange={setSearch} />
        <SelectField label="Quotes" labelHidden value={waits} choices={waitChoices} onChange={setWaits} />
        <Switch isSelected={showsArchived} onChange={setShowsArchived}>
          Show archived jobs
        </Switch>
      </div>
      <Answer query={jobs}>
        {(openJobs) => {
          const found = showsArchived ? withArchived(openJobs, archived.data ?? []) : openJobs;
          const rows = waitingJobs(found, waits);
          return (
            <Panel title={showsArchived ? 'Open and archived jobs' : 'Open jobs'} look="flush">
              {rows.length > 0 ? (
                <JobsTable jobs={rows} onCopy={(job) => setNaming({ kind: 'copy', job })} />
              ) : found.length > 0 ? (
                <p className="muted panel-words">
                  {found.length === 1 ? 'The one job here' : `None of the ${found.length} jobs here`}{' '}
                  {found.length === 1 ? oneWords[waits] : noneWords[waits]}.
                </p>
              ) : (
                <JobsEmpty
                  search={wanted}
                  showsArchived={showsArchived}
                  onNew={() => setNaming({ kind: 'new' })}
                  onOpenSample={() => void openSample()}
                  onOpenFinished={() => void openFinished()}
                  onEmptySearch={() => setSearch('')}
                />
              )}
            </Panel>
          );
        }}
      </Answer>
      {naming === null ? null : (
        <NameJobDialog naming={naming} onClose={() => setNaming(null)} onMade={(id) => goTo(`/jobs/${id}`)} />
      )}
    </Screen>
  );
}

/** Open jobs before archived ones. The two lists come one after the other: a job may stand in both for a moment. */
function withArchived(
  openJobs: readonly JobSummary[],
  archived: readonly JobSummary[],
): readonly JobSummary[] {
  const shown = new Set(openJobs.map((job) => job.id));
  return [...openJobs, ...archived.filter((job) => !shown.has(job.id))];
}
