import type { Bay } from '../../../core/layout/layout-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { Panel } from '../../kit/panel.tsx';
import { openBay } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { Figure } from '../parts/figure.tsx';

/** The bays at the plate: how wide each is clear, and whether it gets a block. */
export function BayTable(props: { readonly eaveId: string; readonly designIndex: number }) {
  const { editor, documents, computation } = useJob();
  const layout = computation.good?.result.eaves.find((eave) => eave.eaveId === props.eaveId);
  const blocks = documents.design.eaves[props.designIndex]?.blocks;
  if (layout === undefined || blocks === undefined || layout.bays.length === 0) return null;
  return (
    <Panel title={`Bays at the plate: ${layout.bays.length}`} look="flush">
      <table className="table">
        <caption className="visually-hidden">Bays of {layout.name}</caption>
        <thead>
          <tr>
            <th scope="col">Bay</th>
            <th scope="col" className="align-right">
              From
            </th>
            <th scope="col" className="align-right">
              Clear
            </th>
            <th scope="col">Block</th>
            <th scope="col">Left open</th>
          </tr>
        </thead>
        <tbody>
          {layout.bays.map((bay) => (
            <tr key={bay.mark}>
              <th scope="row" className="no-wrap">
                {bay.mark}
              </th>
              <td className="align-right">{formatLength(bay.fromIn)}</td>
              <td className="align-right">
                <Figure
                  refText={`bay/${props.eaveId}/${bay.leftRafterId}`}
                  what={`Clear width of ${bay.mark}`}
                >
                  {formatLength(bay.clearIn)}
                </Figure>
              </td>
              <td>{blockWords(bay)}</td>
              <td>
                <input
                  type="checkbox"
                  aria-label={`Leave ${bay.mark} open`}
                  disabled={!blocks.wanted}
                  checked={blocks.openBays.includes(bay.leftRafterId)}
                  onChange={(event) => {
                    const open = event.target.checked;
                    editor.change(`block in ${bay.mark}`, (now) =>
                      openBay(now, props.designIndex, bay.leftRafterId, open),
                    );
                  }}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Panel>
  );
}

function blockWords(bay: Bay): string {
  const words = {
    block: 'Block',
    'left-open': 'Open',
    'too-narrow': 'Too narrow for a block',
    'old-stays': 'The old block stays',
  }[bay.block];
  return bay.oldBlockOut ? `${words}; the old block comes out` : words;
}
