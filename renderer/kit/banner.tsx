import { CircleAlert, Info, TriangleAlert } from 'lucide-react';
import type { ReactNode } from 'react';

export type BannerTone = 'info' | 'caution' | 'problem';

const signs = { info: Info, caution: TriangleAlert, problem: CircleAlert } as const;
const words = { info: 'Note', caution: 'Caution', problem: 'Problem' } as const;

/** A message that stands above what it concerns: sign, word and tone say the same thing. */
export function Banner(props: {
  readonly tone: BannerTone;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
  /** Read aloud when it appears. */
  readonly isLive?: boolean | undefined;
}) {
  const Sign = signs[props.tone];
  return (
    <div
      className={`banner banner-${props.tone}`}
      {...(props.isLive === true ? { role: 'alert' as const } : {})}
    >
      <Sign size={18} aria-hidden="true" />
      <div className="banner-text">
        <span className="visually-hidden">{words[props.tone]}: </span>
        {props.children}
      </div>
      {props.actions === undefined ? null : <div className="banner-actions">{props.actions}</div>}
    </div>
  );
}
