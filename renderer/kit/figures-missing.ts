/**
 * Says how many figures an estimate lacks: prices, a wage, rates.
 * @param lacks - how many; at least 1.
 * @returns e.g. `1 figure missing`.
 */
export function figuresMissing(lacks: number): string {
  return lacks === 1 ? '1 figure missing' : `${lacks} figures missing`;
}
