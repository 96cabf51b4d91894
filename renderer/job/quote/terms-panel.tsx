import { escalationWords } from '../../../core/documents/quote-terms.ts';
import { earliestWorkDay } from '../../../core/offer/cooling-off.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobOption } from '../parts/option.tsx';
import { JobWords } from '../parts/words.tsx';
import { useOffered } from './offered.ts';

const at = 'design.offer';

/** Start and duration, warranty, the clause for prices that move, and the state's rule. */
export function TermsPanel() {
  const { documents, surroundings } = useJob();
  const offered = useOffered();
  const { offer } = documents.design;
  const { settings, today } = surroundings;
  const rule = settings.stateRules.find(({ id }) => id === offer.ruleId);
  const days = rule?.coolingOffDays ?? 3;
  const hours = Number(offered?.result.takeoff.labourHours ?? 0);
  const suggested = Math.ceil(hours / (settings.labour.crewSize * settings.labour.hoursPerDay));
  return (
    <Panel title="Terms">
      <div className="fields">
        <div className="wide">
          <JobWords path={`${at}.start`} label="Start" hint="As you would say it" maxLength={200} />
        </div>
        <JobEntry
          path={`${at}.workingDays`}
          label="Takes"
          after="working days"
          blankMeans="not said"
          hint={suggested > 0 ? `The hours come to ${suggested} days of your crew` : undefined}
        />
        <div className="full">
          <JobWords path={`${at}.warranty`} label="Warranty" multiline rows={2} maxLength={1000} />
        </div>
        <div className="full">
          <JobSwitch path={`${at}.escalation.wanted`} label="The price follows material prices" />
        </div>
        {offer.escalation.wanted ? (
          <>
            <JobWords path={`${at}.escalation.materials`} label="Which materials" maxLength={200} />
            <JobEntry path={`${at}.escalation.triggerPercent`} label="Beyond" after="%" />
            <JobWords
              path={`${at}.escalation.baseOn`}
              label="Reckoned from the prices of"
              hint="Blank: the day of the quote's prices"
            />
            <JobWords path={`${at}.escalation.proof`} label="Shown by" maxLength={200} />
            <div className="full">
              <JobSwitch path={`${at}.escalation.bothWays`} label="A fall comes off too" />
            </div>
            {offered === null ? null : (
              <p className="full muted">
                {escalationWords({ asOf: offered.input.asOf, design: documents.design })}
              </p>
            )}
          </>
        ) : null}
        <div className="wide">
          <JobOption
            path={`${at}.ruleId`}
            label="State rule for deposit and cancelling"
            options={[
              { label: 'None chosen', value: '' },
              ...settings.stateRules.map(({ id, name, verified }) => ({
                label: verified ? name : `${name}, verify`,
                value: id,
              })),
            ]}
            hint={
              rule === undefined
                ? 'Edited in Settings, Quotes'
                : `${rule.note} Noted ${rule.asOf}${rule.verified ? ', verified by you' : '. Verify with your state'}.`
            }
          />
        </div>
        <div className="full">
          <JobSwitch path={`${at}.signedAtHome`} label="Signed at the client's home" />
          {offer.signedAtHome && days > 0 ? (
            <p className="muted">
              {days} business days to cancel
              {rule === undefined ? ', the federal rule (16 CFR 429, from memory: verify)' : ''}. Signed
              today, {today}, lumber may be ordered and cut from {earliestWorkDay(today, days)}.
            </p>
          ) : null}
        </div>
      </div>
    </Panel>
  );
}
