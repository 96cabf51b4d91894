import { FoldPanel } from '../../kit/fold-panel.tsx';
import { JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { checkEntryLabels as labels } from '../../../core/trace/entry-labels.ts';
import { JobOption, optionsOf } from '../parts/option.tsx';

const ratings = [
  { label: 'Not known', value: null },
  ...['24/0', '24/16', '32/16', '40/20', '48/24'].map((rating) => ({ label: rating, value: rating })),
];

/** What the checks need to know of an eave's lumber, panels, vents and ties. */
export function StructureEntries({ index }: { readonly index: number }) {
  const at = (key: keyof typeof labels) => `design.eaves.${index}.structure.${key}`;
  return (
    <FoldPanel title="Structure" says="lumber, panels, vents, ties">
      <div className="entries entries-2">
        <JobOption path={at('species')} label={labels.species} options={optionsOf('species', 'Not known')} />
        <JobOption path={at('grade')} label={labels.grade} options={optionsOf('grade')} />
        <JobOption path={at('panelRating')} label={labels.panelRating} options={ratings} />
        <JobEntry
          path={at('soffitVentSqInPerFt')}
          label={labels.soffitVentSqInPerFt}
          blankMeans="not known"
          after="sq in./ft"
        />
        <JobEntry path={at('soffitWeightPsf')} label={labels.soffitWeightPsf} after="psf" />
        <JobEntry path={at('nailEdgeDistanceIn')} label={labels.nailEdgeDistanceIn} />
        <JobEntry
          path={at('plateTieUpliftLb')}
          label={labels.plateTieUpliftLb}
          after="lb"
          hint="Uplift, by its maker; 0 for none."
        />
      </div>
      <div className="switches">
        <JobSwitch path={at('edgeClips')} label={labels.edgeClips} />
        <JobSwitch path={at('wetService')} label={labels.wetService} />
        <JobSwitch path={at('treated')} label={labels.treated} />
      </div>
    </FoldPanel>
  );
}
