import { Plus } from 'lucide-react';
import type { Bay } from '../../../core/layout/layout-types.ts';
import { dressedSection } from '../../../core/lumber/dressed-sizes.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useRowsInParts } from '../../kit/rows-in-parts.tsx';
import { openBay } from '../editor/list-edits.ts';
import { leaveBay } from '../editor/tail-edits.ts';
import { useJob } from '../job-context.ts';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { hangBetween, type Tails } from './hand/tail-moves.ts';
import { useTailMoves } from './hand/use-tail-moves.ts';
import { rowsAtOnce } from './tail-table.tsx';

/** The bays at the plate: how wide each is clear, its block, old or new, and the way to hang a tail in it. */
export function BayTable() {
  const { tails } = useTailMoves();
  const { shown, more } = useRowsInParts(tails?.layout.bays ?? [], rowsAtOnce);
  if (tails === null || shown.length === 0) return null;
  const { layout } = tails;
  return (
    <Panel title={`Bays at the plate: ${layout.bays.length}`} look="flush" actions={<OldMark />}>
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
            <th scope="col">Leave open</th>
            <th scope="col">No tail by program</th>
            <th scope="col">
              <span className="visually-hidden">Hang a tail</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((bay, index) => (
            <BayRow
              key={bay.mark}
              tails={tails}
              bay={bay}
              isSplit={layout.bays[index - 1]?.leftRafterId === bay.leftRafterId}
            />
          ))}
        </tbody>
      </table>
      {more}
    </Panel>
  );
}

/** A bay; of one that a hung tail splits, only the first part bears what holds for the whole between two rafters. */
function BayRow(props: { readonly tails: Tails; readonly bay: Bay; readonly isSplit: boolean }) {
  const { tails, bay, isSplit } = props;
  const { editor } = useJob();
  const { go } = useTailMoves();
  const { designIndex, design, layout } = tails;
  const thicknessIn = dressedSection(design.extender.section)?.thicknessIn ?? 0;
  const hang = hangBetween(tails, bay.fromIn, bay.toIn, thicknessIn);
  return (
    <tr>
      <th scope="row" className="no-wrap">
        {bay.mark}
      </th>
      <td className="align-right">{formatLength(bay.fromIn)}</td>
      <td className="align-right">
        <Figure refText={`bay/${layout.eaveId}/${bay.leftRafterId}`} what={`Clear width of ${bay.mark}`}>
          {formatLength(bay.clearIn)}
        </Figure>
      </td>
      <td>{blockWords(bay)}</td>
      <td>
        {isSplit ? null : (
          <input
            type="checkbox"
            aria-label={`Leave ${bay.mark} open`}
            disabled={!design.blocks.wanted}
            checked={design.blocks.openBays.includes(bay.leftRafterId)}
            onChange={(event) => {
              const open = event.target.checked;
              editor.change(`block in ${bay.mark}`, (now) =>
                openBay(now, designIndex, bay.leftRafterId, open),
              );
            }}
          />
        )}
      </td>
      <td>
        {isSplit ? null : (
          <input
            type="checkbox"
            aria-label={`Let the program hang no tail in ${bay.mark}`}
            checked={design.layout.baysWithoutTail.includes(bay.leftRafterId)}
            onChange={(event) => {
              const isLeft = event.target.checked;
              editor.change(`tails in ${bay.mark}`, (now) =>
                leaveBay(now, designIndex, bay.leftRafterId, isLeft),
              );
            }}
          />
        )}
      </td>
      <td>
        <IconButton
          label={`Hang a tail in ${bay.mark}`}
          icon={<Plus size={15} aria-hidden="true" />}
          isDisabled={hang === null}
          onPress={() => go(hang)}
        />
      </td>
    </tr>
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
