import {
  cheapestWay,
  comparedWays,
  type SupplierCost,
  supplierCost,
  suppliersOf,
  supplierWays,
} from '../../../core/job/supplier-ways.ts';
import { supplierName, wayWords } from '../../../core/documents/supplier-words.ts';
import { boardEntryLabels } from '../../../core/trace/entry-labels.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import { Panel } from '../../kit/panel.tsx';
import { withValueAt } from '../editor/documents.ts';
import { useJob } from '../job-context.ts';
import { type TriedSums, wayKey } from './use-choice-costs.ts';

const path = 'design.cutting.suppliers';

/** What the lumber costs at each supplier alone and split between them, deliveries counted, and where this job buys. */
export function Suppliers({ sums }: { readonly sums: TriedSums }) {
  const { computation, documents, editor } = useJob();
  const good = computation.good;
  if (good === null) return null;
  const { input, result } = good;
  const stocks = [...result.cutPlans, ...result.unplanned];
  const suppliers = suppliersOf(input, stocks);
  const chosen = documents.design.cutting.suppliers;
  if (suppliers.length < 2 && chosen.length === 0) return null;
  const costs = supplierWays(suppliers).flatMap((way): readonly SupplierCost[] => {
    const sum = sums.get(wayKey(way.suppliers));
    return sum === undefined || sum === null ? [] : [supplierCost(input, way, sum)];
  });
  const best = cheapestWay(costs);
  const rows = comparedWays(costs);
  const buyAt = (names: readonly string[], what: string): void =>
    editor.change(what, (now) => withValueAt(now, path, [...names]));
  return (
    <Panel
      title={boardEntryLabels.suppliers}
      look="flush"
      actions={
        chosen.length === 0 ? null : (
          <Button onPress={() => buyAt([], 'buying wherever it is cheapest')}>
            Buy each board where it is cheapest
          </Button>
        )
      }
    >
      <table className="table" data-path={path}>
        <caption className="visually-hidden">The lumber at each supplier</caption>
        <thead>
          <tr>
            <th scope="col">Bought at</th>
            <th scope="col" className="align-right">
              Lumber
            </th>
            <th scope="col" className="align-right">
              Delivery
            </th>
            <th scope="col" className="align-right">
              Together
            </th>
            <th scope="col">
              <span className="visually-hidden">Choose</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((cost) => (
            <tr
              key={cost.suppliers.join('\n')}
              {...(isSame(cost.suppliers, chosen) ? { 'data-state': 'chosen' } : {})}
            >
              <th scope="row">
                {wayWords(cost.suppliers)}
                {cost === best ? <span className="tag">cheapest</span> : null}
              </th>
              {cost.unplanned > 0 ? (
                <td colSpan={3} className="muted">
                  has no board for {cost.unplanned} {cost.unplanned === 1 ? 'piece' : 'pieces'}
                </td>
              ) : (
                <>
                  <td className="align-right">{formatUsd(cost.lumberUsd)}</td>
                  <td className="align-right">{formatUsd(cost.deliveryUsd)}</td>
                  <td className="align-right">{formatUsd(cost.totalUsd)}</td>
                </>
              )}
              <td>
                {isSame(cost.suppliers, chosen) ? (
                  <span className="tag">this job buys here</span>
                ) : (
                  <Button
                    isDisabled={cost.unplanned > 0}
                    onPress={() => buyAt(cost.suppliers, `buying at ${wayWords(cost.suppliers)}`)}
                  >
                    Buy here
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="panel-words muted">
        {rows.length === 0 ? 'Reckoning what the lumber costs at each supplier.' : null} Deliveries are
        charged as entered in Settings, once for each supplier, and stand in the estimate.
        {chosen.length === 0
          ? ' Now each board is bought where it is cheapest, whatever the deliveries.'
          : ` Now this job buys at ${chosen.map(supplierName).join(' and ')}.`}
      </p>
    </Panel>
  );
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((name) => other.includes(name));
}
