import { CircleAlert } from 'lucide-react';
import { Button } from '../../kit/button.tsx';
import { SavedLine } from '../../kit/saved-line.tsx';
import type { SaveState } from '../editor/autosave.ts';
import { useJob } from '../job-context.ts';
import { jobFileText } from './job-file-text.ts';
import { offerDownload } from './offer-download.ts';

/** Whether what is on the screen is on the disk, and what can be done where it is not. */
export function JobSaved(props: { readonly saving: SaveState; readonly openAgain: () => void }) {
  const { saving } = props;
  const { editor, documents, surroundings } = useJob();
  switch (saving.kind) {
    case 'saved':
    case 'saving':
      return <SavedLine state={saving} />;
    case 'refused':
      return <SavedLine state={{ kind: 'problem', problem: saving.problem }} />;
    case 'host-lost':
      return (
        <>
          <SavedLine state={{ kind: 'waiting' }} />
          <Button
            tone="quiet"
            onPress={() =>
              offerDownload(`${documents.info.name} - not saved.json`, jobFileText(documents, surroundings))
            }
          >
            Keep a copy as a file
          </Button>
        </>
      );
    case 'changed-elsewhere':
      return (
        <>
          <p className="saved-line saved-problem" role="status">
            <CircleAlert size={14} aria-hidden="true" /> Not saved. The job was changed in another window.
            Take the other version to go on from there, or keep this one to save it over the other.
          </p>
          <Button tone="quiet" onPress={props.openAgain}>
            Take the other version
          </Button>
          <Button tone="quiet" onPress={editor.keepMine}>
            Keep this one
          </Button>
        </>
      );
    default:
      return saving satisfies never;
  }
}
