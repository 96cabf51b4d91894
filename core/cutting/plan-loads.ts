import { isBetter } from './better-loads.ts';
import { dive } from './dive.ts';
import { cheapestLoad } from './fit-decreasing.ts';
import { greedyLoads } from './greedy-loads.ts';
import { groupSizes, ungroup } from './group-sizes.ts';
import { improvePairs } from './improve-pairs.ts';
import { lowerBoundCents } from './lower-bound.ts';
import { relax } from './relaxation.ts';
import { centsOf, type CuttingModel, type Load } from './cutting-model.ts';

/** Sizes up to which the problem is solved as it stands; beyond, neighbouring sizes are drawn together. */
const mostSizes = 60;

/** Work for a plan, in table cells; about a fifth of a second. */
const workCells = 60_000_000;

/**
 * Finds loads for every piece, and the least that any loads can cost.
 * @param model - the problem.
 * @returns the best loads found, and the bound. [cents]
 */
export function planLoads(model: CuttingModel): {
  readonly loads: readonly Load[];
  readonly boundCents: number;
} {
  const found = model.sizes.length <= mostSizes ? planAsItStands(model) : planGrouped(model);
  const improved = improvePairs(model, found.loads, { cells: workCells / 6 });
  const loads = isBetter(model, improved, found.loads) ? improved : found.loads;
  return { loads, boundCents: lowerBoundCents(found.boundModel, found.worth, centsOf(model, loads)) };
}

type Found = {
  readonly loads: readonly Load[];
  readonly boundModel: CuttingModel;
  readonly worth: Float64Array;
};

function planAsItStands(model: CuttingModel): Found {
  return { ...dive(model, { cells: workCells }), boundModel: model };
}

function planGrouped(model: CuttingModel): Found {
  const demand = model.sizes.map((size) => size.demand);
  const greedy = greedyLoads(model, demand, { cells: workCells / 6 });
  const grouped = groupSizes(model, mostSizes);
  const dived = dive(grouped.roundedUp, { cells: workCells / 2 });
  const loads = ungroup(model, grouped, dived.loads).map((sizes) => cheapestLoad(model, sizes));
  const downDemand = grouped.roundedDown.sizes.map((size) => size.demand);
  const { worth } = relax(grouped.roundedDown, downDemand, [], { cells: workCells / 3 });
  return {
    loads: isBetter(model, loads, greedy) ? loads : greedy,
    boundModel: grouped.roundedDown,
    worth,
  };
}
