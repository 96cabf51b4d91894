import type { CutPlan, UnplannedStock } from '../cutting/cut-plan-types.ts';
import { phases } from '../eave/phases.ts';
import type { JobInput } from '../job/job-file.ts';
import { assertNever, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';
import type { Takeoff, TakeoffLine } from '../takeoff/takeoff-types.ts';
import { addDays, earliestDate } from '../units/civil-date.ts';
import { splitUsd, sumUsd, usd, type Usd } from '../units/money.ts';
import { buildUp, percentOf } from './build-up.ts';
import { type CostDraft, type Costed, nothingCosted } from './cost-draft.ts';
import { edgeCosts, plankCosts, sheetCosts } from './cover-costs.ts';
import { estimateTotals } from './estimate-totals.ts';
import type { CostLine, Estimate } from './estimate-types.ts';
import { lumberCosts } from './lumber-costs.ts';
import { nailCosts } from './nail-costs.ts';
import { ventCosts } from './vent-costs.ts';
import { extraCosts, labourCosts } from './work-costs.ts';

/**
 * Prices a takeoff: cost lines, the build-up to the price, and what is lacking.
 *
 * Every line is rounded to cents half up and every total is the sum of rounded amounts. The price before tax is shared
 * over the lines by their cost (largest remainder), so that the shares add up to it. What has no price is not in the
 * sum and is named in `lacks`.
 * @param input - day, prices and settings.
 * @param takeoff - what is needed.
 * @param cutPlans - boards to buy.
 * @param unplanned - stocks whose pieces no board could be planned for.
 * @param leftOut - lengths without a usable price, which the cut plans go without.
 * @param notes - what else is worth knowing and leaves the sum whole.
 * @returns e.g. materials 2,200.00 and labour of 64 h at $34 with 35 % burden -> 2,937.60 in the labour sum; or
 * `margin-too-high`.
 */
export function makeEstimate(
  input: JobInput,
  takeoff: Takeoff,
  cutPlans: readonly CutPlan[],
  unplanned: readonly UnplannedStock[],
  leftOut: readonly Problem[] = [],
  notes: readonly Problem[] = [],
): Result<Estimate, Problem> {
  const costed = [
    lumberCosts(input, takeoff, cutPlans),
    ...takeoff.lines.map((line) => costsOf(input, line)),
  ];
  // Sorting is stable, so within a phase lines stay in the order of the takeoff.
  const drafts = costed
    .flatMap((part) => part.drafts)
    .sort((a, b) => phases.indexOf(a.line.phase) - phases.indexOf(b.line.phase));
  const sums = {
    materialsUsd: sumOf(drafts, (draft) => draft.line.kind === 'material'),
    labourUsd: sumOf(drafts, (draft) => draft.line.kind === 'labour'),
    otherUsd: sumOf(drafts, (draft) => draft.line.kind !== 'material' && draft.line.kind !== 'labour'),
    taxableMaterialsUsd: sumOf(drafts, (draft) => draft.line.kind === 'material' && draft.line.taxable),
  };
  const { money } = input.settings;
  const built = buildUp(sums, money);
  if (!built.ok) return built;
  const lines = pricedLines(drafts, built.value.priceUsd);
  const clientTaxUsd =
    money.taxRule === 'client-pays'
      ? percentOf(sumUsd(lines.filter((line) => line.taxable).map((line) => line.priceUsd)), money.taxPercent)
      : usd(0);
  const totalUsd = sumUsd([built.value.priceUsd, clientTaxUsd]);
  return ok({
    asOf: input.asOf,
    lines,
    totals: estimateTotals(lines, sums, built.value, clientTaxUsd, totalUsd, money),
    directCostUsd: built.value.directUsd,
    priceUsd: built.value.priceUsd,
    totalUsd,
    profitMarkupPercent: built.value.profitMarkupPercent,
    profitMarginPercent: built.value.profitMarginPercent,
    grossMarginPercent: built.value.grossMarginPercent,
    grossMarkupPercent: built.value.grossMarkupPercent,
    lacks: distinct([
      ...takeoff.lacks,
      ...unplanned.map(({ problem }) => problem),
      ...costed.flatMap((part) => part.lacks),
      ...leftOut.filter(isPriceOfNothing),
    ]),
    notes: distinct([
      ...notes,
      ...leftOut
        .filter((problem) => !isPriceOfNothing(problem))
        .map((because): Problem => ({ code: 'length-left-out', because })),
    ]),
    validUntil: validUntil(input, drafts),
  });
}

/** Lumber is bought by cut plan, not by line. */
function costsOf(input: JobInput, line: TakeoffLine): Costed {
  switch (line.need.kind) {
    case 'lumber':
      return nothingCosted;
    case 'nails':
      return nailCosts(input, line);
    case 'sheets':
      return sheetCosts(input, line);
    case 'planks':
      return plankCosts(input, line);
    case 'edge':
      return edgeCosts(input, line);
    case 'vents':
      return ventCosts(input, line);
    case 'labour':
      return labourCosts(input.settings, line);
    case 'extra':
      return extraCosts(input, line);
    default:
      return assertNever(line.need);
  }
}

function pricedLines(drafts: readonly CostDraft[], priceUsd: Usd): readonly CostLine[] {
  const shares = splitUsd(
    priceUsd,
    drafts.map((draft) => draft.line.costUsd),
  );
  return drafts.map(({ line }, index) => ({ ...line, priceUsd: shares[index] ?? usd(0) }));
}

/** The shop's own day, or the first on which a supplier lets go; never before the estimate's day. */
function validUntil({ asOf, settings }: JobInput, drafts: readonly CostDraft[]): string {
  const earliest = earliestDate(
    addDays(asOf, settings.money.quoteValidDays),
    drafts.flatMap(({ price }) => price?.validUntil ?? []),
  );
  return earliest < asOf ? asOf : earliest;
}

/** Lumber at $0.00 is named among what is lacking: the plan was made without it, and would be another with its price. */
function isPriceOfNothing({ code }: Problem): boolean {
  return code === 'price-of-nothing';
}

function sumOf(drafts: readonly CostDraft[], wanted: (draft: CostDraft) => boolean): Usd {
  return sumUsd(drafts.filter(wanted).map((draft) => draft.line.costUsd));
}

function distinct(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Map<string, Problem>();
  for (const problem of problems) {
    const key = JSON.stringify(problem);
    if (!seen.has(key)) seen.set(key, problem);
  }
  return [...seen.values()];
}
