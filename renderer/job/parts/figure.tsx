import type { ReactNode } from 'react';
import { useJob } from '../job-context.ts';

/** A figure that can be walked back: looks like a figure, opens what it was made of. */
export function Figure(props: {
  readonly refText: string;
  readonly children: ReactNode;
  /** What the figure is, read aloud before it. */
  readonly what?: string | undefined;
}) {
  const { walkBack } = useJob();
  return (
    <button type="button" className="figure" onClick={() => walkBack(props.refText)} data-ref={props.refText}>
      {props.what === undefined ? null : <span className="visually-hidden">{props.what}: </span>}
      {props.children}
    </button>
  );
}
