import { X } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { explain } from '../../../core/trace/explain.ts';
import type { Explanation } from '../../../core/trace/trace.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { CheckReckoning } from '../checks/check-reckoning.tsx';
import { useChecks } from '../checks/use-checks.ts';
import { useJob } from '../job-context.ts';
import { Said } from '../parts/said.tsx';
import { placeOfRef } from './place-of-ref.ts';

/**
 * Walks a figure back, one step at a time, until the tape reading, the price of a day or the setting that it came
 * from. Escape closes it and gives the focus back.
 */
export function WalkBackPanel(props: {
  readonly startRef: string;
  readonly onClose: () => void;
  readonly onLeave: (route: string) => void;
}) {
  const { computation } = useJob();
  const [trail, setTrail] = useState<readonly string[]>([props.startRef]);
  const [cameFrom] = useState(() => document.activeElement);
  const close = (): void => {
    props.onClose();
    if (cameFrom instanceof HTMLElement) cameFrom.focus();
  };
  const { good } = computation;
  const steps = good === null ? [] : trail.map((ref) => explain(ref, good.input, good.result));
  const step = steps.at(-1);
  return (
    <aside
      className="walk"
      aria-label="Where the figure comes from"
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <header className="walk-head">
        <span className="walk-name">Where it comes from</span>
        <IconButton label="Close" icon={<X size={16} aria-hidden="true" />} onPress={close} />
      </header>
      {trail.length < 2 ? null : (
        <nav aria-label="Steps so far">
          <ol className="walk-trail">
            {steps.slice(0, -1).map((one, index) => (
              <li key={trail[index]}>
                <button
                  type="button"
                  className="text-button"
                  onClick={() => setTrail(trail.slice(0, index + 1))}
                >
                  {one?.title ?? trail[index]}
                </button>
              </li>
            ))}
          </ol>
        </nav>
      )}
      <StepHeading key={trail.length} title={step?.title ?? 'Not in the figures any more'} />
      {step === undefined ? (
        <p>This figure is no longer part of the job. Close this and choose another.</p>
      ) : (
        <WalkStep step={step} onStep={(ref) => setTrail([...trail, ref])} onLeave={props.onLeave} />
      )}
    </aside>
  );
}

/** The step's name; takes the focus when the step is reached, so that the keyboard goes on from there. */
function StepHeading({ title }: { readonly title: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <h2 ref={heading} tabIndex={-1} className="walk-title">
      {title}
    </h2>
  );
}

function WalkStep(props: {
  readonly step: Explanation;
  readonly onStep: (ref: string) => void;
  readonly onLeave: (route: string) => void;
}) {
  const { step } = props;
  const { documents, goTo } = useJob();
  const checks = useChecks();
  const place = placeOfRef(step.ref, documents);
  const check = checks?.find((one) => `check/${one.id}` === step.ref);
  if (check !== undefined) return <CheckReckoning check={check} onStep={props.onStep} />;
  return (
    <>
      <p className="walk-value">
        <Said text={step.value} />
      </p>
      <p>
        <Said text={step.how} />
      </p>
      {step.parts.length === 0 ? null : (
        <table className="table walk-parts">
          <caption className="visually-hidden">What {step.title} was made of</caption>
          <thead>
            <tr>
              <th scope="col">Made of</th>
              <th scope="col" className="align-right">
                Figure
              </th>
            </tr>
          </thead>
          <tbody>
            {step.parts.map((part, index) => (
              <tr key={`${part.ref ?? part.label} ${index}`}>
                <th scope="row">{part.label}</th>
                <td className="align-right">
                  <PartValue value={part.value} stepRef={part.ref} label={part.label} onStep={props.onStep} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {place === undefined ? null : place.kind === 'entry' ? (
        <Button tone="main" onPress={() => goTo(place.path)}>
          Go to entry
        </Button>
      ) : (
        <Button onPress={() => props.onLeave(place.route)}>{place.label}</Button>
      )}
    </>
  );
}

function PartValue(props: {
  readonly value: string;
  readonly stepRef: string | undefined;
  readonly label: string;
  readonly onStep: (ref: string) => void;
}) {
  const { stepRef } = props;
  if (stepRef === undefined) return <span>{props.value}</span>;
  return (
    <button type="button" className="figure" onClick={() => props.onStep(stepRef)} data-ref={stepRef}>
      <span className="visually-hidden">{props.label}: </span>
      {props.value}
    </button>
  );
}
