import { Plus, X } from 'lucide-react';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { Menu } from '../../kit/menu.tsx';
import { Panel } from '../../kit/panel.tsx';
import { valueAt, withDraft } from '../editor/documents.ts';
import { appendTo, removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { JobWords } from '../parts/words.tsx';

/** A list of sentences of the job: written by hand, or picked from a ready list. */
export function WordList(props: {
  readonly path: 'design.exclusions' | 'design.offer.assumptions';
  readonly title: string;
  /** What one of them is called: `exclusion`. */
  readonly one: string;
  /** Stands under one that was never written. */
  readonly blank: string;
  /** What it says of itself while it is empty. */
  readonly none: string;
  readonly ready: readonly string[];
}) {
  const { path, one } = props;
  const { editor, documents, goTo } = useJob();
  const list = valueAt(documents, path) as readonly string[];
  const left = props.ready.filter((text) => !list.includes(text));
  return (
    <Panel
      title={props.title}
      actions={
        <>
          <Menu
            label={`Pick ${one}s from a list`}
            groups={[
              {
                choices: left.map((text) => ({
                  id: text,
                  label: text,
                  run: () => editor.change(`adding an ${one}`, (now) => appendTo(now, path, text)),
                })),
              },
            ]}
          >
            Pick from a list
          </Menu>
          <Button
            icon={<Plus size={14} aria-hidden="true" />}
            onPress={() => {
              editor.change(`adding an ${one}`, (now) =>
                withDraft(appendTo(now, path, props.blank), `${path}.${list.length}`, ''),
              );
              goTo(`${path}.${list.length}`);
            }}
          >
            Add an {one}
          </Button>
        </>
      }
    >
      {list.length === 0 ? <p className="muted">{props.none}</p> : null}
      {list.map((text, at) => (
        // Sentences have no id of their own; their place is their name.
        <div key={at} className="sub-list-row exclusion-row">
          <JobWords path={`${path}.${at}`} label={`${props.title}, ${at + 1}`} labelHidden maxLength={300} />
          <IconButton
            label={`Remove the ${one} ${at + 1}: ${text}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change(`removing an ${one}`, (now) => removeFrom(now, path, at))}
          />
        </div>
      ))}
    </Panel>
  );
}
