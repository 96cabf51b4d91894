import { useId } from 'react';
import type { ShopJob } from './money-words.ts';

/**
 * A job's money as two bars to one scale for the whole shop: above, the contract as a frame with what is billed (filled) and
 * what is earned (a line); below, the forecast of its cost as a frame with what is spent (hatched). The table beside it says
 * the same in figures.
 * @param mostUsd - what fills the width. [$]
 */
export function MoneyBar(props: {
  readonly job: Pick<ShopJob, 'contractUsd' | 'billedUsd' | 'earnedUsd' | 'costUsd' | 'forecastUsd'>;
  readonly mostUsd: number;
}) {
  const hatch = useId();
  const { contractUsd, billedUsd, earnedUsd, costUsd, forecastUsd } = props.job;
  const share = (amount: string): string =>
    `${props.mostUsd <= 0 ? 0 : Math.max(0, Math.min(100, (Number(amount) / props.mostUsd) * 100))}%`;
  return (
    <svg className="money-bar" width="100%" height="26" aria-hidden="true">
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="money-hatch" x1="0" y1="0" x2="0" y2="6" />
        </pattern>
      </defs>
      <rect className="money-billed" x="0" y="2" width={share(billedUsd)} height="9" />
      <rect className="money-frame" x="0" y="2" width={share(contractUsd)} height="9" />
      <line className="money-earned" x1={share(earnedUsd)} x2={share(earnedUsd)} y1="0" y2="13" />
      <rect x="0" y="15" width={share(costUsd)} height="8" fill={`url(#${hatch})`} />
      <rect className="money-frame" x="0" y="15" width={share(forecastUsd)} height="8" />
    </svg>
  );
}

/** What the bars' parts stand for. */
export function MoneyLegend() {
  return (
    <p className="money-legend muted">
      Above: <span className="money-sign money-sign-billed" aria-hidden="true" /> billed
      <span className="money-sign money-sign-earned" aria-hidden="true" /> earned
      <span className="money-sign" aria-hidden="true" /> contract. Below:
      <span className="money-sign money-sign-spent" aria-hidden="true" /> spent
      <span className="money-sign" aria-hidden="true" /> cost at the end.
    </p>
  );
}
