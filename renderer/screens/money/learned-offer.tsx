import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { jobsWords, type LearnedRate } from './money-words.ts';

/** What finished jobs took for a task, beside the rate in use, and the proposed rate to take with a press. */
export function LearnedOffer(props: { readonly rate: LearnedRate; readonly what: string }) {
  const { rate, what } = props;
  if (rate.offered === null || rate.mean === null) return null;
  const { offered } = rate;
  const take = async (): Promise<void> => {
    const done = await attempt('learning.takeRate', { task: rate.task, hoursPerUnit: Number(offered) });
    if (done !== undefined) notify(`${what}: ${offered} h is your own rate from now on.`);
  };
  return (
    <span className="learned-offer">
      <span>
        {rate.counted === 1 ? 'The last job' : `The last ${jobsWords(rate.counted)}`}: {rate.mean} h, used{' '}
        {rate.used}
      </span>
      {offered === rate.used ? null : (
        <Button tone="quiet" onPress={() => void take()} aria-label={`Take ${offered} h for ${what}`}>
          Take {offered}
        </Button>
      )}
    </span>
  );
}
