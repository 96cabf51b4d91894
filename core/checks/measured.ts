import { formatInches, formatLength } from '../units/format-length.ts';
import type { Measured } from './check-types.ts';

/**
 * Writes a number for people: thousands parted, no more decimals than asked for, none where they are zero.
 * @param value - finite; @param decimals - at most. @returns e.g. (1785.36, 1) -> `1,785.4`.
 */
export function plain(value: number, decimals = 0): string {
  const rounded = Number(value.toFixed(decimals));
  const [whole = '0', fraction] = String(Object.is(rounded, -0) ? 0 : rounded).split('.');
  // A number too large to be written out has no places to part.
  if (whole.includes('e')) return `${whole}${fraction === undefined ? '' : `.${fraction}`}`;
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return fraction === undefined ? parted : `${parted}.${fraction}`;
}

/** A force. [lb] */
export function pounds(lb: number): Measured {
  return { text: `${plain(lb, Math.abs(lb) < 10 ? 1 : 0)} lb`, number: lb, unit: 'lb' };
}

/** A stress. [psi] */
export function psi(value: number): Measured {
  return { text: `${plain(value)} psi`, number: value, unit: 'psi' };
}

/** A load on an area. [psf] */
export function psf(value: number): Measured {
  return { text: `${plain(value, 1)} psf`, number: value, unit: 'psf' };
}

/** A length, in feet, inches and sixteenths. [in] */
export function length(inches: number): Measured {
  return { text: formatLength(inches), number: inches, unit: 'in' };
}

/** A short length, in inches and sixteenths. [in] */
export function inches(value: number): Measured {
  return { text: formatInches(value), number: value, unit: 'in' };
}

/** A length too small for sixteenths, in thousandths. [in] */
export function fine(value: number): Measured {
  return { text: `${plain(value, 3)} in.`, number: value, unit: 'in' };
}

/** A ratio such as backspan to overhang, `2.00 : 1`. [-] */
export function toOne(value: number): Measured {
  return { text: `${value.toFixed(2)} : 1`, number: value, unit: '-' };
}

/** A count of things: `3 nails`. */
export function count(value: number, one: string, many = `${one}s`): Measured {
  return { text: `${plain(value)} ${value === 1 ? one : many}`, number: value, unit: many };
}

/** An area. [sq ft] */
export function squareFeet(value: number): Measured {
  return { text: `${plain(value, 1)} sq ft`, number: value, unit: 'sq ft' };
}

/** An area. [sq in] */
export function squareInches(value: number): Measured {
  return { text: `${plain(value)} sq in.`, number: value, unit: 'sq in' };
}

const dustIn = 1e-6;

/** A length that something has to be at least: rounded up to a sixteenth, so that what is read brings it within. [in] */
export function atLeast(value: number): string {
  return formatLength(Math.ceil(value * 16 - dustIn) / 16);
}

/** A length that something may be at most: rounded down to a sixteenth. [in] */
export function atMost(value: number): string {
  return formatLength(Math.floor(value * 16 + dustIn) / 16);
}
