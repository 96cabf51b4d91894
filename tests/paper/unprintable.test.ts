import { describe, expect, it } from 'vitest';
import { makePaper } from '../../electron/paper/make-paper.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { unprintableCharacters } from '../../electron/paper/unprintable.ts';
import { has, sheetSaying } from './papers.ts';
import { readPdf } from './read-pdf.ts';

describe('characters that the font lacks', () => {
  it('are named on the paper by number, each once, instead of boxes in silence', async () => {
    const sheet = sheetSaying([{ kind: 'paragraph', text: 'For 山田 and 山本' }], 'Roof of 山');
    const { pdf, unprintable } = await renderPdf(sheet, 'letter');
    expect(unprintable).toEqual(['山', '田', '本']);
    const [page] = readPdf(pdf);
    expect(has(page, 'Some characters could not be printed and show as boxes: U+5C71, U+7530, U+672C.')).toBe(
      true,
    );
  });

  it('are told by the worker too', async () => {
    const paper = await makePaper(sheetSaying([{ kind: 'list', items: ['🏠'] }]), 'a4');
    expect(paper.unprintable).toEqual(['🏠']);
  });

  it('beyond eight are counted', async () => {
    const { pdf } = await renderPdf(sheetSaying([{ kind: 'paragraph', text: '一二三四五六七八九十' }]), 'a4');
    const lines = readPdf(pdf)[0]?.lines.join(' ') ?? '';
    expect(lines).toContain('U+516B and 2 more.');
  });

  it('are none in what a carpenter writes: fractions, inches, degrees, accents, spaces and line ends', async () => {
    const sheet = sheetSaying([
      { kind: 'paragraph', text: `5' 6-1/2" ½ ⅛ ⅞ 26.6° × — ’ “ ” · é ñ ø ß Ł ş\n\t\u00a0\u200b` },
      { kind: 'heading', text: 'Señor Müller' },
    ]);
    expect(unprintableCharacters(sheet)).toEqual([]);
    const [page] = readPdf((await renderPdf(sheet, 'letter')).pdf);
    expect(has(page, 'could not be printed')).toBe(false);
  });
});
