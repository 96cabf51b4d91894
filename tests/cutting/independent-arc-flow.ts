import type { LinearModel, LinearPrograms } from '../../core/cutting/exact/linear-programs.ts';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';

/**
 * Cheapest cost of square pieces from lengths that can be bought, by the plainest flow model: a node for every sixteenth
 * of the longest length, an arc for every piece at every node, and one that ends a board. Shares no code with the solver
 * but the program that runs it; kerf is added to every piece and to every board. [cents]
 * Source: J. M. Valerio de Carvalho, Annals of Operations Research 86 (1999); from memory.
 */
export function cheapestByArcFlow(problem: CuttingProblem, programs: LinearPrograms): number {
  const kerf = problem.kerfSixteenths;
  const boards = problem.lengths.map(({ lengthSixteenths, priceCents }) => ({
    room: lengthSixteenths - 2 * problem.endTrimSixteenths + kerf,
    priceCents,
  }));
  const longest = Math.max(...boards.map(({ room }) => room));
  const demand = new Map<number, number>();
  for (const { lengthSixteenths } of problem.items)
    demand.set(lengthSixteenths + kerf, (demand.get(lengthSixteenths + kerf) ?? 0) + 1);
  const spans = [...demand.keys()].sort((a, b) => b - a);
  // Only sums of spans can be reached, and pieces go in from the longest down.
  const reached = [new Set<number>([0])];
  const arcs: { readonly from: string; readonly to: string; readonly piece: number }[] = [];
  for (const [index, span] of spans.entries()) {
    const here = reached[index] ?? new Set<number>();
    const next = new Set(here);
    for (const start of here) {
      arcs.push({ from: `${index}/${start}`, to: `${index + 1}/${start}`, piece: -1 });
      for (let count = 1, at = start; count <= (demand.get(span) ?? 0) && at + span <= longest; count += 1) {
        const from = count === 1 ? `${index}/${at}` : `${index + 1}/${at}`;
        at += span;
        arcs.push({ from, to: `${index + 1}/${at}`, piece: index });
        next.add(at);
      }
    }
    reached.push(next);
  }
  const last = spans.length;
  for (const at of reached[last] ?? [])
    for (const [board, { room }] of boards.entries())
      if (at <= room) arcs.push({ from: `${last}/${at}`, to: `board ${board}`, piece: -1 });
  const nodes = [...new Set(arcs.flatMap(({ from, to }) => [from, to]))].filter(
    (node) => node !== '0/0' && !node.startsWith('board'),
  );
  const rowOf = new Map(nodes.map((node, row) => [node, row]));
  const columns = arcs.map((arc) => ({
    cost: arc.to.startsWith('board') ? (boards[Number(arc.to.slice(6))]?.priceCents ?? 0) : 0,
    entries: [
      ...[rowOf.get(arc.from)].flatMap((row) => (row === undefined ? [] : [[row, -1] as const])),
      ...[rowOf.get(arc.to)].flatMap((row) => (row === undefined ? [] : [[row, 1] as const])),
      ...(arc.piece === -1 ? [] : [[nodes.length + arc.piece, 1] as const]),
    ],
  }));
  const starts = [0];
  for (const { entries } of columns) starts.push((starts.at(-1) ?? 0) + entries.length);
  const entries = columns.flatMap((column) => column.entries);
  const asked = spans.map((span) => demand.get(span) ?? 0);
  const model: LinearModel = {
    columnCost: Float64Array.from(columns, ({ cost }) => cost),
    columnLower: new Float64Array(columns.length),
    columnUpper: new Float64Array(columns.length).fill(problem.items.length),
    columnWhole: new Uint8Array(columns.length).fill(1),
    rowLower: Float64Array.from([...nodes.map(() => 0), ...asked]),
    rowUpper: Float64Array.from([...nodes.map(() => 0), ...asked.map(() => Number.POSITIVE_INFINITY)]),
    starts: Int32Array.from(starts),
    rows: Int32Array.from(entries, ([row]) => row),
    values: Float64Array.from(entries, ([, value]) => value),
  };
  const answer = programs.solveMip(model, { absoluteGap: 0.999, rewrite: true, stopped: () => false });
  if (answer.status !== 'optimal') throw new Error(`arc-flow: ${answer.status}`);
  return Math.round(answer.objective);
}
