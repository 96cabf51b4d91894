import { moneyKind } from '../../fields/entry-kinds.ts';

const kind = moneyKind({ least: 0, most: 1_000_000 });

/** Writes a price with as many places as it has, two at least: `0.0725`, `1,250.00`. [$] */
export function priceText(priceUsd: string): string {
  return kind.write(priceUsd);
}
