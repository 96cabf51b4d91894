import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { changedJob, entryOf, type RawJob } from './changed-job.ts';

/** Field and sentence of what stops the example with something changed; nothing where it computes. */
const stopping = (change: (raw: RawJob) => void) => {
  const result = computeJob(changedJob(change));
  return result.ok ? [] : [result.problem.field, problemSentence(result.problem)];
};
const withThings = (...obstructions: Record<string, unknown>[]) =>
  stopping((raw) => Object.assign(entryOf(raw.survey.eaves, 'porch'), { obstructions }));
const withPins = (...pins: Record<string, unknown>[]) =>
  stopping((raw) => Object.assign(entryOf(raw.design.eaves, 'porch'), { pins }));

describe('a thing in the way', () => {
  test('ends right of where it begins', () => {
    expect(withThings({ id: 'o', label: 'vent pipe', fromIn: 14, toIn: 11 })).toEqual([
      'survey.eaves.0.obstructions.0.toIn',
      'Porch eave, vent pipe: its right end at 11" stands left of its left end at 1\' 2". Swap the two, or read the tape again.',
    ]);
  });

  test('stands on the wall', () => {
    expect(withThings({ id: 'o', fromIn: 70, toIn: 500 })).toEqual([
      'survey.eaves.0.obstructions.0.toIn',
      'Porch eave, obstruction 1: its right end at 41\' 8" stands past the wall of 6\' 8". Check the reading or the wall length.',
    ]);
    expect(withThings({ id: 'o', fromIn: 70, toIn: 80 })).toEqual([]);
  });

  test('has an id of its own', () => {
    expect(withThings({ id: 'o', fromIn: 10, toIn: 11 }, { id: 'o', fromIn: 12, toIn: 13 })).toEqual([
      'survey.eaves.0.obstructions.1.id',
      'Two entries share the obstruction "o". Give one of them another.',
    ]);
  });
});

describe('a rafter', () => {
  test('has one pin, not one to the left and one to the right', () => {
    expect(withPins({ rafterId: 'p2', side: 'left' }, { rafterId: 'p2', side: 'right' })).toEqual([
      'design.eaves.0.pins.1.rafterId',
      'Porch eave, rafter 2: two pins say what goes beside it. Keep one of them.',
    ]);
    expect(withPins({ rafterId: 'p2', side: 'left' }, { rafterId: 'p3', side: 'right' })).toEqual([]);
  });
});

describe('a reading of the wall', () => {
  test('has an id of its own', () => {
    const wallReadings = [
      { id: 'w', stationIn: 0, outIn: 0 },
      { id: 'w', stationIn: 40, outIn: 0.5 },
    ];
    expect(stopping((raw) => Object.assign(entryOf(raw.survey.eaves, 'porch'), { wallReadings }))).toEqual([
      'survey.eaves.0.wallReadings.1.id',
      'Two entries share the wall reading "w". Give one of them another.',
    ]);
  });
});

function withTails(...addedTails: Record<string, unknown>[]) {
  return stopping((raw) => Object.assign(entryOf(raw.design.eaves, 'porch'), { addedTails }));
}

describe("a tail of the person's own", () => {
  test('is called as no other tail and no rafter', () => {
    expect(withTails({ id: 't', stationIn: 20 }, { id: 't', stationIn: 40 })[0]).toBe(
      'design.eaves.0.addedTails.1.id',
    );
    expect(withTails({ id: 'p2', stationIn: 20 })).toEqual([
      'design.eaves.0.addedTails.0.id',
      'Two entries share the tail "p2". Give one of them another.',
    ]);
    expect(withTails({ id: 't', stationIn: 20 })).toEqual([]);
  });

  test('stands on the wall', () => {
    expect(withTails({ id: 't', stationIn: 96 })).toEqual([
      'design.eaves.0.addedTails.0.stationIn',
      'Porch eave, added tail 1: it stands at 8\' 0", past the wall of 6\' 8". Check the station or the wall length.',
    ]);
  });
});

test('a tail is built once', () => {
  const one = { eaveId: 'porch', extenderId: 'p2', stationIn: null };
  expect(stopping((raw) => Object.assign(raw.design, { asBuilt: [one, { ...one, stationIn: 20 }] }))).toEqual(
    ['design.asBuilt.1.extenderId', 'Two entries share the tail as built "p2". Give one of them another.'],
  );
});
