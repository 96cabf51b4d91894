import { useId } from 'react';
import type { Billing } from './billing-words.ts';
import { dollars } from '../../kit/amounts.ts';

const width = 1000;
const height = 18;

/** The contract as one bar: billed solid, held back hatched, the rest open. Its legend says the same in words. */
export function BillBar({ summary }: { readonly summary: NonNullable<Billing['summary']> }) {
  const hatch = useId();
  const contract = Number(summary.revisedUsd);
  const share = (amount: string): number =>
    contract <= 0 ? 0 : (Math.max(0, Math.min(contract, Number(amount))) / contract) * width;
  const billed = share(summary.billedUsd);
  const held = Math.min(share(summary.retainedUsd), width - billed);
  const percent = contract <= 0 ? 0 : Math.round((Number(summary.billedUsd) / contract) * 100);
  return (
    <div className="bill-bar">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        preserveAspectRatio="none"
        height={height}
        width="100%"
        role="img"
        aria-label={`${percent} % of the contract is billed`}
      >
        <defs>
          <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse">
            <path d="M-2 2 L2 -2 M0 8 L8 0 M6 10 L10 6" className="bill-bar-hatch" />
          </pattern>
        </defs>
        <rect x="0" y="0" width={billed} height={height} className="bill-bar-billed" />
        <rect x={billed} y="0" width={held} height={height} fill={`url(#${hatch})`} />
        <rect x="0.5" y="0.5" width={width - 1} height={height - 1} className="bill-bar-frame" />
      </svg>
      <p className="bill-bar-legend">
        <span className="bill-sign bill-sign-billed" aria-hidden="true" /> billed {dollars(summary.billedUsd)}{' '}
        ({percent} %)
        <span className="bill-sign bill-sign-held" aria-hidden="true" /> held back{' '}
        {dollars(summary.retainedUsd)}
        <span className="bill-sign" aria-hidden="true" /> the rest of {dollars(summary.revisedUsd)}
      </p>
    </div>
  );
}
