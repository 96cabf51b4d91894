import { sixteenthsDown, sixteenthsUp, type Sixteenths } from '../units/sixteenths.ts';
import type { SheetSize } from './sheathing-strip.ts';

/** A rectangle that is cut from a sheet, its length along the sheet's. [in] */
export type SheetPart = { readonly lengthIn: number; readonly widthIn: number };

/** A rip along the whole sheet, and how much of its length is left. [1/16 in] */
type Rip = { readonly width: number; lengthLeft: number };
type Sheet = { widthLeft: number; readonly rips: Rip[] };

/**
 * Counts the sheets that rectangles are cut from, as a table saw does it: sheets are ripped into strips along their length,
 * strips are cut off to length, one kerf between two cuts. Groups are cut one after the other, so that a later one takes
 * what an earlier one leaves; in each the widest first, then the longest, each into the tightest strip that holds it,
 * then into the first sheet with room for another rip. Sizes are rounded up to a sixteenth; one larger than a sheet counts
 * as a whole sheet. Source: first-fit decreasing by rips, our own; no claim that fewer cannot do.
 * Worked: from 48 by 96 in., two parts of 18 by 96 and two of 18 by 47 -> 2 sheets: two whole rips, and both short ones
 * from one rip of the second.
 * @param groups - rectangles by use. [in]
 * @param sheet - size of one sheet. [in]
 * @param kerfIn - width of the saw cut. [in]
 * @returns sheets that each group opens.
 */
export function packSheets(
  groups: readonly (readonly SheetPart[])[],
  sheet: SheetSize,
  kerfIn: number,
): readonly number[] {
  const kerf = sixteenthsUp(kerfIn);
  const whole = { width: sixteenthsDown(sheet.widthIn), length: sixteenthsDown(sheet.lengthIn) };
  const sheets: Sheet[] = [];
  return groups.map((parts) => {
    const before = sheets.length;
    const sizes = parts
      .map(({ widthIn, lengthIn }) => ({
        width: Math.min(sixteenthsUp(widthIn), whole.width),
        length: Math.min(sixteenthsUp(lengthIn), whole.length),
      }))
      .toSorted((a, b) => b.width - a.width || b.length - a.length);
    for (const size of sizes) {
      const rip = tightestRip(sheets, size) ?? newRip(sheets, size.width, whole, kerf);
      rip.lengthLeft -= size.length + kerf;
    }
    return sheets.length - before;
  });
}

/** The narrowest rip that still holds the part; of equal ones that with the least length left. */
function tightestRip(
  sheets: readonly Sheet[],
  size: { readonly width: number; readonly length: number },
): Rip | undefined {
  let best: Rip | undefined;
  for (const rip of sheets.flatMap(({ rips }) => rips)) {
    if (rip.width < size.width || rip.lengthLeft < size.length) continue;
    if (
      best === undefined ||
      rip.width < best.width ||
      (rip.width === best.width && rip.lengthLeft < best.lengthLeft)
    )
      best = rip;
  }
  return best;
}

function newRip(
  sheets: Sheet[],
  width: number,
  whole: { readonly width: Sixteenths; readonly length: Sixteenths },
  kerf: number,
): Rip {
  let sheet = sheets.find(({ widthLeft }) => widthLeft >= width);
  if (sheet === undefined) {
    sheet = { widthLeft: whole.width, rips: [] };
    sheets.push(sheet);
  }
  const rip = { width, lengthLeft: whole.length };
  sheet.widthLeft -= width + kerf;
  sheet.rips.push(rip);
  return rip;
}
