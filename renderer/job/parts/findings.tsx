import type { Finding } from '../../../core/layout/layout-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { Panel } from '../../kit/panel.tsx';
import { useMeasuredEave } from '../compute/use-measured-eave.ts';
import { useJob } from '../job-context.ts';
import { Caution } from './caution.tsx';
import { Figure } from './figure.tsx';
import { Said } from './said.tsx';

/** What the program noticed on an eave, by station, and the caution where a structural figure is among it. */
export function Findings({ eaveId }: { readonly eaveId: string }) {
  const { computation } = useJob();
  const measured = useMeasuredEave(eaveId);
  const result = computation.good?.result;
  const layout = result?.eaves.find((eave) => eave.eaveId === eaveId);
  // Before there is a design, the readings can be questioned all the same.
  if (layout === undefined && (measured === undefined || measured.placed.rafters.length === 0)) return null;
  const findings =
    layout === undefined
      ? (measured?.findings ?? [])
      : (result?.findings.filter((finding) => finding.eaveId === eaveId) ?? []);
  const rafters = layout?.rafters ?? [];
  const nearest = (stationIn: number): string | undefined =>
    rafters.toSorted((a, b) => Math.abs(a.centreIn - stationIn) - Math.abs(b.centreIn - stationIn))[0]?.id;
  return (
    <Panel title={findings.length === 0 ? 'Findings: none' : `Findings: ${findings.length}`}>
      {findings.length === 0 ? (
        <p className="muted">
          {layout === undefined
            ? 'Nothing stands out in the readings so far.'
            : 'Nothing stands out in the readings or the design of this eave.'}
        </p>
      ) : (
        <ul className="findings">
          {findings.map((finding) => (
            <li key={`${finding.topic} ${finding.stationIn ?? ''} ${finding.text}`} className="finding">
              <FindingStation finding={finding} rafterId={nearest(finding.stationIn ?? 0)} />
              <span>
                <Said text={finding.text} />
                {finding.structural ? <span className="tag tag-care">Advisory</span> : null}
              </span>
            </li>
          ))}
        </ul>
      )}
      {findings.some((finding) => finding.structural) ? <Caution /> : null}
    </Panel>
  );
}

function FindingStation(props: { readonly finding: Finding; readonly rafterId: string | undefined }) {
  const { finding, rafterId } = props;
  if (finding.stationIn === null)
    return (
      <span className="finding-at muted">{finding.rakeId === undefined ? 'All along' : 'At the rake'}</span>
    );
  const text = formatLength(finding.stationIn);
  return (
    <span className="finding-at">
      {rafterId === undefined ? (
        text
      ) : (
        <Figure refText={`station/${finding.eaveId}/${rafterId}`} what="Station">
          {text}
        </Figure>
      )}
    </span>
  );
}
