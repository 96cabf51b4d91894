import { useState } from 'react';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { tell } from '../../host/queries.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { TextField } from '../../kit/text-field.tsx';

/** The folder of the shop file, and moving it to another: a second disk, or a folder that is backed up anyway. */
export function MoveShop(props: { readonly folder: string; readonly onMoved: () => void }) {
  const [wanted, setWanted] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const move = async (): Promise<void> => {
    try {
      const reply = await tell('shop.move', { folder: wanted });
      setProblem(reply.ok ? null : problemSentence(reply.problem));
      if (!reply.ok) return;
      setWanted('');
      notify(`The shop file is in ${reply.value.folder} now.`);
      props.onMoved();
    } catch {
      setProblem('Eavewright does not answer. Try again once it does.');
    }
  };
  return (
    <Panel title="Where the shop file is">
      <p>
        <b className="selectable">{props.folder}</b>
      </p>
      <form
        className="fields"
        onSubmit={(event) => {
          event.preventDefault();
          void move();
        }}
      >
        <div className="full">
          <TextField
            label="Move it to this folder"
            hint="The whole path. A folder that is not there is made. What is left behind stays as a copy under another name."
            value={wanted}
            onChange={(value) => {
              setWanted(value);
              setProblem(null);
            }}
            problem={problem}
            path="folder"
            maxLength={1000}
          />
        </div>
        <div>
          <Button type="submit" isDisabled={wanted.trim() === ''}>
            Move the shop file
          </Button>
        </div>
      </form>
    </Panel>
  );
}
