import { findLabourTask } from '../../../core/takeoff/labour-tasks.ts';
import { useAnswer } from '../../host/queries.ts';
import { LearnedOffer } from '../../screens/money/learned-offer.tsx';
import '../../screens/money/money.css';

const labourLine = 'labour-';

/** Beside a labour line: what finished jobs took for its task, with the proposed rate to take. Nothing beside other lines. */
export function LearnedForLine({ lineId }: { readonly lineId: string }) {
  const isLabour = lineId.startsWith(labourLine);
  const learning = useAnswer('learning.get', {}, isLabour);
  if (!isLabour) return null;
  const key = lineId.slice(labourLine.length);
  const rate = learning.data?.rates.find(({ task }) => task === key);
  return rate === undefined ? null : <LearnedOffer rate={rate} what={findLabourTask(key)?.label ?? key} />;
}
