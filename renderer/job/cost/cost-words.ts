import type { CommandOutput } from '../../../core/contract/contract.ts';
import type { BillKind } from '../../../core/jobcost/cost-entries.ts';
import type { CostKind } from '../../../core/billing/change-order.ts';

/** All that the job-cost part of a job shows. */
export type Costs = CommandOutput<'costs.get'>;
export type PhaseFigures = Costs['standing']['phases'][number];
export type ShownBill = Costs['bills'][number];
export type ShownTime = Costs['times'][number];

export const kindWords: Readonly<Record<CostKind, string>> = {
  labour: 'Labour',
  material: 'Material',
  equipment: 'Equipment',
  sub: 'Subcontract',
  other: 'Other',
};

export const billWords: Readonly<Record<BillKind, string>> = {
  receipt: 'Receipt',
  order: 'Order',
  'sub-bill': 'Subcontractor’s bill',
  return: 'Return',
};

export const forecastWords: Readonly<Record<PhaseFigures['forecastFrom'], string>> = {
  own: 'spent, and what you say the rest costs',
  pace: 'the rest at the pace so far',
  plan: 'the rest as reckoned',
  done: 'done',
  spent: 'more than reckoned is spent or ordered',
};
