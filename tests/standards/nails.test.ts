import { describe, expect, test } from 'vitest';
import { findNail, nails } from '../../core/takeoff/nails.ts';
import { hundredthsUp, withAllowance } from '../../core/takeoff/quantities.ts';
import { fewestNailsInJoint, staggeredNails } from '../../core/takeoff/stagger.ts';

/** Common practice, no source: 16d in two rows at 16 in. on centre, the second row 8 in. further; our 2 in. at ends. */
const twoRows = { rows: 2, spacingIn: 16, endDistanceIn: 2 } as const;

function row(overlapIn: number, number: number, pattern: Parameters<typeof staggeredNails>[1] = twoRows) {
  return staggeredNails(overlapIn, pattern)
    .filter((nail) => nail.row === number)
    .map((nail) => nail.alongIn);
}

describe('staggered nails, counted by hand', () => {
  // The three laps: 32 in. behind a tail of 16 in. along the slope, 48 in. behind one of 24 in. (both the 2:1 rule,
  // common practice, no source), and one of 70 in.
  test('a lap of 32 in. takes four nails', () => {
    // Last place 30. Row 1: 2, 18 (34 is past). Row 2: 10, 26.
    expect(row(32, 1)).toEqual([2, 18]);
    expect(row(32, 2)).toEqual([10, 26]);
  });

  test('a lap of 48 in. takes six nails', () => {
    // Last place 46. Row 1: 2, 18, 34. Row 2: 10, 26, 42.
    expect(row(48, 1)).toEqual([2, 18, 34]);
    expect(row(48, 2)).toEqual([10, 26, 42]);
  });

  test('a lap of 70 in. takes nine nails', () => {
    // Last place 68. Row 1: 2, 18, 34, 50, 66. Row 2: 10, 26, 42, 58.
    expect(row(70, 1)).toEqual([2, 18, 34, 50, 66]);
    expect(row(70, 2)).toEqual([10, 26, 42, 58]);
  });

  test('a nail exactly at the end distance still counts', () => {
    expect(row(36, 1)).toEqual([2, 18, 34]);
    expect(row(36 - 1e-6, 1)).toEqual([2, 18]);
  });

  test('a lap too short for the pattern still takes four, two in each row', () => {
    expect(row(20, 1)).toEqual([2, 18]);
    expect(row(20, 2)).toEqual([2, 18]);
    expect(staggeredNails(6, twoRows)).toHaveLength(fewestNailsInJoint);
    expect(staggeredNails(0, twoRows)).toEqual([]);
  });

  test('the rows of a third and fourth line stand like the first and second', () => {
    const fourRows = { ...twoRows, rows: 4 } as const;
    expect(row(48, 3, fourRows)).toEqual(row(48, 1, fourRows));
    expect(row(48, 4, fourRows)).toEqual(row(48, 2, fourRows));
  });
});

const sizeOf = (name: string) => [findNail(name)?.diameterIn, findNail(name)?.lengthIn];

describe('nails per pound', () => {
  /** Weight of carbon steel, 490 lb/cu ft (handbook, from memory). [lb/cu in] */
  const steelLbPerCubicInch = 0.2836;

  test.each(nails.filter((nail) => nail.finish === 'bright').map((nail) => [nail.name, nail] as const))(
    'the handbook count of %s agrees with the weight of its shank within 5 %%',
    // Counts: handbook values, from memory. Diameters and lengths: NDS 2018, Table L4 (as ASTM F1667). Geometry: a
    // plain cylinder, head and point left out.
    (_, nail) => {
      const shankLb = steelLbPerCubicInch * (Math.PI / 4) * nail.diameterIn ** 2 * nail.lengthIn;
      expect(nail.perPound * shankLb).toBeGreaterThan(0.95);
      expect(nail.perPound * shankLb).toBeLessThan(1.05);
    },
  );

  test('dimensions are those of NDS 2018, Table L4 (as seen in transcription)', () => {
    expect(sizeOf('8d common')).toEqual([0.131, 2.5]);
    expect(sizeOf('16d common')).toEqual([0.162, 3.5]);
    expect(sizeOf('10d box')).toEqual([0.128, 3]);
    expect(sizeOf('16d sinker')).toEqual([0.148, 3.25]);
    expect(sizeOf('20d common')).toEqual([0.192, 4]);
  });

  test('a pound of galvanized nails holds some 5 % fewer, rounded down', () => {
    // Common practice, no source; 44 to 47 for 16d and 95 to 100 for 8d are values from memory.
    expect(findNail('16d common galvanized')?.perPound).toBe(46);
    expect(findNail('8d common galvanized')?.perPound).toBe(100);
  });

  test('a name that is no nail gives nothing', () => {
    expect(findNail('16p common')).toBeUndefined();
    expect(findNail(' 16d  common ')?.name).toBe('16d common');
  });
});

describe('nail allowances', () => {
  test('6000 nails and 20 % for loss are 7200', () => {
    // Source: US Army EN0069A, "Frame Structures".
    expect(withAllowance(6000, 20)).toBe(7200);
  });

  test('500 pieces and 10 % are 550, 300 and 10 % are 330', () => {
    // Source: US Army EN0069A, "Frame Structures". A binary 300 x 1.1 would round up to 331.
    expect(withAllowance(500, 10)).toBe(550);
    expect(withAllowance(300, 10)).toBe(330);
  });

  test('7200 nails of 10d at 69 to the pound weigh 104.3 lb', () => {
    // Source: count of US Army EN0069A; 69 to the pound is a handbook value from memory (the course itself uses 74).
    const perPound = findNail('10d common')?.perPound ?? Number.NaN;
    expect(Number(hundredthsUp(7200 / perPound))).toBeCloseTo(104.3, 0);
    expect(hundredthsUp(7200 / perPound)).toBe('104.35');
  });
});
