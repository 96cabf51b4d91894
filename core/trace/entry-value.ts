import { formatRate } from '../pricing/cost-draft.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { choiceWord } from './choice-words.ts';

/**
 * Writes an entry of a document for people, by the unit at the end of its name.
 * @param name - of the entry, e.g. `overhangIn`, `pitchRisePer12`, `taxPercent`.
 * @param value - of the entry; lengths [in], pitch [in/12 in].
 * @returns e.g. `overhangIn` 16 -> `1' 4"`.
 */
export function entryValue(name: string, value: unknown): string {
  if (value === null || value === undefined || value === '') return 'not entered';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return numberValue(name, value);
  if (typeof value === 'string') return textValue(name, value);
  if (Array.isArray(value)) return value.length === 1 ? '1 entry' : `${value.length} entries`;
  if (typeof value === 'object') {
    if ('section' in value && 'grade' in value)
      return `${String(value.section)} ${String(value.grade)}`.trim();
    return Object.entries(value)
      .map(([key, entry]) => `${entryWords(key)} ${entryValue(key, entry)}`)
      .join(', ');
  }
  return 'not entered';
}

/** Names an entry in words, without its unit: `heightAbovePlateIn` -> `height above plate`. */
export function entryWords(name: string): string {
  return name
    .replace(/(In|SqFt|SqInPerFt|Ft|Lb|Psf|Usd|Percent|RisePer12)$/, '')
    .replace(/UsdPerHour$/, 'ForAnHour')
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .trim();
}

function numberValue(name: string, value: number): string {
  if (name.endsWith('In')) return formatLength(value);
  if (name.endsWith('Psf')) return `${value} psf`;
  if (name.endsWith('SqInPerFt')) return `${value} sq in./ft`;
  if (name.endsWith('SqFt')) return `${value} sq ft`;
  if (name.endsWith('Lb')) return `${value} lb`;
  if (name.endsWith('RisePer12') || name === 'steepAbovePitch') return formatPitch(value);
  if (name.endsWith('Percent')) return `${value} %`;
  if (name.endsWith('Days')) return `${value} days`;
  if (name.endsWith('Factor') || name === 'perStoreyAboveOne') return `x ${value}`;
  return String(value);
}

function textValue(name: string, value: string): string {
  const chosen = choiceWord(name, value);
  if (chosen !== undefined) return chosen;
  if (name.endsWith('Percent')) return `${value} %`;
  if (name.includes('Usd')) return formatRate(value);
  return value;
}
