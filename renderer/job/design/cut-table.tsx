import type { Extender } from '../../../core/layout/layout-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { Panel } from '../../kit/panel.tsx';
import { useRowsInParts } from '../../kit/rows-in-parts.tsx';
import { useJob } from '../job-context.ts';
import { Caution } from '../parts/caution.tsx';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { rowsAtOnce } from './tail-table.tsx';

/** The figures that each tail of an eave is cut by. */
export function CutTable({ eaveId }: { readonly eaveId: string }) {
  const { computation } = useJob();
  const layout = computation.good?.result.eaves.find((eave) => eave.eaveId === eaveId);
  const { shown, more } = useRowsInParts(layout?.extenders ?? [], rowsAtOnce);
  if (layout === undefined || shown.length === 0) return null;
  return (
    <Panel title="Cuts of the tails" look="flush" actions={<OldMark />}>
      <table className="table">
        <caption className="visually-hidden">Cuts of the tails of {layout.name}</caption>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            {['Blank', 'Backspan', 'Seat', 'Throat', 'Tail lift'].map((title) => (
              <th key={title} scope="col" className="align-right">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((tail) => (
            <tr key={tail.id}>
              <th scope="row" className="no-wrap">
                {tail.mark}
              </th>
              <td className="align-right">
                <Figure refText={`section/${eaveId}/${tail.id}`} what={`Blank of ${tail.mark}`}>
                  {formatLength(inchesOf(tail.blankSixteenths))}
                </Figure>
              </td>
              <td className="align-right">
                {formatLength(tail.section.backspanIn)}
                <span className="muted"> ({tail.section.backspanRatio.toFixed(2)} x)</span>
              </td>
              <td className="align-right">{seatWords(tail)}</td>
              <td className="align-right">{formatLength(tail.section.throatIn)}</td>
              <td className="align-right">{formatLength(tail.liftAtTailIn)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more}
      <Caution />
    </Panel>
  );
}

function seatWords(tail: Extender): string {
  const { bearing } = tail.section;
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
