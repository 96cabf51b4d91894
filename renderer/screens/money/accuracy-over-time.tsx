import { type Accuracy, evenReach } from './money-words.ts';

type Held = Accuracy['jobs'][number];

/** The last so many finished jobs have room side by side. */
const mostJobs = 12;
const height = 150;
const top = 12;
const foot = 30;

/**
 * How far each finished job went beyond its estimate, in the order they were finished: hours as rings on a full line, cost as
 * squares on a broken one. The table below says the same in figures.
 */
export function AccuracyOverTime({ accuracy }: { readonly accuracy: Accuracy }) {
  const jobs = accuracy.jobs.slice(-mostJobs);
  if (jobs.length < 2) return null;
  const most = evenReach(
    jobs.flatMap(({ overHoursPercent, overUsdPercent }) => [overHoursPercent, overUsdPercent]),
  );
  const scale: Scale = {
    x: (index) => `${8 + ((index + 0.5) / jobs.length) * 90}%`,
    y: (percent) => top + ((most - percent) / (2 * most)) * (height - top - foot),
  };
  return (
    <>
      <svg className="over-time" width="100%" height={height} aria-hidden="true">
        {[most, 0, -most].map((percent) => (
          <g key={percent}>
            <line
              className={percent === 0 ? 'over-time-zero' : 'over-time-edge'}
              x1="7%"
              x2="99%"
              y1={scale.y(percent)}
              y2={scale.y(percent)}
            />
            <text className="over-time-text" x="6.5%" y={scale.y(percent) + 4} textAnchor="end">
              {percent > 0 ? '+' : ''}
              {percent} %
            </text>
          </g>
        ))}
        <Strand values={jobs.map((job) => job.overUsdPercent)} scale={scale} kind="cost" />
        <Strand values={jobs.map((job) => job.overHoursPercent)} scale={scale} kind="hours" />
        {jobs.map((job, index) => (
          <text
            key={job.jobId}
            className="over-time-text"
            x={scale.x(index)}
            y={height - 8}
            textAnchor="middle"
          >
            {shortName(job)}
          </text>
        ))}
      </svg>
      <p className="money-legend muted">
        <span className="over-time-sign" aria-hidden="true" /> hours,
        <span className="over-time-sign over-time-sign-cost" aria-hidden="true" /> cost: taken beyond
        reckoned, job by job as they were finished.
      </p>
    </>
  );
}

type Scale = {
  readonly x: (index: number) => string;
  readonly y: (percent: number) => number;
};

/** One value a job, joined where both neighbours are known. */
function Strand(props: {
  readonly values: readonly (string | null)[];
  readonly scale: Scale;
  readonly kind: 'hours' | 'cost';
}) {
  const { scale, kind } = props;
  const points = props.values.flatMap((value, index) =>
    value === null ? [] : [{ index, x: scale.x(index), y: scale.y(Number(value)) }],
  );
  return (
    <g className={`over-time-${kind}`}>
      {points.slice(1).map((point, before) => {
        const from = points[before];
        return from === undefined ? null : (
          <line key={point.index} x1={from.x} y1={from.y} x2={point.x} y2={point.y} />
        );
      })}
      {points.map(({ index, x, y }) =>
        kind === 'hours' ? (
          <circle key={index} cx={x} cy={y} r="4.5" />
        ) : (
          <svg key={index} x={x} y={y} overflow="visible">
            <rect x="-4" y="-4" width="8" height="8" />
          </svg>
        ),
      )}
    </g>
  );
}

function shortName({ jobName, finishedOn }: Held): string {
  const name = jobName.split(/[,\s]/)[0] ?? '';
  return `${name.length > 12 ? `${name.slice(0, 11)}…` : name} ${finishedOn.slice(2, 7)}`;
}
