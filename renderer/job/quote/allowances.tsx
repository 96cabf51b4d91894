import type { ExtraCost } from '../../../core/eave/design-document.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobOption } from '../parts/option.tsx';

/** What each allowance covers, and which extra costs stand only in a choice. */
export function Allowances() {
  const { documents } = useJob();
  const { extraCosts, offer } = documents.design;
  const allowances = extraCosts.flatMap((extra, at) => (extra.kind === 'allowance' ? [{ extra, at }] : []));
  const hasChoices = offer.alternates.length > 0 && extraCosts.length > 0;
  if (allowances.length === 0 && !hasChoices) return null;
  return (
    <Panel title="Allowances and extra costs">
      <div className="fields">
        {allowances.map(({ extra, at }) => (
          <JobOption
            key={extra.id}
            path={`design.extraCosts.${at}.covers`}
            label={`${extra.description} covers`}
            options={[
              { label: 'Material and labour', value: null },
              { label: 'Material alone', value: 'material' },
            ]}
            hint="The price follows what it really comes to."
          />
        ))}
        {hasChoices
          ? extraCosts.map((extra, at) => <OnlyInChoices key={extra.id} extra={extra} at={at} />)
          : null}
      </div>
    </Panel>
  );
}

function OnlyInChoices({ extra, at }: { readonly extra: ExtraCost; readonly at: number }) {
  return (
    <JobOption
      path={`design.extraCosts.${at}.optional`}
      label={extra.description}
      options={[
        { label: 'In the design itself', value: null },
        { label: 'Only in choices that take it in', value: true },
      ]}
    />
  );
}
