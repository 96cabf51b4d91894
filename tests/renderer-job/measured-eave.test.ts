import { describe, expect, test } from 'vitest';
import { measuredEave, placementProblems } from '../../renderer/job/compute/measured-eave.ts';
import type { Documents } from '../../renderer/job/editor/documents.ts';
import { addEave } from '../../renderer/job/editor/eave-list.ts';
import { enter } from '../../renderer/job/editor/enter.ts';
import { enterNextReading, insertRafter } from '../../renderer/job/editor/rafter-list.ts';
import { emptyDocuments, oneEave } from './fixture.ts';

/** An eave with readings and nothing else typed: no length, pitch, height or overhang. */
function onlyReadings(readings: readonly string[]): Documents {
  return readings.reduce(
    (so_far, reading) => enterNextReading(so_far, 0, reading),
    addEave(emptyDocuments(), []),
  );
}

function centres(documents: Documents): readonly number[] {
  return measuredEave(documents, 0)?.placed.rafters.map((rafter) => rafter.centreIn) ?? [];
}

describe('a survey is checked before anything is designed', () => {
  test('stations stand as soon as they are read, though wall, pitch and overhang are blank', () => {
    const documents = onlyReadings(['16', '32', '50']);
    expect(centres(documents)).toEqual([16, 32, 50]);
    expect(measuredEave(documents, 0)?.wallIn).toBe(null);
    expect(placementProblems(documents)).toEqual([]);
  });

  test('a reading out of order is told, and the rafters before it stand', () => {
    const documents = onlyReadings(['16', '32', '20']);
    expect(centres(documents)).toEqual([16, 32]);
    expect(placementProblems(documents)).toMatchObject([
      { code: 'rafter-out-of-order', rafter: '3', field: 'survey.eaves.0.rafters.2.readingIn' },
    ]);
  });

  test('overlapping rafters and one past the wall are told', () => {
    expect(placementProblems(onlyReadings(['16', '17']))).toMatchObject([
      { code: 'rafters-overlap', rafter: '2', previous: '1' },
    ]);
    const walled = enter(onlyReadings(['16', '32']), 'survey.eaves.0.lengthIn', "2' 6");
    expect(placementProblems(walled)).toMatchObject([{ code: 'rafter-past-wall', rafter: '2' }]);
  });

  test('a blank row among running readings is left out, and the rows after it keep their numbers', () => {
    const documents = enter(
      insertRafter(onlyReadings(['16', '32', '48']), 0, 1),
      'survey.eaves.0.rafters.3.readingIn',
      '20',
    );
    expect(measuredEave(documents, 0)?.placed.rafters.map((rafter) => rafter.number)).toEqual([1, 3]);
    expect(placementProblems(documents)).toMatchObject([
      { rafter: '4', field: 'survey.eaves.0.rafters.3.readingIn' },
    ]);
  });

  test('bay by bay, what comes after a blank bay waits for it', () => {
    const inserted = insertRafter(onlyReadings(['16', '16', '16']), 0, 1);
    const [eave] = inserted.survey.eaves;
    if (eave === undefined) throw new Error('no eave');
    const bays: Documents = {
      ...inserted,
      survey: { ...inserted.survey, eaves: [{ ...eave, readingMode: 'bays-centres' }] },
    };
    expect(centres(bays)).toEqual([16]);
  });

  test('a pitch out of line with its neighbours is questioned', () => {
    const documents = enter(
      oneEave(['16', '32', '48', '64']),
      'survey.eaves.0.rafters.2.pitchRisePer12',
      '7/12',
    );
    expect(measuredEave(documents, 0)?.findings.map((finding) => finding.topic)).toEqual(['measure-again']);
  });
});
