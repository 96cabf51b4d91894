import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { rakeSoffitOf } from '../../core/takeoff/rake-soffit.ts';
import { soundResult } from '../job/example-job.ts';
import { lineOf } from '../takeoff/small-job.ts';
import { prices, rakeJob, type RakeJob } from './rake-job.ts';

const closed = { rakeDesign: { soffit: { itemId: 'sheet' } }, priceList: prices };
const resultOf = (change: RakeJob) => soundResult(rakeJob(change));
const soffitIn = (change: RakeJob) => {
  const job = rakeJob(change);
  const soffit = rakeSoffitOf(job, soundResult(job).rakes[0]!, 0);
  if (soffit === null) throw new Error('the rake stays open');
  return soffit;
};

describe('the soffit of a rake', () => {
  // By hand: 12 in. less the barge rafter's 1-1/2; from the eave's wall at 16 x 1.11803 = 17.889 up to the ridge at
  // 178.885: 10.5 x 160.997 / 144 = 11.74 sq ft, 13.42 ft x 0.14 h = 1.88 h.
  test('is ripped to the overhang less the barge rafter, from the eave’s wall to the ridge', () => {
    const { takeoff } = resultOf(closed);
    expect(lineOf(takeoff, 'rake-soffit-sheet').quantity).toBe('11.74');
    expect(lineOf(takeoff, 'rake-soffit-sheet').phase).toBe('Soffit');
    expect(lineOf(takeoff, 'labour-rake-soffit').quantity).toBe('1.88');
  });

  test('has its end joints on lookouts, as far up as a sheet reaches, and a gap of 1/8 in. at each', () => {
    const soffit = soffitIn(closed);
    const lookouts = resultOf(closed).rakes[0]!.lookouts.map(({ alongIn }) => alongIn);
    expect(soffit.jointsIn).toHaveLength(1);
    const [joint = Number.NaN] = soffit.jointsIn;
    expect(lookouts).toContain(joint);
    expect(joint - soffit.fromIn).toBeLessThanOrEqual(96 + 1 / 16);
    const next = lookouts.find((along) => along > joint)!;
    expect(next - soffit.fromIn).toBeGreaterThan(96 + 1 / 16);
    const cutIn = soffit.parts.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
    expect(cutIn).toBeCloseTo(soffit.toIn - soffit.fromIn - 1 / 8, 9);
  });

  test('is nailed to each lookout over it, to both panels at a joint, and along the barge rafter', () => {
    const soffit = soffitIn(closed);
    const over = resultOf(closed).rakes[0]!.lookouts.filter(({ alongIn }) => alongIn > soffit.fromIn).length;
    // 10-1/2 in. at 6 in.: three nails a row. 160.997 in. at 6 in.: 28 along the barge rafter.
    const wanted = (over + 1) * 3 + 28;
    const said = lineOf(resultOf(closed).takeoff, 'nails-6d-common-galvanized').where;
    expect(said).toContain(`Rake R1: ${wanted}`);
  });

  test('of 4 ft takes a rip of 46-1/2 in. from each sheet', () => {
    const soffit = soffitIn({ ...closed, rakeDesign: { overhangIn: 48, soffit: { itemId: 'sheet' } } });
    // 46-1/2 in. fit a sheet of 4 ft; a barge of nothing would not.
    expect(soffit.parts.every(({ widthIn }) => widthIn === 46.5)).toBe(true);
  });

  test('is nothing where none is chosen, and an item that cannot be bought is named at its entry', () => {
    expect(resultOf({ priceList: prices }).takeoff.lines.map(({ id }) => id)).not.toContain(
      'rake-soffit-sheet',
    );
    const lack = resultOf({
      ...closed,
      rakeDesign: { soffit: { itemId: 'gone' } },
    }).takeoff.lacks.find(({ field }) => field === 'design.rakes.0.soffit.itemId');
    expect(problemSentence(lack!)).toMatch(/Soffit of Rake R1 \(West rake\)/);
  });

  test('is not asked for any more once it is chosen', () => {
    const eaveDesign = { soffit: { kind: 'sloped' } };
    const open = resultOf({ priceList: prices, eaveDesign });
    expect(open.findings.map(({ topic }) => topic)).toContain('soffit-not-counted');
    const said = resultOf({ ...closed, eaveDesign }).findings.filter(
      ({ topic, rakeId }) => topic === 'soffit-not-counted' && rakeId === 'gable',
    );
    expect(said).toEqual([]);
  });
});
