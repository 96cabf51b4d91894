/**
 * A straight beam by direct stiffness, written for the tests as a construction of its own: elements between nodes, each with
 * a sag and a turn at both ends. Loads and sags are downward positive; supports hold the sag at nothing.
 */
export type Beam = {
  /** Places of the nodes, in order. [in] */
  readonly nodesIn: readonly number[];
  readonly stiffness: number;
  readonly supports: readonly number[];
  /** Even load on the elements between two places. [lb/in] */
  readonly even: { readonly fromIn: number; readonly toIn: number; readonly lbPerIn: number };
};

export type Bent = { readonly sagsIn: readonly number[]; readonly reactionsLb: ReadonlyMap<number, number> };

export function bend({ nodesIn, stiffness, supports, even }: Beam): Bent {
  const size = nodesIn.length * 2;
  const whole = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const load = Array.from({ length: size }, () => 0);
  const add = (row: number, column: number, value: number) => {
    const line = whole[row];
    if (line === undefined) throw new Error('no row');
    line[column] = (line[column] ?? 0) + value;
  };
  for (let index = 1; index < nodesIn.length; index += 1) {
    const [fromIn = 0, toIn = 0] = [nodesIn[index - 1], nodesIn[index]];
    const l = toIn - fromIn;
    const k = stiffness / l ** 3;
    const element = [
      [12, 6 * l, -12, 6 * l],
      [6 * l, 4 * l * l, -6 * l, 2 * l * l],
      [-12, -6 * l, 12, -6 * l],
      [6 * l, 2 * l * l, -6 * l, 4 * l * l],
    ];
    const first = (index - 1) * 2;
    for (const [row, line] of element.entries())
      for (const [column, value] of line.entries()) add(first + row, first + column, k * value);
    if (fromIn >= even.fromIn - 1e-9 && toIn <= even.toIn + 1e-9) {
      const w = even.lbPerIn;
      for (const [row, value] of [(w * l) / 2, (w * l * l) / 12, (w * l) / 2, (-w * l * l) / 12].entries())
        load[first + row] = (load[first + row] ?? 0) + value;
    }
  }
  const held = new Set(supports.map((node) => node * 2));
  const free = Array.from({ length: size }, (_, index) => index).filter((index) => !held.has(index));
  const solved = solve(
    free.map((row) => free.map((column) => whole[row]?.[column] ?? 0)),
    free.map((row) => load[row] ?? 0),
  );
  const moved = Array.from({ length: size }, () => 0);
  for (const [index, place] of free.entries()) moved[place] = solved[index] ?? 0;
  const reactionsLb = new Map(
    supports.map((node) => {
      const line = whole[node * 2] ?? [];
      const carried = line.reduce((sum, value, column) => sum + value * (moved[column] ?? 0), 0);
      return [node, (load[node * 2] ?? 0) - carried] as const;
    }),
  );
  return { sagsIn: nodesIn.map((_, index) => moved[index * 2] ?? 0), reactionsLb };
}

/** Solves a linear system by elimination with row exchange. */
export function solve(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((line, index) => [...line, right[index] ?? 0]);
  const n = rows.length;
  const at = (row: number, column: number) => rows[row]?.[column] ?? 0;
  for (let column = 0; column < n; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < n; row += 1)
      if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
    const [a, b] = [rows[column], rows[pivot]];
    if (a === undefined || b === undefined) throw new Error('no row');
    rows[column] = b;
    rows[pivot] = a;
    for (let row = column + 1; row < n; row += 1) {
      const share = at(row, column) / at(column, column);
      const line = rows[row];
      if (line === undefined) throw new Error('no row');
      for (let place = column; place <= n; place += 1)
        line[place] = at(row, place) - share * at(column, place);
    }
  }
  const answer = Array.from({ length: n }, () => 0);
  for (let row = n - 1; row >= 0; row -= 1) {
    let rest = at(row, n);
    for (let column = row + 1; column < n; column += 1) rest -= at(row, column) * (answer[column] ?? 0);
    answer[row] = rest / at(row, row);
  }
  return answer;
}
