import { type KeyboardEvent, useMemo } from 'react';
import type { AsBuilt } from '../../../core/eave/design-document.ts';
import { layOutOneEave } from '../../../core/job/lay-out-eaves.ts';
import type { JobInput } from '../../../core/job/job-file.ts';
import { stillToCut, stillToCutSentence } from '../../../core/job/still-to-cut.ts';
import type { EaveLayout } from '../../../core/layout/layout-types.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { ok, type Result } from '../../../core/result.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { SettledField } from '../../fields/settled-field.tsx';
import { useKeptDrafts } from '../../host/kept-drafts.ts';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { useRowsInParts } from '../../kit/rows-in-parts.tsx';
import { setAsBuilt } from '../editor/as-built.ts';
import { useJob } from '../job-context.ts';
import { readStation } from './hand/station-entry.tsx';
import { rowsAtOnce } from './tail-table.tsx';

/** A tail of the table: where it was laid out, and what was typed back of it. */
type BuiltRow = {
  readonly id: string;
  readonly mark: string;
  /** Null where the layout without what was built has no such tail. [in] */
  readonly plannedIn: number | null;
  readonly built: AsBuilt | undefined;
};

/**
 * What was built, tail by tail in the order of the wall: typed back from the layout sheet. Blocks, fascia joints and what is
 * still to be cut follow from it.
 */
export function AsBuiltTable({ eaveId }: { readonly eaveId: string }) {
  const { computation } = useJob();
  const { good } = computation;
  const layout = good?.result.eaves.find((eave) => eave.eaveId === eaveId);
  const planned = useMemo(() => (good === null ? null : layoutAsPlanned(good.input, eaveId)), [good, eaveId]);
  const rows = useMemo(
    () => (good === null || layout === undefined ? [] : rowsOf(layout, planned, good.input.design.asBuilt)),
    [good, layout, planned],
  );
  const { shown, more } = useRowsInParts(rows, rowsAtOnce);
  if (good === null || layout === undefined || rows.length === 0) return null;
  const placed = layout.extenders.filter(({ inPlace }) => inPlace).length;
  const cut = stillToCut(good.result.eaves, good.result.takeoff.pieces, good.input.design);
  return (
    <FoldPanel title="As built" says={`${placed} of ${layout.extenders.length} in place`}>
      <p className="muted panel-note">
        {stillToCutSentence(cut)} Type back where a tail was really set; a blank stands as laid out.
      </p>
      <table className="table as-built-table" onKeyDown={onRowKey}>
        <caption className="visually-hidden">{layout.name} as built</caption>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col" className="align-right">
              Laid out
            </th>
            <th scope="col" className="align-right">
              As built
            </th>
            <th scope="col" className="align-right">
              Off by
            </th>
            <th scope="col">In place</th>
            <th scope="col">Note</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((row, index) => (
            <Row key={row.id} row={row} index={index} eaveId={eaveId} wallIn={layout.wallLengthIn} />
          ))}
        </tbody>
      </table>
      {more}
    </FoldPanel>
  );
}

function Row(props: {
  readonly row: BuiltRow;
  readonly index: number;
  readonly eaveId: string;
  readonly wallIn: number;
}) {
  const { row, index, eaveId, wallIn } = props;
  const { editor, jobId } = useJob();
  const drafts = useKeptDrafts(`as-built/${jobId}/${eaveId}`);
  const { built, plannedIn } = row;
  const builtIn = built?.stationIn ?? null;
  const set = (what: string, change: Parameters<typeof setAsBuilt>[3]): void =>
    editor.change(`${what} of ${row.mark}`, (now) => setAsBuilt(now, eaveId, row.id, change));
  return (
    <tr data-row={index}>
      <th scope="row" className="no-wrap">
        {row.mark}
      </th>
      <td className="align-right">{plannedIn === null ? '' : formatLength(plannedIn)}</td>
      <td className="grid-cell">
        <SettledField
          label={`As-built station of ${row.mark}`}
          labelHidden
          look="cell"
          text={builtIn === null ? '' : formatLength(builtIn)}
          draft={drafts.get(row.id)}
          onDraft={(draft) => drafts.set(row.id, draft)}
          read={(text) => readBuilt(text, wallIn)}
          onTake={(stationIn) =>
            set('as-built station', stationIn === null ? { stationIn } : { stationIn, inPlace: true })
          }
        />
      </td>
      <td className="align-right">
        {builtIn === null || plannedIn === null ? '' : offWords(builtIn - plannedIn)}
      </td>
      <td>
        <input
          type="checkbox"
          aria-label={`${row.mark} is in place`}
          checked={built?.inPlace === true}
          onChange={(event) =>
            set(
              'in place',
              // What is in place stays there, whatever the layout does later.
              event.target.checked
                ? { inPlace: true, stationIn: builtIn ?? plannedIn }
                : { inPlace: false, ...(builtIn === plannedIn ? { stationIn: null } : {}) },
            )
          }
        />
      </td>
      <td className="grid-cell grid-note">
        <input
          className="cell-input"
          aria-label={`Note on ${row.mark}`}
          value={built?.note ?? ''}
          maxLength={500}
          autoComplete="off"
          onChange={(event) => {
            const note = event.target.value;
            editor.typeWith(`note on ${row.mark}`, `as-built note ${eaveId} ${row.id}`, (now) =>
              setAsBuilt(now, eaveId, row.id, { note }),
            );
          }}
          onBlur={editor.seal}
        />
      </td>
    </tr>
  );
}

/** Enter goes on to the same entry of the next tail, as one reads down the sheet. */
function onRowKey(event: KeyboardEvent): void {
  const { target } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type === 'checkbox') return;
  const row = target.closest('tr');
  const next = row?.nextElementSibling;
  const cell = target.closest('td');
  if (cell === null || !(next instanceof HTMLTableRowElement)) return;
  const input = next.cells[cell.cellIndex]?.querySelector('input');
  input?.focus();
  input?.select();
}

function readBuilt(text: string, wallIn: number): Result<number | null, Problem> {
  return text.trim() === '' ? ok(null) : readStation(text, 0, wallIn);
}

/** How far a tail was set from where it was laid out: `1/4" right`. */
function offWords(offIn: number): string {
  const length = formatLength(Math.abs(offIn));
  if (length === '0"') return 'as laid out';
  return `${length} ${offIn < 0 ? 'left' : 'right'}`;
}

/** The eave without what was built on it; null where that cannot be laid out. */
function layoutAsPlanned(input: JobInput, eaveId: string): EaveLayout | null {
  const asBuilt = input.design.asBuilt.filter((one) => one.eaveId !== eaveId);
  const layout = layOutOneEave({ ...input, design: { ...input.design, asBuilt } }, eaveId);
  return layout.ok ? layout.value : null;
}

/** The tails that are laid out, and those that were built and are laid out no more, in the order of the wall. */
function rowsOf(
  layout: EaveLayout,
  planned: EaveLayout | null,
  asBuilt: readonly AsBuilt[],
): readonly BuiltRow[] {
  const plannedIn = new Map(planned?.extenders.map(({ id, centreIn }) => [id, centreIn]));
  return layout.extenders
    .map((tail) => ({
      id: tail.id,
      mark: tail.mark,
      plannedIn: plannedIn.get(tail.id) ?? null,
      built: asBuilt.find((one) => one.eaveId === layout.eaveId && one.extenderId === tail.id),
      orderIn: plannedIn.get(tail.id) ?? tail.centreIn,
    }))
    .toSorted((a, b) => a.orderIn - b.orderIn);
}
