import { ArrowDown, ArrowUp, House, Plus, Trash2 } from 'lucide-react';
import { eaveLetter } from '../../../core/layout/eave-letter.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { addEave, moveEave, removeEave } from '../editor/eave-list.ts';
import { useJob } from '../job-context.ts';

/** The eaves of the house side by side, to choose the one in view; on Survey also to add, move and remove them. */
export function EaveChooser(props: { readonly canChange: boolean; readonly houseLabel: string }) {
  const { editor, documents, surroundings, eaveId, showEave, goTo } = useJob();
  const { eaves } = documents.survey;
  const index = eaves.findIndex((eave) => eave.id === eaveId);
  const name = eaves[index]?.name ?? '';
  const add = (): void => {
    editor.change('adding an eave', (now) => addEave(now, surroundings.prices));
    goTo(`survey.eaves.${eaves.length}.name`);
  };
  return (
    <div className="eave-chooser">
      <nav className="eave-tabs" aria-label="Eaves">
        <button
          type="button"
          className="eave-tab"
          onClick={() => showEave(null)}
          {...(eaveId === null ? { 'aria-current': 'true' as const } : {})}
        >
          <House size={14} aria-hidden="true" />
          {props.houseLabel}
        </button>
        {eaves.map((eave, at) => (
          <button
            key={eave.id}
            type="button"
            className="eave-tab"
            onClick={() => showEave(eave.id)}
            {...(eave.id === eaveId ? { 'aria-current': 'true' as const } : {})}
          >
            <span className="eave-letter">{eaveLetter(at)}</span>
            {eave.name}
          </button>
        ))}
      </nav>
      {props.canChange ? (
        <div className="eave-tools">
          <Button icon={<Plus size={14} aria-hidden="true" />} onPress={add}>
            Add an eave
          </Button>
          {index < 0 ? null : (
            <>
              <IconButton
                label={`Move ${name} before the one on its left`}
                icon={<ArrowUp size={16} aria-hidden="true" className="turn-left" />}
                isDisabled={index === 0}
                onPress={() => editor.change(`moving ${name}`, (now) => moveEave(now, index, -1))}
              />
              <IconButton
                label={`Move ${name} behind the one on its right`}
                icon={<ArrowDown size={16} aria-hidden="true" className="turn-left" />}
                isDisabled={index === eaves.length - 1}
                onPress={() => editor.change(`moving ${name}`, (now) => moveEave(now, index, 1))}
              />
              <IconButton
                label={`Remove ${name} (can be undone)`}
                icon={<Trash2 size={16} aria-hidden="true" />}
                onPress={() => {
                  editor.change(`removing ${name}`, (now) => removeEave(now, index));
                  showEave(eaves[index === 0 ? 1 : index - 1]?.id ?? null);
                }}
              />
            </>
          )}
        </div>
      ) : null}
    </div>
  );
}
