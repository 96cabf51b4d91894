import { useRef, useState } from 'react';
import type { CheckResult } from '../../../core/checks/check-types.ts';
import { sourceText, weakestMark } from '../../../core/documents/check-words.ts';
import { titleOf } from '../../../core/documents/grouped-checks.ts';
import { Button } from '../../kit/button.tsx';
import { useJob } from '../job-context.ts';
import { CheckAdvice } from './check-advice.tsx';
import { DecisionForm } from './decision-form.tsx';
import { DecisionNotes } from './decision-notes.tsx';
import { RatioBar } from './ratio-bar.tsx';
import { VerdictMark } from './verdict-mark.tsx';

/** One check: what it found with its figures, what would bring it within, where its limit is from, who decided what. */
export function CheckItem({ check }: { readonly check: CheckResult }) {
  const { walkBack } = useJob();
  const [deciding, setDeciding] = useState(false);
  const title = titleOf(check);
  const item = useRef<HTMLLIElement>(null);
  // The keyboard goes on from the button that opens the form, once the form or a decision is gone.
  const goOn = (): void => {
    setDeciding(false);
    window.requestAnimationFrame(() =>
      item.current?.querySelector<HTMLButtonElement>('.check-actions button:last-child')?.focus(),
    );
  };
  return (
    <li ref={item} className="check" data-check={check.id}>
      <div className="check-verdict">
        <VerdictMark verdict={check.verdict} />
      </div>
      <div className="check-what">
        <h3 className="check-title">{title}</h3>
        <p>
          {check.what}
          <span className="muted"> · {check.where}</span>
        </p>
      </div>
      <dl className="check-figures">
        {check.value === null ? null : <CheckFigure name="Value" text={check.value.text} />}
        {check.limit === null ? null : (
          <CheckFigure name="Limit" text={check.limit.text} mark={weakestMark(check)} />
        )}
        {check.ratio === null ? null : (
          <div className="check-ratio">
            <dt>Ratio</dt>
            <dd>
              <RatioBar ratio={check.ratio} />
            </dd>
          </div>
        )}
      </dl>
      <div className="check-actions">
        <Button tone="plain" aria-label={`Why: ${title}`} onPress={() => walkBack(`check/${check.id}`)}>
          Why
        </Button>
        <Button
          tone="quiet"
          aria-label={`Record a decision: ${title}`}
          isDisabled={deciding}
          onPress={() => setDeciding(true)}
        >
          Record a decision
        </Button>
      </div>
      <div className="check-notes">
        <CheckAdvice check={check} />
        {check.source.length === 0 ? null : (
          <p className="check-source">
            Source: {check.source.map((source) => sourceText(source)).join('; ')}
          </p>
        )}
        <DecisionNotes checkId={check.id} check={check} onRemoved={goOn} />
        {deciding ? <DecisionForm check={check} onDone={goOn} /> : null}
      </div>
    </li>
  );
}

function CheckFigure(props: { readonly name: string; readonly text: string; readonly mark?: string }) {
  const { mark = '' } = props;
  return (
    <div>
      <dt>{props.name}</dt>
      <dd className="numeric">
        {props.text}
        {mark === '' ? null : <span className="check-mark">{mark}</span>}
      </dd>
    </div>
  );
}
