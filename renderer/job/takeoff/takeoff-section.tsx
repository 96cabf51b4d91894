import { phases } from '../../../core/eave/phases.ts';
import { stillToCut, stillToCutSentence } from '../../../core/job/still-to-cut.ts';
import type { Takeoff, TakeoffLine } from '../../../core/takeoff/takeoff-types.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { Caution } from '../parts/caution.tsx';
import { Figure } from '../parts/figure.tsx';
import { Lacks } from '../parts/lacks.tsx';
import { NoFigures } from '../parts/no-figures.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';
import { PieceTable } from './piece-table.tsx';

/** Everything that the job needs, by phase, before it is priced; and every piece that is cut. */
export function TakeoffSection() {
  const { computation } = useJob();
  if (computation.good === null) return <NoFigures />;
  const { takeoff, eaves } = computation.good.result;
  const left = stillToCut(eaves, takeoff.pieces, computation.good.input.design);
  return (
    <div className="stack">
      <Lacks />
      <Panel
        title="Takeoff"
        look="flush"
        actions={
          <>
            <OldMark />
            <span className="muted">
              {takeoff.labourHours} h of work, {takeoff.crewDays} crew days
            </span>
          </>
        }
      >
        {left.inPlace.length === 0 ? null : (
          <p className="panel-note">
            <Said
              text={`${stillToCutSentence(left)} What is in place is no longer counted: these figures are of what is still to be done.`}
            />
          </p>
        )}
        <TakeoffTable takeoff={takeoff} />
      </Panel>
      <Panel title={`Pieces: ${takeoff.pieces.length}`} look="flush" actions={<OldMark />}>
        <PieceTable pieces={takeoff.pieces} />
        <Caution />
      </Panel>
    </div>
  );
}

function TakeoffTable({ takeoff }: { readonly takeoff: Takeoff }) {
  return (
    <table className="table">
      <caption className="visually-hidden">Takeoff by phase</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className="align-right">
            Quantity
          </th>
          <th scope="col">Unit</th>
          <th scope="col">Where</th>
          <th scope="col">In the client’s words</th>
        </tr>
      </thead>
      {phases.map((phase) => {
        const lines = takeoff.lines.filter((line) => line.phase === phase);
        return lines.length === 0 ? null : (
          <tbody key={phase}>
            <tr className="phase-row">
              <th scope="rowgroup" colSpan={5}>
                {phase}
              </th>
            </tr>
            {lines.map((line) => (
              <LineRow key={line.id} line={line} />
            ))}
          </tbody>
        );
      })}
    </table>
  );
}

function LineRow({ line }: { readonly line: TakeoffLine }) {
  return (
    <tr>
      <th scope="row">
        <Said text={line.description} />
      </th>
      <td className="align-right">
        <Figure refText={`line/${line.id}`} what={line.description}>
          {line.quantity}
        </Figure>
      </td>
      <td>{line.unit}</td>
      <td>
        <Said text={line.where} />
      </td>
      <td className="muted">
        <Said text={line.clientWording} />
        {line.taxable ? ' (taxable)' : ''}
      </td>
    </tr>
  );
}
