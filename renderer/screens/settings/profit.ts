import { Decimal } from 'decimal.js';
import type { Problem } from '../../../core/problems/problem.ts';
import type { ShopSettings } from '../../../core/pricing/shop-settings.ts';
import { decimalKind } from '../../fields/entry-kinds.ts';
import { withPath } from './at-path.ts';

export const profitPercentPath = 'money.profitPercent';
export const profitMethodPath = 'money.profitMethod';

/** As the document takes it. [%] */
const percentKind = decimalKind({ least: 0, most: 1000 }, '%');

/**
 * Says why a value of the settings cannot be taken beside the others: a margin of 100 % or more has no price, since
 * price = cost / (1 - margin). Every other value stands alone.
 * @param path - dotted path of the entry that is changed.
 * @param settings - the settings as they are.
 * @param value - its new value or what is typed for it, e.g. `150` for the profit while it is reckoned as a margin. [%]
 */
export function refusalOf(path: string, settings: ShopSettings, value: unknown): Problem | null {
  const { profitMethod, profitPercent } = settings.money;
  if (path === profitMethodPath) return value === 'margin' ? marginProblem(profitPercent) : null;
  if (path !== profitPercentPath || profitMethod !== 'margin' || typeof value !== 'string') return null;
  const read = percentKind.read(value);
  return read.ok ? marginProblem(read.value) : null;
}

/**
 * Changes how profit is reckoned, and takes the percentage that stands in its field and was refused before, where it can
 * be reckoned now: what is shown is what is used.
 * @param typedPercent - what stands in the field of the percentage and is not taken yet; null where all is taken.
 * @returns the settings, and whether the typed percentage was taken.
 */
export function withProfitMethod(
  settings: ShopSettings,
  method: string,
  typedPercent: string | null,
): { readonly settings: ShopSettings; readonly tookTyped: boolean } {
  const changed = withPath(settings, profitMethodPath, method);
  const read = typedPercent === null ? undefined : percentKind.read(typedPercent);
  return read?.ok === true && refusalOf(profitPercentPath, changed, read.value) === null
    ? { settings: withPath(changed, profitPercentPath, read.value), tookTyped: true }
    : { settings: changed, tookTyped: false };
}

function marginProblem(percent: string): Problem | null {
  return new Decimal(percent).gte(100) ? { code: 'margin-too-high', percent } : null;
}
