import { ListPlus, ListX } from 'lucide-react';
import { type ClipboardEvent, type KeyboardEvent, useMemo, useState } from 'react';
import type { Problem } from '../../../core/problems/problem.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { isUnfilled } from '../editor/unfilled.ts';
import { insertRafter, nextRafterId, pasteReadings, removeRafter } from '../editor/rafter-list.ts';
import { useMeasuredEave } from '../compute/use-measured-eave.ts';
import { useJob } from '../job-context.ts';
import { JobChoice } from '../parts/choice.tsx';
import { gridColumns, readingTitle } from './grid-columns.ts';
import { moveInGrid } from './grid-keys.ts';
import { RafterRow, type RowDrafts } from './rafter-row.tsx';

const modeChoices = [
  { id: 'running', label: 'Running, from the left end' },
  { id: 'bays-clear', label: 'Bay by bay, clear' },
  { id: 'bays-centres', label: 'Bay by bay, centre to centre' },
] as const;

const readingToChoices = [
  { id: 'centre', label: 'To the centre' },
  { id: 'near-face', label: 'To the near (left) face' },
  { id: 'far-face', label: 'To the far (right) face' },
] as const;

/** The rafters of an eave as a grid: typed down the column as the tape is read. */
export function RafterGrid({ index }: { readonly index: number }) {
  const { editor, documents, computation, goTo } = useJob();
  const [rowInHand, setRowInHand] = useState(0);
  const eave = documents.survey.eaves[index];
  const list = `survey.eaves.${index}.rafters`;
  const drafts = useMemo(() => draftsByRow(documents.drafts, list), [documents.drafts, list]);
  const problems = useMemo(() => problemsByRow(computation.problems, list), [computation.problems, list]);
  const measured = useMeasuredEave(eave?.id ?? '');
  const placed = useMemo(
    () => new Map(measured?.placed.rafters.map((rafter) => [rafter.id, rafter.centreIn])),
    [measured],
  );
  const unfilled = gridColumns
    .map(({ key }) => key)
    .filter((key) => isUnfilled(documents, `survey.eaves.${index}.${key}`))
    .join(' ');
  if (eave === undefined) return null;
  const { rafters } = eave;
  const inHand = Math.min(rowInHand, rafters.length - 1);

  const onPaste = (event: ClipboardEvent<HTMLTableElement>): void => {
    const texts = event.clipboardData
      .getData('text')
      .split(/\r?\n/)
      .map((line) => (line.split('\t')[0] ?? '').trim());
    while (texts.at(-1) === '') texts.pop();
    const { target } = event;
    if (texts.length < 2 || !(target instanceof HTMLInputElement) || target.dataset['column'] !== '0') return;
    event.preventDefault();
    const row = Number(target.dataset['row']);
    editor.change(`pasting ${texts.length} readings`, (now) => pasteReadings(now, index, row, texts));
  };

  return (
    <Panel
      title={`Rafters: ${rafters.length}`}
      look="flush"
      actions={
        <>
          <Button
            tone="quiet"
            icon={<ListPlus size={15} aria-hidden="true" />}
            isDisabled={rafters.length === 0}
            onPress={() => {
              editor.change(`a row above rafter ${inHand + 1}`, (now) => insertRafter(now, index, inHand));
              goTo(`${list}.${inHand}.readingIn`);
            }}
          >
            {`Row above ${Math.max(1, inHand + 1)}`}
          </Button>
          <Button
            tone="quiet"
            icon={<ListX size={15} aria-hidden="true" />}
            isDisabled={rafters.length === 0}
            onPress={() =>
              editor.change(`removing rafter ${inHand + 1}`, (now) => removeRafter(now, index, inHand))
            }
          >
            {`Remove ${Math.max(1, inHand + 1)}`}
          </Button>
        </>
      }
    >
      <div className="grid-tools">
        <JobChoice path={`survey.eaves.${index}.readingMode`} label="Read" choices={modeChoices} />
        {eave.readingMode === 'running' ? (
          <JobChoice
            path={`survey.eaves.${index}.readingTo`}
            label="Reading taken"
            choices={readingToChoices}
          />
        ) : null}
        <p className="muted grid-help">
          Left and right as seen from outside; station 0 at the wall’s left end. Enter goes down, in the last
          row it starts the next rafter. A grey figure is the eave’s own.
        </p>
      </div>
      <div className="grid-room">
        <table
          className="rafter-grid"
          onKeyDown={onGridKey}
          onPaste={onPaste}
          onFocus={(event) => {
            const row = Number((event.target as HTMLElement).dataset['row']);
            if (!Number.isNaN(row)) setRowInHand(row);
          }}
        >
          <caption className="visually-hidden">Rafters of {eave.name}</caption>
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">{readingTitle(eave)}</th>
              <th scope="col">At centre</th>
              <th scope="col">Spacing</th>
              {gridColumns.map((column) => (
                <th key={column.key} scope="col">
                  {column.title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...rafters, null].map((rafter, row) => {
              const id = rafter?.id ?? nextRafterId(eave);
              const centreIn = placed.get(id);
              const before = placed.get(rafters[row - 1]?.id ?? '');
              return (
                <RafterRow
                  key={id}
                  eave={eave}
                  eaveIndex={index}
                  row={row}
                  rafter={rafter}
                  drafts={drafts.get(row)}
                  unfilled={unfilled}
                  problems={problems.get(row)}
                  centreIn={rafter === null ? undefined : centreIn}
                  spacingIn={
                    rafter === null || centreIn === undefined || before === undefined
                      ? undefined
                      : centreIn - before
                  }
                  editor={editor}
                />
              );
            })}
          </tbody>
        </table>
      </div>
    </Panel>
  );
}

function onGridKey(event: KeyboardEvent): void {
  if (moveInGrid(event)) event.preventDefault();
}

function draftsByRow(drafts: Readonly<Record<string, string>>, list: string): ReadonlyMap<number, RowDrafts> {
  const rows = new Map<number, Record<string, string>>();
  for (const [path, text] of Object.entries(drafts)) {
    if (!path.startsWith(`${list}.`)) continue;
    const [row = '', key = ''] = path.slice(list.length + 1).split('.');
    rows.set(Number(row), { ...rows.get(Number(row)), [key]: text });
  }
  return rows;
}

function problemsByRow(problems: readonly Problem[], list: string): ReadonlyMap<number, readonly Problem[]> {
  const rows = new Map<number, Problem[]>();
  for (const problem of problems) {
    if (problem.field?.startsWith(`${list}.`) !== true) continue;
    const row = Number(problem.field.slice(list.length + 1).split('.')[0]);
    rows.set(row, [...(rows.get(row) ?? []), problem]);
  }
  return rows;
}
