import { Button } from '../../kit/button.tsx';
import { DataTable, type TableColumn } from '../../kit/data-table.tsx';
import { backupName, sizeText, type Backup } from './backup-words.ts';

/** The backups that there are, newest first, each with a way to put it in the shop file's place. */
export function BackupTable(props: {
  readonly backups: readonly Backup[];
  readonly onRestore: (backup: Backup) => void;
}) {
  return (
    <DataTable
      label="Backups of the shop file"
      columns={columnsFor(props.onRestore)}
      rows={props.backups}
      rowKey={({ fileName }) => fileName}
    />
  );
}

function columnsFor(onRestore: (backup: Backup) => void): readonly TableColumn<Backup>[] {
  return [
    { id: 'name', title: 'Backup', isRowHeader: true, cell: backupName },
    { id: 'file', title: 'File', cell: ({ fileName }) => fileName },
    { id: 'size', title: 'Size', align: 'right', cell: ({ bytes }) => sizeText(bytes) },
    {
      id: 'restore',
      title: 'Restore',
      titleHidden: true,
      align: 'right',
      cell: (backup) => <Button onPress={() => onRestore(backup)}>Restore…</Button>,
    },
  ];
}
