/** The first free id of the form `r12` after the highest one in use, so that an id never comes back by accident. */
export function nextId(prefix: string, used: readonly string[]): string {
  let highest = 0;
  for (const id of used) {
    const number = id.startsWith(prefix) ? Number(id.slice(prefix.length)) : Number.NaN;
    if (Number.isInteger(number) && number > highest) highest = number;
  }
  return `${prefix}${highest + 1}`;
}
