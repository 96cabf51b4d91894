import { ChevronRight } from 'lucide-react';
import { type ReactNode, useState } from 'react';

/** Panels that were opened, by name: they stay so as one goes to another section and back. */
const opened = new Set<string>();

/** A panel of what is rarely needed: folded up until its heading is pressed. `says` tells what is in it meanwhile. */
export function FoldPanel(props: {
  readonly title: string;
  readonly says?: string | undefined;
  readonly children: ReactNode;
}) {
  const { title } = props;
  const [isOpen, setOpen] = useState(opened.has(title));
  return (
    <details
      className="panel fold-panel"
      open={isOpen}
      onToggle={(event) => {
        const { open } = event.currentTarget;
        setOpen(open);
        if (open) opened.add(title);
        else opened.delete(title);
      }}
    >
      <summary className="panel-head">
        <ChevronRight size={16} aria-hidden="true" className="fold-sign" />
        <h2 className="panel-title">{title}</h2>
        {props.says === undefined ? null : <span className="fold-says">{props.says}</span>}
      </summary>
      <div className="panel-body">{props.children}</div>
    </details>
  );
}
