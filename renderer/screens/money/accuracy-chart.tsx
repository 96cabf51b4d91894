import type { Accuracy } from './money-words.ts';

/**
 * The hours of a phase beyond what was reckoned, each job a ring on one line, with the mean as a stroke and its spread.
 * The table beside it says the same in figures.
 * @param mostPercent - what reaches either end. [%]
 */
export function AccuracyChart(props: { readonly accuracy: Accuracy; readonly mostPercent: number }) {
  const { accuracy, mostPercent } = props;
  const at = (percent: number): string =>
    `${50 + (Math.max(-mostPercent, Math.min(mostPercent, percent)) / mostPercent) * 47}%`;
  const mean = accuracy.meanHoursPercent === null ? null : Number(accuracy.meanHoursPercent);
  const spread = Number(accuracy.spreadHoursPercent ?? 0);
  return (
    <svg className="accuracy-chart" width="100%" height="20" aria-hidden="true">
      <line className="accuracy-axis" x1="50%" x2="50%" y1="0" y2="20" />
      {mean === null ? null : (
        <>
          <line className="accuracy-spread" x1={at(mean - spread)} x2={at(mean + spread)} y1="10" y2="10" />
          <line className="accuracy-mean" x1={at(mean)} x2={at(mean)} y1="2" y2="18" />
        </>
      )}
      {accuracy.jobs
        .filter(({ overHoursPercent }) => overHoursPercent !== null)
        .map(({ jobId, overHoursPercent }) => (
          <circle key={jobId} className="accuracy-mark" cx={at(Number(overHoursPercent))} cy="10" r="4" />
        ))}
    </svg>
  );
}
