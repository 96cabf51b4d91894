import { useEffect, useId, useRef } from 'react';

/** The field that stands in a cell while it is typed into. What cannot be read stays, with its reason below. */
export function CellEditor(props: {
  readonly label: string;
  readonly text: string;
  readonly problem: string | null;
  readonly choices: readonly string[];
  readonly onText: (text: string) => void;
  /** Enter, Tab, or the focus goes elsewhere: the text is taken. */
  readonly onTake: (then: 'down' | 'right' | 'left' | 'stay') => void;
  readonly onLeave: () => void;
}) {
  const { onText, onTake, onLeave } = props;
  const input = useRef<HTMLInputElement>(null);
  const problemId = useId();
  const choicesId = useId();
  useEffect(() => {
    input.current?.focus();
  }, []);
  return (
    <>
      <input
        ref={input}
        className="price-cell-input"
        aria-label={props.label}
        aria-invalid={props.problem !== null}
        {...(props.problem === null ? {} : { 'aria-describedby': problemId })}
        {...(props.choices.length === 0 ? {} : { list: choicesId })}
        autoComplete="off"
        value={props.text}
        onChange={(event) => onText(event.target.value)}
        onBlur={() => onTake('stay')}
        onKeyDown={(event) => {
          event.stopPropagation();
          if (event.key === 'Escape') {
            event.preventDefault();
            onLeave();
          }
          if (event.key === 'Enter') {
            event.preventDefault();
            onTake('down');
          }
          if (event.key === 'Tab') {
            event.preventDefault();
            onTake(event.shiftKey ? 'left' : 'right');
          }
        }}
      />
      {props.choices.length === 0 ? null : (
        <datalist id={choicesId}>
          {props.choices.map((choice) => (
            <option key={choice} value={choice} />
          ))}
        </datalist>
      )}
      {props.problem === null ? null : (
        <div id={problemId} className="price-cell-problem" role="alert">
          {props.problem}
        </div>
      )}
    </>
  );
}
