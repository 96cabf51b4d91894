import { Decimal } from 'decimal.js';
import { splitUsd, sumUsd, type Usd, usd } from '../units/money.ts';
import type { Bill } from './cost-entries.ts';

/**
 * What each line of a paper costs with its share of the tax on the whole, by the size of the amounts (largest remainder).
 * The parts add up to the paper's total to the cent; a tax without any amount goes to the first line.
 * @returns one amount a line. [$]
 */
export function costOfLines({ lines, taxUsd }: Pick<Bill, 'lines' | 'taxUsd'>): readonly Usd[] {
  const tax = new Decimal(taxUsd);
  const shares = splitUsd(
    usd(tax.abs()),
    lines.map(({ amountUsd }) => new Decimal(amountUsd).abs()),
  );
  return lines.map(({ amountUsd }, index) =>
    sumUsd([usd(amountUsd), usd(new Decimal(shares[index] ?? 0).times(tax.isNegative() ? -1 : 1))]),
  );
}
