import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';

export type SectionLink = {
  readonly href: string;
  readonly label: string;
  readonly icon?: ReactNode;
  /** A short figure after the label, such as how many findings. */
  readonly count?: string | undefined;
};

/** A row of links to the parts of a screen; the part in view is marked for eye and ear. */
export function SectionLinks(props: { readonly label: string; readonly links: readonly SectionLink[] }) {
  const [location] = useLocation();
  return (
    <nav className="section-links" aria-label={props.label}>
      {props.links.map((link) => {
        const isHere = location === link.href || location.startsWith(`${link.href}/`);
        return (
          <Link
            key={link.href}
            href={link.href}
            className="section-link"
            {...(isHere ? { 'aria-current': 'page' as const } : {})}
          >
            {link.icon}
            <span>{link.label}</span>
            {link.count === undefined ? null : <span className="section-count">{link.count}</span>}
          </Link>
        );
      })}
    </nav>
  );
}
