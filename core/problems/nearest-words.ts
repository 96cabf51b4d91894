/**
 * The known words that a word was most likely meant to be, by the fewest letters to change, add or take out.
 * @param word - what was written.
 * @param known - what could have been meant.
 * @param most - how many to name at most.
 * @returns nearest first, e.g. `instal-extenders` -> `install-extenders`, `cut-extenders`.
 */
export function nearestWords(word: string, known: readonly string[], most: number): readonly string[] {
  return known
    .map((candidate) => ({ candidate, changes: changesBetween(word.toLowerCase(), candidate) }))
    .toSorted((a, b) => a.changes - b.changes)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** Letters to change, add or take out, counted row by row (Levenshtein, 1966). */
function changesBetween(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let at = 0; at < one.length; at += 1) {
    const next = [at + 1];
    for (let to = 0; to < other.length; to += 1) {
      const kept = (row[to] ?? 0) + (one[at] === other[to] ? 0 : 1);
      next.push(Math.min(kept, (row[to + 1] ?? 0) + 1, (next[to] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}
