import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { formatRate } from '../pricing/cost-draft.ts';
import type { EstimateTotal } from '../pricing/estimate-types.ts';
import { formatUsd } from '../units/money.ts';
import type { Explanation } from './trace.ts';

/** A cost line of the estimate. `cost/ID` */
export function explainCost(id: string, result: JobResult): Explanation | undefined {
  const line = result.estimate.lines.find((candidate) => candidate.id === id);
  if (line === undefined) return undefined;
  const stale =
    line.stalePriceOf === null ? '' : ` The price is of ${line.stalePriceOf}: ask again before you quote.`;
  return {
    ref: `cost/${id}`,
    title: line.description,
    value: formatUsd(line.costUsd),
    how: `${line.quantity} ${line.unit} at ${formatRate(line.unitCostUsd)} = ${formatUsd(line.costUsd)}, rounded to the cent. Its share of the price is ${formatUsd(line.priceUsd)}.${stale}`,
    parts: line.madeOf,
  };
}

/** A step of the build-up. `total/KEY` */
export function explainTotal(key: string, input: JobInput, result: JobResult): Explanation | undefined {
  const total = result.estimate.totals.find((candidate) => candidate.key === key);
  return total === undefined
    ? undefined
    : {
        ref: `total/${key}`,
        title: total.label,
        value: formatUsd(total.amountUsd),
        how: stepInWords(total, input, result),
        parts: total.madeOf,
      };
}

function stepInWords(total: EstimateTotal, input: JobInput, result: JobResult): string {
  const { money } = input.settings;
  const { estimate } = result;
  const amount = formatUsd(total.amountUsd);
  switch (total.key) {
    case 'materials':
      return `The sum of the material lines: ${amount}.`;
    case 'labour':
      return `The sum of the labour lines: ${amount}.`;
    case 'other':
      return `The sum of the lines of equipment, subs, permit, disposal and allowances: ${amount}.`;
    case 'materials-tax':
      return money.taxRule === 'contractor-pays'
        ? `${money.taxPercent} % of the taxable material lines, paid when they are bought: ${amount}.`
        : 'The contractor pays no sales tax on materials by the rule set, so there is none.';
    case 'direct':
      return `Materials, labour, other and sales tax on materials together: ${amount}.`;
    case 'contingency':
      return `${money.contingencyPercent} % of direct cost: ${amount}.`;
    case 'overhead':
      return `${money.overheadPercent} % of direct cost and contingency: ${amount}.`;
    case 'profit':
      return money.profitMethod === 'markup'
        ? `${money.profitPercent} % on direct cost, contingency and overhead: ${amount}. That is a margin of ${estimate.profitMarginPercent} % of the price.`
        : `${money.profitPercent} % of the price, cost / (1 - ${money.profitPercent} %): ${amount}. That is a markup of ${estimate.profitMarkupPercent} % on the cost.`;
    case 'rounding':
      return money.roundToUsd === '0'
        ? 'The price is not rounded.'
        : `What lifts the price to the next multiple of $${money.roundToUsd}: ${amount}.`;
    case 'price':
      return `Direct cost, contingency, overhead, profit and rounding together: ${amount}.`;
    case 'client-tax':
      return money.taxRule === 'client-pays'
        ? `${money.taxPercent} % of the taxable lines' share of the price: ${amount}.`
        : 'The client pays no sales tax by the rule set, so there is none.';
    case 'total':
      return `Price and sales tax to the client together: ${amount}.${estimate.lacks.length === 0 ? '' : ' Something is not in this sum: see what is lacking.'}`;
    default:
      return '';
  }
}
