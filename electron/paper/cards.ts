import type { Content, TableCell } from 'pdfmake/interfaces';
import type { Card } from '../../core/documents/sheet.ts';
import { countLines, linesHeightPt } from './wrap-text.ts';

/** Size of a bank card, 85.6 by 53.98 mm. [pt] Source: ISO/IEC 7810, format ID-1, from memory. */
const cardPt = { width: (85.6 / 25.4) * 72, height: (53.98 / 25.4) * 72 } as const;

const paddingPt = 7;
const titlePt = 10.5;
const settingPt = 15;

/** Largest and least size of a card's lines; a card that needs less grows down instead. [pt] */
const lineSizesPt = [11, 10.5, 10] as const;

/** Cards side by side with broken lines to cut along; the cards of a row stay on one page. */
export function cardSheet(cards: readonly Card[], widthPt: number): readonly Content[] {
  const across = Math.max(1, Math.floor(widthPt / cardPt.width));
  const rows = Array.from({ length: Math.ceil(cards.length / across) }, (_, index) =>
    cards.slice(index * across, (index + 1) * across),
  );
  return rows.map(
    (row): Content => ({
      unbreakable: true,
      margin: [0, 0, 0, 8],
      table: {
        widths: row.map(() => cardPt.width - 2 * paddingPt),
        heights: cardPt.height - 2 * paddingPt,
        body: [row.map(cardCell)],
      },
      layout: {
        hLineWidth: () => 0.6,
        vLineWidth: () => 0.6,
        hLineStyle: () => ({ dash: { length: 4, space: 3 } }),
        vLineStyle: () => ({ dash: { length: 4, space: 3 } }),
        paddingLeft: () => paddingPt,
        paddingRight: () => paddingPt,
        paddingTop: () => paddingPt,
        paddingBottom: () => paddingPt,
      },
    }),
  );
}

function cardCell({ title, setting, lines }: Card): TableCell {
  const widthPt = cardPt.width - 2 * paddingPt;
  const heightOf = (sizePt: number): number =>
    lines.reduce((sum, line) => sum + linesHeightPt(countLines(line, { sizePt }, widthPt), sizePt), 0) +
    linesHeightPt(countLines(title, { sizePt: titlePt, bold: true }, widthPt), titlePt) +
    linesHeightPt(countLines(setting, { sizePt: settingPt, bold: true }, widthPt), settingPt);
  const sizePt =
    lineSizesPt.find((size) => heightOf(size) <= cardPt.height - 2 * paddingPt) ?? lineSizesPt.at(-1);
  return {
    stack: [
      { text: title, fontSize: titlePt, bold: true },
      { text: setting, fontSize: settingPt, bold: true },
      ...lines.map((text): Content => ({ text, fontSize: sizePt ?? 10 })),
    ],
  };
}
