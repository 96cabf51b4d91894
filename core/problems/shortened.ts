/** Longest piece of a person's own text that a sentence repeats. [characters] */
const mostRepeated = 40;

/** Cuts what a person typed so that a sentence stays one sentence: 40 characters at most, the last then `…`. */
export function shortened(typed: string): string {
  const characters = [...typed];
  return characters.length <= mostRepeated ? typed : `${characters.slice(0, mostRepeated - 1).join('')}…`;
}
