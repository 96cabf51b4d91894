import { useId, type ReactNode, type Ref } from 'react';
import { ScrollBox } from './scroll-box.tsx';

/** A framed part of a screen with a heading. */
export function Panel(props: {
  readonly title: string;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
  /** `flush`: the content touches the frame, for tables and drawings. */
  readonly look?: 'padded' | 'flush' | undefined;
  /** To move the focus to the heading. */
  readonly headingRef?: Ref<HTMLHeadingElement> | undefined;
}) {
  const headingId = useId();
  return (
    <section className="panel" aria-labelledby={headingId}>
      <header className="panel-head">
        <h2
          id={headingId}
          className="panel-title"
          {...(props.headingRef === undefined ? {} : { ref: props.headingRef, tabIndex: -1 })}
        >
          {props.title}
        </h2>
        {props.actions === undefined ? null : <div className="panel-actions">{props.actions}</div>}
      </header>
      {props.look === 'flush' ? (
        <ScrollBox label={props.title} className="panel-flush">
          {props.children}
        </ScrollBox>
      ) : (
        <div className="panel-body">{props.children}</div>
      )}
    </section>
  );
}
