import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../core/documents/sheet.ts';
import { margins } from '../../electron/paper/paper-size.ts';
import { wrapText } from '../../electron/paper/wrap-text.ts';
import { printed, sheetSaying } from './papers.ts';
import type { PlacedText } from './read-pdf.ts';

/** Longest that the settings and a job take. */
const longWords = {
  name: 'W'.repeat(120),
  address: 'Mill-Lane-without-any-space-'.repeat(11).slice(0, 300),
  contact: `${'9'.repeat(60)}  ·  ${'m'.repeat(108)}@shop.example`,
};
const longSheet: Sheet = {
  ...sheetSaying([{ kind: 'paragraph', text: 'First line of the sheet.' }], 'M'.repeat(120), longWords),
  job: { name: 'M'.repeat(120), siteAddress: 'Q'.repeat(300), customer: '' },
};

/** Texts over a margin; the widths read back leave out kerning, which is worth up to 2 pt. */
function outside(texts: readonly PlacedText[], widthPt: number): readonly PlacedText[] {
  return texts.filter(
    ({ text, x, widthPt: width }) =>
      text.trim() !== '' && (x < margins.left - 0.5 || x + width > widthPt - margins.right + 2),
  );
}

describe('the head of a page', () => {
  for (const paperSize of ['letter', 'a4'] as const) {
    it(`breaks names and addresses of one long word and stays on the page, ${paperSize}`, async () => {
      const [page] = await printed(longSheet, paperSize);
      expect(outside(page?.texts ?? [], page?.widthPt ?? 0)).toEqual([]);
      const all = page?.texts.map(({ text }) => text).join('') ?? '';
      for (const word of [longWords.name, 'M'.repeat(120), 'Q'.repeat(300), longWords.address])
        expect(all.split(word[0] ?? '').length - 1).toBeGreaterThanOrEqual(
          word.split(word[0] ?? '').length - 1,
        );
    });
  }

  it('pushes the content down as far as it reaches, and no further for a short one', async () => {
    const [long] = await printed(longSheet);
    const first = long?.texts.find(({ text }) => text.startsWith('First'));
    const headTexts = long?.texts.filter(({ text }) => /^[WQMm9]+/.test(text)) ?? [];
    expect(headTexts.length).toBeGreaterThan(10);
    expect(Math.min(...headTexts.map(({ y }) => y))).toBeGreaterThan((first?.y ?? 0) + 12);

    const [short] = await printed(sheetSaying([{ kind: 'paragraph', text: 'First line of the sheet.' }]));
    const top = short?.texts.find(({ text }) => text.startsWith('First'));
    expect((short?.heightPt ?? 0) - (top?.y ?? 0)).toBeLessThan(margins.top + 15);
  });

  it('keeps the columns of two lines of signature apart, however long a name is', async () => {
    const sheet = sheetSaying([{ kind: 'signatures', parties: [`For ${'W'.repeat(100)}`, 'Client'] }]);
    const [page] = await printed(sheet);
    expect(outside(page?.texts ?? [], page?.widthPt ?? 0)).toEqual([]);
  });
});

describe('a text broken into lines', () => {
  const setting = { sizePt: 10 };
  it('keeps all its words in order and no line wider than the room', () => {
    const text = 'Wall 34\' 4-1/2" and  an   address\nof_one_very_long_word_that_fits_no_line at the end';
    const lines = wrapText(text, setting, 80);
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(/\s/g, ''));
    expect(lines.length).toBeGreaterThan(4);
  });

  it('is no line where there is no word', () => {
    expect(wrapText(' \n ', setting, 80)).toEqual([]);
  });
});
