import { useJob } from '../job-context.ts';

/** Says beside figures or drawings that they are from before the last change; nothing while they are current. */
export function OldMark() {
  const { computation } = useJob();
  if (computation.current || computation.good === null) return null;
  return <span className="tag tag-care">From before the last change</span>;
}
