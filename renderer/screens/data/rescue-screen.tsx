import { useState } from 'react';
import { Banner } from '../../kit/banner.tsx';
import { Panel } from '../../kit/panel.tsx';
import { Screen } from '../../kit/screen.tsx';
import { BackupTable } from './backup-table.tsx';
import type { Backup, ShopState } from './backup-words.ts';
import { RestoreDialog } from './restore-dialog.tsx';

/** What stands in every screen's place while the shop file cannot be opened: why, and the backups that mend it. */
export function RescueScreen({ state }: { readonly state: ShopState }) {
  const [restoring, setRestoring] = useState<Backup | null>(null);
  return (
    <Screen title="The shop file needs a backup">
      <Banner tone="problem" isLive>
        {state.problem} Restoring one of these keeps the damaged file aside under another name in{' '}
        {state.folder}.
      </Banner>
      <Panel title="Backups" look="flush">
        <BackupTable backups={state.backups} onRestore={setRestoring} />
      </Panel>
      {restoring === null ? null : <RestoreDialog backup={restoring} onClose={() => setRestoring(null)} />}
    </Screen>
  );
}
