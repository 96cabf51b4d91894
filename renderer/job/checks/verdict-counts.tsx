import type { CheckResult, Verdict } from '../../../core/checks/check-types.ts';
import { VerdictShape } from './verdict-mark.tsx';

/** What needs a look first, first. */
const order: readonly Verdict[] = ['beyond', 'needs-engineer', 'not-covered', 'within'];
const words: Readonly<Record<Verdict, string>> = {
  beyond: 'beyond the limit',
  'needs-engineer': 'for an engineer',
  'not-covered': 'not covered',
  within: 'within the limit',
};

/** How many checks found what. */
export function VerdictCounts({ checks }: { readonly checks: readonly CheckResult[] }) {
  return (
    <ul className="verdict-counts" aria-label="How the checks stand">
      {order.map((verdict) => {
        const count = checks.filter((check) => check.verdict === verdict).length;
        return (
          <li key={verdict} className={`verdict verdict-${count === 0 ? 'none' : verdict}`}>
            <VerdictShape verdict={verdict} />
            <span>
              {count} {words[verdict]}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
