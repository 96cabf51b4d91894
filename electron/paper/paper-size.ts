import type { Sheet } from '../../core/documents/sheet.ts';

/** Papers that sheets are made for. */
export type PaperSize = 'letter' | 'a4';

/** Width and height, at 72 points an inch. [pt] Sources: ANSI Y14.1 size A (8-1/2 by 11 in.), ISO 216 A4 (210 by 297 mm). */
export const paperSizes: Readonly<
  Record<PaperSize, { readonly widthPt: number; readonly heightPt: number }>
> = {
  letter: { widthPt: 612, heightPt: 792 },
  a4: { widthPt: 595.28, heightPt: 841.89 },
};

/** Clear borders of every page; the head and the foot stand inside the top and the bottom one. [pt] */
export const margins = { left: 46, right: 46, top: 82, bottom: 50 } as const;

/** Width and height of a sheet's pages, turned where the sheet lies on its side. [pt] */
export function pageSize(
  sheet: Pick<Sheet, 'orientation'>,
  paperSize: PaperSize,
): { readonly widthPt: number; readonly heightPt: number } {
  const { widthPt, heightPt } = paperSizes[paperSize];
  return sheet.orientation === 'landscape' ? { widthPt: heightPt, heightPt: widthPt } : { widthPt, heightPt };
}
