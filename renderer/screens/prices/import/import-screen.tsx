import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { ImportingEvent } from '../../../../core/contract/reply.ts';
import type { ImportLayout } from '../../../../core/pricing/import/layout.ts';
import { subscribe } from '../../../bridge.ts';
import { attempt } from '../../../host/attempt.ts';
import { useAnswer } from '../../../host/queries.ts';
import { Banner } from '../../../kit/banner.tsx';
import { Button } from '../../../kit/button.tsx';
import { EmptyState } from '../../../kit/empty-state.tsx';
import { notify } from '../../../kit/notices.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { Screen } from '../../../kit/screen.tsx';
import { TextField } from '../../../kit/text-field.tsx';
import { noteStep } from '../price-steps.ts';
import { holdImport, useHeldImport, type HeldImport } from './held-import.ts';
import { ImportColumns } from './import-columns.tsx';
import { countsInWords, ImportPreview } from './import-preview.tsx';
import { ImportStyle } from './import-style.tsx';
import { usePreview } from './read-preview.ts';
import { PriceFileButton } from './price-file-button.tsx';
import { takeFile } from './take-file.ts';
import './import.css';

/** Names the columns of a supplier's file, shows what it does to the list, and takes it in. */
export function ImportScreen() {
  const held = useHeldImport();
  const [, goTo] = useLocation();
  const [problem, setProblem] = useState<string | null>(null);
  const choose = async (file: File): Promise<void> => {
    const taken = await takeFile(file);
    setProblem(taken.kind === 'problem' ? taken.words : null);
    if (taken.kind !== 'done') return;
    notify(taken.words);
    goTo('/prices');
  };
  const another = (
    <PriceFileButton onFile={(file) => void choose(file)}>
      {held === null ? 'Choose a file' : 'Choose another file'}
    </PriceFileButton>
  );
  return (
    <Screen
      title="Import prices"
      beside={held === null ? null : held.fileName}
      actions={
        <>
          {another}
          <Button onPress={() => goTo('/prices')}>Back to the price list</Button>
        </>
      }
    >
      {problem === null ? null : (
        <Banner tone="problem" isLive>
          {problem}
        </Banner>
      )}
      {held === null ? (
        <EmptyState title="No file is chosen.">
          Choose a supplier’s price list as CSV. Its columns are named here before anything comes in.
        </EmptyState>
      ) : (
        <NamedFile key={held.importId} held={held} />
      )}
    </Screen>
  );
}

function NamedFile({ held }: { readonly held: HeldImport }) {
  const { importId, fileName, opened } = held;
  const [, goTo] = useLocation();
  const [layout, setLayout] = useState<ImportLayout>(opened.layout);
  const { preview, problem, isRead } = usePreview(importId, layout);
  const [name, setName] = useState(opened.layoutName ?? '');
  const [isRunning, setRunning] = useState(false);
  const progress = useProgress(importId);
  const layouts = useAnswer('prices.layouts', {});

  const reopen = async (how: {
    encoding: HeldImport['opened']['encoding'];
    separator: HeldImport['opened']['separator'];
    headerRow: number;
  }): Promise<void> => {
    const again = await attempt('prices.importOpen', { importId, base64: null, ...how });
    if (again === undefined) return;
    const isSameFile = again.layout.columns.length === layout.columns.length;
    holdImport({ importId, fileName, opened: again });
    setLayout({
      ...(isSameFile && how.headerRow === layout.headerRow ? { ...layout } : again.layout),
      headerRow: how.headerRow,
    });
  };
  const run = async (): Promise<void> => {
    setRunning(true);
    const rememberAs = name.trim() === '' ? null : name.trim();
    const told = { ...layout, separator: opened.separator, encoding: opened.encoding };
    const done = await attempt('prices.importRun', { importId, layout: told, rememberAs });
    setRunning(false);
    if (done === undefined) return;
    noteStep(`import of ${fileName}`, done.stepId);
    holdImport(null);
    notify(
      `${fileName} came in: ${done.added} new and ${done.changed} changed items, ${done.prices} prices.`,
    );
    goTo('/prices');
  };
  const stop = async (): Promise<void> => {
    await attempt('prices.importStop', { importId });
    holdImport(null);
    goTo('/prices');
  };

  const counts = isRead && problem === null ? preview?.counts : undefined;
  const canRun = counts?.faults === 0 && counts.added + counts.changed + counts.prices > 0;
  return (
    <div className="import-parts">
      <div className="import-part">
        {opened.layoutName === null ? null : (
          <Banner tone="info">
            {`The columns are read as they were from ${opened.layoutName} last time${dayOf(layouts.data, opened.layoutName)}.`}
          </Banner>
        )}
        <ImportColumns layout={layout} head={opened.head} onChange={setLayout} />
        <ImportStyle
          layout={layout}
          encoding={opened.encoding}
          separator={opened.separator}
          onChange={setLayout}
          onReopen={(how) => void reopen(how)}
        />
      </div>
      <div className="import-part">
        <Panel title="What comes in">
          <div className="import-what">
            {problem === null ? null : (
              <Banner tone="problem" isLive>
                {problem}
              </Banner>
            )}
            {problem === null ? (
              <p role="status">
                {isRead && preview !== null ? countsInWords(preview) : `Reading the file. ${progress}`}
              </p>
            ) : null}
            <div className="fields">
              <div className="full">
                <TextField
                  label="Remember this layout as"
                  hint="The supplier’s name, so that his next file is read alike. Blank: not remembered."
                  value={name}
                  onChange={setName}
                  maxLength={80}
                />
              </div>
            </div>
            <div className="price-tools">
              <Button tone="main" isDisabled={!canRun || isRunning} onPress={() => void run()}>
                {isRunning ? 'Taking it in' : 'Take it in'}
              </Button>
              <Button onPress={() => void stop()}>Cancel</Button>
              {isRunning ? <span className="muted">{progress}</span> : null}
            </div>
          </div>
        </Panel>
        {preview === null || problem !== null ? null : <ImportPreview preview={preview} layout={layout} />}
      </div>
    </div>
  );
}

function dayOf(
  layouts: readonly { readonly name: string; readonly usedOn: string }[] | undefined,
  name: string,
): string {
  const known = layouts?.find((one) => one.name === name);
  return known === undefined ? '' : `, on ${known.usedOn}`;
}

const stages: Readonly<Record<ImportingEvent['stage'], string>> = {
  reading: 'rows read',
  matching: 'rows held against the list',
  writing: 'changes to be written',
};

/** How far the host is with a file, in words. */
function useProgress(importId: string): string {
  const [event, setEvent] = useState<ImportingEvent | null>(null);
  useEffect(
    () =>
      subscribe((heard) => {
        if (heard.kind === 'importing' && heard.importId === importId) setEvent(heard);
      }),
    [importId],
  );
  if (event === null) return '';
  const of = event.of === null ? '' : ` of ${event.of.toLocaleString('en-US')}`;
  return `${event.done.toLocaleString('en-US')}${of} ${stages[event.stage]}.`;
}
