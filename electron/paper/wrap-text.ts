import { lineHeightShare, paperGlyphs } from './font-glyphs.ts';

/** How a text is set. */
export type Setting = { readonly sizePt: number; readonly bold?: boolean };

/** Distance of two lines as a share of a line's own height, on every sheet. [-] */
export const leading = 1.05;

/** Width of a text as it is printed, without kerning. [pt] */
export function printedWidth(text: string, { sizePt, bold = false }: Setting): number {
  const { widthOf } = paperGlyphs()[bold ? 'bold' : 'normal'];
  let shares = 0;
  for (const character of text) shares += widthOf(character.codePointAt(0) ?? 0);
  return shares * sizePt;
}

/**
 * Breaks a text into lines between its words; a word that is longer than a line is broken where it must be.
 * @param text - what is written; its own line ends count as spaces.
 * @param setting - size and weight. [pt]
 * @param widthPt - room for a line. [pt]
 */
export function wrapText(text: string, setting: Setting, widthPt: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let used = 0;
  const space = printedWidth(' ', setting);
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const width = printedWidth(word, setting);
    if (line !== '' && used + space + width > widthPt) {
      lines.push(line);
      [line, used] = ['', 0];
    }
    if (line !== '') [line, used] = [`${line} ${word}`, used + space + width];
    else if (width <= widthPt) [line, used] = [word, width];
    else {
      for (const character of word) {
        const step = printedWidth(character, setting);
        if (line !== '' && used + step > widthPt) {
          lines.push(line);
          [line, used] = ['', 0];
        }
        [line, used] = [line + character, used + step];
      }
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** How many lines a text takes, its own line ends counted. */
export function countLines(text: string, setting: Setting, widthPt: number): number {
  return text
    .split(/\r\n|[\n\v\f\r\u0085\u2028\u2029]/)
    .reduce((sum, part) => sum + Math.max(1, wrapText(part, setting, widthPt).length), 0);
}

/** Height of so many lines of type. [pt] */
export function linesHeightPt(lines: number, sizePt: number): number {
  return lines * sizePt * lineHeightShare * leading;
}
