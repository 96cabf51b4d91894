import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { EndEntries } from './end-entries.tsx';
import { ItemChoice } from './item-choice.tsx';
import { BowEntries, LayoutEntries, TailEndEntries } from './layout-entries.tsx';
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
const backEnds = [
  { id: 'parallel', label: 'Parallel to the tail' },
  { id: 'square', label: 'Square' },
] as const;
const fasciaLines = [
  { id: 'parallel', label: 'Along the plate' },
  { id: 'level', label: 'Level' },
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

/** The choices of one eave's overhang; what is rarely touched is folded up. */
export function DesignEntries({ index }: { readonly index: number }) {
  const at = (key: string) => `design.eaves.${index}.${key}`;
  return (
    <>
      <Panel title="Overhang">
        <div className="entries entries-2">
          <JobEntry path={at('overhangIn')} label="Overhang" />
          <JobChoice path={at('overhangMeasured')} label="Measured" choices={measured} />
          <JobChoice path={at('overhangTo')} label="Measured to" choices={measuredTo} />
          <JobChoice path={at('fasciaLine')} label="Fascia line" choices={fasciaLines} />
        </div>
      </Panel>
      <BowEntries index={index} />
      <Panel title="Tails">
        <div className="entries entries-2">
          <StockChoice path={at('extender')} label="Lumber" />
          <JobEntry path={at('backspanRatio')} label="Backspan" after="x overhang" />
          <JobChoice path={at('tailCut')} label="Tail cut" choices={tailCuts} />
          <JobChoice path={at('backEnd')} label="Back end" choices={backEnds} />
          <JobEntry path={at('trimAllowanceIn')} label="Long by, to trim" />
        </div>
      </Panel>
      <LayoutEntries index={index} />
      <TailEndEntries index={index} />
      <StructureEntries index={index} />
      <FasciaEntries index={index} />
      <EndEntries index={index} />
      <SoffitEntries index={index} />
      <BlockEntries index={index} />
      <SheathingEntries index={index} />
    </>
  );
}

function FasciaEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const at = (key: string) => `design.eaves.${index}.fascia.${key}`;
  const fascia = documents.design.eaves[index]?.fascia;
  return (
    <Panel title="Fascia">
      <div className="entries entries-2">
        <StockChoice path={at('stock')} label="Lumber" />
        <JobEntry path={at('dropIn')} label="Drop below tail" />
        {fascia?.subFascia.wanted === true ? (
          <StockChoice path={at('subFascia.stock')} label="Sub-fascia" />
        ) : null}
      </div>
      <div className="switches">
        <JobSwitch path={at('bevelJoints')} label="Bevel the joints" />
        <JobSwitch path={at('subFascia.wanted')} label="Sub-fascia behind it" />
      </div>
    </Panel>
  );
}

function SoffitEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const at = (key: string) => `design.eaves.${index}.soffit.${key}`;
  const soffit = documents.design.eaves[index]?.soffit;
  if (soffit === undefined) return null;
  const isLevel = soffit.kind === 'level';
  return (
    <Panel title="Soffit">
      <div className="entries entries-2">
        <JobChoice path={at('kind')} label="Soffit" choices={soffits} />
        <JobEntry path={at('thicknessIn')} label="Thickness" />
        {soffit.kind === 'open' ? null : (
          <>
            <ItemChoice path={at('itemId')} label="Panels" category="sheet" noneMeans="Not chosen yet" />
            {isLevel && (soffit.ledger.wanted || soffit.nailers) ? (
              <StockChoice path={at('ledger.stock')} label="Ledger and nailers" />
            ) : null}
            <ItemChoice path={at('ventItemId')} label="Vents" category="other" noneMeans="None" />
            {soffit.ventItemId === '' ? null : (
              <JobEntry
                path={at('ventNetFreeSqIn')}
                label="Net free area"
                after="sq in."
                hint="Of one, or of a foot of strip."
              />
            )}
          </>
        )}
      </div>
      {isLevel ? (
        <div className="switches">
          <JobSwitch path={at('ledger.wanted')} label="Ledger on the wall" />
          <JobSwitch path={at('nailers')} label="A nailer beside each tail" />
        </div>
      ) : null}
    </Panel>
  );
}

function BlockEntries({ index }: { readonly index: number }) {
  const at = (key: string) => `design.eaves.${index}.blocks.${key}`;
  return (
    <Panel title="Blocks at the plate">
      <div className="switches">
        <JobSwitch path={at('wanted')} label="A block in each bay" />
      </div>
      <div className="entries entries-2">
        <StockChoice path={at('stock')} label="Lumber" />
        <JobChoice path={at('faces')} label="Faces" choices={blockFaces} />
      </div>
    </Panel>
  );
}

function SheathingEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const at = (key: string) => `design.eaves.${index}.${key}`;
  const kind = documents.design.eaves[index]?.sheathing.kind ?? 'none';
  return (
    <Panel title="Sheathing and edge">
      <div className="entries entries-2">
        <JobChoice path={at('sheathing.kind')} label="Sheathing" choices={sheathings} />
        {kind === 'none' ? null : (
          <ItemChoice
            path={at('sheathing.itemId')}
            label="Bought as"
            category={kind === 'panels' ? 'sheet' : 'plank'}
          />
        )}
        <JobEntry path={at('sheathing.tieBackIn')} label="In over the wall" />
      </div>
      <div className="switches">
        <JobSwitch path={at('sheathing.coversFascia')} label="Sheathing covers the fascia" />
        <JobSwitch path={at('dripEdge')} label="Drip edge" />
      </div>
    </Panel>
  );
}
