import { useState } from 'react';
import { jobOffcuts, offcutValue, piecesCutUp } from '../../../core/stock/job-offcuts.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, sumUsd } from '../../../core/units/money.ts';
import { MoneyField } from '../../fields/money-field.tsx';
import { attempt } from '../../host/attempt.ts';
import { useAnswer } from '../../host/queries.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';

/** What is left of this job's boards: onto the rack once it is cut, and the boards of the shop that it used off it. */
export function JobOffcuts() {
  const { jobId, computation } = useJob();
  const stock = useAnswer('stock.list', { withGone: true });
  const [usdPerFoot, setUsdPerFoot] = useState<string | null>('0');
  const { good } = computation;
  if (good === null || stock.data === undefined) return null;
  const { cutPlans } = good.result;
  const offcuts = jobOffcuts(cutPlans, good.input.settings.cutting.keepOffcutIn);
  const cutUp = piecesCutUp(cutPlans);
  const isIn = stock.data.some(
    ({ fromJob, forJob, goneOn }) => fromJob?.id === jobId || (forJob?.id === jobId && goneOn !== null),
  );
  const finish = async (): Promise<void> => {
    const done = await attempt('stock.finishJob', {
      jobId,
      used: [...cutUp],
      offcuts: offcuts.map((offcut) => ({
        section: offcut.section,
        grade: offcut.grade,
        lengthIn: offcut.lengthSixteenths / 16,
        valueUsd: offcutValue(offcut.lengthSixteenths, usdPerFoot ?? '0'),
        note: offcut.board,
      })),
    });
    if (done !== undefined)
      notify(`${boards(done.added)} of this job ${done.added === 1 ? 'is' : 'are'} on the rack.`);
  };
  const takeBack = async (): Promise<void> => {
    if ((await attempt('stock.takeBackJob', { jobId })) !== undefined)
      notify('What was left of this job is off the rack again.');
  };
  return (
    <Panel
      title={`Left over, worth keeping: ${offcuts.length}`}
      actions={isIn ? <Button onPress={() => void takeBack()}>Take it back</Button> : null}
    >
      {isIn ? (
        <p>
          This job is cut: what was left of it is on the shop’s rack
          {cutUp.length === 0 ? '.' : `, and ${boards(cutUp.length)} of the shop went into it.`}
        </p>
      ) : (
        <>
          <p className="muted">
            {offcuts.length === 0
              ? 'Nothing as long as Settings say is worth keeping.'
              : `${offcuts.map(({ section, lengthSixteenths }) => `${section} ${formatLength(lengthSixteenths / 16)}`).join(', ')}.`}
            {cutUp.length === 0 ? '' : ` ${boards(cutUp.length)} of the shop will be used up.`}
          </p>
          <div className="wish-row offcut-row">
            <MoneyField
              label="Worth a foot"
              value={usdPerFoot}
              range={{ least: 0, most: 1000 }}
              after={`together ${formatUsd(worthOf(offcuts, usdPerFoot))}`}
              onEntry={(entry) => setUsdPerFoot(entry.value)}
            />
            <Button
              isDisabled={usdPerFoot === null || !computation.current || offcuts.length + cutUp.length === 0}
              onPress={() => void finish()}
            >
              The job is cut: onto the rack
            </Button>
          </div>
        </>
      )}
    </Panel>
  );
}

function worthOf(offcuts: readonly { readonly lengthSixteenths: number }[], usdPerFoot: string | null) {
  return sumUsd(offcuts.map(({ lengthSixteenths }) => offcutValue(lengthSixteenths, usdPerFoot ?? '0')));
}

function boards(count: number): string {
  return `${count} ${count === 1 ? 'board' : 'boards'}`;
}
