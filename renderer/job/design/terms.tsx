import { Plus, X } from 'lucide-react';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { withDraft } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { JobWords } from '../parts/words.tsx';

const list = 'design.exclusions';

/** What the quote says besides its figures: the scope in words, and what is not in the price. */
export function Terms() {
  const { editor, documents, goTo } = useJob();
  const { exclusions } = documents.design;
  return (
    <Panel
      title="Scope and exclusions"
      actions={
        <Button
          icon={<Plus size={14} aria-hidden="true" />}
          onPress={() => {
            editor.change('adding an exclusion', (now) =>
              withDraft(appendTo(now, list, 'New exclusion'), `${list}.${exclusions.length}`, ''),
            );
            goTo(`${list}.${exclusions.length}`);
          }}
        >
          Add an exclusion
        </Button>
      }
    >
      <JobWords path="design.scopeNote" label="Note on the scope" multiline rows={3} maxLength={5000} />
      {exclusions.map((exclusion, at) => (
        // Exclusions have no id of their own; their place is their name.
        <div key={at} className="sub-list-row exclusion-row">
          <JobWords path={`${list}.${at}`} label={`Not in the price, ${at + 1}`} maxLength={300} />
          <IconButton
            label={`Remove the exclusion ${at + 1}: ${exclusion}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change('removing an exclusion', (now) => removeFrom(now, list, at))}
          />
        </div>
      ))}
    </Panel>
  );
}
