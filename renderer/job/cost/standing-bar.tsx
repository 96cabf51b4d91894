import type { PhaseFigures } from './cost-words.ts';

/**
 * A phase's money as a bar to one scale for the whole job: spent (filled), ordered (hatched), the budget as a frame and the
 * forecast as a line. The table beside it says the same in figures.
 * @param mostUsd - what fills the width. [$]
 */
export function StandingBar(props: {
  readonly figures: Pick<PhaseFigures, 'budgetUsd' | 'committedUsd' | 'actualUsd' | 'forecastUsd'>;
  readonly mostUsd: number;
}) {
  const { budgetUsd, committedUsd, actualUsd, forecastUsd } = props.figures;
  const share = (amount: number): string =>
    `${props.mostUsd <= 0 ? 0 : Math.max(0, Math.min(100, (amount / props.mostUsd) * 100))}%`;
  const spent = Number(actualUsd);
  return (
    <svg className="standing-bar" width="100%" height="18" aria-hidden="true">
      <rect className="standing-spent" x="0" y="4" width={share(spent)} height="10" />
      <rect
        className="standing-ordered"
        x={share(spent)}
        y="4"
        width={share(Number(committedUsd))}
        height="10"
        fill="url(#ordered)"
      />
      <rect className="standing-budget" x="0" y="2" width={share(Number(budgetUsd))} height="14" />
      <line
        className="standing-forecast"
        x1={share(Number(forecastUsd))}
        x2={share(Number(forecastUsd))}
        y1="0"
        y2="18"
      />
    </svg>
  );
}

/** What the bars' parts stand for, and the hatch that they share. */
export function StandingLegend() {
  return (
    <p className="standing-legend muted">
      <svg width="0" height="0" aria-hidden="true">
        <defs>
          <pattern
            id="ordered"
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line className="standing-hatch" x1="0" y1="0" x2="0" y2="6" />
          </pattern>
        </defs>
      </svg>
      <span className="legend-sign legend-spent" aria-hidden="true" /> spent
      <span className="legend-sign legend-ordered" aria-hidden="true" /> ordered
      <span className="legend-sign legend-budget" aria-hidden="true" /> budget
      <span className="legend-sign legend-forecast" aria-hidden="true" /> at the end
    </p>
  );
}
