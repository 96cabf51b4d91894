import { useMemo } from 'react';
import type { Paste, PasteFault, PastedCell } from '../../../../core/pricing/table/paste-block.ts';
import { Banner } from '../../../kit/banner.tsx';
import { Button } from '../../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../../kit/data-table.tsx';
import { Dialog } from '../../../kit/dialog.tsx';
import { ScrollBox } from '../../../kit/scroll-box.tsx';
import { titleOfCell } from './table-columns.ts';

/** Shows what a pasted block changes before it is done. With one cell that cannot be read, nothing is. */
export function PasteDialog(props: {
  readonly paste: Paste;
  readonly onTake: () => void;
  readonly onClose: () => void;
}) {
  const { cells, faults, rowsBeyond, columnsBeyond } = props.paste;
  const items = useMemo(() => new Set(cells.map(({ itemId }) => itemId)).size, [cells]);
  const canTake = faults.length === 0 && cells.length > 0;
  return (
    <Dialog
      title="Paste into the price list"
      isOpen
      size="large"
      onClose={props.onClose}
      actions={
        <>
          {canTake ? (
            <Button tone="main" autoFocus onPress={props.onTake}>
              {`Change ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'}`}
            </Button>
          ) : null}
          <Button onPress={props.onClose}>{canTake ? 'Cancel' : 'Close'}</Button>
        </>
      }
    >
      {faults.length > 0 ? (
        <Banner tone="problem" isLive>
          {`${faults.length === 1 ? 'One cell' : `${faults.length} cells`} of the block cannot be read, so nothing is changed. Mend ${faults.length === 1 ? 'it' : 'them'} in the spreadsheet and paste again.`}
        </Banner>
      ) : null}
      {rowsBeyond + columnsBeyond > 0 ? (
        <Banner tone="caution">{beyondWords(rowsBeyond, columnsBeyond)}</Banner>
      ) : null}
      {faults.length > 0 ? (
        <ScrollBox label="Cells that cannot be read" className="preview-table">
          <DataTable
            label="Cells that cannot be read"
            columns={faultColumns}
            rows={faults}
            rowsAtOnce={200}
            rowKey={(fault) => `${fault.row} ${fault.column}`}
          />
        </ScrollBox>
      ) : cells.length === 0 ? (
        <p>The block changes nothing: the cells say all of it already, or nothing can be typed there.</p>
      ) : (
        <>
          <p>{`${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} of ${items} ${items === 1 ? 'item' : 'items'} change. Prices are noted as seen today.`}</p>
          <ScrollBox label="Cells that change" className="preview-table">
            <DataTable
              label="Cells that change"
              columns={cellColumns}
              rows={cells}
              rowsAtOnce={200}
              rowKey={(cell) => `${cell.itemId} ${cell.column}`}
            />
          </ScrollBox>
        </>
      )}
    </Dialog>
  );
}

function beyondWords(rows: number, columns: number): string {
  const parts = [
    rows === 0 ? '' : `${rows} ${rows === 1 ? 'row' : 'rows'}`,
    columns === 0 ? '' : `${columns} ${columns === 1 ? 'column' : 'columns'}`,
  ].filter((part) => part !== '');
  return `${parts.join(' and ')} of the block would stand beyond the table, and stay out.`;
}

const cellColumns: readonly TableColumn<PastedCell>[] = [
  { id: 'item', title: 'Item', isRowHeader: true, cell: (cell) => cell.description },
  { id: 'column', title: 'Column', cell: (cell) => titleOfCell(cell.column) },
  { id: 'from', title: 'Now', align: 'right', cell: (cell) => (cell.from === '' ? 'blank' : cell.from) },
  { id: 'to', title: 'Then', align: 'right', cell: (cell) => (cell.to === '' ? 'blank' : cell.to) },
];

const faultColumns: readonly TableColumn<PasteFault>[] = [
  { id: 'row', title: 'Row of the block', align: 'right', cell: (fault) => fault.row },
  { id: 'item', title: 'Item', isRowHeader: true, cell: (fault) => fault.description },
  { id: 'column', title: 'Column', cell: (fault) => titleOfCell(fault.column) },
  { id: 'typed', title: 'Pasted', cell: (fault) => fault.typed },
  { id: 'detail', title: 'What is wrong', cell: (fault) => fault.detail },
];
