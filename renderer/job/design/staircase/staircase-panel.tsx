import { useState } from 'react';
import { type CostStaircase, seenFrom } from '../../../../core/job/cost-staircase.ts';
import { problemSentence } from '../../../../core/problems/sentence.ts';
import { formatInches } from '../../../../core/units/format-length.ts';
import { formatUsd } from '../../../../core/units/money.ts';
import { Button } from '../../../kit/button.tsx';
import { FoldPanel } from '../../../kit/fold-panel.tsx';
import { withDraft } from '../../editor/documents.ts';
import { useJob } from '../../job-context.ts';
import { Caution } from '../../parts/caution.tsx';
import { Said } from '../../parts/said.tsx';
import { sameButOverhang } from './same-but-overhang.ts';
import { StaircaseChart } from './staircase-chart.tsx';
import { StaircaseTable } from './staircase-table.tsx';
import { againstToday, besideToday, knownAs, stepOfToday, stretchOf } from './staircase-words.ts';
import { type Climb, useStaircase } from './use-staircase.ts';
import './staircase.css';

/** What the boards cost at each overhang near the designed one; any of them can be taken, as one step back. */
export function StaircasePanel({ eaveId }: { readonly eaveId: string }) {
  const { computation, editor } = useJob();
  const input = computation.good?.input ?? null;
  const { climb, start, enough } = useStaircase(eaveId);
  const [chosenIn, setChosenIn] = useState<number | null>(null);
  if (input === null) return null;
  const isRunning = climb?.state.kind === 'running';
  const isOld = climb !== null && !sameButOverhang(climb.input, input, eaveId);
  const todayIn = input.design.eaves.find((eave) => eave.eaveId === eaveId)?.overhangIn;
  const known = climb?.staircase ?? null;
  const staircase = known === null || isOld || todayIn === undefined ? known : seenFrom(known, todayIn);
  const take = (overhangIn: number): void =>
    editor.change(`the overhang of ${formatInches(overhangIn)}`, (now) => {
      const index = now.design.eaves.findIndex((eave) => eave.eaveId === eaveId);
      const design = {
        ...now.design,
        eaves: now.design.eaves.map((eave) => (eave.eaveId === eaveId ? { ...eave, overhangIn } : eave)),
      };
      return withDraft({ ...now, design }, `design.eaves.${index}.overhangIn`, null);
    });
  return (
    <FoldPanel title="Boards by overhang" says="what an overhang a little less or more costs in boards">
      <div className="variant-tools">
        <Button
          isDisabled={isRunning || !computation.current}
          onPress={() => {
            setChosenIn(null);
            start(input);
          }}
        >
          {staircase === null || isOld ? 'Work out the steps' : 'Work them out again'}
        </Button>
        {isRunning ? <Button onPress={enough}>That is enough</Button> : null}
        <span role="status" className="muted">
          <Said text={statusOf(climb, isOld)} />
        </span>
      </div>
      {staircase === null ? null : (
        <Steps staircase={staircase} isOld={isOld} chosenIn={chosenIn} choose={setChosenIn} take={take} />
      )}
    </FoldPanel>
  );
}

function Steps(props: {
  readonly staircase: CostStaircase;
  readonly isOld: boolean;
  readonly chosenIn: number | null;
  readonly choose: (overhangIn: number) => void;
  readonly take: (overhangIn: number) => void;
}) {
  const { staircase, isOld, chosenIn } = props;
  const { steps } = staircase;
  const today = stepOfToday(staircase);
  const lookedAt = chosenIn ?? staircase.todayIn;
  const chosen = Math.max(
    0,
    steps.findLastIndex(({ fromOverhangIn }) => fromOverhangIn <= lookedAt),
  );
  const step = steps[chosen];
  const choose = (index: number): void => props.choose(steps[index]?.fromOverhangIn ?? lookedAt);
  const take = (index: number): void => {
    const to = steps[index];
    if (to !== undefined && to.boardsUsd !== null && to.toOverhangIn !== staircase.todayIn)
      props.take(to.toOverhangIn);
  };
  return (
    <>
      <ul className="staircase-says">
        {besideToday(staircase).map((text) => (
          <li key={text}>
            <Said text={text} />
          </li>
        ))}
      </ul>
      <StaircaseChart staircase={staircase} chosen={chosen} isDisabled={isOld} choose={choose} take={take} />
      <p className="staircase-legend muted">
        <span className="legend-line staircase-legend-cost" aria-hidden="true" /> cheapest boards known
        <span className="legend-line staircase-legend-bound" aria-hidden="true" /> no boards cost less
        <span className="staircase-legend-ring" aria-hidden="true" /> nearest cheaper
      </p>
      {step === undefined ? null : (
        <div className="staircase-looked">
          <span role="status">
            <Said
              text={[
                `${stretchOf(step)}:`,
                step.boardsUsd === null ? '' : `boards ${formatUsd(step.boardsUsd)}.`,
                step === today ? 'As designed.' : sentence(againstToday(step, today)),
                sentence(knownAs(step)),
              ].join(' ')}
            />
          </span>
          {step.boardsUsd === null || step.toOverhangIn === staircase.todayIn ? null : (
            <Button isDisabled={isOld} onPress={() => take(chosen)}>
              Take the overhang {formatInches(step.toOverhangIn)}
            </Button>
          )}
        </div>
      )}
      <StaircaseTable staircase={staircase} chosen={chosen} isDisabled={isOld} take={take} />
      <p className="muted">
        Boards alone, in one purchase for the whole job. Soffit, sheathing, edge and hours follow the overhang
        too and are not in these figures; nor is how far the eave covers wall and window.
      </p>
      <Caution />
    </>
  );
}

function sentence(text: string): string {
  return text === '' ? '' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function statusOf(climb: Climb | null, isOld: boolean): string {
  if (climb === null) return 'Every sixteenth from 3" less to 3" more, each with its own search for boards.';
  const { state } = climb;
  if (state.kind === 'failed')
    return state.problem === null
      ? 'The program did not answer. Work the steps out again.'
      : problemSentence(state.problem);
  if (isOld) return 'These are from before the last change.';
  return state.kind === 'running' ? state.says : 'Worked out.';
}
