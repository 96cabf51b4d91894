import type { EaveEnd } from '../../../core/eave/design-document.ts';
import type { Side } from '../../../core/survey/survey-document.ts';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { SelectField } from '../../kit/select-field.tsx';
import { withValueAt } from '../editor/documents.ts';
import { freeEnd } from '../editor/eave-ends.ts';
import { useJob } from '../job-context.ts';
import { JobEntry } from '../parts/entry.tsx';

const kinds = [
  { id: 'free', label: 'Nothing: free' },
  { id: 'rake', label: 'A rake' },
  { id: 'outside-corner', label: 'Outside corner' },
  { id: 'inside-corner', label: 'Inside corner' },
] as const;

const kindSays: Readonly<Record<EaveEnd['kind'], string>> = {
  free: 'free',
  rake: 'rake',
  'outside-corner': 'outside corner',
  'inside-corner': 'inside corner',
};

/** What an eave meets at its ends, and how far its fascia runs past those that meet nothing. */
export function EndEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const ends = documents.design.eaves[index]?.ends;
  if (ends === undefined) return null;
  return (
    <FoldPanel
      title="Ends of the eave"
      says={`left ${kindSays[ends.left.kind]}, right ${kindSays[ends.right.kind]}`}
    >
      <div className="entries entries-2">
        <EndEntry index={index} side="left" />
        <EndEntry index={index} side="right" />
      </div>
    </FoldPanel>
  );
}

function EndEntry(props: { readonly index: number; readonly side: Side }) {
  const { index, side } = props;
  const { editor, documents, computation } = useJob();
  const design = documents.design.eaves[index];
  if (design === undefined) return null;
  const end = design.ends[side];
  const path = `design.eaves.${index}.ends.${side}`;
  const label = side === 'left' ? 'Left end meets' : 'Right end meets';
  const partners = partnersOf(end.kind);
  const problem = computation.problems.find(({ field }) => field?.startsWith(path) === true);
  const set = (next: EaveEnd): void => editor.change(label, (now) => withValueAt(now, path, next));
  return (
    <div className="end-entry">
      <SelectField
        label={label}
        value={end.kind}
        choices={kinds}
        path={`${path}.kind`}
        onChange={(kind) => set(kind === 'free' ? freeEnd : { kind, meets: partnersOf(kind)[0]?.id ?? '' })}
      />
      {end.kind === 'free' ? (
        <JobEntry
          path={`design.eaves.${index}.fascia.${side === 'left' ? 'pastLeftIn' : 'pastRightIn'}`}
          label={`Fascia past the ${side} end`}
        />
      ) : (
        <SelectField
          label={end.kind === 'rake' ? 'Which rake' : 'Which eave'}
          value={partners.some(({ id }) => id === end.meets) ? end.meets : null}
          none={partners.length === 0 ? 'None measured yet' : 'Choose'}
          choices={partners}
          path={`${path}.meets`}
          problem={problem === undefined ? null : 'Choose what it meets.'}
          onChange={(meets) => set({ ...end, meets })}
        />
      )}
    </div>
  );

  /** What an end of this kind can meet. */
  function partnersOf(kind: EaveEnd['kind']): readonly { readonly id: string; readonly label: string }[] {
    const eaveId = design?.eaveId;
    const { eaves, rakes } = documents.survey;
    if (kind === 'rake')
      return rakes
        .filter((rake) => rake.eaveId === eaveId && rake.end === side)
        .map(({ id, name }) => ({ id, label: name }));
    return eaves.filter(({ id }) => id !== eaveId).map(({ id, name }) => ({ id, label: name }));
  }
}
