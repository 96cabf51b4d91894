import { ratioText } from '../../../core/documents/check-words.ts';

/** The bar's length stands for this ratio; its limit, 1, is in the middle. */
const mostShown = 2;

/** A ratio as a bar with the limit marked on it, and as a number. */
export function RatioBar({ ratio }: { readonly ratio: number | null }) {
  if (ratio === null) return <span className="muted">no ratio</span>;
  const share = Math.max(0, Math.min(ratio, mostShown)) / mostShown;
  return (
    <span className="ratio">
      <span className={ratio > 1 ? 'ratio-bar ratio-bar-over' : 'ratio-bar'} aria-hidden="true">
        <span className="ratio-fill" style={{ width: `${(share * 100).toFixed(1)}%` }} />
        <span className="ratio-limit" />
      </span>
      <strong className="ratio-number">{ratioText(ratio)}</strong>
    </span>
  );
}
