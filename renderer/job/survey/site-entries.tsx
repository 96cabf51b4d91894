import { Panel } from '../../kit/panel.tsx';
import { JobChoice } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { checkEntryLabels as labels } from '../parts/entry-labels.ts';
import { JobOption } from '../parts/option.tsx';

const snowBases = [
  { id: 'nominal', label: 'Up to ASCE 7-16: as mapped' },
  { id: 'strength', label: 'ASCE 7-22: times 0.7' },
] as const;
const upliftBases = [
  { id: 'strength', label: 'By ASCE 7: times 0.6' },
  { id: 'allowable', label: 'The 0.6 is in it' },
] as const;
const iced = [
  { id: 'doubled', label: 'Twice the flat roof snow' },
  { id: 'not-doubled', label: 'Not doubled' },
] as const;
const roofings = [
  { id: 'asphalt-shingle', label: 'Asphalt shingles' },
  { id: 'laminated-shingle', label: 'Asphalt, laminated' },
  { id: 'wood-shingle', label: 'Wood shingles' },
  { id: 'slate-3/16', label: 'Slate, 3/16 in.' },
  { id: 'slate-1/4', label: 'Slate, 1/4 in.' },
  { id: 'clay-tile', label: 'Clay tile' },
  { id: 'cement-tile', label: 'Cement tile' },
] as const;
const ratios = [
  { id: '1/150', label: '1/150 of the attic' },
  { id: '1/300', label: '1/300 of the attic' },
] as const;
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
      <div className="entries entries-2">
        <JobEntry
          path={at('groundSnowPsf')}
          label={labels.groundSnowPsf}
          blankMeans="not known"
          after="psf"
          hint="Ask the building department."
        />
        <JobChoice path={at('groundSnowBasis')} label={labels.groundSnowBasis} choices={snowBases} />
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
        <JobChoice path={at('icedEave')} label={labels.icedEave} choices={iced} />
        <JobEntry
          path={at('windUpliftPsf')}
          label={labels.windUpliftPsf}
          blankMeans="not known"
          after="psf"
          hint="Net, upward, square to the roof."
        />
        <JobChoice path={at('windUpliftBasis')} label={labels.windUpliftBasis} choices={upliftBases} />
        <JobChoice path={at('roofing')} label={labels.roofing} choices={roofings} />
        <JobEntry path={at('roofingLayers')} label={labels.roofingLayers} />
        <JobOption path={at('iceBarrierRequired')} label={labels.iceBarrierRequired} options={askedFor} />
        <JobEntry
          path={at('atticAreaSqFt')}
          label={labels.atticAreaSqFt}
          blankMeans="not measured"
          after="sq ft"
        />
        <JobChoice path={at('ventRatio')} label={labels.ventRatio} choices={ratios} />
      </div>
    </Panel>
  );
}
