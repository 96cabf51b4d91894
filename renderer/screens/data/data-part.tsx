import { useState } from 'react';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { useAnswer } from '../../host/queries.ts';
import { saveFile, saveTextFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Banner } from '../../kit/banner.tsx';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { BackupTable } from './backup-table.tsx';
import type { Backup } from './backup-words.ts';
import { MoveShop } from './move-shop.tsx';
import { RestoreDialog } from './restore-dialog.tsx';

/** Where the shop's data lies, its backups, and ways to take all of it elsewhere. */
export function DataPart() {
  const state = useAnswer('shop.state', {});
  const [restoring, setRestoring] = useState<Backup | null>(null);
  const backUp = async (): Promise<void> => {
    const made = await attempt('shop.backUp', {});
    await state.refetch();
    if (made !== undefined) notify(`The backup ${made.fileName} is made and checked.`);
  };
  return (
    <Answer query={state}>
      {({ folder, backups, backupProblem }) => (
        <>
          {backupProblem === null ? null : (
            <Banner tone="caution">Today's backup could not be made. {backupProblem}</Banner>
          )}
          <Panel
            title="Backups"
            look="flush"
            actions={<Button onPress={() => void backUp()}>Back up now</Button>}
          >
            <p className="muted panel-words">
              One is made each day that the program is used: the last 7 are kept, then one a week for 5 weeks
              and one a month for 12 months. Those by hand, before an update and before a restore stay until
              you remove them from the folder. Photos and PDFs of receipts lie beside the shop file in the
              folder attachments and are not in a backup: copy that folder along.
            </p>
            <BackupTable backups={backups} onRestore={setRestoring} />
          </Panel>
          <MoveShop folder={folder} onMoved={() => void state.refetch()} />
          <Panel title="Take your data elsewhere">
            <p>
              Every table of the shop file as CSV, in one zip file, for a spreadsheet or another program. A
              single job goes from machine to machine by <b>Export</b> in the list of jobs.
            </p>
            <Button onPress={() => void exportTables()}>Export all tables</Button>
          </Panel>
          <Panel title="Report for finding a fault">
            <p>
              Versions, the size of your data in counts, and where in the program something went wrong. No
              names, addresses or prices are in it; it is a plain text that you can read before you hand it
              on. The program sends nothing by itself.
            </p>
            <Button onPress={() => void saveReport()}>Save the report</Button>
          </Panel>
          {restoring === null ? null : (
            <RestoreDialog backup={restoring} onClose={() => setRestoring(null)} />
          )}
        </>
      )}
    </Answer>
  );
}

async function exportTables(): Promise<void> {
  const made = await attempt('shop.exportTables', {});
  if (made !== undefined) await saveFile(made.fileName, fromBase64(made.base64), 'application/zip');
}

async function saveReport(): Promise<void> {
  const made = await attempt('app.report', {});
  if (made !== undefined) await saveTextFile(made.fileName, made.text, 'text/plain');
}
