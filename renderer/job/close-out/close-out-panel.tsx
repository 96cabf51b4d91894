import { useState } from 'react';
import { Link } from 'wouter';
import type { CommandOutput } from '../../../core/contract/contract.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { CloseOutForm } from './close-out-form.tsx';
import '../../screens/money/money.css';
import { dollars, percentWords } from '../../kit/amounts.ts';

type Shown = CommandOutput<'money.closeOut'>;

/** The end of a job: a minute to say what surprised him, then a report of what it came to. */
export function CloseOutPanel() {
  const { jobId } = useJob();
  const closeOut = useAnswer('money.closeOut', { jobId });
  return (
    <Answer query={closeOut}>
      {(shown) =>
        shown.figures === null ? null : <End key={shown.finished?.finishedOn ?? ''} shown={shown} />
      }
    </Answer>
  );
}

function End({ shown }: { readonly shown: Shown }) {
  const { jobId, surroundings } = useJob();
  const [isWriting, setWriting] = useState(false);
  const { finished } = shown;
  const print = async (): Promise<void> => {
    const paper = await attempt('money.jobReport', { jobId, paperSize: surroundings.settings.paperSize });
    if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
  };
  const reopen = async (): Promise<void> => {
    if ((await attempt('money.reopen', { jobId })) !== undefined)
      notify('The job is open again; nothing is learned from it meanwhile.');
  };
  return (
    <Panel
      title="The end of the job"
      actions={
        finished === null ? (
          isWriting ? null : (
            <Button onPress={() => setWriting(true)}>Mark the job as finished…</Button>
          )
        ) : (
          <>
            <Button onPress={() => void print()}>Job report as PDF</Button>
            <Button tone="quiet" onPress={() => setWriting(!isWriting)}>
              {isWriting ? 'Leave the words as they are' : 'Change the words'}
            </Button>
            <Button tone="quiet" onPress={() => void reopen()}>
              Take it up again
            </Button>
          </>
        )
      }
    >
      <div className="stack">
        {finished === null ? (
          isWriting ? null : (
            <p className="muted">
              Once the last hours and receipts are in, mark the job as finished: it takes a minute, and later
              estimates learn from it.
            </p>
          )
        ) : (
          <>
            <Outcome finished={finished} />
            <p className="muted">
              Boards and offcuts that are worth keeping stand under{' '}
              <Link href={`/jobs/${jobId}/cut-plan`}>Cut plan</Link>.
            </p>
          </>
        )}
        {finished?.changedSince === true ? (
          <Banner
            tone="caution"
            actions={<Button onPress={() => void takeIn(jobId, finished)}>Take it in</Button>}
          >
            Hours, papers or payments came in since the job was finished. The report and what is learned do
            not know them yet.
          </Banner>
        ) : null}
        {isWriting ? <CloseOutForm shown={shown} onDone={() => setWriting(false)} /> : null}
      </div>
    </Panel>
  );
}

async function takeIn(jobId: string, finished: NonNullable<Shown['finished']>): Promise<void> {
  const { finishedOn, words } = finished;
  if ((await attempt('money.finish', { jobId, finishedOn, words })) !== undefined)
    notify('The report now holds what came in.');
}

function Outcome({ finished }: { readonly finished: NonNullable<Shown['finished']> }) {
  const { outcome, words } = finished;
  return (
    <>
      <p>
        Finished on {finished.finishedOn}. Margin reckoned {dollars(outcome.plannedMarginUsd)} (
        {percentWords(outcome.plannedMarginPercent)}), made <b>{dollars(outcome.madeMarginUsd)}</b> (
        {percentWords(outcome.madeMarginPercent)}).
        {outcome.ownerHourUsd === null
          ? ''
          : ` Each of the ${outcome.ownerHours} hours of ${words.owner ?? 'the owner'} earned ${dollars(outcome.ownerHourUsd)}, ${dollars(outcome.ownerHourAfterOverheadUsd ?? '0')} after overhead.`}
      </p>
      {words.surprise.trim() === '' ? null : (
        <p>
          <b>What surprised you:</b> {words.surprise}
          {words.remind ? <span className="muted"> Asked before every later quote.</span> : null}
        </p>
      )}
      {words.willChange.trim() === '' ? null : (
        <p>
          <b>What you will do otherwise:</b> {words.willChange}
        </p>
      )}
    </>
  );
}
