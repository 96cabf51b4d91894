import { formatUsd, usd } from '../../core/units/money.ts';

/** Dollars as they cross the bridge, for people. */
export function dollars(amount: string): string {
  return formatUsd(usd(amount));
}

/** The same without cents, for tables where cents would only make noise. */
export function wholeDollars(amount: string): string {
  return formatUsd(usd(Math.round(Number(amount)))).replace(/\.00$/, '');
}

/** A percentage, or a dash where nobody knows it. */
export function percentWords(percent: string | null): string {
  return percent === null ? '–' : `${percent} %`;
}
