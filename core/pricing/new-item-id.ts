/** Longest start of an id that is made from a description; a number has room behind it. */
const longest = 50;

/** Gives ids to new items, as price files name them: from the description, numbered where that is taken. */
export function createItemIds(taken: Iterable<string>): (description: string) => string {
  const used = new Set(taken);
  const nextNumber = new Map<string, number>();
  return (description) => {
    const base = plainId(description);
    let id = base;
    let number = nextNumber.get(base) ?? 2;
    while (used.has(id)) {
      id = `${base}-${number}`;
      number += 1;
    }
    nextNumber.set(base, number);
    used.add(id);
    return id;
  };
}

/** Small letters, digits and hyphens of a text, e.g. `2x6 DF #2, 12 ft` -> `2x6-df-2-12-ft`. */
export function plainId(text: string): string {
  return (
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, longest) || 'item'
  );
}
