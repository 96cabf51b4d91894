import { FileUp, X } from 'lucide-react';
import { useState } from 'react';
import { problemSentence } from '../../../../core/problems/sentence.ts';
import { attempt } from '../../../host/attempt.ts';
import { tell, useAnswer } from '../../../host/queries.ts';
import { Answer } from '../../../kit/answer.tsx';
import { Banner } from '../../../kit/banner.tsx';
import { Button } from '../../../kit/button.tsx';
import { FileButton } from '../../../kit/file-button.tsx';
import { IconButton } from '../../../kit/icon-button.tsx';
import { notify } from '../../../kit/notices.tsx';
import { Panel } from '../../../kit/panel.tsx';
import { TextField } from '../../../kit/text-field.tsx';

/** Index series that prices can be held against: brought in by the person, none comes with the program. */
export function IndexPanel() {
  const indexes = useAnswer('prices.indexes', {});
  const [name, setName] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const bringIn = async (text: string, fileName: string): Promise<void> => {
    const series = name.trim() === '' ? fileName.replace(/\.csv$/i, '').slice(0, 80) : name.trim();
    try {
      const reply = await tell('prices.importIndex', { series, text });
      setProblem(reply.ok ? null : `${fileName}: ${problemSentence(reply.problem)}`);
      if (!reply.ok) return;
      const { months, changed } = reply.value;
      setName('');
      notify(
        `${series}: ${months} ${months === 1 ? 'month' : 'months'} came in${changed === 0 ? '' : `, ${changed} of them with another value than before`}.`,
      );
    } catch {
      setProblem('Eavewright does not answer, so nothing was brought in. Try again once it does.');
    }
  };
  return (
    <Panel title="Index series">
      {problem === null ? null : (
        <Banner tone="problem" isLive actions={<Button onPress={() => setProblem(null)}>Put away</Button>}>
          {problem}
        </Banner>
      )}
      <p className="muted risk-words">
        A public price index, as a CSV file of two columns: the month (2026-03, 3/2026, Mar 2026 or a day of
        it) and the value. None comes with Eavewright. An item above can then be held against it.
      </p>
      <div className="history-tools">
        <TextField
          label="Name of the series"
          value={name}
          onChange={setName}
          maxLength={80}
          placeholder="the file’s name"
        />
        <FileButton
          endings={['.csv', 'text/csv']}
          icon={<FileUp size={16} aria-hidden="true" />}
          onText={(text, fileName) => void bringIn(text, fileName)}
        >
          Bring in a series
        </FileButton>
      </div>
      <Answer query={indexes}>
        {(list) => (
          <ul className="history-found" aria-label="Index series here">
            {list.map(({ series, values }) => (
              <li key={series}>
                {series}: {values.length} months, {values[0]?.month} to {values.at(-1)?.month}
                <IconButton
                  label={`Remove ${series}`}
                  icon={<X size={14} aria-hidden="true" />}
                  onPress={() => void attempt('prices.removeIndex', { series })}
                />
              </li>
            ))}
          </ul>
        )}
      </Answer>
    </Panel>
  );
}
