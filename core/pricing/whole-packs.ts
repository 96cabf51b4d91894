import { Decimal } from 'decimal.js';

/**
 * Rounds what is needed up to whole packs.
 * @param quantity - units needed. [units]
 * @param pack - units in the least pack that is sold; 1 where they are sold singly. [units]
 * @returns units bought, e.g. 7 boards out of packs of 5 -> 10; sold singly, just what is needed. [units]
 */
export function inWholePacks(quantity: Decimal.Value, pack: number): Decimal {
  const needed = new Decimal(quantity);
  return pack === 1 ? needed : needed.div(pack).ceil().times(pack);
}
