import { describe, expect, test } from 'vitest';
import { credibility, shrink } from '../../core/jobcost/learning/credibility.ts';
import { median, oddScores, standsOut } from '../../core/jobcost/learning/outliers.ts';
import { meanAndSpread } from '../../core/jobcost/learning/spread.ts';

describe('credibility, against a worked example', () => {
  // Multi-sided dice, as in H. C. Mahler and C. G. Dean, "Credibility", in Foundations of Casualty Actuarial Science
  // (from memory; each figure below can be reckoned by hand). Six dice in ten have four sides, three have six, one has
  // eight. Mean of a roll 3; expected variance of a roll 0.6 x 1.25 + 0.3 x 35/12 + 0.1 x 5.25 = 2.15; variance of the
  // dice's means 0.6 x 2.5^2 + 0.3 x 3.5^2 + 0.1 x 4.5^2 - 3^2 = 0.45; k = 2.15 / 0.45.
  const k = 2.15 / 0.45;

  test('one roll is believed to 0.173, and a five on it makes 3.346 the best guess of the next', () => {
    expect(credibility(1, k).toNumber()).toBeCloseTo(0.173, 3);
    expect(shrink(5, 1, 3, k).toNumber()).toBeCloseTo(3.346, 3);
  });

  test('nothing seen leaves the former belief, and much seen all but takes its place', () => {
    expect(shrink(5, 0, 3, k).toNumber()).toBe(3);
    expect(shrink(5, 100_000, 3, k).toNumber()).toBeCloseTo(5, 3);
  });
});

describe('what stands out, against the NIST/SEMATECH e-Handbook', () => {
  test('the median of an even number is the mean of the middle two (1.3.5.1)', () => {
    expect(median([4, 1, 3, 2])?.toNumber()).toBe(2.5);
    expect(median([])).toBeUndefined();
  });

  test('the modified Z-score is 0.6745 (x - median) / MAD, and 3.5 is its limit (1.3.5.17; from memory)', () => {
    // Median 0.42; distances 0.04, 0.02, 0, 0.02, 0.48; MAD 0.02; 0.6745 x 0.48 / 0.02 = 16.188.
    const scores = oddScores([0.38, 0.4, 0.42, 0.44, 0.9]).map(Number);
    expect(scores).toEqual([-1.35, -0.67, 0, 0.67, 16.19]);
    expect(scores.map((score) => standsOut(score))).toEqual([false, false, false, false, true]);
  });

  test('where most values are the same, the mean distance stands in for the median one', () => {
    // Distances 0 x 5 and 1.6: mean 1.6 / 6 = 0.26667; 1.6 / (1.253314 x 0.26667) = 4.79.
    expect(oddScores([0.4, 0.4, 0.4, 0.4, 0.4, 2]).map(Number)).toEqual([0, 0, 0, 0, 0, 4.79]);
    expect(oddScores([1, 1, 1, 1]).map(Number)).toEqual([0, 0, 0, 0]);
  });

  test('of three jobs none can be called the odd one', () => {
    expect(oddScores([1, 1.1, 9]).map(Number)).toEqual([0, 0, 0]);
  });

  test('spread is the sample standard deviation, over n - 1 (1.3.5.6)', () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32, 32 / 7 = 4.5714, root 2.138.
    const { mean, spread } = meanAndSpread([2, 4, 4, 4, 5, 5, 7, 9]);
    expect([mean?.toNumber(), spread?.toNumber()]).toEqual([5, 2.1]);
  });
});
