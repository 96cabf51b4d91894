import { Redirect } from 'wouter';
import { Screen } from '../../kit/screen.tsx';
import { SectionLinks } from '../../kit/section-links.tsx';
import { FinishedPart } from './finished-part.tsx';
import { LearnedPart } from './learned-part.tsx';
import { NowPart } from './now-part.tsx';
import { YearExport } from './year-export.tsx';
import './money.css';

const parts = [
  { id: 'now', label: 'Where it stands' },
  { id: 'finished', label: 'Finished jobs' },
  { id: 'learned', label: 'What they teach' },
] as const;

/** The money of the whole shop: where each job stands, what waits, how good the estimates were, what finished jobs teach. */
export function MoneyScreen({ part }: { readonly part: string | undefined }) {
  const here = parts.find(({ id }) => id === part);
  if (here === undefined) return <Redirect to="/money/now" replace />;
  return (
    <Screen
      title="Money"
      actions={<YearExport />}
      sections={
        <SectionLinks
          label="Parts of the shop's money"
          links={parts.map(({ id, label }) => ({ href: `/money/${id}`, label }))}
        />
      }
    >
      <div className="stack">
        {here.id === 'now' ? <NowPart /> : here.id === 'finished' ? <FinishedPart /> : <LearnedPart />}
      </div>
    </Screen>
  );
}
