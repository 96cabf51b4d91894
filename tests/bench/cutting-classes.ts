import type { CutItem, CuttingProblem, StockLength } from '../../core/cutting/cut-plan-types.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';

/** Kinds of jobs that the bench makes from a seed. */
export const jobClasses = ['standard', 'limited', 'large', 'slanted'] as const;
export type JobClass = (typeof jobClasses)[number];

/** Whole numbers that look random and are the same for a seed on every machine (mulberry32). */
export function numbersFrom(seed: number): (least: number, most: number) => number {
  let state = (seed * 0x9e3779b1 + 0x7f4a7c15) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return (least, most) => least + Math.floor(next() * (most - least + 1));
}

/**
 * Makes a job of a class. `standard`: 40 to 120 pieces of 3 to 8 lengths from 14-1/2 to 96 in., boards of 8 to 20 ft at
 * prices out of proportion. `limited`: the same with some lengths scarce and offcuts on hand, half of them for nothing.
 * `large`: 150 to 400 pieces of 10 to 25 lengths, boards to 24 ft. `slanted`: as standard, with plumb-ended extenders of
 * up to three slants among square blocks. Kerf 1/8 in.
 */
export function makeJob(kind: JobClass, seed: number): CuttingProblem {
  const number = numbersFrom(seed * 4 + jobClasses.indexOf(kind));
  const large = kind === 'large';
  const kinds = large ? number(10, 25) : number(3, 8);
  const pieces = large ? number(150, 400) : number(40, 120);
  const longestFt = large ? 24 : 20;
  const sizes = Array.from({ length: kinds }, () => number(232, 1536));
  const slants = kind === 'slanted' ? Array.from({ length: number(1, 3) }, () => number(15, 88)) : [];
  const slantOfSize = sizes.map(() =>
    slants.length === 0 || number(0, 2) === 0 ? 0 : (slants[number(0, slants.length - 1)] ?? 0),
  );
  const perFoot = number(60, 300);
  const lengths: StockLength[] = [];
  for (let feet = 8; feet <= longestFt; feet += 2) {
    if (feet !== 8 && number(0, 9) === 0) continue;
    const share = number(920, 1080) / 1000 + (feet > 16 ? number(50, 200) / 1000 : 0);
    const scarce = kind === 'limited' && number(0, 1) === 0;
    lengths.push({
      itemId: `L${feet}`,
      lengthSixteenths: (feet * 192) as Sixteenths,
      priceCents: Math.round(feet * perFoot * share),
      ...(scarce && feet !== 8 ? { available: number(1, 10) } : {}),
    });
  }
  if (kind === 'limited')
    for (let index = number(3, 9); index > 0; index -= 1)
      lengths.push({
        itemId: `offcut-${index}`,
        lengthSixteenths: number(500, 1900) as Sixteenths,
        priceCents: number(0, 1) * number(1, 400),
        available: number(1, 2),
        source: 'on-hand',
      });
  return {
    stock: { section: '2x6', grade: kind },
    items: itemsOf(sizes, slantOfSize, pieces, number),
    lengths,
    kerfSixteenths: 2 as Sixteenths,
    endTrimSixteenths: 0 as Sixteenths,
    depthSixteenths: 88 as Sixteenths,
  };
}

function itemsOf(
  sizes: readonly number[],
  slants: readonly number[],
  pieces: number,
  number: (least: number, most: number) => number,
): readonly CutItem[] {
  const weights = sizes.map(() => number(1, 10));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return sizes.flatMap((length, size) => {
    const count = Math.max(1, Math.round((pieces * (weights[size] ?? 1)) / sum));
    const slant = slants[size] ?? 0;
    return Array.from({ length: count }, (_, index) => ({
      mark: `${size}-${index}`,
      lengthSixteenths: Math.min(1536, length + slant) as Sixteenths,
      ...(slant > 0 ? { slantSixteenths: slant as Sixteenths } : {}),
    }));
  });
}
