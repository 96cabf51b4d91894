import { describe, expect, test } from 'vitest';
import { withDraft, withValueAt } from '../../renderer/job/editor/documents.ts';
import { addEave, removeEave } from '../../renderer/job/editor/eave-list.ts';
import { draftProblems, enter } from '../../renderer/job/editor/enter.ts';
import {
  addRake,
  addRakeDesign,
  endsWithoutRake,
  moveRake,
  rakesOfEave,
  removeRake,
} from '../../renderer/job/editor/rake-list.ts';
import { isUnfilled } from '../../renderer/job/editor/unfilled.ts';
import { placeOfField } from '../../renderer/job/parts/place-of-field.ts';
import { whereIs } from '../../renderer/job/parts/use-go-to.ts';
import { placeOfRef } from '../../renderer/job/walk-back/place-of-ref.ts';
import { oneEave } from './fixture.ts';

const eave = oneEave(['3/4', '16', '40']);
const eaveId = eave.survey.eaves[0]?.id ?? '';
const raked = addRake(eave, eaveId, 'left', []);
const endsOf = (documents: typeof eave) => documents.design.eaves[0]?.ends;

describe('a rake that is added', () => {
  test('rises from its end, with a design, and the eave meets it there', () => {
    expect(raked.survey.rakes).toMatchObject([
      { id: 'rake-1', eaveId, end: 'left', name: 'Eave 1, left rake' },
    ]);
    expect(raked.design.rakes).toMatchObject([{ rakeId: 'rake-1', kind: 'lookouts' }]);
    expect(endsOf(raked)).toEqual({
      left: { kind: 'rake', meets: 'rake-1' },
      right: { kind: 'free', meets: '' },
    });
    expect(endsWithoutRake(raked, eaveId)).toEqual(['right']);
  });

  test('waits for its run and overhang: both are blank, nobody’s, and asked for', () => {
    const asked = draftProblems(raked).map(({ field }) => field);
    expect(asked).toEqual(['survey.rakes.0.runIn', 'design.rakes.0.overhangIn']);
    for (const field of asked) expect(isUnfilled(raked, field)).toBe(true);
    const filled = enter(enter(raked, 'survey.rakes.0.runIn', "12'"), 'design.rakes.0.overhangIn', '1');
    expect(draftProblems(filled)).toEqual([]);
    expect(filled.survey.rakes[0]?.runIn).toBe(144);
  });

  test('is built as the last one was, blank where that is blank', () => {
    const filled = enter(raked, 'design.rakes.0.overhangIn', '10');
    const two = addRake(withValueAt(filled, 'design.rakes.0.kind', 'ladder'), eaveId, 'right', []);
    expect(two.design.rakes[1]).toMatchObject({ rakeId: 'rake-2', kind: 'ladder', overhangIn: 10 });
    expect(two.drafts['design.rakes.1.overhangIn']).toBeUndefined();
    expect(addRake(raked, eaveId, 'right', []).drafts['design.rakes.1.overhangIn']).toBe('');
  });

  test('leaves an end as it is that meets another eave already', () => {
    const meeting = { kind: 'outside-corner', meets: 'east' };
    const cornered = withValueAt(eave, 'design.eaves.0.ends.left', meeting);
    expect(endsOf(addRake(cornered, eaveId, 'left', []))?.left).toEqual(meeting);
  });

  test('takes lumber that the shop buys', () => {
    const prices = [{ category: 'lumber', section: '2x4', grade: 'No.2', retired: false }];
    expect(addRake(eave, eaveId, 'left', prices as never).design.rakes[0]?.lookout).toEqual({
      section: '2x4',
      grade: 'No.2',
    });
  });
});

describe('a rake that goes', () => {
  test('takes its design, half-typed entries and decisions along, and frees the eave’s end', () => {
    const decided = withValueAt(raked, 'design.decisions', [
      { checkId: 'rake-overhang/rake-1', who: 'E', date: '2026-04-30', note: '', figure: '' },
    ]);
    const two = addRake(withDraft(decided, 'survey.rakes.0.deckPastIn', 'some'), eaveId, 'right', []);
    const left = removeRake(two, 0);
    expect(left.survey.rakes.map(({ id }) => id)).toEqual(['rake-2']);
    expect(left.design.rakes.map(({ rakeId }) => rakeId)).toEqual(['rake-2']);
    expect(left.design.decisions).toEqual([]);
    expect(Object.keys(left.drafts).toSorted()).toEqual([
      'design.rakes.0.overhangIn',
      'survey.rakes.0.runIn',
    ]);
    expect(endsOf(left)).toEqual({
      left: { kind: 'free', meets: '' },
      right: { kind: 'rake', meets: 'rake-2' },
    });
  });

  test('goes with its eave', () => {
    const gone = removeEave(addRake(raked, eaveId, 'right', []), 0);
    expect(gone.survey.rakes).toEqual([]);
    expect(gone.design.rakes).toEqual([]);
    expect(gone.drafts).toEqual({});
  });

  test('leaves the rakes of other eaves where they are', () => {
    const other = addEave(raked, []);
    const otherId = other.survey.eaves[1]?.id ?? '';
    const both = addRake(other, otherId, 'right', []);
    const gone = removeEave(both, 0);
    expect(gone.survey.rakes.map((rake) => rake.eaveId)).toEqual([otherId]);
    expect(Object.keys(gone.drafts).filter((path) => path.includes('rakes'))).toEqual([
      'survey.rakes.0.runIn',
      'design.rakes.0.overhangIn',
    ]);
  });
});

test('a rake moved to the other end is met there, and no more where it was', () => {
  const moved = moveRake(raked, 0, { eaveId, end: 'right' });
  expect(moved.survey.rakes[0]?.end).toBe('right');
  expect(endsOf(moved)).toEqual({
    left: { kind: 'free', meets: '' },
    right: { kind: 'rake', meets: 'rake-1' },
  });
  expect(moveRake(raked, 0, { eaveId, end: 'left' })).toBe(raked);
});

describe('a rake of a job file', () => {
  const loose = withValueAt(raked, 'survey.rakes.0.eaveId', 'barn');

  test('that rises from no eave stands with the house until it is given one', () => {
    expect(rakesOfEave(loose, null)).toHaveLength(1);
    expect(rakesOfEave(loose, eaveId)).toEqual([]);
    expect(whereIs('survey.rakes.0.eaveId', loose)).toEqual({ section: 'survey', eaveId: null });
    expect(rakesOfEave(moveRake(loose, 0, { eaveId, end: 'left' }), eaveId)).toHaveLength(1);
  });

  test('without a design is given one in Design', () => {
    const bare = withValueAt(raked, 'design.rakes', []);
    expect(whereIs('survey.rakes.0', bare)).toEqual({ section: 'design', eaveId });
    expect(addRakeDesign(bare, 'rake-1', []).design.rakes).toMatchObject([{ rakeId: 'rake-1' }]);
  });
});

test('entries of a rake are found and named, from a problem and from a walk back', () => {
  expect(whereIs('survey.rakes.0.runIn', raked)).toEqual({ section: 'survey', eaveId });
  expect(whereIs('design.rakes.0.overhangIn', raked)).toEqual({ section: 'design', eaveId });
  expect(placeOfField('survey.rakes.0.runIn', raked, [])).toEqual({
    name: 'Eave 1, left rake, wall to ridge, level',
    screen: 'Survey',
  });
  expect(placeOfField('design.rakes.0.sheathing.stripBackIn', raked, []).name).toBe(
    'Eave 1, left rake, old deck stripped back',
  );
  expect(placeOfRef('rake/rake-1/survey/runIn', raked)).toEqual({
    kind: 'entry',
    path: 'survey.rakes.0.runIn',
  });
  expect(placeOfRef('rake/rake-1/design/sheathing.itemId', raked)).toEqual({
    kind: 'entry',
    path: 'design.rakes.0.sheathing.itemId',
  });
  expect(placeOfRef('rake/rake-1/barge', raked)).toBeUndefined();
});
