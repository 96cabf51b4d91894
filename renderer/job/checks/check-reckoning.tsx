import type { CheckResult } from '../../../core/checks/check-types.ts';
import { limitText, sourceText } from '../../../core/documents/check-words.ts';
import { CheckAdvice } from './check-advice.tsx';
import { CheckCaution } from './check-caution.tsx';
import './checks.css';
import { DecisionNotes } from './decision-notes.tsx';
import { RatioBar } from './ratio-bar.tsx';
import { VerdictMark } from './verdict-mark.tsx';

/** Why a check says what it says: the reckoning step by step with the numbers in it, its sources and assumptions. */
export function CheckReckoning(props: {
  readonly check: CheckResult;
  /** Walks on to the figure or entry that a step used. */
  readonly onStep: (ref: string) => void;
}) {
  const { check } = props;
  return (
    <div className="reckoning">
      <p className="muted">{check.where}</p>
      <p>
        <VerdictMark verdict={check.verdict} />
      </p>
      {check.value === null ? null : (
        <p className="reckoning-figures">
          <strong>{check.value.text}</strong>
          {check.limit === null ? null : <span>against {limitText(check)}</span>}
          <RatioBar ratio={check.ratio} />
        </p>
      )}
      <DecisionNotes checkId={check.id} check={check} />
      <CheckCaution length="short" />
      {check.why.length === 0 ? null : (
        <ol className="reckoning-steps">
          {check.why.map((step, index) => {
            const { ref } = step;
            return (
              <li key={index}>
                <strong>{step.label}</strong>
                {step.formula === '' ? null : <span className="formula">{step.formula}</span>}
                {step.withNumbers === '' ? null : <span className="formula">= {step.withNumbers}</span>}
                <span className="formula">
                  ={' '}
                  {ref === undefined ? (
                    <strong>{step.result}</strong>
                  ) : (
                    <button type="button" className="figure" data-ref={ref} onClick={() => props.onStep(ref)}>
                      <span className="visually-hidden">{step.label}: </span>
                      {step.result}
                    </button>
                  )}
                </span>
                {step.source === undefined ? null : (
                  <span className="check-source">{sourceText(step.source)}</span>
                )}
              </li>
            );
          })}
        </ol>
      )}
      <CheckAdvice check={check} />
      <Listed title="Sources" items={check.source.map((source) => sourceText(source))} />
      <Listed title="Taken as given" items={check.assumptions} />
    </div>
  );
}

function Listed(props: { readonly title: string; readonly items: readonly string[] }) {
  if (props.items.length === 0) return null;
  return (
    <div>
      <h3 className="reckoning-title">{props.title}</h3>
      <ul className="reckoning-list">
        {props.items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </div>
  );
}
