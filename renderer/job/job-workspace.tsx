import { useMemo, useState, useSyncExternalStore } from 'react';
import { problemSentence } from '../../core/problems/sentence.ts';
import { useAnswer } from '../host/queries.ts';
import { Answer } from '../kit/answer.tsx';
import { Banner } from '../kit/banner.tsx';
import { Screen } from '../kit/screen.tsx';
import './job.css';
import type { JobEditor } from './editor/job-editor.ts';
import { OpenedJob } from './opened-job.tsx';
import { useOpenJob } from './open-job.ts';

/** A job, from tape reading to paper: Survey, Design, Checks, Takeoff, Cut plan, Estimate and Sheets. */
export function JobWorkspace({ jobId }: { readonly jobId: string }) {
  const [again, setAgain] = useState(0);
  const opening = useOpenJob(jobId, again);
  const settings = useAnswer('settings.get', {});
  const estimateOn = useEstimateDay(opening.kind === 'open' ? opening.editor : null);
  const prices = useAnswer('prices.list', { on: estimateOn ?? 'today' }, opening.kind === 'open', true);
  const today = opening.kind === 'open' ? opening.today : '';
  const surroundings = useMemo(
    () =>
      settings.data === undefined || prices.data === undefined
        ? null
        : { today, settings: settings.data.settings, prices: prices.data },
    [today, settings.data, prices.data],
  );
  if (opening.kind === 'problem') {
    return (
      <Screen title="Job">
        <Banner tone="problem" isLive>
          {problemSentence(opening.problem)}
        </Banner>
      </Screen>
    );
  }
  if (opening.kind === 'open' && surroundings !== null) {
    return (
      <OpenedJob
        key={again}
        jobId={jobId}
        editor={opening.editor}
        surroundings={surroundings}
        openAgain={() => setAgain(again + 1)}
      />
    );
  }
  return (
    <Screen title="Job">
      <Answer query={settings}>{() => null}</Answer>
      <Answer query={prices}>{() => null}</Answer>
      <p className="muted">Opening the job</p>
    </Screen>
  );
}

/** The day whose prices the job uses, as it stands in the editor; null follows today. */
function useEstimateDay(editor: JobEditor | null): string | null {
  return useSyncExternalStore(
    editor?.subscribe ?? (() => () => undefined),
    () => editor?.read().history.present.estimateOn ?? null,
  );
}
