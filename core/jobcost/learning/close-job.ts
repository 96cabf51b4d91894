import { Decimal } from 'decimal.js';
import type { ContractSum } from '../../billing/contract-sum.ts';
import type { Ledger } from '../../billing/ledger.ts';
import type { JobResult } from '../../job/job-result.ts';
import type { CostLine, Estimate } from '../../pricing/estimate-types.ts';
import type { JobCostSettings, ShopSettings } from '../../pricing/shop-settings.ts';
import type { TakeoffLine } from '../../takeoff/takeoff-types.ts';
import { decimalText, sumUsd, type Usd, usd } from '../../units/money.ts';
import type { Budget } from '../budget.ts';
import { type KeptBill, type KeptTime, standingEntries } from '../cost-entries.ts';
import { costPhaseOf } from '../cost-phases.ts';
import type { Standing } from '../standing.ts';
import { type FinishedFigures, type MaterialGroup, materialGroups } from './finished-job.ts';

/** Everything that a job came to. */
export type JobToClose = {
  readonly result: Pick<JobResult, 'estimate' | 'takeoff'>;
  readonly contract: ContractSum;
  readonly ledger: Ledger;
  readonly budget: Budget;
  readonly standing: Standing;
  readonly times: readonly KeptTime[];
  readonly bills: readonly KeptBill[];
  readonly settings: Pick<JobCostSettings, 'phases'>;
  /** Of the accepted quote, by material. [%] */
  readonly allowances: Allowances;
};

/** What is allowed beyond the need of each material, where the shop sets it. [%] */
export type Allowances = Readonly<Partial<Record<MaterialGroup, number>>>;

/** The allowances that the shop sets. */
export function allowancesOf(
  settings: Pick<ShopSettings, 'plankWastePercent'> & {
    readonly fastening: Pick<ShopSettings['fastening'], 'lossPercent'>;
  },
): Allowances {
  return { nails: settings.fastening.lossPercent, plank: settings.plankWastePercent };
}

/** Takes down what a job came to, so that what is learned from it stays as it is whatever is renamed or priced later. */
export function closingFigures(job: JobToClose): FinishedFigures {
  const { contract, ledger, budget, standing } = job;
  const { estimate } = job.result;
  return {
    contractUsd: contract.revisedUsd,
    changesUsd: sumUsd(contract.changes.map(({ priceUsd }) => priceUsd)),
    billedUsd: ledger.billedUsd,
    paidUsd: ledger.paidUsd,
    budgetUsd: budget.directUsd,
    contingencyUsd: budget.contingencyUsd,
    overheadUsd: totalOf(estimate, 'overhead'),
    actualUsd: standing.whole.actualUsd,
    committedUsd: standing.whole.committedUsd,
    phases: standing.phases.map(({ phase, budgetUsd, actualUsd, budgetHours, actualHours }) => ({
      phase,
      budgetUsd,
      actualUsd,
      budgetHours,
      actualHours,
    })),
    tasks: job.result.takeoff.lines.flatMap((line) => taskOf(line, job.settings)),
    materials: materialsOf(job),
    people: peopleOf(job.times),
  };
}

function totalOf({ totals }: Pick<Estimate, 'totals'>, key: Estimate['totals'][number]['key']): Usd {
  return totals.find((step) => step.key === key)?.amountUsd ?? usd(0);
}

function taskOf({ phase, need }: TakeoffLine, settings: JobToClose['settings']): FinishedFigures['tasks'] {
  if (need.kind !== 'labour') return [];
  return [
    {
      task: need.task,
      phase: costPhaseOf(settings, phase),
      hoursPerUnit: decimalText(need.unitHours),
      hours: need.hours,
    },
  ];
}

/** Lines of which nothing was bought on a matched receipt tell nothing, and stay out. */
function materialsOf({ result, bills, allowances }: JobToClose): FinishedFigures['materials'] {
  const bought = standingEntries(bills)
    .filter(({ bill }) => bill.kind !== 'order')
    .flatMap(({ bill }) => bill.lines);
  const kindOf = new Map(result.takeoff.lines.map(({ id, kind }) => [id, kind]));
  const lines = result.estimate.lines.flatMap((line) => {
    const group = groupOf(line, kindOf);
    const parts = bought.filter(({ costLineId }) => costLineId === line.id);
    if (group === undefined || parts.length === 0) return [];
    // What comes back stands with an amount below zero, whichever way its quantity was written.
    const quantity = parts.reduce(
      (sum, part) =>
        sum.plus(new Decimal(part.quantity).abs().times(new Decimal(part.amountUsd).isNegative() ? -1 : 1)),
      new Decimal(0),
    );
    return [
      {
        group,
        reckonedUsd: line.costUsd,
        boughtUsd: usd(quantity.times(line.unitCostUsd)),
        paidUsd: sumUsd(parts.map(({ amountUsd }) => usd(amountUsd))),
      },
    ];
  });
  return materialGroups.flatMap((group) => {
    const ofGroup = lines.filter((line) => line.group === group);
    if (ofGroup.length === 0) return [];
    return [
      {
        group,
        allowedPercent: decimalOf(allowances[group]),
        reckonedUsd: sumUsd(ofGroup.map(({ reckonedUsd }) => reckonedUsd)),
        boughtUsd: sumUsd(ofGroup.map(({ boughtUsd }) => boughtUsd)),
        paidUsd: sumUsd(ofGroup.map(({ paidUsd }) => paidUsd)),
      },
    ];
  });
}

function decimalOf(percent: number | undefined): string | null {
  return percent === undefined ? null : decimalText(percent);
}

function groupOf(
  { kind, takeoffLineId }: CostLine,
  kindOf: ReadonlyMap<string, TakeoffLine['kind']>,
): MaterialGroup | undefined {
  if (kind !== 'material') return undefined;
  const takeoffKind = kindOf.get(takeoffLineId);
  return materialGroups.find((group) => group === takeoffKind);
}

function peopleOf(times: readonly KeptTime[]): FinishedFigures['people'] {
  const byPerson = Map.groupBy(standingEntries(times), ({ person }) => person);
  return [...byPerson].map(([person, entries]) => ({
    person,
    hours: decimalText(entries.reduce((sum, { hours }) => sum.plus(hours), new Decimal(0))),
    costUsd: sumUsd(entries.map(({ costUsd }) => costUsd)),
  }));
}
