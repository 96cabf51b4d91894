import { FoldPanel } from '../../kit/fold-panel.tsx';
import { JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { checkEntryLabels as labels } from '../../../core/trace/entry-labels.ts';
import { JobOption, optionsOf } from '../parts/option.tsx';

/** What lies around an eave and is asked for by its checks. */
export function AroundEntries({ index }: { readonly index: number }) {
  const at = (key: keyof typeof labels) => `survey.eaves.${index}.${key}`;
  return (
    <FoldPanel title="Around the eave" says="for the checks">
      <div className="entries entries-2">
        <JobEntry
          path={at('rafterSpanIn')}
          label={labels.rafterSpanIn}
          blankMeans="not measured"
          hint="Plate to ridge or purlin."
        />
        <JobOption
          path={at('oldSpecies')}
          label={labels.oldSpecies}
          options={optionsOf('oldSpecies', 'Not known')}
        />
        <JobEntry path={at('lotLineIn')} label={labels.lotLineIn} blankMeans="not measured" hint="Level." />
        <JobEntry path={at('gutterWidthIn')} label={labels.gutterWidthIn} />
        <JobEntry
          path={at('serviceDropAboveRoofIn')}
          label={labels.serviceDropAboveRoofIn}
          blankMeans="none here"
        />
        <JobEntry
          path={at('wallThicknessIn')}
          label={labels.wallThicknessIn}
          hint="Framing to inside face."
        />
        <JobEntry
          path={at('paintedFasciaDepthIn')}
          label={labels.paintedFasciaDepthIn}
          blankMeans="not measured"
        />
        <JobEntry
          path={at('paintedFriezeDepthIn')}
          label={labels.paintedFriezeDepthIn}
          blankMeans="not measured"
        />
      </div>
      <div className="switches">
        <JobSwitch path={at('serviceDropToMast')} label={labels.serviceDropToMast} />
      </div>
    </FoldPanel>
  );
}
