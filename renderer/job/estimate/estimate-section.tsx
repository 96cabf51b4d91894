import { phases } from '../../../core/eave/phases.ts';
import type { CostLine, Estimate } from '../../../core/pricing/estimate-types.ts';
import { formatUsd, sumUsd } from '../../../core/units/money.ts';
import { Panel } from '../../kit/panel.tsx';
import { useJob } from '../job-context.ts';
import { JobWords } from '../parts/words.tsx';
import { Figure } from '../parts/figure.tsx';
import { Lacks } from '../parts/lacks.tsx';
import { NoFigures } from '../parts/no-figures.tsx';
import { OldMark } from '../parts/old-mark.tsx';
import { Said } from '../parts/said.tsx';
import { BuildUp } from './build-up.tsx';
import { EstimateNotes } from './estimate-notes.tsx';
import { LearnedForLine } from './learned-for-line.tsx';
import { MaterialsOverTime } from './materials-over-time.tsx';
import { SavedEstimates } from './saved-estimates.tsx';

/** Cost lines by phase, the build-up to the price, and the estimates that were saved. */
export function EstimateSection() {
  const { computation, surroundings } = useJob();
  if (computation.good === null) return <NoFigures />;
  const { estimate } = computation.good.result;
  return (
    <div className="stack">
      <Lacks />
      <div className="estimate">
        <Panel title="Cost lines" look="flush" actions={<OldMark />}>
          <CostTable estimate={estimate} />
        </Panel>
        <div className="estimate-side">
          <Panel title="From cost to price" look="flush" actions={<OldMark />}>
            <BuildUp estimate={estimate} />
          </Panel>
          <Panel title="Day of the prices">
            <JobWords
              path="estimateOn"
              label="Prices of"
              type="text"
              hint={`Blank follows today, ${surroundings.today}. Valid until ${estimate.validUntil}.`}
            />
          </Panel>
          <SavedEstimates />
        </div>
      </div>
      <MaterialsOverTime />
      <EstimateNotes notes={estimate.notes} />
    </div>
  );
}

function CostTable({ estimate }: { readonly estimate: Estimate }) {
  const { settings } = useJob().surroundings;
  return (
    <table className="table">
      <caption className="visually-hidden">Cost lines by phase</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className="align-right">
            Quantity
          </th>
          <th scope="col">Unit</th>
          <th scope="col" className="align-right">
            For one
          </th>
          <th scope="col" className="align-right">
            Cost
          </th>
          <th scope="col" className="align-right">
            Price
          </th>
        </tr>
      </thead>
      {phases.map((phase) => {
        const lines = estimate.lines.filter((line) => line.phase === phase);
        return lines.length === 0 ? null : (
          <tbody key={phase}>
            <tr className="phase-row">
              <th scope="rowgroup" colSpan={4}>
                {phase}
              </th>
              <td className="align-right">{formatUsd(sumUsd(lines.map((line) => line.costUsd)))}</td>
              <td className="align-right">{formatUsd(sumUsd(lines.map((line) => line.priceUsd)))}</td>
            </tr>
            {lines.map((line) => (
              <CostRow key={line.id} line={line} staleDays={settings.money.priceStaleDays} />
            ))}
          </tbody>
        );
      })}
      <tfoot>
        <tr>
          <th scope="row" colSpan={4}>
            All lines
          </th>
          <td className="align-right">{formatUsd(sumUsd(estimate.lines.map((line) => line.costUsd)))}</td>
          <td className="align-right">{formatUsd(sumUsd(estimate.lines.map((line) => line.priceUsd)))}</td>
        </tr>
      </tfoot>
    </table>
  );
}

function CostRow({ line, staleDays }: { readonly line: CostLine; readonly staleDays: number }) {
  return (
    <tr>
      <th scope="row">
        <Said text={line.description} />
        {line.supplier === '' ? null : <span className="muted"> {line.supplier}</span>}
        {line.stalePriceOf === null ? null : (
          <span className="tag tag-care">
            Price of {line.stalePriceOf}, older than {staleDays} days
          </span>
        )}
        <LearnedForLine lineId={line.takeoffLineId} />
      </th>
      <td className="align-right">
        <Figure refText={`line/${line.takeoffLineId}`} what={`Quantity of ${line.description}`}>
          {line.quantity}
        </Figure>
      </td>
      <td>{line.unit}</td>
      <td className="align-right">{unitCost(line.unitCostUsd)}</td>
      <td className="align-right">
        <Figure refText={`cost/${line.id}`} what={`Cost of ${line.description}`}>
          {formatUsd(line.costUsd)}
        </Figure>
      </td>
      <td className="align-right">{formatUsd(line.priceUsd)}</td>
    </tr>
  );
}

/** A cost for one unit: in cents, with more places where the price has them. [$] */
function unitCost(exact: string): string {
  const places = exact.split('.')[1]?.length ?? 0;
  return places > 2 ? `$${exact}` : formatUsd(exact as CostLine['unitCostUsd']);
}
