import { readFileSync } from 'node:fs';
import { fontFiles } from './fonts.ts';

/** What a font can draw, and how wide. */
export type FontGlyphs = {
  /** Whether the font has a glyph for a character. */
  readonly has: (codePoint: number) => boolean;
  /** Advance of a character as a share of the type's size; a missing one takes the box's. [-] */
  readonly widthOf: (codePoint: number) => number;
};

/** Height of a line of the font as a share of the type's size: ascent less descent of its `hhea` table, 1.024 + 0.4. [-] */
export const lineHeightShare = 1.424;

let fonts: Readonly<Record<'normal' | 'bold', FontGlyphs>> | undefined;

/** The glyphs of the embedded font, read once. */
export function paperGlyphs(): Readonly<Record<'normal' | 'bold', FontGlyphs>> {
  if (fonts === undefined) {
    const files = fontFiles();
    fonts = { normal: readGlyphs(files.normal), bold: readGlyphs(files.bold) };
  }
  return fonts;
}

/**
 * Reads which characters a TrueType font draws and their advances. Source: OpenType specification, tables `cmap`
 * (format 12: groups of first code, last code, first glyph), `hhea`, `hmtx` and `head`.
 */
function readGlyphs(file: string): FontGlyphs {
  const bytes = readFileSync(file);
  const font = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = (tag: string): number => {
    for (let at = 12; at < 12 + 16 * font.getUint16(4); at += 16) {
      if (bytes.toString('latin1', at, at + 4) === tag) return font.getUint32(at + 8);
    }
    throw new Error(`${file} has no table ${tag}`);
  };
  const unitsPerEm = font.getUint16(table('head') + 18);
  const advances = font.getUint16(table('hhea') + 34);
  const metrics = table('hmtx');
  const glyphs = readCharacterMap(font, table('cmap'));
  return {
    has: (codePoint) => glyphs.has(codePoint),
    // Behind the last advance all glyphs are as wide as that one.
    widthOf: (codePoint) =>
      font.getUint16(metrics + 4 * Math.min(glyphs.get(codePoint) ?? 0, advances - 1)) / unitsPerEm,
  };
}

function readCharacterMap(font: DataView, cmap: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>();
  for (let at = cmap + 4; at < cmap + 4 + 8 * font.getUint16(cmap + 2); at += 8) {
    const start = cmap + font.getUint32(at + 4);
    if (font.getUint16(start) !== 12) continue;
    for (let group = 0; group < font.getUint32(start + 12); group += 1) {
      const place = start + 16 + 12 * group;
      const first = font.getUint32(place);
      for (let code = first; code <= font.getUint32(place + 4); code += 1)
        glyphs.set(code, font.getUint32(place + 8) + code - first);
    }
  }
  if (glyphs.size === 0) throw new Error('the font has no character map of format 12');
  return glyphs;
}
