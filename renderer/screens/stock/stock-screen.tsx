import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Link } from 'wouter';
import { pieceState, type PieceState, type StockPiece } from '../../../core/stock/stock-piece.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd, sumUsd, usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { useAnswer } from '../../host/queries.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { EmptyState } from '../../kit/empty-state.tsx';
import { Panel } from '../../kit/panel.tsx';
import { Screen } from '../../kit/screen.tsx';
import { Switch } from '../../kit/switch.tsx';
import { PriceParts } from '../prices/price-parts.tsx';
import { PieceDialog } from './piece-dialog.tsx';

/** The shop's boards and offcuts: on the rack, set aside for a job, gone. */
export function StockScreen() {
  const [withGone, setWithGone] = useState(false);
  const [open, setOpen] = useState<StockPiece | 'new' | null>(null);
  const stock = useAnswer('stock.list', { withGone }, true, true);
  return (
    <Screen
      title="Boards on hand"
      sections={<PriceParts />}
      actions={
        <Button tone="main" icon={<Plus size={16} aria-hidden="true" />} onPress={() => setOpen('new')}>
          Add boards
        </Button>
      }
    >
      <div className="stack">
        <div className="filters">
          <Switch isSelected={withGone} onChange={setWithGone}>
            Show used and thrown out
          </Switch>
        </div>
        <Answer query={stock}>
          {(pieces) => (
            <Panel title="Boards" look="flush" actions={<span className="muted">{sumWords(pieces)}</span>}>
              {pieces.length === 0 ? (
                <EmptyState
                  title="No board is noted yet."
                  actions={<Button onPress={() => setOpen('new')}>Add the first board</Button>}
                >
                  Full boards and offcuts on the rack. When a job is cut, its Cut plan adds what is left over;
                  another job’s Cut plan takes boards from here.
                </EmptyState>
              ) : (
                <DataTable
                  label="Boards of the shop"
                  columns={columnsFor(setOpen)}
                  rows={pieces}
                  rowKey={(piece) => piece.id}
                  rowState={(piece) => (piece.goneOn === null ? undefined : 'faded')}
                  rowsAtOnce={200}
                />
              )}
            </Panel>
          )}
        </Answer>
      </div>
      {open === null ? null : (
        <PieceDialog piece={open === 'new' ? null : open} onClose={() => setOpen(null)} />
      )}
    </Screen>
  );
}

const stateWords: Readonly<Record<PieceState, string>> = {
  available: 'on the rack',
  'set-aside': 'set aside',
  used: 'used',
  'thrown-out': 'thrown out',
};

function sumWords(pieces: readonly StockPiece[]): string {
  const here = pieces.filter(({ goneOn }) => goneOn === null);
  const worth = formatUsd(sumUsd(here.map(({ valueUsd }) => usd(valueUsd))));
  return `${here.length} ${here.length === 1 ? 'board' : 'boards'}, worth ${worth}`;
}

function columnsFor(onOpen: (piece: StockPiece) => void): readonly TableColumn<StockPiece>[] {
  return [
    {
      id: 'number',
      title: 'No.',
      align: 'right',
      isRowHeader: true,
      sortBy: (piece) => piece.sequence,
      cell: (piece) => piece.sequence,
    },
    { id: 'section', title: 'Section', sortBy: (piece) => piece.section, cell: (piece) => piece.section },
    { id: 'grade', title: 'Grade', sortBy: (piece) => piece.grade, cell: (piece) => piece.grade },
    {
      id: 'length',
      title: 'Length',
      align: 'right',
      sortBy: (piece) => piece.lengthIn,
      cell: (piece) => <span className="no-wrap">{formatLength(piece.lengthIn)}</span>,
    },
    {
      id: 'value',
      title: 'Worth',
      align: 'right',
      sortBy: (piece) => Number(piece.valueUsd),
      cell: (piece) => formatUsd(usd(piece.valueUsd)),
    },
    {
      id: 'state',
      title: 'Where',
      sortBy: (piece) => pieceState(piece),
      cell: (piece) => (
        <>
          {stateWords[pieceState(piece)]}
          {piece.forJob === null ? null : (
            <>
              {' for '}
              <Link href={`/jobs/${piece.forJob.id}/cut-plan`} className="row-link">
                {piece.forJob.name}
              </Link>
            </>
          )}
          {piece.goneOn === null ? null : <span className="muted no-wrap"> {piece.goneOn}</span>}
        </>
      ),
    },
    {
      id: 'from',
      title: 'Left over from',
      cell: (piece) => (
        <>
          {piece.fromJob?.name ?? ''} {piece.note === '' ? null : <span className="muted">{piece.note}</span>}
        </>
      ),
    },
    {
      id: 'do',
      title: 'Change',
      titleHidden: true,
      align: 'right',
      cell: (piece) => {
        const state = pieceState(piece);
        if (state === 'thrown-out')
          return (
            <Button
              tone="quiet"
              aria-label={`Bring back board ${piece.sequence}`}
              onPress={() => void attempt('stock.bringBack', { id: piece.id })}
            >
              Bring back
            </Button>
          );
        if (state !== 'available') return null;
        return (
          <span className="no-wrap">
            <Button tone="quiet" aria-label={`Change board ${piece.sequence}`} onPress={() => onOpen(piece)}>
              Change
            </Button>
            <Button
              tone="quiet"
              aria-label={`Throw out board ${piece.sequence}`}
              onPress={() => void attempt('stock.throwOut', { id: piece.id })}
            >
              Throw out
            </Button>
          </span>
        );
      },
    },
  ];
}
