import { partsOfCent } from '../column.ts';
import type { CuttingModel, Load } from '../cutting-model.ts';
import type { ProvenBound } from '../lower-bound.ts';
import { selectStocks } from '../select-stocks.ts';
import { arcGraph, type Arc, type ArcGraph } from './arc-graph.ts';
import type { Incumbent } from './incumbent.ts';
import type { LinearModel, LinearPrograms } from './linear-programs.ts';
import { atLeast, exactly, makeProgram } from './make-program.ts';

/** Arcs beyond which no search is tried. */
const mostArcs = 60_000;

/**
 * Searches for a cheaper plan as a flow of boards along arcs: another way to write the same problem, for where there are
 * too many patterns to list. Source: J. M. Valerio de Carvalho, "Exact solution of bin-packing problems using column
 * generation and branch-and-bound", Annals of Operations Research 86 (1999); from memory.
 * @param model - the problem.
 * @param bound - worths in whole parts of a cent, by which arcs are left out.
 * @param programs - a solver of linear programs.
 * @param incumbent - the best plan so far; made better, and closed where that can be shown.
 */
export function searchArcs(
  model: CuttingModel,
  bound: ProvenBound,
  programs: LinearPrograms,
  incumbent: Incumbent,
): void {
  const target = incumbent.target();
  if (target < incumbent.boundCents()) return incumbent.raise(target + 1, 'exact-bound', 'arc-flow');
  const graph = arcGraph(model, bound, target * partsOfCent - bound.parts, mostArcs);
  if (graph === undefined) return;
  const offer = (values: Float64Array): void =>
    incumbent.offer(loadsOfFlow(model, graph, values), 'arc-flow');
  const answer = programs.solveMip(arcProgram(model, graph), {
    absoluteGap: 0.999,
    cutoff: target + 0.5,
    rewrite: true,
    stopped: incumbent.stopped,
    onProgress: (_, treeBound) =>
      incumbent.raise(Math.min(target + 1, Math.ceil(treeBound - 1e-5)), 'solver-tree', 'arc-flow'),
    onSolution: offer,
  });
  if (answer.objective < Number.POSITIVE_INFINITY) offer(answer.columnValues);
  if (answer.status !== 'stopped')
    incumbent.raise(Math.min(target + 1, incumbent.cents()), 'solver-tree', 'arc-flow');
}

/** Columns: arcs, then the boards of each stock. Rows: nodes, then sizes, then stocks. */
function arcProgram(model: CuttingModel, { nodes, arcs }: ArcGraph): LinearModel {
  const sizeRow = (size: number): number => nodes + size;
  const stockRow = (stock: number): number => nodes + model.sizes.length + stock;
  const pieces = model.sizes.reduce((sum, { demand }) => sum + demand, 0);
  const entriesOf = (arc: Arc): readonly (readonly [number, number])[] => {
    switch (arc.kind) {
      case 'start':
        return [[arc.to, 1]];
      case 'end':
        return [
          [arc.from, -1],
          [stockRow(arc.stock), 1],
        ];
      default:
        return [
          [arc.from, -1],
          [arc.to, 1],
          ...(arc.count > 0 ? [[sizeRow(arc.size), arc.count] as const] : []),
        ];
    }
  };
  return makeProgram(
    [
      ...Array.from({ length: nodes }, () => exactly(0)),
      ...model.sizes.map(({ demand }) => atLeast(demand)),
      ...model.stocks.map(() => exactly(0)),
    ],
    [
      ...arcs.map((arc) => ({ cost: 0, upper: pieces, entries: entriesOf(arc) })),
      ...model.stocks.map(({ cents, available }, stock) => ({
        cost: cents,
        upper: Math.min(available, pieces),
        entries: [[stockRow(stock), -1] as const],
      })),
    ],
  );
}

/** Boards of a flow, each followed from its start to its end; pieces beyond those asked for are left out. */
function loadsOfFlow(
  model: CuttingModel,
  { arcs }: ArcGraph,
  values: Float64Array,
): readonly Load[] | undefined {
  const flow = Array.from(arcs, (_, index) => Math.round(values[index] ?? 0));
  const leaving = new Map<number, number[]>();
  for (const [index, arc] of arcs.entries()) {
    if (arc.kind === 'start' || (flow[index] ?? 0) === 0) continue;
    const known = leaving.get(arc.from);
    if (known === undefined) leaving.set(arc.from, [index]);
    else known.push(index);
  }
  const left = model.sizes.map(({ demand }) => demand);
  const contents: number[][] = [];
  for (const [index, arc] of arcs.entries()) {
    if (arc.kind !== 'start') continue;
    for (let board = 0; board < (flow[index] ?? 0); board += 1) {
      const sizes = followBoard(arcs, flow, leaving, arc.to);
      if (sizes === undefined) return undefined;
      const kept = sizes.filter((size) => {
        left[size] = (left[size] ?? 0) - 1;
        return (left[size] ?? 0) >= 0;
      });
      if (kept.length > 0) contents.push(kept);
    }
  }
  return left.some((count) => count > 0) ? undefined : selectStocks(model, contents);
}

/** Takes one board out of a flow; undefined where it breaks off, which rounding can cause. */
function followBoard(
  arcs: readonly Arc[],
  flow: number[],
  leaving: ReadonlyMap<number, readonly number[]>,
  from: number,
): readonly number[] | undefined {
  const sizes: number[] = [];
  for (let at = from; ; ) {
    const index = leaving.get(at)?.find((candidate) => (flow[candidate] ?? 0) > 0);
    const arc = index === undefined ? undefined : arcs[index];
    if (index === undefined || arc === undefined || arc.kind === 'start') return undefined;
    flow[index] = (flow[index] ?? 0) - 1;
    if (arc.kind === 'end') return sizes;
    for (let piece = 0; piece < arc.count; piece += 1) sizes.push(arc.size);
    at = arc.to;
  }
}
