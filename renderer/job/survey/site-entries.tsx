import { Panel } from '../../kit/panel.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { checkEntryLabels as labels } from '../../../core/trace/entry-labels.ts';
import { JobOption, optionsOf } from '../parts/option.tsx';

const askedFor = [
  { label: 'Not known yet', value: null },
  { label: 'Yes', value: true },
  { label: 'No', value: false },
] as const;

const at = (key: keyof typeof labels) => `survey.site.${key}`;

/** What the place and the roof bring to the checks: snow, wind, roofing, attic. */
export function SiteEntries() {
  return (
    <Panel title="Snow, wind and roof">
      <div className="entries entries-many">
        <JobEntry
          path={at('groundSnowPsf')}
          label={labels.groundSnowPsf}
          blankMeans="not known"
          after="psf"
          hint="Ask the building department."
        />
        <JobOption
          path={at('groundSnowBasis')}
          label={labels.groundSnowBasis}
          options={optionsOf('groundSnowBasis')}
        />
        <JobEntry
          path={at('exposureFactor')}
          label={labels.exposureFactor}
          hint="0.9 in the open, 1.0 partly, 1.2 sheltered."
        />
        <JobEntry
          path={at('thermalFactor')}
          label={labels.thermalFactor}
          hint="1.0 warm roof, 1.1 cold vented attic, 1.2 unheated."
        />
        <JobEntry path={at('importanceFactor')} label={labels.importanceFactor} hint="1.0 for a dwelling." />
        <JobOption path={at('icedEave')} label={labels.icedEave} options={optionsOf('icedEave')} />
        <JobEntry
          path={at('windUpliftPsf')}
          label={labels.windUpliftPsf}
          blankMeans="not known"
          after="psf"
          hint="Net, upward, square to the roof."
        />
        <JobOption
          path={at('windUpliftBasis')}
          label={labels.windUpliftBasis}
          options={optionsOf('windUpliftBasis')}
        />
        <JobOption path={at('roofing')} label={labels.roofing} options={optionsOf('roofing')} />
        <JobEntry path={at('roofingLayers')} label={labels.roofingLayers} />
        <JobOption path={at('iceBarrierRequired')} label={labels.iceBarrierRequired} options={askedFor} />
        <JobEntry
          path={at('atticAreaSqFt')}
          label={labels.atticAreaSqFt}
          blankMeans="not measured"
          after="sq ft"
        />
        <JobOption path={at('ventRatio')} label={labels.ventRatio} options={optionsOf('ventRatio')} />
        <JobEntry
          path={at('eaveVentShare')}
          label={labels.eaveVentShare}
          hint="0.5 is half; the rest is near the ridge."
        />
      </div>
    </Panel>
  );
}
