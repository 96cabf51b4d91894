/** What stands behind a count per pound. */
export type NailEvidence = 'handbook, from memory' | 'handbook less 5 %, common practice';

/** A nail as it is bought by the pound. */
export type Nail = {
  /** Name that settings and price list use, e.g. `16d common`, `8d common galvanized`. */
  readonly name: string;
  readonly finish: 'bright' | 'galvanized';
  readonly diameterIn: number;
  readonly lengthIn: number;
  /** Nails in a pound; the shop's supplier may differ by a few per cent. [1/lb] */
  readonly perPound: number;
  readonly evidence: NailEvidence;
};

type NailRow = readonly [name: string, diameterIn: number, lengthIn: number, perPound: number];

/**
 * Bright steel nails. Diameters and lengths: NDS 2018, Appendix L, Table L4 (as ASTM F1667), seen in transcription.
 * Counts per pound: handbook values from memory; tests hold them against the weight of the shank.
 */
const brightNails: readonly NailRow[] = [
  ['6d common', 0.113, 2, 181],
  ['8d common', 0.131, 2.5, 106],
  ['10d common', 0.148, 3, 69],
  ['12d common', 0.148, 3.25, 63],
  ['16d common', 0.162, 3.5, 49],
  ['20d common', 0.192, 4, 31],
  ['30d common', 0.207, 4.5, 24],
  ['40d common', 0.225, 5, 18],
  ['6d box', 0.099, 2, 236],
  ['8d box', 0.113, 2.5, 145],
  ['10d box', 0.128, 3, 94],
  ['12d box', 0.128, 3.25, 88],
  ['16d box', 0.135, 3.5, 71],
  ['20d box', 0.148, 4, 52],
  ['6d sinker', 0.092, 1.875, 275],
  ['8d sinker', 0.113, 2.375, 142],
  ['10d sinker', 0.12, 2.875, 104],
  ['12d sinker', 0.135, 3.125, 77],
  ['16d sinker', 0.148, 3.25, 61],
  ['20d sinker', 0.177, 3.75, 37],
];

/** Share of a bright nail's count that a pound of hot-dip galvanized ones holds (common practice, no source). [-] */
export const galvanizedShare = 0.95;

/** Every nail that the program can turn into pounds, bright first. */
export const nails: readonly Nail[] = [
  ...brightNails.map(
    ([name, diameterIn, lengthIn, perPound]): Nail => ({
      name,
      finish: 'bright',
      diameterIn,
      lengthIn,
      perPound,
      evidence: 'handbook, from memory',
    }),
  ),
  ...brightNails.map(
    ([name, diameterIn, lengthIn, perPound]): Nail => ({
      name: `${name} galvanized`,
      finish: 'galvanized',
      diameterIn,
      lengthIn,
      perPound: Math.floor(perPound * galvanizedShare),
      evidence: 'handbook less 5 %, common practice',
    }),
  ),
];

const byName: ReadonlyMap<string, Nail> = new Map(nails.map((nail) => [nail.name, nail]));

/**
 * Looks up a nail by its name.
 * @param name - as settings and price list write it, e.g. `10d box`.
 * @returns its size and count per pound, or undefined when the program does not know it. [in, 1/lb]
 */
export function findNail(name: string): Nail | undefined {
  return byName.get(name.trim().replace(/\s+/g, ' '));
}
