import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { useCommand } from '../../commands/command-handlers.ts';
import { isSection, type SectionId, sections } from '../sections.ts';

/**
 * The name of the section in view, for the ear. A section that was called up by its keys takes the focus here, so that
 * the keyboard goes on at its top.
 */
export function SectionHeading(props: { readonly jobId: string; readonly section: SectionId }) {
  const { jobId, section } = props;
  const [, navigate] = useLocation();
  const wanted = useRef<SectionId | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (wanted.current !== section) return;
    wanted.current = null;
    startAt(heading.current);
  }, [section]);
  return (
    <>
      {Object.keys(sections)
        .filter(isSection)
        .map((id) => (
          <SectionKeys
            key={id}
            id={id}
            onCall={() => {
              if (id === section) {
                startAt(heading.current);
                return;
              }
              wanted.current = id;
              navigate(`/jobs/${jobId}/${id}`);
            }}
          />
        ))}
      <h2 ref={heading} tabIndex={-1} className="visually-hidden">
        {sections[section]}
      </h2>
    </>
  );
}

function startAt(heading: HTMLElement | null): void {
  heading?.focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

function SectionKeys(props: { readonly id: SectionId; readonly onCall: () => void }) {
  useCommand(`job.${props.id}`, props.onCall);
  return null;
}
