import loadHighs, { type Highs, type Model } from 'highs';
import type {
  LinearModel,
  LinearPrograms,
  LpAnswer,
  MipAnswer,
  MipLimits,
} from '../../core/cutting/exact/linear-programs.ts';

/** Loads the solver, which takes a moment, and gives core's port to it. */
export async function loadLinearPrograms(): Promise<LinearPrograms> {
  return linearProgramsOf(await loadHighs());
}

/**
 * Core's port filled by HiGHS. Models go in as arrays: a text with a fault in it would be read as an empty model.
 * Gaps are absolute, and the seed is fixed, so that what is proven is the same every time.
 */
export function linearProgramsOf(highs: Highs): LinearPrograms {
  return {
    solveLp: (model) =>
      orGivenUp(highs, noLpAnswer, () => withModel(highs, model, false, (loaded) => solveLp(highs, loaded))),
    solveMip(model, limits) {
      const asked = (how: MipLimits): MipAnswer | null =>
        orGivenUp(highs, null, () => withModel(highs, model, true, (loaded) => solveMip(highs, loaded, how)));
      return asked(limits) ?? (limits.rewrite ? asked({ ...limits, rewrite: false }) : null) ?? noMipAnswer;
    },
  };
}

const noLpAnswer: LpAnswer = {
  status: 'stopped',
  objective: Number.POSITIVE_INFINITY,
  columnValues: new Float64Array(0),
  rowDuals: new Float64Array(0),
};

const noMipAnswer: MipAnswer = {
  status: 'stopped',
  objective: Number.POSITIVE_INFINITY,
  bound: Number.NEGATIVE_INFINITY,
  columnValues: new Float64Array(0),
};

/**
 * Where HiGHS itself fails at a program nothing is known of it. Rarely it does, on a small one that it has rewritten: as it
 * stands the program is then solved; where that fails too it is answered as a search that was stopped.
 */
function orGivenUp<T>(highs: Highs, nothing: T, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof highs.errors.HighsError && error.operation === 'run') return nothing;
    throw error;
  }
}

function withModel<T>(highs: Highs, model: LinearModel, whole: boolean, work: (loaded: Model) => T): T {
  const numCols = model.columnCost.length;
  const numRows = model.rowLower.length;
  const { variableType } = highs.constants;
  const loaded = highs.createModel({
    numCols,
    numRows,
    colCost: model.columnCost,
    colLower: model.columnLower,
    colUpper: model.columnUpper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: {
      format: 'csc',
      numRows,
      numCols,
      starts: model.starts,
      indices: model.rows,
      values: model.values,
    },
    ...(whole
      ? {
          integrality: Array.from(model.columnWhole, (flag) =>
            flag === 1 ? variableType.integer : variableType.continuous,
          ),
        }
      : {}),
  });
  try {
    loaded.options.set({ output_flag: false, random_seed: 1 });
    return work(loaded);
  } finally {
    loaded.dispose();
  }
}

function solveLp(highs: Highs, loaded: Model): LpAnswer {
  loaded.run();
  const status = loaded.getModelStatus();
  const { modelStatus } = highs.constants;
  const solution = loaded.getSolution();
  return {
    status:
      status === modelStatus.optimal
        ? 'optimal'
        : status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible
          ? 'infeasible'
          : 'stopped',
    objective: loaded.getObjectiveValue(),
    columnValues: solution.colValue,
    rowDuals: solution.rowDual,
  };
}

function solveMip(highs: Highs, loaded: Model, limits: MipLimits): MipAnswer {
  const { modelStatus, callbackType } = highs.constants;
  loaded.options.set({
    mip_rel_gap: 0,
    mip_abs_gap: limits.absoluteGap,
    // Takes ten times as long as a small search itself; plans to start from come from core.
    mip_heuristic_run_feasibility_jump: false,
    presolve: limits.rewrite ? 'choose' : 'off',
  });
  if (limits.timeMs !== undefined) loaded.options.set('time_limit', Math.max(0.001, limits.timeMs / 1000));
  if (limits.mostNodes !== undefined) loaded.options.set('mip_max_nodes', limits.mostNodes);
  if (limits.cutoff !== undefined) loaded.options.set('objective_bound', limits.cutoff);
  const { onProgress, onSolution } = limits;
  loaded.run({
    [callbackType.mipInterrupt](event) {
      if (limits.stopped()) event.interrupt();
    },
    ...(onProgress === undefined
      ? {}
      : {
          [callbackType.mipLogging](event) {
            const { mip_primal_bound: objective, mip_dual_bound: bound } = event.data;
            if (objective !== undefined && bound !== undefined) onProgress(objective, bound);
          },
        }),
    ...(onSolution === undefined
      ? {}
      : {
          [callbackType.mipImprovingSolution](event) {
            const { mip_solution: values, objective_function_value: objective } = event.data;
            if (values !== undefined && objective !== undefined) onSolution(values, objective);
          },
        }),
  });
  const status = loaded.getModelStatus();
  const found = loaded.info.get('primal_solution_status') === primalFeasible;
  return {
    status:
      status === modelStatus.optimal
        ? 'optimal'
        : status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible
          ? 'infeasible'
          : 'stopped',
    objective: found ? loaded.getObjectiveValue() : Number.POSITIVE_INFINITY,
    bound: Number(loaded.info.get('mip_dual_bound')),
    columnValues: found ? loaded.getSolution().colValue : new Float64Array(0),
  };
}

/** Value of `primal_solution_status` for a solution that keeps every row and bound. */
const primalFeasible = 2;
