import { useEffect, useRef, useState, type ReactNode } from 'react';

/** Holds what may be wider or higher than its place; a keyboard can come to it and scroll it, but only while there is need. */
export function ScrollBox(props: {
  readonly label: string;
  readonly className: string;
  readonly children: ReactNode;
}) {
  const box = useRef<HTMLDivElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const element = box.current;
    if (element === null) return undefined;
    const measure = (): void =>
      setScrolls(element.scrollWidth > element.clientWidth || element.scrollHeight > element.clientHeight);
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    for (const child of element.children) observer.observe(child);
    return () => observer.disconnect();
  }, []);
  return (
    <div
      ref={box}
      className={props.className}
      {...(scrolls ? { tabIndex: 0, role: 'group', 'aria-label': props.label } : {})}
    >
      {props.children}
    </div>
  );
}
