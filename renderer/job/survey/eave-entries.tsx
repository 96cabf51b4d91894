import { Plus, X } from 'lucide-react';
import type { ObstructionSurvey } from './obstruction.ts';
import { Button } from '../../kit/button.tsx';
import { IconButton } from '../../kit/icon-button.tsx';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { Panel } from '../../kit/panel.tsx';
import { removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';
import { JobChoice, JobSwitch } from '../parts/choice.tsx';
import { JobEntry } from '../parts/entry.tsx';
import { JobWords } from '../parts/words.tsx';
import { addObstruction } from './obstruction.ts';
import { OldBlockEntries, oldBlocksSay } from './old-block-entries.tsx';
import { ReadingGrid } from './reading-grid.tsx';

const deckChoices = [
  { id: 'planks', label: 'Planks' },
  { id: 'panels', label: 'Panels' },
] as const;

/** What was measured once for the eave; a rafter's own reading wins over it. */
export function EaveEntries({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const at = (key: string) => `survey.eaves.${index}.${key}`;
  const obstructions: readonly ObstructionSurvey[] = documents.survey.eaves[index]?.obstructions ?? [];
  return (
    <Panel title="The eave">
      <div className="entries entries-2">
        <JobWords path={at('name')} label="Name" maxLength={80} />
        <JobEntry path={at('lengthIn')} label="Wall, corner to corner" />
        <JobEntry path={at('pitchRisePer12')} label="Pitch" />
        <JobEntry path={at('heightAbovePlateIn')} label="Height above plate" />
        <JobEntry path={at('plateWidthIn')} label="Plate width" />
        <JobEntry path={at('joistThicknessIn')} label="Joist thickness" />
        <JobEntry path={at('joistDepthIn')} label="Joist depth" blankMeans="as the rafter" />
        <JobEntry path={at('rafterThicknessIn')} label="Rafter thickness" />
        <JobEntry path={at('rafterDepthIn')} label="Rafter depth" />
        <JobEntry path={at('clearBackspanIn')} label="Clear backspan" blankMeans="nothing in the way" />
        <JobEntry
          path={at('windowHeadBelowPlateIn')}
          label="Window head below plate"
          blankMeans="no window"
        />
        <JobChoice path={at('deckKind')} label="Old deck" choices={deckChoices} />
        <JobEntry path={at('deckThicknessIn')} label="Deck thickness" />
      </div>
      <div className="switches">
        <JobSwitch path={at('deckStaysOn')} label="The old deck stays on" />
        <JobSwitch path={at('hasOldBlocks')} label="Old blocks stand between the rafters" />
      </div>
      <Obstructions index={index} obstructions={obstructions} />
    </Panel>
  );
}

/** Readings of the wall and of the plate, and bays unlike the others: folded up until they are needed. */
export function EaveReadings({ index }: { readonly index: number }) {
  const { documents } = useJob();
  const eave = documents.survey.eaves[index];
  if (eave === undefined) return null;
  return (
    <>
      <FoldPanel title="Wall from a string" says={countSays(eave.wallReadings.length, 'straight')}>
        <p className="muted panel-note">
          Stretch a string along the wall and read how far the framing face stands out of it: in is minus.
          Between readings the wall is taken to run straight.
        </p>
        <ReadingGrid eaveIndex={index} list="wallReadings" what="The wall" heading="Out" />
      </FoldPanel>
      <FoldPanel title="Plate from a level" says={countSays(eave.plateReadings.length, 'level')}>
        <p className="muted panel-note">
          How high the plate’s top lies against a level line: below it is minus. The fascia line “level” goes
          by it.
        </p>
        <ReadingGrid eaveIndex={index} list="plateReadings" what="The plate" heading="Up" />
      </FoldPanel>
      {eave.rafters.length < 2 ? null : (
        <FoldPanel title="Old blocks by bay" says={oldBlocksSay(eave)}>
          <OldBlockEntries index={index} />
        </FoldPanel>
      )}
    </>
  );
}

function countSays(count: number, without: string): string {
  return count === 0 ? `none: ${without}` : count === 1 ? '1 reading' : `${count} readings`;
}

function Obstructions(props: {
  readonly index: number;
  readonly obstructions: readonly ObstructionSurvey[];
}) {
  const { index, obstructions } = props;
  const { editor, goTo } = useJob();
  const list = `survey.eaves.${index}.obstructions`;
  return (
    <div className="sub-list">
      <div className="sub-list-head">
        <h3>Else on the plate</h3>
        <Button
          tone="quiet"
          icon={<Plus size={14} aria-hidden="true" />}
          onPress={() => {
            editor.change('adding a thing in the way', (now) => addObstruction(now, index));
            goTo(`${list}.${obstructions.length}.label`);
          }}
        >
          Add
        </Button>
      </div>
      {obstructions.map((one, at) => (
        <div key={one.id} className="sub-list-row obstruction-row">
          <JobWords path={`${list}.${at}.label`} label="What" maxLength={80} />
          <JobEntry path={`${list}.${at}.fromIn`} label="From" />
          <JobEntry path={`${list}.${at}.toIn`} label="To" />
          <IconButton
            label={`Remove ${one.label === '' ? 'this thing' : one.label}`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => editor.change('removing a thing in the way', (now) => removeFrom(now, list, at))}
          />
        </div>
      ))}
    </div>
  );
}
