import { useState } from 'react';
import { Form } from 'react-aria-components';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { tell } from '../../host/queries.ts';
import { Button } from '../../kit/button.tsx';
import { Dialog } from '../../kit/dialog.tsx';
import { TextField } from '../../kit/text-field.tsx';
import type { JobSummary } from './jobs-table.tsx';

/** Why a name is asked for: a job from nothing, or a copy. */
export type NameJob = { readonly kind: 'new' } | { readonly kind: 'copy'; readonly job: JobSummary };

const longestName = 120;

/** Asks for the name of a new job or of a copy, and makes it. */
export function NameJobDialog(props: {
  readonly naming: NameJob;
  readonly onClose: () => void;
  readonly onMade: (id: string) => void;
}) {
  const { naming, onClose, onMade } = props;
  const [name, setName] = useState(
    naming.kind === 'copy' ? `${naming.job.name} (copy)`.slice(0, longestName) : '',
  );
  const [problem, setProblem] = useState<string | null>(null);
  const make = async (): Promise<void> => {
    const wanted = name.trim();
    if (wanted === '') {
      setProblem('Give the job a name, such as the family and the street.');
      return;
    }
    try {
      const reply =
        naming.kind === 'copy'
          ? await tell('jobs.copy', { id: naming.job.id, name: wanted })
          : await tell('jobs.create', { name: wanted });
      if (reply.ok) {
        onClose();
        onMade(reply.value.id);
      } else setProblem(problemSentence(reply.problem));
    } catch {
      setProblem('Eavewright does not answer. The name stays here; try again in a moment.');
    }
  };
  const title = naming.kind === 'copy' ? `Copy ${naming.job.name}` : 'New job';
  return (
    <Dialog
      title={title}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button tone="main" onPress={() => void make()}>
            {naming.kind === 'copy' ? 'Make the copy' : 'Start the job'}
          </Button>
          <Button onPress={onClose}>Cancel</Button>
        </>
      }
    >
      <Form
        validationBehavior="aria"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <TextField
          label="Name of the job"
          value={name}
          onChange={(next) => {
            setName(next);
            setProblem(null);
          }}
          problem={problem}
          maxLength={longestName}
          hint={
            naming.kind === 'copy'
              ? 'Survey, design and extra costs are copied; saved estimates stay with the old job.'
              : 'Customer and address can follow later.'
          }
          autoFocus
        />
      </Form>
    </Dialog>
  );
}
