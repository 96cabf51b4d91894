import { formatLength } from '../../core/units/format-length.ts';

const dust = 1e-6;

/**
 * Writes a length for a field, so that what is shown is what is used: in sixteenths where it is whole in them, in 32nds or
 * 64ths where it is whole in those (a saw's kerf), below an inch otherwise in decimals; longer lengths that no tape shows,
 * such as metric ones, to the nearest sixteenth.
 * @param inches - length, not negative. [in]
 * @returns e.g. 66.5 -> `5' 6-1/2"`, 0.09375 -> `3/32"`, 0.1 -> `0.1"`.
 */
export function writeLength(inches: number): string {
  if (isWhole(inches * 16)) return formatLength(inches);
  const fine = [32, 64].find((parts) => isWhole(inches * parts));
  if (fine === undefined) return inches < 1 ? `${Number(inches.toFixed(4))}"` : formatLength(inches);
  const feet = Math.floor(inches / 12);
  const whole = Math.floor(inches - feet * 12);
  const part = `${Math.round((inches - feet * 12 - whole) * fine)}/${fine}`;
  const rest = whole === 0 && feet === 0 ? part : `${whole}-${part}`;
  return feet === 0 ? `${rest}"` : `${feet}' ${rest}"`;
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < dust;
}
