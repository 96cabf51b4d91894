import { formatInches } from '../units/format-length.ts';
import { slopeAngleDeg } from '../units/pitch.ts';
import type { Finding, PlacedRafter } from './layout-types.ts';
import { tellOnce, type Case } from './say-findings.ts';

/** A pitch further from its neighbours' than this is questioned. [deg] Common practice, no source. */
const questionedPitchDeg = 0.75;
/** A height above plate further from its neighbours' than this is questioned. [in] Common practice, no source. */
const questionedHeightIn = 0.5;

/**
 * Questions readings out of line with their neighbours: each rafter's pitch and height above plate against the median of
 * up to two neighbours on each side. Needs three rafters; with fewer nobody can say which one is off.
 * Worked: pitches 26.6, 26.6, 27.7, 26.6, 26.6 degrees -> rafter 3 is 1.1 degrees off.
 * @param eaveId - of the eave.
 * @param rafters - in order. [in, in/12 in]
 */
export function findOutOfLine(eaveId: string, rafters: readonly PlacedRafter[]): readonly Finding[] {
  if (rafters.length < 3) return [];
  const pitches = rafters.map(({ pitchRisePer12 }) => slopeAngleDeg(pitchRisePer12));
  const heights = rafters.map(({ heightAbovePlateIn }) => heightAbovePlateIn);
  return [
    ...tellOnce(eaveId, offBy(rafters, pitches, questionedPitchDeg), {
      topic: 'measure-again',
      structural: false,
      say: (degrees) => `the pitch is ${degrees} degrees off the neighbours: measure again?`,
      write: (degrees) => degrees.toFixed(1),
    }),
    ...tellOnce(eaveId, offBy(rafters, heights, questionedHeightIn), {
      topic: 'measure-again',
      structural: false,
      say: (inches) => `the height above plate is ${inches} off the neighbours: measure again?`,
      write: formatInches,
    }),
  ];
}

function offBy(rafters: readonly PlacedRafter[], values: readonly number[], limit: number): readonly Case[] {
  return rafters.flatMap(({ number, centreIn }, index) => {
    const neighbours = [
      ...values.slice(Math.max(0, index - 2), index),
      ...values.slice(index + 1, index + 3),
    ];
    const value = Math.abs((values[index] ?? 0) - medianOf(neighbours));
    return value > limit + 1e-9 ? [{ number, stationIn: centreIn, value }] : [];
  });
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}
