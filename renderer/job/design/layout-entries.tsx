import { FoldPanel } from '../../kit/fold-panel.tsx';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { optionsOf, JobOption } from '../parts/option.tsx';
import { formatLength } from '../../../core/units/format-length.ts';
import type { LargestGap } from '../../../core/layout/largest-gap.ts';

const sides = [
  { id: 'left', label: 'Left of the rafter' },
  { id: 'right', label: 'Right of the rafter' },
] as const;

const gapWords: Readonly<Record<LargestGap['by'], string>> = {
  stated: '',
  panels: 'what the panels may span',
  planks: 'what the planks may span',
  fascia: 'what the fascia may span',
  soffit: 'what the soffit may span',
};

/** By what rules the program sets the tails, and which methods it may propose. */
export function LayoutEntries({ index }: { readonly index: number }) {
  const { documents, computation } = useJob();
  const design = documents.design.eaves[index];
  if (design === undefined) return null;
  const at = (key: string) => `design.eaves.${index}.${key}`;
  const gap = computation.good?.result.eaves.find((eave) => eave.eaveId === design.eaveId)?.largestGap;
  const { allowFiller, allowBlockHung, allowOuterFace, allowFullLength, allowEndReplacement } = design.layout;
  const allowed = [allowFiller, allowBlockHung, allowOuterFace, allowFullLength, allowEndReplacement];
  return (
    <FoldPanel
      title="Layout"
      says={[
        gap === undefined ? '' : `gap to ${formatLength(gap.gapIn)}`,
        `${allowed.filter(Boolean).length + 1} methods`,
      ]
        .filter((word) => word !== '')
        .join(', ')}
    >
      <div className="entries entries-2">
        <JobChoice path={at('preferredSide')} label="Preferred side" choices={sides} />
        <JobEntry
          path={at('layout.largestGapIn')}
          label="Largest gap"
          blankMeans={
            gap === undefined || gap.by === 'stated' ? 'by what it carries' : formatLength(gap.gapIn)
          }
          hint={
            gap === undefined || gap.by === 'stated'
              ? 'Between tails, centre to centre.'
              : `Blank: ${gapWords[gap.by]}.`
          }
        />
      </div>
      <div className="switches">
        <JobSwitch path={at('layout.panelJointsOnTails')} label="Panel joints land on tails" />
        {design.layout.panelJointsOnTails ? (
          <JobSwitch path={at('layout.wholePanels')} label="Tails are hung so that panels stay whole" />
        ) : null}
      </div>
      <h3 className="entries-title">Besides beside the rafter, the program may set tails</h3>
      <div className="switches">
        <JobSwitch path={at('layout.allowFiller')} label="On a filler, joist between" />
        <JobSwitch path={at('layout.allowBlockHung')} label="Hung on header blocks" />
        <JobSwitch path={at('layout.allowFullLength')} label="As full-length rafters" />
        <JobSwitch path={at('layout.allowOuterFace')} label="On the outer face of an end rafter" />
        <JobSwitch path={at('layout.allowEndReplacement')} label="In the place of an end rafter" />
      </div>
    </FoldPanel>
  );
}

/** How the fascia runs along a bowed wall, and how far the tails' own overhang may differ. */
export function BowEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const design = documents.design.eaves[index];
  if (design === undefined) return null;
  const at = (key: string) => `design.eaves.${index}.${key}`;
  return (
    <FoldPanel
      title="On a bowed wall"
      says={design.fasciaInPlan === 'straight' ? 'fascia straight' : 'fascia follows the wall'}
    >
      <div className="entries entries-2">
        <JobOption path={at('fasciaInPlan')} label="Fascia in plan" options={optionsOf('fasciaInPlan')} />
        <JobOption path={at('overhangFrom')} label="Overhang from" options={optionsOf('overhangFrom')} />
        <JobEntry path={at('leastOverhangIn')} label="Least overhang" blankMeans="no limit" />
        <JobEntry path={at('mostOverhangIn')} label="Most overhang" blankMeans="no limit" />
      </div>
    </FoldPanel>
  );
}

/** Ways to bring the tail's foot up: its underside cut level, or the tail kicked up. */
export function TailEndEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const design = documents.design.eaves[index];
  if (design === undefined) return null;
  const at = (key: string) => `design.eaves.${index}.${key}`;
  const says = [
    ...(design.tailFaceIn === null ? [] : ['cut level']),
    ...(design.kickUpPitchRisePer12 === null ? [] : ['kicked up']),
  ];
  return (
    <FoldPanel title="Tail’s end" says={says.length === 0 ? 'whole, on the roof’s pitch' : says.join(', ')}>
      <div className="entries entries-2">
        <JobEntry
          path={at('tailFaceIn')}
          label="Tail face left"
          blankMeans="whole"
          hint="Underside cut level from there."
        />
        <JobEntry
          path={at('kickUpPitchRisePer12')}
          label="Kick-up pitch"
          blankMeans="as the roof"
          hint="Flatter than every rafter."
        />
        <JobEntry
          path={at('kickUpRaiseIn')}
          label="Raised at the wall"
          hint="Of a kicked-up tail, on packers."
        />
      </div>
    </FoldPanel>
  );
}
