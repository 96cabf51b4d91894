import type { Sheet } from '../../core/documents/sheet.ts';
import { paperGlyphs } from './font-glyphs.ts';

/** Parts of a sheet that are not printed. */
const unprinted: ReadonlySet<string> = new Set(['fileName', 'kind', 'ref', 'description', 'style']);

/** So many characters are named one by one. */
const mostNamed = 8;

/**
 * The characters of a sheet that the embedded font cannot draw, each once, in the order they come. Spaces, controls and
 * marks without a shape of their own leave no box, and do not count.
 */
export function unprintableCharacters(sheet: Sheet): readonly string[] {
  const { normal, bold } = paperGlyphs();
  const found = new Set<string>();
  const known = new Set<string>();
  const read = (part: unknown): void => {
    if (typeof part === 'string') {
      for (const character of part) {
        if (known.has(character)) continue;
        known.add(character);
        const code = character.codePointAt(0) ?? 0;
        if (!/[\p{Cc}\p{Cf}\p{Z}]/u.test(character) && !(normal.has(code) && bold.has(code)))
          found.add(character);
      }
    } else if (Array.isArray(part)) part.forEach(read);
    else if (typeof part === 'object' && part !== null)
      for (const [key, value] of Object.entries(part)) if (!unprinted.has(key)) read(value);
  };
  read(sheet);
  return [...found];
}

/** The line on the sheet: by number, since the characters themselves cannot be printed. */
export function unprintableSentence(characters: readonly string[]): string {
  return `Some characters could not be printed and show as boxes: ${listed(characters.map(codeOf))}. Write those words in Latin letters and print again.`;
}

/** The note on the screen, which can show the characters. */
export function unprintableNote(characters: readonly string[]): string {
  return `Some characters could not be printed and show as boxes: ${listed(characters.map((character) => `${character} (${codeOf(character)})`))}.`;
}

function listed(names: readonly string[]): string {
  const more = names.length - mostNamed;
  return more <= 0 ? names.join(', ') : `${names.slice(0, mostNamed).join(', ')} and ${more} more`;
}

function codeOf(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
