import { withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';

/** The bays in which an old block stands, or none does, unlike in the others of the eave. */
export function OldBlockEntries({ index }: { readonly index: number }) {
  const { editor, documents } = useJob();
  const eave = documents.survey.eaves[index];
  if (eave === undefined) return null;
  const others = new Set(eave.otherOldBlocks);
  const set = (rafterId: string, name: string, differs: boolean): void =>
    editor.change(`old block in bay ${name}`, (now) =>
      withValueAt(now, `survey.eaves.${index}.otherOldBlocks`, [
        ...eave.otherOldBlocks.filter((id) => id !== rafterId),
        ...(differs ? [rafterId] : []),
      ]),
    );
  return (
    <fieldset className="bay-marks" data-path={`survey.eaves.${index}.otherOldBlocks`} tabIndex={-1}>
      <legend>An old block stands between rafters</legend>
      {eave.rafters.slice(0, -1).map((rafter, at) => {
        const name = `${at + 1} and ${at + 2}`;
        return (
          <label key={rafter.id} className="bay-mark">
            <input
              type="checkbox"
              checked={others.has(rafter.id) !== eave.hasOldBlocks}
              onChange={(event) => set(rafter.id, name, event.target.checked !== eave.hasOldBlocks)}
            />
            {name}
          </label>
        );
      })}
    </fieldset>
  );
}

/** What the folded entries hold: `in every bay`, `in 3 of 20 bays`. */
export function oldBlocksSay(eave: {
  readonly rafters: readonly { readonly id: string }[];
  readonly hasOldBlocks: boolean;
  readonly otherOldBlocks: readonly string[];
}): string {
  const bays = eave.rafters.slice(0, -1);
  const others = new Set(eave.otherOldBlocks);
  const count = bays.filter(({ id }) => others.has(id) !== eave.hasOldBlocks).length;
  if (count === 0) return 'in no bay';
  return count === bays.length ? 'in every bay' : `in ${count} of ${bays.length} bays`;
}
