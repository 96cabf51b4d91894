import { Plus } from 'lucide-react';
import type { RakeDesign } from '../../../core/eave/design-document.ts';
import { rakeMark } from '../../../core/rake/rake-mark.ts';
import { rakeEntryLabels as labels } from '../../../core/trace/entry-labels.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { addRakeDesign, rakesOfEave } from '../editor/rake-list.ts';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { ItemChoice } from './item-choice.tsx';
import { StockChoice } from './stock-choice.tsx';

const kinds = [
  { id: 'lookouts', label: 'Lookouts' },
  { id: 'ladder', label: 'Ladder' },
  { id: 'none', label: 'Nothing built' },
] as const;
const atGable = [
  { id: 'notched', label: 'Let in, running through' },
  { id: 'butted', label: 'Butted to its faces' },
] as const;
const laid = [
  { id: 'flat', label: 'Flat' },
  { id: 'on-edge', label: 'On edge' },
] as const;
const sheathings = [
  { id: 'panels', label: 'Panels' },
  { id: 'planks', label: 'Planks' },
  { id: 'none', label: 'None' },
] as const;

/** The choices of each rake that rises from an eave. */
export function RakeDesigns({ eaveId }: { readonly eaveId: string }) {
  const { editor, documents, surroundings } = useJob();
  return rakesOfEave(documents, eaveId).map(({ rake, index }) => {
    const designIndex = documents.design.rakes.findIndex(({ rakeId }) => rakeId === rake.id);
    const design = documents.design.rakes[designIndex];
    const title = `Rake ${rakeMark(index)}: ${rake.name}`;
    return design === undefined ? (
      <Panel key={rake.id} title={title}>
        <p className="muted">It is measured, and nothing is designed for it yet.</p>
        <Button
          icon={<Plus size={14} aria-hidden="true" />}
          data-path={`survey.rakes.${index}`}
          onPress={() =>
            editor.change('starting the design of a rake', (now) =>
              addRakeDesign(now, rake.id, surroundings.prices),
            )
          }
        >
          Start its design
        </Button>
      </Panel>
    ) : (
      <RakeDesignEntries key={rake.id} title={title} index={designIndex} design={design} />
    );
  });
}

function RakeDesignEntries(props: {
  readonly title: string;
  readonly index: number;
  readonly design: RakeDesign;
}) {
  const { design } = props;
  const at = (key: string) => `design.rakes.${props.index}.${key}`;
  const { kind } = design;
  return (
    <Panel title={props.title}>
      <div className="entries entries-2">
        <JobChoice path={at('kind')} label={labels.kind} choices={kinds} />
        <JobEntry
          path={at('overhangIn')}
          label={labels.overhangIn}
          hint="Level, gable wall to the barge rafter’s face."
        />
        {kind === 'none' ? null : (
          <>
            <StockChoice path={at('lookout')} label={kind === 'ladder' ? 'Rail and rungs' : labels.lookout} />
            <JobEntry path={at('spacingIn')} label={labels.spacingIn} hint="Along the slope, on centre." />
          </>
        )}
        {kind === 'lookouts' ? (
          <>
            <JobChoice path={at('atGableRafter')} label={labels.atGableRafter} choices={atGable} />
            <JobChoice path={at('lookoutLaid')} label={labels.lookoutLaid} choices={laid} />
            <JobEntry path={at('trimAllowanceIn')} label={labels.trimAllowanceIn} />
          </>
        ) : null}
        {kind === 'none' ? null : (
          <>
            <StockChoice path={at('barge')} label={labels.barge} />
            {design.fascia.wanted ? (
              <StockChoice path={at('fascia.stock')} label={labels['fascia.stock']} />
            ) : null}
            <JobChoice path={at('sheathing.kind')} label={labels['sheathing.kind']} choices={sheathings} />
            <RakeSheathing index={props.index} design={design} />
            <ItemChoice
              path={at('soffit.itemId')}
              label={labels['soffit.itemId']}
              category="sheet"
              noneMeans="Open below"
            />
          </>
        )}
      </div>
      {kind === 'none' ? null : (
        <div className="switches">
          <JobSwitch path={at('fascia.wanted')} label={labels['fascia.wanted']} />
          {design.sheathing.kind === 'none' ? null : (
            <JobSwitch path={at('sheathing.coversFascia')} label={labels['sheathing.coversFascia']} />
          )}
          <JobSwitch path={at('dripEdge')} label={labels.dripEdge} />
        </div>
      )}
    </Panel>
  );
}

function RakeSheathing(props: { readonly index: number; readonly design: RakeDesign }) {
  const at = (key: string) => `design.rakes.${props.index}.sheathing.${key}`;
  const { kind } = props.design.sheathing;
  if (kind === 'none') return null;
  return (
    <>
      <ItemChoice
        path={at('itemId')}
        label={labels['sheathing.itemId']}
        category={kind === 'panels' ? 'sheet' : 'plank'}
      />
      <JobEntry
        path={at('stripBackIn')}
        label={labels['sheathing.stripBackIn']}
        blankMeans="to the first rafter"
        hint="Level, in from the gable wall."
      />
      {kind === 'planks' ? (
        <JobEntry
          path={at('everySecondIn')}
          label={labels['sheathing.everySecondIn']}
          blankMeans="breaks alike"
          hint="So that no line of joints lies on one rafter."
        />
      ) : null}
    </>
  );
}
