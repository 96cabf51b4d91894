import type { Verdict } from '../../../core/checks/check-types.ts';
import { verdictWords } from '../../../core/documents/check-words.ts';

/** A shape for each verdict, told apart without colour: ring, filled triangle, filled diamond, dashed square. */
export function VerdictShape({ verdict }: { readonly verdict: Verdict }) {
  return (
    <svg className="verdict-shape" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      {shapes[verdict]}
    </svg>
  );
}

/** The shape with its words. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  return (
    <span className={`verdict verdict-${verdict}`}>
      <VerdictShape verdict={verdict} />
      <span>{verdictWords[verdict]}</span>
    </span>
  );
}

const shapes: Readonly<Record<Verdict, React.JSX.Element>> = {
  within: <circle cx="8" cy="8" r="5.5" fill="none" stroke="currentColor" strokeWidth="1.8" />,
  beyond: <path d="M8 1.5 15 14H1Z" fill="currentColor" />,
  'needs-engineer': <path d="M8 .8 15.2 8 8 15.2.8 8Z" fill="currentColor" />,
  'not-covered': (
    <rect
      x="2.5"
      y="2.5"
      width="11"
      height="11"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      strokeDasharray="3 2"
    />
  ),
};
