import { useEffect, useRef, type ReactNode } from 'react';

let screensShown = 0;

/**
 * A whole screen: sets the window's title and, when one comes here from another screen, moves the focus to its heading,
 * so that a keyboard or a screen reader starts at the top.
 */
export function Screen(props: {
  readonly title: string;
  /** A line beside the title: the job's customer, or whether it is saved. */
  readonly beside?: ReactNode;
  readonly actions?: ReactNode;
  /** Links to the screen's parts. */
  readonly sections?: ReactNode;
  readonly children: ReactNode;
  /** Changes when another thing is shown on the same screen, such as another job. */
  readonly focusKey?: string | undefined;
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${props.title} - Eavewright`;
  }, [props.title]);
  const { focusKey = '' } = props;
  const shownFor = useRef<string | null>(null);
  useEffect(() => {
    if (shownFor.current === focusKey) return;
    shownFor.current = focusKey;
    screensShown += 1;
    if (screensShown > 1) heading.current?.focus({ preventScroll: true });
  }, [focusKey]);
  return (
    <>
      <div className="screen-head">
        <h1 ref={heading} tabIndex={-1} className="screen-title">
          {props.title}
        </h1>
        <div className="screen-beside">{props.beside}</div>
        <div className="screen-actions">{props.actions}</div>
      </div>
      {props.sections}
      <div className="screen-body">{props.children}</div>
    </>
  );
}
