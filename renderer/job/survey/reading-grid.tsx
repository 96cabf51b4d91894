import { X } from 'lucide-react';
import { useId } from 'react';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { valueAt } from '../editor/documents.ts';
import { removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { entryProblem } from '../parts/entry.tsx';
import { Said } from '../parts/said.tsx';
import { useTypedText } from '../parts/use-typed-text.ts';
import { moveInGrid } from './grid-keys.ts';
import { enterNextStation, nextReadingId, offEntry, type ReadingList } from './reading-list.ts';

/** Readings along an eave as a small grid: station and figure; a station in the last row starts the next reading. */
export function ReadingGrid(props: {
  readonly eaveIndex: number;
  readonly list: ReadingList;
  /** What is read, e.g. `The wall`, and the heading of its figure. */
  readonly what: string;
  readonly heading: string;
}) {
  const { eaveIndex, list, what } = props;
  const { editor, documents } = useJob();
  const readings = documents.survey.eaves[eaveIndex]?.[list] ?? [];
  const base = `survey.eaves.${eaveIndex}.${list}`;
  const rows = [...readings.map(({ id }) => id), null];
  return (
    <table
      className="rafter-grid reading-grid"
      onKeyDown={(event) => {
        if (moveInGrid(event)) event.preventDefault();
      }}
    >
      <caption className="visually-hidden">{what}, by station</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Station</th>
          <th scope="col">{props.heading}</th>
          <th scope="col">
            <span className="visually-hidden">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((id, row) => (
          <tr key={id ?? nextReadingId(documents, eaveIndex, list)} className="rafter-row">
            <th scope="row" className="rafter-number">
              {id === null ? <span className="visually-hidden">Next reading</span> : row + 1}
            </th>
            <ReadingCell
              path={`${base}.${row}.stationIn`}
              row={row}
              column={0}
              label={id === null ? `${what}, next station` : `${what}, station of reading ${row + 1}`}
              placeholder={id === null ? 'next station' : ''}
              onText={(path, text) =>
                id === null
                  ? editor.typeWith(`station of reading ${row + 1}`, path, (now) =>
                      enterNextStation(now, eaveIndex, list, text),
                    )
                  : editor.type(`station of reading ${row + 1}`, path, text)
              }
            />
            {id === null ? (
              <td />
            ) : (
              <ReadingCell
                path={`${base}.${row}.${offEntry[list]}`}
                row={row}
                column={1}
                label={`${what}, ${props.heading.toLowerCase()} at reading ${row + 1}`}
                placeholder=""
                onText={(path, text) => editor.type(`reading ${row + 1}`, path, text)}
              />
            )}
            <td>
              {id === null ? null : (
                <IconButton
                  label={`Remove reading ${row + 1} of ${what.toLowerCase()}`}
                  icon={<X size={14} aria-hidden="true" />}
                  onPress={() =>
                    editor.change(`removing a reading of ${what.toLowerCase()}`, (now) =>
                      removeFrom(now, base, row),
                    )
                  }
                />
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ReadingCell(props: {
  readonly path: string;
  readonly row: number;
  readonly column: number;
  readonly label: string;
  readonly placeholder: string;
  readonly onText: (path: string, text: string) => void;
}) {
  const { path } = props;
  const { editor, documents, computation } = useJob();
  const id = useId();
  const draft = documents.drafts[path];
  const entry = useTypedText(path, valueAt(documents, path) ?? null, draft, (text) =>
    props.onText(path, text),
  );
  const problem: Problem | null = entryProblem(path, draft, computation.problems);
  return (
    <td className="grid-cell">
      <input
        className="cell-input numeric"
        aria-label={props.label}
        value={entry.text}
        placeholder={props.placeholder}
        autoComplete="off"
        spellCheck={false}
        maxLength={200}
        data-path={path}
        data-row={props.row}
        data-column={props.column}
        onChange={(event) => entry.type(event.target.value)}
        onBlur={() => {
          entry.leave();
          editor.seal();
        }}
        {...(problem === null ? {} : { 'aria-invalid': true, 'aria-describedby': id })}
      />
      {problem === null ? null : (
        <span id={id} className="field-problem">
          <Said text={problemSentence(problem)} />
        </span>
      )}
    </td>
  );
}
