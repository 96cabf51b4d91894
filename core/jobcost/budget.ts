import { Decimal } from 'decimal.js';
import type { ChangeOrder, CostKind } from '../billing/change-order.ts';
import type { CostLine, Estimate } from '../pricing/estimate-types.ts';
import type { JobCostSettings } from '../pricing/shop-settings.ts';
import { type DecimalText, decimalText, splitUsd, sumUsd, type Usd, usd } from '../units/money.ts';
import { costPhaseOf } from './cost-phases.ts';

/** What one thing may cost, by phase and kind. */
export type BudgetLine = {
  readonly phase: string;
  readonly kind: CostKind;
  readonly description: string;
  readonly costUsd: Usd;
  /** Of labour; else 0. [h] */
  readonly hours: DecimalText;
  /** Number of the change order that it came with; null of the quote itself. */
  readonly changeOrder: number | null;
};

/** What a job may cost: direct cost by phase and kind; contingency stands by itself. */
export type Budget = {
  readonly lines: readonly BudgetLine[];
  /** Direct cost of the quote and of the changes. [$] */
  readonly directUsd: Usd;
  readonly contingencyUsd: Usd;
};

/** An approved change order, by its number. */
export type ApprovedChange = { readonly number: number; readonly order: ChangeOrder };

/**
 * The budget of a job: the cost lines of the accepted estimate under the shop's phases, with the tax on materials where the
 * contractor pays it spread over the taxed lines (largest remainder), and what approved changes add.
 * The lines of the quote add up to its direct cost to the cent.
 * @param estimate - as it was accepted. [$]
 * @param changes - approved change orders. [$, h]
 */
export function budgetOf(
  estimate: Pick<Estimate, 'lines' | 'totals'>,
  changes: readonly ApprovedChange[],
  settings: Pick<JobCostSettings, 'phases'>,
): Budget {
  const total = (key: Estimate['totals'][number]['key']): Usd =>
    estimate.totals.find((step) => step.key === key)?.amountUsd ?? usd(0);
  const taxed = estimate.lines.filter(({ kind, taxable }) => kind === 'material' && taxable);
  const taxShares = splitUsd(
    total('materials-tax'),
    taxed.map(({ costUsd }) => costUsd),
  );
  const taxOf = new Map(taxed.map(({ id }, index) => [id, taxShares[index] ?? usd(0)]));
  const quoted = estimate.lines.map(
    (line): BudgetLine => ({
      phase: costPhaseOf(settings, line.phase),
      kind: costKindOf(line.kind),
      description: line.description,
      costUsd: sumUsd([line.costUsd, taxOf.get(line.id) ?? usd(0)]),
      hours: line.kind === 'labour' ? line.quantity : decimalText(0),
      changeOrder: null,
    }),
  );
  const added = changes.flatMap(({ number, order }) =>
    order.lines.map(
      (line): BudgetLine => ({
        phase: line.phase,
        kind: line.kind,
        description: line.description,
        costUsd: usd(new Decimal(line.quantity).times(line.unitCostUsd)),
        hours: decimalText(new Decimal(line.quantity).times(line.unitHours)),
        changeOrder: number,
      }),
    ),
  );
  const lines = [...quoted, ...added];
  return {
    lines,
    directUsd: sumUsd(lines.map(({ costUsd }) => costUsd)),
    contingencyUsd: total('contingency'),
  };
}

/** The kind of cost that a line of the estimate is kept under. */
export function costKindOf(kind: CostLine['kind']): CostKind {
  switch (kind) {
    case 'labour':
    case 'material':
    case 'equipment':
    case 'sub':
      return kind;
    case 'permit':
    case 'disposal':
    case 'allowance':
      return 'other';
    default:
      return kind satisfies never;
  }
}
