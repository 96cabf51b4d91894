import type { FillerStock } from './layout-means.ts';

/** A filler may be off the thickness asked for by this. [in] Common practice, no source: it draws up with the nails. */
export const fillerToleranceIn = 1 / 16;

/** More layers than this are no filler any more. [-] Common practice, no source. */
const mostLayers = 4;

const dustIn = 1e-9;

/** A filler built up from what can be bought. */
export type BuiltFiller = {
  /** Thickest first. */
  readonly layers: readonly FillerStock[];
  /** Wanted less built. [in] */
  readonly offIn: number;
};

/**
 * Builds a filler up to a thickness: of the ways that come within 1/16 in. the one with fewest layers, then the nearest,
 * then the thickest first; where none comes so near, the nearest of all with up to 4 layers, thinner before thicker.
 * Found by trying all. Worked: 1-3/4 from 1-1/2, 3/4, 1/2 and 1/4 -> 1-1/2 and 1/4; from 1-1/2 alone -> 1-1/2, off by 1/4.
 * @param wantedIn - thickness to make up. [in]
 * @param stocks - what can be bought; of one thickness the first is taken. [in]
 * @returns the layers and what is missing; no layer where nothing can be bought.
 */
export function buildFiller(wantedIn: number, stocks: readonly FillerStock[]): BuiltFiller {
  const byThickness = stocks
    .filter(
      ({ thicknessIn }, index) => stocks.findIndex((other) => other.thicknessIn === thicknessIn) === index,
    )
    .toSorted((a, b) => b.thicknessIn - a.thicknessIn);
  let best: BuiltFiller = { layers: [], offIn: wantedIn };
  const tryAll = (layers: readonly FillerStock[], offIn: number, from: number): void => {
    const built = { layers, offIn };
    if (layers.length > 0 && (best.layers.length === 0 || nearer(built, best))) best = built;
    if (layers.length === mostLayers || offIn < fillerToleranceIn) return;
    for (let index = from; index < byThickness.length; index += 1) {
      const stock = byThickness[index];
      if (stock !== undefined) tryAll([...layers, stock], offIn - stock.thicknessIn, index);
    }
  };
  tryAll([], wantedIn, 0);
  return best;
}

/** Ways are tried thickest first, so that of two alike the earlier stays. */
function nearer(one: BuiltFiller, other: BuiltFiller): boolean {
  const [oneFits, otherFits] = [fits(one), fits(other)];
  if (oneFits !== otherFits) return oneFits;
  if (oneFits && one.layers.length !== other.layers.length) return one.layers.length < other.layers.length;
  return Math.abs(one.offIn) < Math.abs(other.offIn) - dustIn;
}

function fits({ offIn }: BuiltFiller): boolean {
  return Math.abs(offIn) <= fillerToleranceIn + dustIn;
}
