import { entryName } from '../../../core/job/entry-name.ts';
import { checkEntryName } from '../../../core/trace/entry-labels.ts';
import { useJob } from '../job-context.ts';

/** Leads to the entry that a check waits for. */
export function MissingEntry({ path }: { readonly path: string }) {
  const { goTo } = useJob();
  return (
    <button type="button" className="text-button" onClick={() => goTo(path)} data-missing={path}>
      Enter: {checkEntryName(path.split('.').at(-1) ?? '') ?? entryName(path)}
    </button>
  );
}
