import { formatLength } from '../../../core/units/format-length.ts';
import { formatPitch } from '../../../core/units/pitch.ts';

/** Writes a value of a document as a carpenter would: lengths and pitches in their own form. */
export function writeEntry(path: string, value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number' && path.endsWith('In')) return formatLength(value);
  if (typeof value === 'number' && /[pP]itchRisePer12$/.test(path)) return formatPitch(value);
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}
