import type { CuttingModel, Load, PieceSize } from './cutting-model.ts';

/** Sizes drawn together: `longest` stands for what has to fit, `shortest` for what is proven. */
export type GroupedModels = {
  /** Each group as long as its longest: what fits here fits in truth. */
  readonly roundedUp: CuttingModel;
  /** Each group as long as its shortest: what this must cost, the truth must cost too. */
  readonly roundedDown: CuttingModel;
  /** Sizes of the true model in each group, longest first. */
  readonly members: readonly (readonly number[])[];
};

/**
 * Draws neighbouring sizes of one slant together until no more than so many are left, or no more than there are slants,
 * with the least difference within a group.
 * @param model - the problem.
 * @param most - groups wanted at most.
 */
export function groupSizes(model: CuttingModel, most: number): GroupedModels {
  const wanted = Math.max(most, model.slants.length);
  let width = 0;
  let members = groupsWithin(model.sizes, width);
  for (let step = 1; members.length > wanted; step *= 2) {
    let low = width;
    let high = width + step;
    if (groupsWithin(model.sizes, high).length > wanted) {
      width = high;
      continue;
    }
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (groupsWithin(model.sizes, middle).length > wanted) low = middle;
      else high = middle;
    }
    members = groupsWithin(model.sizes, high);
  }
  const rounded = (pick: (group: readonly number[]) => number | undefined): CuttingModel => ({
    ...model,
    sizes: members.flatMap((group) => {
      const stands = model.sizes[pick(group) ?? -1];
      if (stands === undefined) return [];
      return [{ ...stands, demand: group.reduce((sum, size) => sum + (model.sizes[size]?.demand ?? 0), 0) }];
    }),
  });
  return {
    roundedUp: rounded((group) => group[0]),
    roundedDown: rounded((group) => group.at(-1)),
    members,
  };
}

/**
 * Puts true pieces into loads made of groups: each place takes the longest piece of its group that is left.
 * @returns sizes of each board in the true model.
 */
export function ungroup(
  model: CuttingModel,
  grouped: GroupedModels,
  loads: readonly Load[],
): readonly (readonly number[])[] {
  const queues = grouped.members.map((group) =>
    group.flatMap((size) => Array.from({ length: model.sizes[size]?.demand ?? 0 }, () => size)),
  );
  const next = queues.map(() => 0);
  return loads.map((load) =>
    load.sizes.map((group) => {
      const place = next[group] ?? 0;
      next[group] = place + 1;
      return queues[group]?.[place] ?? 0;
    }),
  );
}

function groupsWithin(sizes: readonly PieceSize[], width: number): number[][] {
  const groups: number[][] = [];
  /** Group open for each slant, and the span of its longest. */
  const open = new Map<number, { readonly group: number[]; readonly longest: number }>();
  for (const [index, { span, slant }] of sizes.entries()) {
    const current = open.get(slant);
    if (current !== undefined && current.longest - span <= width) {
      current.group.push(index);
      continue;
    }
    const group = [index];
    groups.push(group);
    open.set(slant, { group, longest: span });
  }
  return groups;
}
