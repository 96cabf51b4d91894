import type { EaveDesign } from '../../../core/eave/design-document.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { ItemChoice } from '../parts/item-choice.tsx';
import { StockChoice } from './stock-choice.tsx';
import { StructureEntries } from './structure-entries.tsx';

const measured = [
  { id: 'level', label: 'Level' },
  { id: 'along-slope', label: 'Along the slope' },
] as const;
const measuredTo = [
  { id: 'framing', label: 'Tail (framing)' },
  { id: 'fascia-face', label: 'Fascia’s face' },
] as const;
const tailCuts = [
  { id: 'plumb', label: 'Plumb' },
  { id: 'square', label: 'Square to the slope' },
] as const;
const sides = [
  { id: 'left', label: 'Left of the rafter' },
  { id: 'right', label: 'Right of the rafter' },
] as const;
const fasciaLines = [
  { id: 'parallel', label: 'Level with plate' },
  { id: 'best-fit', label: 'Straight, best fit' },
  { id: 'as-found', label: 'As found' },
] as const;
const soffits = [
  { id: 'level', label: 'Level' },
  { id: 'sloped', label: 'On the slope' },
  { id: 'open', label: 'Open: none' },
] as const;
const blockFaces = [
  { id: 'plumb', label: 'Plumb' },
  { id: 'square', label: 'Square to the slope' },
] as const;
const sheathings = [
  { id: 'panels', label: 'Panels' },
  { id: 'planks', label: 'Planks' },
  { id: 'none', label: 'None' },
] as const;

/** The choices of one eave's overhang. */
export function DesignEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const at = (key: string) => `design.eaves.${index}.${key}`;
  const design = documents.design.eaves[index];
  if (design === undefined) return null;
  return (
    <>
      <Panel title="Overhang">
        <div className="entries entries-2">
          <JobEntry path={at('overhangIn')} label="Overhang" />
          <JobChoice path={at('overhangMeasured')} label="Measured" choices={measured} />
          <JobChoice path={at('overhangTo')} label="Measured to" choices={measuredTo} />
          <JobChoice path={at('tailCut')} label="Tail cut" choices={tailCuts} />
          <JobChoice path={at('fasciaLine')} label="Fascia line" choices={fasciaLines} />
        </div>
      </Panel>
      <Panel title="Extenders">
        <div className="entries entries-2">
          <StockChoice path={at('extender')} label="Lumber" />
          <JobChoice path={at('preferredSide')} label="Preferred side" choices={sides} />
          <JobEntry path={at('backspanRatio')} label="Backspan" after="x overhang" />
          <JobEntry path={at('trimAllowanceIn')} label="Long by, to trim" />
        </div>
      </Panel>
      <StructureEntries index={index} />
      <Panel title="Fascia">
        <div className="entries entries-2">
          <StockChoice path={at('fascia.stock')} label="Lumber" />
          <JobEntry path={at('fascia.dropIn')} label="Drop below tail" />
          <JobEntry path={at('fascia.pastLeftIn')} label="Past the left end" />
          <JobEntry path={at('fascia.pastRightIn')} label="Past the right end" />
        </div>
        <div className="switches">
          <JobSwitch path={at('fascia.bevelJoints')} label="Bevel the joints" />
        </div>
      </Panel>
      <Panel title="Soffit">
        <div className="entries entries-2">
          <JobChoice path={at('soffit.kind')} label="Soffit" choices={soffits} />
          <JobEntry path={at('soffit.thicknessIn')} label="Thickness" />
        </div>
      </Panel>
      <Panel title="Blocks at the plate">
        <div className="switches">
          <JobSwitch path={at('blocks.wanted')} label="A block in each bay" />
        </div>
        <div className="entries entries-2">
          <StockChoice path={at('blocks.stock')} label="Lumber" />
          <JobChoice path={at('blocks.faces')} label="Faces" choices={blockFaces} />
        </div>
      </Panel>
      <Panel title="Sheathing and edge">
        <div className="entries entries-2">
          <JobChoice path={at('sheathing.kind')} label="Sheathing" choices={sheathings} />
          <SheathingItem index={index} design={design} />
          <JobEntry path={at('sheathing.tieBackIn')} label="In over the wall" />
        </div>
        <div className="switches">
          <JobSwitch path={at('sheathing.coversFascia')} label="Sheathing covers the fascia" />
          <JobSwitch path={at('dripEdge')} label="Drip edge" />
        </div>
      </Panel>
    </>
  );
}

function SheathingItem(props: { readonly index: number; readonly design: EaveDesign }) {
  const { kind } = props.design.sheathing;
  if (kind === 'none') return null;
  return (
    <ItemChoice
      path={`design.eaves.${props.index}.sheathing.itemId`}
      label="Bought as"
      category={kind === 'panels' ? 'sheet' : 'plank'}
    />
  );
}
