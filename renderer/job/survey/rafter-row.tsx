import { Fragment, memo, useId, useState } from 'react';
import type { Problem } from '../../../core/problems/problem.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import type { EaveSurvey, RafterSurvey } from '../../../core/survey/survey-document.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { withValueAt } from '../editor/documents.ts';
import type { JobEditor } from '../editor/job-editor.ts';
import { enterNextReading } from '../editor/rafter-list.ts';
import { entryProblem } from '../parts/entry.tsx';
import { Said } from '../parts/said.tsx';
import { useTypedText } from '../parts/use-typed-text.ts';
import { conditionWords, gridColumns, joistWords } from './grid-columns.ts';

/** Drafts of one row by the key of their cell. */
export type RowDrafts = Readonly<Record<string, string>>;

/** A row of the grid; without a rafter it is the empty one under the last, where the next reading is typed. */
type RowProps = {
  readonly eave: EaveSurvey;
  readonly eaveIndex: number;
  readonly row: number;
  readonly rafter: RafterSurvey | null;
  readonly drafts: RowDrafts | undefined;
  /** Keys of the eave's own values that nobody has typed yet: nothing stands grey for them. */
  readonly unfilled: string;
  readonly problems: readonly Problem[] | undefined;
  /** Worked out from the readings; undefined while there are no figures. [in] */
  readonly centreIn: number | undefined;
  readonly spacingIn: number | undefined;
  readonly editor: JobEditor;
};

/** A rafter of the survey, cell by cell; a blank shows the eave's value in grey. */
export const RafterRow = memo(function RafterRow(props: RowProps) {
  const { eave, eaveIndex, row, rafter, drafts, editor } = props;
  const [focused, setFocused] = useState<string | null>(null);
  const [isTouched, setTouched] = useState(false);
  const base = `survey.eaves.${eaveIndex}.rafters.${row}`;
  // A row that was just put in asks for nothing in red before it was typed in or left.
  const isFresh = !isTouched && rafter?.readingIn === 0 && drafts?.['readingIn']?.trim() === '';
  const problems = [...keysOf(drafts), ...pathsOf(props.problems)]
    .filter((key) => !(isFresh && key === 'readingIn'))
    .map((key) => ({ key, problem: entryProblem(`${base}.${key}`, drafts?.[key], props.problems ?? []) }))
    .filter(
      (one, index, all) => one.problem !== null && all.findIndex(({ key }) => key === one.key) === index,
    );
  const cell = (key: string, column: number, title: string, blankMeans: string | undefined) => (
    <Cell
      path={`${base}.${key}`}
      row={row}
      column={column}
      label={rafter === null ? 'Reading of the next rafter' : `Rafter ${row + 1}, ${title.toLowerCase()}`}
      value={rafter === null ? null : rafter[key as keyof RafterSurvey]}
      draft={drafts?.[key]}
      blankMeans={blankMeans}
      problem={problems.find((one) => one.key === key)?.problem ?? null}
      onFocused={(isFocused) => {
        setFocused(isFocused ? key : null);
        if (!isFocused) setTouched(true);
      }}
      onText={(text) => {
        setTouched(true);
        const what = `${title.toLowerCase()} of rafter ${row + 1}`;
        if (rafter === null) {
          editor.typeWith(what, `${base}.${key}`, (now) => enterNextReading(now, eaveIndex, text));
        } else {
          editor.type(what, `${base}.${key}`, text);
        }
      }}
      onLeave={editor.seal}
    />
  );
  const away = problems.filter((one) => one.key !== focused);
  return (
    <>
      <tr className={problems.length > 0 ? 'rafter-row rafter-row-bad' : 'rafter-row'}>
        <th scope="row" className="rafter-number">
          {rafter === null ? '' : row + 1}
          {rafter === null ? <span className="visually-hidden">Next rafter</span> : null}
        </th>
        {cell('readingIn', 0, 'Reading', rafter === null ? 'next reading' : undefined)}
        <td className="derived">{props.centreIn === undefined ? '' : formatLength(props.centreIn)}</td>
        <td className="derived">{props.spacingIn === undefined ? '' : formatLength(props.spacingIn)}</td>
        {gridColumns.map((column, index) =>
          rafter === null ? (
            <td key={column.key} />
          ) : column.key === 'joist' ? (
            <ChoiceCell
              key={column.key}
              {...{ row, base, editor }}
              column={index + 1}
              name="joist"
              title={column.title}
              value={rafter.joist}
              usual="none"
              words={joistWords}
            />
          ) : column.key === 'condition' ? (
            <ChoiceCell
              key={column.key}
              {...{ row, base, editor }}
              column={index + 1}
              name="condition"
              title={column.title}
              value={rafter.condition}
              usual="sound"
              words={conditionWords}
            />
          ) : (
            <Fragment key={column.key}>
              {cell(
                column.key,
                index + 1,
                column.title,
                props.unfilled.split(' ').includes(column.key) ? undefined : column.blankMeans(eave, rafter),
              )}
            </Fragment>
          ),
        )}
      </tr>
      {away.length === 0 ? null : (
        <tr className="rafter-problem">
          <td />
          <td colSpan={gridColumns.length + 3}>
            {away.map((one) =>
              one.problem === null ? null : (
                <p key={one.key}>
                  <Said text={problemSentence(one.problem)} />
                </p>
              ),
            )}
          </td>
        </tr>
      )}
    </>
  );
});

function Cell(props: {
  readonly path: string;
  readonly row: number;
  readonly column: number;
  readonly label: string;
  readonly value: unknown;
  readonly draft: string | undefined;
  readonly blankMeans: string | undefined;
  readonly problem: Problem | null;
  readonly onFocused: (isFocused: boolean) => void;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}) {
  const { problem } = props;
  const id = useId();
  const entry = useTypedText(props.path, props.value, props.draft, props.onText);
  const isNote = props.path.endsWith('.note');
  // Most roofs that get an eave stop at the wall: no old tail is the usual thing.
  const isZero = props.value === 0 && props.path.endsWith('.oldTailIn');
  return (
    <td className={isNote ? 'grid-cell grid-note' : 'grid-cell'}>
      <input
        className={isNote ? 'cell-input' : isZero ? 'cell-input cell-none' : 'cell-input numeric'}
        aria-label={props.label}
        value={entry.text}
        placeholder={props.blankMeans ?? ''}
        autoComplete="off"
        spellCheck={isNote}
        maxLength={4000}
        data-path={props.path}
        data-row={props.row}
        data-column={props.column}
        onChange={(event) => entry.type(event.target.value)}
        onFocus={() => props.onFocused(true)}
        onBlur={() => {
          props.onFocused(false);
          entry.leave();
          props.onLeave();
        }}
        {...(problem === null ? {} : { 'aria-invalid': true, 'aria-describedby': id })}
      />
      {problem === null ? null : (
        <span id={id} className="cell-problem">
          <Said text={problemSentence(problem)} />
        </span>
      )}
    </td>
  );
}

/** A cell of the grid with a few choices; the usual one stands grey. */
function ChoiceCell(props: {
  readonly row: number;
  readonly column: number;
  readonly base: string;
  readonly editor: JobEditor;
  readonly name: 'joist' | 'condition';
  readonly title: string;
  readonly value: string;
  readonly usual: string;
  readonly words: Readonly<Record<string, string>>;
}) {
  const { row, base, editor, name, value } = props;
  return (
    <td className="grid-cell">
      <select
        className={value === props.usual ? 'cell-input cell-none' : 'cell-input'}
        aria-label={`Rafter ${row + 1}, ${props.title.toLowerCase()}`}
        value={value}
        data-path={`${base}.${name}`}
        data-row={row}
        data-column={props.column}
        onChange={(event) => {
          const chosen = event.target.value;
          editor.change(`${name} at rafter ${row + 1}`, (now) => withValueAt(now, `${base}.${name}`, chosen));
        }}
      >
        {Object.entries(props.words).map(([key, words]) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
    </td>
  );
}

function keysOf(drafts: RowDrafts | undefined): readonly string[] {
  return drafts === undefined ? [] : Object.keys(drafts);
}

function pathsOf(problems: readonly Problem[] | undefined): readonly string[] {
  return (problems ?? []).map((problem) => problem.field?.split('.').at(-1) ?? '');
}
