import { useState } from 'react';
import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { backupName, type Backup } from './backup-words.ts';

/** Asks before a backup takes the shop file's place. What stood there is kept, so that this too can be taken back. */
export function RestoreDialog(props: { readonly backup: Backup; readonly onClose: () => void }) {
  const [keptAs, setKeptAs] = useState<string | null>(null);
  const [isRestoring, setRestoring] = useState(false);
  const restore = async (): Promise<void> => {
    setRestoring(true);
    const done = await attempt('shop.restore', { fileName: props.backup.fileName });
    setRestoring(false);
    if (done === undefined) props.onClose();
    else setKeptAs(done.keptAs);
  };
  return keptAs === null ? (
    <Dialog
      title="Restore this backup?"
      isOpen
      onClose={props.onClose}
      actions={
        <>
          <Button tone="danger" isDisabled={isRestoring} onPress={() => void restore()}>
            {isRestoring ? 'Restoring' : 'Restore it'}
          </Button>
          <Button autoFocus onPress={props.onClose}>
            Leave things as they are
          </Button>
        </>
      }
    >
      <p>
        {backupName(props.backup)} takes the shop file's place: jobs, prices and settings are again as they
        were then. The shop file as it is now is kept beside the backups, so nothing is thrown away.
      </p>
    </Dialog>
  ) : (
    <Dialog
      title="The backup is restored"
      isOpen
      onClose={goOn}
      actions={
        <Button tone="main" autoFocus onPress={goOn}>
          Go on
        </Button>
      }
    >
      <p>
        {backupName(props.backup)} is the shop file now. What stood there before is kept as <b>{keptAs}</b> in
        the shop file's folder.
      </p>
    </Dialog>
  );
}

/** Every screen holds figures of the shop as it was, so the page begins anew. */
function goOn(): void {
  window.location.reload();
}
