import type { Piece } from '../../../core/takeoff/takeoff-types.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { inchesOf } from '../../../core/units/sixteenths.ts';
import { DataTable } from '../../kit/data-table.tsx';
import { Figure } from '../parts/figure.tsx';

const uses = { extender: 'Extender', block: 'Block', fascia: 'Fascia' } as const;

/** Every piece that is cut, with where it goes and its cuts. */
export function PieceTable({ pieces }: { readonly pieces: readonly Piece[] }) {
  return (
    <DataTable
      label="Pieces"
      rows={pieces}
      rowKey={(piece) => piece.mark}
      columns={[
        {
          id: 'mark',
          title: 'Mark',
          isRowHeader: true,
          sortBy: (piece) => piece.mark,
          cell: (piece) => piece.mark,
        },
        { id: 'use', title: 'Use', sortBy: (piece) => uses[piece.use], cell: (piece) => uses[piece.use] },
        {
          id: 'stock',
          title: 'Lumber',
          sortBy: (piece) => piece.stock.section,
          cell: (piece) => `${piece.stock.section} ${piece.stock.grade}`.trim(),
        },
        {
          id: 'length',
          title: 'Length',
          align: 'right',
          sortBy: (piece) => piece.lengthSixteenths,
          cell: (piece) => (
            <Figure refText={`piece/${piece.mark}`} what={`Length of ${piece.mark}`}>
              {formatLength(inchesOf(piece.lengthSixteenths))}
            </Figure>
          ),
        },
        {
          id: 'station',
          title: 'Station',
          align: 'right',
          sortBy: (piece) => piece.stationIn,
          cell: (piece) => formatLength(piece.stationIn),
        },
        { id: 'cuts', title: 'Cuts', cell: (piece) => piece.cuts },
      ]}
    />
  );
}
