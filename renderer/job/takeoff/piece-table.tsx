import type { Piece } from '../../../core/takeoff/takeoff-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { Figure } from '../parts/figure.tsx';
import { Said } from '../parts/said.tsx';

const uses: Readonly<Record<Piece['use'], string>> = {
  extender: 'Extender',
  block: 'Block',
  fascia: 'Fascia',
  filler: 'Filler',
  header: 'Header block',
  shim: 'Shim',
  packer: 'Packer',
  'sub-fascia': 'Sub-fascia',
  ledger: 'Ledger',
  'soffit-nailer': 'Soffit nailer',
  lookout: 'Lookout',
  ladder: 'Ladder piece',
  barge: 'Barge rafter',
  'rake-fascia': 'Rake fascia',
};

const columns: readonly TableColumn<Piece>[] = [
  {
    id: 'mark',
    title: 'Mark',
    isRowHeader: true,
    sortBy: (piece) => piece.mark,
    cell: (piece) => <span className="no-wrap">{piece.mark}</span>,
  },
  { id: 'use', title: 'Use', sortBy: (piece) => uses[piece.use], cell: (piece) => uses[piece.use] },
  {
    id: 'stock',
    title: 'Lumber',
    sortBy: (piece) => piece.stock.section,
    cell: (piece) => <span className="no-wrap">{`${piece.stock.section} ${piece.stock.grade}`.trim()}</span>,
  },
  {
    id: 'length',
    title: 'Length',
    align: 'right',
    sortBy: (piece) => piece.lengthSixteenths,
    cell: (piece) => <PieceLength piece={piece} />,
  },
  {
    id: 'short',
    title: 'Short points',
    align: 'right',
    cell: (piece) =>
      piece.shortSixteenths === undefined ? '' : formatLength(inchesOf(piece.shortSixteenths)),
  },
  {
    id: 'hand',
    title: 'Hand',
    cell: (piece) => piece.hand ?? '',
  },
  {
    id: 'station',
    title: 'Station',
    align: 'right',
    sortBy: (piece) => piece.stationIn,
    cell: (piece) => <span className="no-wrap">{formatLength(piece.stationIn)}</span>,
  },
  {
    id: 'cuts',
    title: 'Cuts',
    cell: (piece) => (
      <>
        {piece.inPlace === true ? <span className="tag">In place</span> : null} <Said text={piece.cuts} />
      </>
    ),
  },
];

/** Every piece that is cut, with where it goes and its cuts. */
export function PieceTable({ pieces }: { readonly pieces: readonly Piece[] }) {
  return <DataTable label="Pieces" rows={pieces} rowKey={(piece) => piece.mark} columns={columns} />;
}

function PieceLength({ piece }: { readonly piece: Piece }) {
  return (
    <Figure refText={`piece/${piece.mark}`} what={`Length of ${piece.mark}`}>
      {formatLength(inchesOf(piece.lengthSixteenths))}
    </Figure>
  );
}
