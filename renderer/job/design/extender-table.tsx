import type { EaveLayout, Extender } from '../../../core/layout/layout-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { Panel } from '../../kit/panel.tsx';
import { pinTail } from '../editor/tail-edits.ts';
import { useJob } from '../job-context.ts';
import { Caution } from '../parts/caution.tsx';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';

const pinWords = { free: 'By program', left: 'Left', right: 'Right', none: 'No extender' } as const;

/** Every rafter with its extender: side (pinned or chosen), and the figures of its cut. */
export function ExtenderTable(props: { readonly eaveId: string; readonly designIndex: number }) {
  const { documents, computation } = useJob();
  const layout = computation.good?.result.eaves.find((eave) => eave.eaveId === props.eaveId);
  const survey = documents.survey.eaves.find((eave) => eave.id === props.eaveId);
  if (layout === undefined || survey === undefined || survey.rafters.length === 0) return null;
  return (
    <Panel title={`Extenders: ${layout.extenders.length}`} look="flush" actions={<OldMark />}>
      <table className="table">
        <caption className="visually-hidden">Extenders of {layout.name}</caption>
        <thead>
          <tr>
            <th scope="col">Rafter</th>
            <th scope="col">Side</th>
            <th scope="col">Taken</th>
            <th scope="col">Mark</th>
            {['Blank', 'Backspan', 'Seat', 'Throat', 'Tail lift'].map((title) => (
              <th key={title} scope="col" className="align-right">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {survey.rafters.map((rafter, index) => (
            <tr key={rafter.id}>
              <th scope="row">
                <Figure refText={`station/${props.eaveId}/${rafter.id}`} what="Rafter">
                  {index + 1}
                </Figure>
              </th>
              <td>
                <PinSelect rafterId={rafter.id} number={index + 1} designIndex={props.designIndex} />
              </td>
              <ExtenderCells layout={layout} rafterId={rafter.id} />
            </tr>
          ))}
        </tbody>
      </table>
      <Caution />
    </Panel>
  );
}

function ExtenderCells(props: { readonly layout: EaveLayout; readonly rafterId: string }) {
  const { layout, rafterId } = props;
  const extender = layout.extenders.find((one) => one.rafterId === rafterId);
  const unplaced = layout.unplaced.find((one) => one.rafterId === rafterId);
  if (extender === undefined) {
    return (
      <>
        <td colSpan={7}>
          {unplaced === undefined
            ? ''
            : unplaced.reason === 'pinned-none'
              ? 'None, as pinned'
              : `No side free. Left: ${unplaced.left}. Right: ${unplaced.right}.`}
        </td>
      </>
    );
  }
  return (
    <>
      <td>
        <Said text={takenWords(extender)} />
      </td>
      <td className="no-wrap">{extender.mark}</td>
      <td className="align-right">
        <Figure refText={`section/${layout.eaveId}/${rafterId}`} what={`Blank of ${extender.mark}`}>
          {formatLength(inchesOf(extender.blankSixteenths))}
        </Figure>
      </td>
      <td className="align-right">
        {formatLength(extender.section.backspanIn)}
        <span className="muted"> ({extender.section.backspanRatio.toFixed(2)} x)</span>
      </td>
      <td className="align-right">{seatWords(extender)}</td>
      <td className="align-right">{formatLength(extender.section.throatIn)}</td>
      <td className="align-right">{formatLength(extender.liftAtTailIn)}</td>
    </>
  );
}

function takenWords(extender: Extender): string {
  const side = extender.side === 'left' ? 'Left' : 'Right';
  switch (extender.because) {
    case 'preferred':
      return side;
    case 'pinned':
      return extender.clash === null ? `${side}, pinned` : `${side}, pinned: ${extender.clash}`;
    case 'moved':
      return `${side}: ${extender.clash ?? 'other side taken'}`;
    case 'built':
      return `${side}, as built`;
    case 'gap':
      return `${side}, for the widest gap allowed`;
    case 'panel-joint':
      return `${side}, under a panel joint`;
    case 'even':
      return `${side}, to even the gaps`;
    default:
      return extender.because satisfies never;
  }
}

function seatWords(extender: Extender): string {
  const { bearing } = extender.section;
  switch (bearing.kind) {
    case 'notched':
      return `${formatLength(bearing.seatIn)}, heel ${formatLength(bearing.heelCutIn)}`;
    case 'shimmed':
      return `shim ${formatLength(bearing.shimIn)}`;
    case 'on-corner':
      return 'on the corner';
    default:
      return bearing satisfies never;
  }
}

function PinSelect(props: {
  readonly rafterId: string;
  readonly number: number;
  readonly designIndex: number;
}) {
  const { editor, documents } = useJob();
  const { rafterId, number, designIndex } = props;
  const pins = documents.design.eaves[designIndex]?.pins ?? [];
  const pin = pins.find((one) => one.rafterId === rafterId)?.side ?? 'free';
  return (
    <select
      className={pin === 'free' ? 'cell-input cell-none pin-select' : 'cell-input pin-select'}
      aria-label={`Side of the extender at rafter ${number}`}
      value={pin}
      onChange={(event) => {
        const side = event.target.value as keyof typeof pinWords;
        editor.change(`side at rafter ${number}`, (now) => 
          pinTail(now, designIndex, rafterId, side === 'free' ? null : { side }),
        );
      }}
    >
      {Object.entries(pinWords).map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}
