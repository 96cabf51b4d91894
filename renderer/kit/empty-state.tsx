import type { ReactNode } from 'react';

/** What stands where a list has nothing yet: why, and what to do. */
export function EmptyState(props: {
  readonly title: string;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}) {
  return (
    <div className="empty-state">
      <p className="empty-title">{props.title}</p>
      <p>{props.children}</p>
      {props.actions === undefined ? null : <div className="empty-actions">{props.actions}</div>}
    </div>
  );
}
