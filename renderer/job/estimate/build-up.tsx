import type { Estimate, EstimateTotal } from '../../../core/pricing/estimate-types.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Figure } from '../parts/figure.tsx';

const strong: ReadonlySet<EstimateTotal['key']> = new Set(['direct', 'price', 'total']);

/** The steps from cost to price, each to the cent, with profit said both ways. */
export function BuildUp({ estimate }: { readonly estimate: Estimate }) {
  const incomplete = estimate.lacks.length > 0;
  return (
    <>
      <table className="table">
        <caption className="visually-hidden">From cost to price</caption>
        <tbody>
          {estimate.totals.map((total) => (
            <tr key={total.key} className={strong.has(total.key) ? 'sum-row' : undefined}>
              <th scope="row">
                {total.label}
                {incomplete && total.key === 'total' ? (
                  <span className="tag tag-care">Not complete</span>
                ) : null}
              </th>
              <td className="align-right">
                <Figure refText={`total/${total.key}`} what={total.label}>
                  {formatUsd(total.amountUsd)}
                </Figure>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className="table both-ways">
        <caption className="visually-hidden">Profit said both ways</caption>
        <thead>
          <tr>
            <th scope="col">Said both ways</th>
            <th scope="col" className="align-right">
              Markup on cost
            </th>
            <th scope="col" className="align-right">
              Margin on price
            </th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Profit</th>
            <td className="align-right">{estimate.profitMarkupPercent} %</td>
            <td className="align-right">{estimate.profitMarginPercent} %</td>
          </tr>
          <tr>
            <th scope="row">Over direct cost</th>
            <td className="align-right">{estimate.grossMarkupPercent} %</td>
            <td className="align-right">{estimate.grossMarginPercent} %</td>
          </tr>
        </tbody>
      </table>
    </>
  );
}
