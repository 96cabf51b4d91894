import { describe, expect, test } from 'vitest';
import { designSchema } from '../../core/eave/design-document.ts';
import { asBuiltOf, setAsBuilt } from '../../renderer/job/editor/as-built.ts';
import { valueAt } from '../../renderer/job/editor/documents.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { draftProblems } from '../../renderer/job/editor/enter.ts';
import { readEntry } from '../../renderer/job/editor/read-entry.ts';
import { enterNextStation } from '../../renderer/job/survey/reading-list.ts';
import { freePlaceIn } from '../../renderer/job/design/hand/free-place.ts';
import { oneEave } from './fixture.ts';

const house = oneEave(['16', '40', '64']);
const eaveId = house.survey.eaves[0]?.id ?? '';

describe('what was built', () => {
  test('is kept tail by tail, and goes where it says nothing any more', () => {
    const set = setAsBuilt(house, eaveId, 'r2', { inPlace: true, stationIn: 41.75 });
    const both = setAsBuilt(set, eaveId, 'gap-1', { note: 'crown down' });
    expect(designSchema.safeParse(both.design).success).toBe(true);
    expect(asBuiltOf(both, eaveId, 'r2')).toMatchObject({ inPlace: true, stationIn: 41.75, note: '' });
    expect(asBuiltOf(both, eaveId, 'gap-1')).toMatchObject({ inPlace: false, stationIn: null });
    const cleared = setAsBuilt(both, eaveId, 'r2', { inPlace: false, stationIn: null });
    expect(cleared.design.asBuilt.map(({ extenderId }) => extenderId)).toEqual(['gap-1']);
    expect(setAsBuilt(cleared, eaveId, 'gap-1', { note: '' }).design.asBuilt).toEqual([]);
  });

  test('of one eave is not that of another with the same rafter ids', () => {
    const set = setAsBuilt(house, 'other', 'r2', { inPlace: true });
    expect(asBuiltOf(set, eaveId, 'r2')).toBeUndefined();
  });
});

describe('a reading of the wall', () => {
  test('begins with its station, on the line, and is in or out by its sign', () => {
    const begun = enterNextStation(house, 0, 'wallReadings', "5'");
    expect(valueAt(begun, 'survey.eaves.0.wallReadings')).toEqual([{ id: 'w1', stationIn: 60, outIn: 0 }]);
    expect(readEntry('survey.eaves.0.wallReadings.0.outIn', '-3/8')).toEqual({ ok: true, value: -0.375 });
    expect(readEntry('survey.eaves.0.plateReadings.0.upIn', '+1-1/4')).toEqual({ ok: true, value: 1.25 });
  });

  test('that does not read stays as typed, and says what to do', () => {
    const typed = enterNextStation(house, 0, 'plateReadings', 'by the door');
    expect(typed.survey).toEqual(house.survey);
    expect(draftProblems(typed).map(problemSentence).join()).toContain('"by the door" is not a length.');
    expect(enterNextStation(typed, 0, 'plateReadings', '').drafts).toEqual({});
  });
});

const rafter = (leftFaceIn: number) => ({ leftFaceIn, rightFaceIn: leftFaceIn + 1.5 }) as never;

describe('the widest free place between two stations', () => {
  const standing = { rafters: [rafter(15.25), rafter(39.25)], occupied: [], extenders: [] };

  test('is its middle, to the sixteenth', () => {
    expect(freePlaceIn(standing, 16.75, 39.25, 1.5)).toBe(28);
    const joist = { label: 'joist', kind: 'joist', leftIn: 30, rightIn: 31.5 } as const;
    expect(freePlaceIn({ ...standing, occupied: [joist] }, 16.75, 39.25, 1.5)).toBe(23.375);
  });

  test('is none where no tail fits', () => {
    expect(freePlaceIn(standing, 15.25, 18, 1.5)).toBeNull();
    expect(freePlaceIn(standing, 15.25, 18.25, 1.5)).toBe(17.5);
  });
});
