/** So many steps are searched; beyond them the best cover found so far stands. */
const mostSteps = 20_000;

/**
 * The fewest of some sets that together hold every one of so many things (set cover: greedy first, then a search that
 * goes on from the thing that fewest sets hold). Exact unless the search runs out of steps, which only takes place with
 * many sets that overlap without order.
 * @param count - of the things, numbered from 0; each is in some set.
 * @param sets - the things that each holds.
 * @returns places of the chosen sets. Worked: 4 things, sets 0 1 2, 0 1, 2 3, 3 -> the second and the third.
 */
export function fewestSets(count: number, sets: readonly (readonly number[])[]): readonly number[] {
  const holders = Array.from({ length: count }, (): number[] => []);
  for (const [place, set] of sets.entries()) for (const thing of set) holders[thing]?.push(place);
  const largest = Math.max(1, ...sets.map(({ length }) => length));
  let best = greedy(count, sets);
  let steps = 0;
  const covered = Array.from({ length: count }, () => 0);

  const search = (chosen: readonly number[], left: number): void => {
    steps += 1;
    if (steps > mostSteps || chosen.length + Math.ceil(left / largest) >= best.length) return;
    if (left === 0) {
      best = chosen;
      return;
    }
    const hardest = hardestOf(covered, holders);
    const bySize = (holders[hardest] ?? []).toSorted(
      (a, b) => (sets[b]?.length ?? 0) - (sets[a]?.length ?? 0) || a - b,
    );
    for (const place of bySize) {
      const set = sets[place] ?? [];
      let fresh = 0;
      for (const thing of set) {
        if (covered[thing] === 0) fresh += 1;
        covered[thing] = (covered[thing] ?? 0) + 1;
      }
      search([...chosen, place], left - fresh);
      for (const thing of set) covered[thing] = (covered[thing] ?? 0) - 1;
    }
  };
  search([], count);
  return best.toSorted((a, b) => a - b);
}

/** The set that holds most of what is left, again and again. */
function greedy(count: number, sets: readonly (readonly number[])[]): readonly number[] {
  const left = new Set(Array.from({ length: count }, (_, thing) => thing));
  const chosen: number[] = [];
  while (left.size > 0) {
    let most = 0;
    let best: number | undefined;
    for (const [place, set] of sets.entries()) {
      const fresh = set.filter((thing) => left.has(thing)).length;
      if (fresh > most) [most, best] = [fresh, place];
    }
    if (best === undefined) throw new Error('a thing that is in no set');
    chosen.push(best);
    for (const thing of sets[best] ?? []) left.delete(thing);
  }
  return chosen;
}

/** Of what is not covered yet, the thing that fewest sets hold. */
function hardestOf(covered: readonly number[], holders: readonly (readonly number[])[]): number {
  let hardest = -1;
  for (const [thing, times] of covered.entries()) {
    if (times > 0) continue;
    if (hardest < 0 || (holders[thing]?.length ?? 0) < (holders[hardest]?.length ?? 0)) hardest = thing;
  }
  return hardest;
}
