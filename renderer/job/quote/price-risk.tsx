import { Decimal } from 'decimal.js';
import type { ValidityAdvice } from '../../../core/pricing/history/validity-advice.ts';
import { validityAdvice } from '../../../core/pricing/history/validity-advice.ts';
import { formatUsd, sumUsd, usd, zeroUsd } from '../../../core/units/money.ts';
import '../../charts/charts.css';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { useMaterialHistory } from './use-material-history.ts';

/** How far the prices of this job's materials moved in the time that the quote stays open, and what to do about it. */
export function PriceRisk() {
  const { computation, documents, editor } = useJob();
  const history = useMaterialHistory();
  const { good } = computation;
  if (good === null || history === null || history.basket.lines.length === 0) return null;
  const { input, result } = good;
  const { estimate } = result;
  const validDays = input.settings.money.quoteValidDays;
  const advice = validityAdvice(history.steps, input.asOf, {
    materialsUsd: sumUsd(
      estimate.lines.filter(({ kind }) => kind === 'material').map(({ costUsd }) => costUsd),
    ),
    contingencyUsd: estimate.totals.find(({ key }) => key === 'contingency')?.amountUsd ?? zeroUsd,
    validDays,
  });
  const { escalation } = documents.design.offer;
  return (
    <Panel title="How far prices move while the quote is open">
      {advice.kind === 'too-little' ? (
        <p className="muted">{tooLittleWords(advice)}</p>
      ) : (
        <>
          <p className="risk-words">{riskWords(advice, input.asOf)}</p>
          <dl className="risk-figures">
            <div>
              <dt>Half of the times, up to</dt>
              <dd>{signed(advice.risk.medianPercent)}</dd>
            </div>
            <div>
              <dt>Nine times in ten, up to</dt>
              <dd>{signed(advice.risk.highPercent)}</dd>
            </div>
            <div>
              <dt>The worst</dt>
              <dd>{signed(advice.risk.mostPercent)}</dd>
            </div>
          </dl>
          <p className="risk-words">
            {advice.isCarried
              ? `Nine times in ten that costs no more than ${formatUsd(advice.highUsd)}, which the contingency carries.`
              : adviceWords(advice)}
          </p>
          {advice.isCarried || escalation.wanted ? null : (
            <Button
              onPress={() =>
                editor.change('adding a clause on prices', (now) =>
                  withValueAt(now, 'design.offer.escalation', {
                    ...now.design.offer.escalation,
                    wanted: true,
                    triggerPercent: advice.triggerPercent,
                  }),
                )
              }
            >
              {`Add a clause from ${advice.triggerPercent} % on`}
            </Button>
          )}
        </>
      )}
      {escalation.wanted ? (
        <p className="muted">{`The offer has a clause on prices, from ${escalation.triggerPercent} % on.`}</p>
      ) : null}
    </Panel>
  );
}

function tooLittleWords({ risk }: Extract<ValidityAdvice, { kind: 'too-little' }>): string {
  return `Too little history to say: the prices of these materials are known together for ${risk.haveDays} ${risk.haveDays === 1 ? 'day' : 'days'} and changed ${risk.haveChanges === 1 ? 'once' : `${risk.haveChanges} times`}. It takes ${risk.needDays} days, three times the ${risk.days} that a quote stays open, and ${risk.needChanges} changes. Note prices as you hear them.`;
}

function riskWords({ risk }: Extract<ValidityAdvice, { kind: 'known' }>, asOf: string): string {
  return `The same materials, bought ${risk.days} days apart, on ${risk.windows} days from ${risk.firstStart} to ${risk.lastStart}: by how much the later purchase was dearer. Prices up to ${asOf}.`;
}

function adviceWords(advice: Extract<ValidityAdvice, { kind: 'known' }>): string {
  const shorter =
    advice.shorterDays === null
      ? 'No shorter time is carried either.'
      : `${advice.shorterDays} ${advice.shorterDays === 1 ? 'day is' : 'days are'} carried (Settings, Quotes stay good).`;
  return `One time in ten the rise costs more than ${formatUsd(usd(advice.highUsd))}, which the contingency does not carry. ${shorter} Or add a clause on prices.`;
}

/** E.g. `+2.4 %`, `0.0 %`, `-1.0 %`. */
function signed(percent: string): string {
  return `${new Decimal(percent).gt(0) ? '+' : ''}${percent} %`;
}
