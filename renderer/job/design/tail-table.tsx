import { Pin, PinOff, Trash2 } from 'lucide-react';
import { useMemo } from 'react';
import type { Method } from '../../../core/eave/design-document.ts';
import type { EaveLayout, Extender, Unplaced } from '../../../core/layout/layout-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { useRowsInParts } from '../../kit/rows-in-parts.tsx';
import { isHung, isPinned } from '../editor/tail-edits.ts';
import { Figure } from '../parts/figure.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';
import { StationEntry } from './hand/station-entry.tsx';
import { useTailHand } from './hand/tail-hand.ts';
import {
  pinMove,
  pinOf,
  rafterOf,
  releaseMove,
  removeMove,
  standMove,
  type Tails,
} from './hand/tail-moves.ts';
import { isClashing, whyWords } from './hand/tail-words.ts';
import { methodLabel, methodsFor } from './hand/use-tail-choices.ts';
import { useTailMoves } from './hand/use-tail-moves.ts';

/** Rows of a table of tails that are shown at once: more than most eaves have. */
export const rowsAtOnce = 60;

/** The methods in a word or two, for a narrow column. */
const methodShort: Readonly<Record<Method, string>> = {
  side: 'Beside',
  filler: 'Filler',
  'outer-face': 'Outer face',
  'block-hung': 'Hung',
  'full-length': 'Full length',
  'end-replacement': 'Replaces it',
};

const headings = ['Mark', 'Station', 'Rafter', 'Side', 'Method', 'Why', 'Own overhang'] as const;

/**
 * Every tail in the order of the wall, and every rafter without one: where it stands, how it is fastened and why. Whatever
 * the hand on the plan can do is done here too.
 */
export function TailTable() {
  const { tails } = useTailMoves();
  const rows = useMemo(() => (tails === null ? [] : rowsOf(tails.layout)), [tails]);
  const { shown, more } = useRowsInParts(rows, rowsAtOnce);
  if (tails === null || tails.layout.rafters.length === 0) return null;
  const { layout } = tails;
  return (
    <Panel title={`Tails: ${layout.extenders.length}`} look="flush" actions={<OldMark />}>
      <table className="table tail-table">
        <caption className="visually-hidden">Tails of {layout.name}</caption>
        <thead>
          <tr>
            {headings.map((title) => (
              <th key={title} scope="col" className={title === 'Own overhang' ? 'align-right' : 'align-left'}>
                {title}
              </th>
            ))}
            <th scope="col">
              <span className="visually-hidden">Pin and take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ tail, bare }) =>
            tail === null ? (
              <BareRow key={bare.rafterId} tails={tails} bare={bare} />
            ) : (
              <TailRow key={tail.id} tails={tails} tail={tail} />
            ),
          )}
        </tbody>
      </table>
      {more}
    </Panel>
  );
}

type TableRow =
  | { readonly stationIn: number; readonly tail: Extender; readonly bare: null }
  | { readonly stationIn: number; readonly tail: null; readonly bare: Unplaced };

function rowsOf({ extenders, unplaced }: EaveLayout): readonly TableRow[] {
  return [
    ...extenders.map((tail): TableRow => ({ stationIn: tail.centreIn, tail, bare: null })),
    ...unplaced.map((bare): TableRow => ({ stationIn: bare.stationIn, tail: null, bare })),
  ].toSorted((a, b) => a.stationIn - b.stationIn);
}

function TailRow(props: { readonly tails: Tails; readonly tail: Extender }) {
  const { tails, tail } = props;
  const hand = useTailHand();
  const { eaveId } = tails.layout;
  const rafter = rafterOf(tails, tail);
  return (
    <tr data-tail-row={tail.id} data-state={hand.tail?.id === tail.id ? 'chosen' : undefined}>
      <th scope="row" className="no-wrap">
        <button
          type="button"
          className="text-button"
          aria-pressed={hand.tail?.id === tail.id}
          onClick={() => hand.take(tail.id)}
        >
          <span className="visually-hidden">Take up </span>
          {tail.mark}
        </button>
      </th>
      <td className="grid-cell">
        <StationEntry tail={tail} look="cell" />
      </td>
      <td>
        <RafterOf layout={tails.layout} rafterId={tail.rafterId} isHung={isHung(tail)} />
      </td>
      {rafter === undefined ? (
        <td colSpan={2}>{methodLabel(tail.method)}</td>
      ) : (
        <StandCells tails={tails} rafterId={rafter.id} tail={tail} />
      )}
      <td>
        {whyWords(tail)}
        {tail.inPlace ? <span className="tag">In place</span> : null}
        {tail.clash === null ? null : (
          <p className={isClashing(tail) ? 'tail-clash' : 'muted'}>
            {isClashing(tail) ? <strong>&#9650; Clash: </strong> : null}
            <Said text={tail.clash} />
          </p>
        )}
      </td>
      <td className="align-right own-overhang">
        <Figure refText={`section/${eaveId}/${tail.id}`} what={`Own overhang of ${tail.mark}`}>
          {formatLength(tail.overhangLevelIn)}
        </Figure>
      </td>
      <td>
        <RowButtons tails={tails} tail={tail} />
      </td>
    </tr>
  );
}

function BareRow(props: { readonly tails: Tails; readonly bare: Unplaced }) {
  const { tails, bare } = props;
  return (
    <tr>
      <th scope="row" className="muted">
        None
      </th>
      <td className="align-right muted">{formatLength(bare.stationIn)}</td>
      <td>
        <RafterOf layout={tails.layout} rafterId={bare.rafterId} isHung={false} />
      </td>
      <StandCells tails={tails} rafterId={bare.rafterId} tail={null} />
      <td colSpan={3}>
        {bare.reason === 'pinned-none' ? (
          'None wanted'
        ) : (
          <Said text={`No side free. Left: ${bare.left}. Right: ${bare.right}.`} />
        )}
      </td>
    </tr>
  );
}

function RafterOf(props: {
  readonly layout: EaveLayout;
  readonly rafterId: string;
  readonly isHung: boolean;
}) {
  const number = props.layout.rafters.find(({ id }) => id === props.rafterId)?.number ?? '';
  return (
    <>
      {props.isHung ? 'Right of ' : null}
      <Figure refText={`station/${props.layout.eaveId}/${props.rafterId}`} what="Rafter">
        {number}
      </Figure>
    </>
  );
}

/** Side and method of a rafter's tail, to be chosen. */
function StandCells(props: {
  readonly tails: Tails;
  readonly rafterId: string;
  readonly tail: Extender | null;
}) {
  const { tails, rafterId, tail } = props;
  const { go } = useTailMoves();
  const pin = tails.design.pins.find((one) => one.rafterId === rafterId);
  const rafter = tails.layout.rafters.find(({ id }) => id === rafterId);
  if (rafter === undefined) return <td colSpan={2} />;
  const side =
    pin === undefined || pin.side === 'none' ? (tail?.side ?? tails.design.preferredSide) : pin.side;
  const isFixed = tail?.inPlace === true;
  return (
    <>
      <td className="grid-cell">
        <CellSelect
          label={`Side of the tail at rafter ${rafter.number}`}
          value={pin?.side ?? 'free'}
          isDisabled={isFixed}
          choices={[
            ['free', tail === null ? 'By program' : `${tail.side === 'left' ? 'Left' : 'Right'} (program)`],
            ['left', 'Left'],
            ['right', 'Right'],
            ['none', 'No tail'],
          ]}
          onChange={(chosen) =>
            go(standMove(tails, rafter, chosen === 'free' ? null : pinOf(chosen, pin?.method)))
          }
        />
      </td>
      <td className="grid-cell">
        <CellSelect<Method | 'free'>
          label={`Method of the tail at rafter ${rafter.number}`}
          value={pin?.method ?? 'free'}
          isDisabled={isFixed}
          choices={[
            ['free', tail === null ? 'By program' : `${methodShort[tail.method]} (program)`],
            ...methodsFor(tails.layout, rafterId).map((method) => [method, methodShort[method]] as const),
          ]}
          onChange={(chosen) =>
            go(standMove(tails, rafter, chosen === 'free' ? { side } : { side, method: chosen }))
          }
        />
      </td>
    </>
  );
}

function CellSelect<K extends string>(props: {
  readonly label: string;
  readonly value: K;
  readonly choices: readonly (readonly [key: K, words: string])[];
  readonly isDisabled: boolean;
  readonly onChange: (key: K) => void;
}) {
  return (
    <select
      className={props.value === 'free' ? 'cell-input cell-none' : 'cell-input'}
      aria-label={props.label}
      value={props.value}
      disabled={props.isDisabled}
      onChange={(event) => {
        const chosen = props.choices.find(([key]) => key === event.target.value);
        if (chosen !== undefined) props.onChange(chosen[0]);
      }}
    >
      {props.choices.map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}

function RowButtons(props: { readonly tails: Tails; readonly tail: Extender }) {
  const { tails, tail } = props;
  const { go } = useTailMoves();
  const isHeld = isPinned(tails.design, tail);
  return (
    <div className="row-buttons">
      <IconButton
        label={isHeld ? `Release ${tail.mark} to the program` : `Pin ${tail.mark} as it stands`}
        icon={isHeld ? <PinOff size={15} aria-hidden="true" /> : <Pin size={15} aria-hidden="true" />}
        onPress={() => go(isHeld ? releaseMove(tails, tail) : pinMove(tails, tail))}
      />
      <IconButton
        label={`Take ${tail.mark} away`}
        icon={<Trash2 size={15} aria-hidden="true" />}
        isDisabled={tail.inPlace}
        onPress={() => go(removeMove(tails, tail))}
      />
    </div>
  );
}
