import { assert, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { surveySchema } from '../../core/survey/survey-document.ts';
import { designSchema } from '../../core/eave/design-document.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { valueAt, withMovedDrafts, withValueAt } from '../../renderer/job/editor/documents.ts';
import { addEave, moveEave, removeEave } from '../../renderer/job/editor/eave-list.ts';
import { draftProblems, enter } from '../../renderer/job/editor/enter.ts';
import {
  addReadings,
  enterNextReading,
  insertRafter,
  removeRafter,
} from '../../renderer/job/editor/rafter-list.ts';
import { readEntry } from '../../renderer/job/editor/read-entry.ts';
import { pinTail } from '../../renderer/job/editor/tail-edits.ts';
import { emptyDocuments, oneEave } from './fixture.ts';

describe('an entry', () => {
  test('reads a length by the rule of the job document', () => {
    expect(readEntry('survey.eaves.0.rafters.3.readingIn', `5' 6-1/2"`)).toEqual({ ok: true, value: 66.5 });
    expect(readEntry('survey.eaves.0.pitchRisePer12', '50 %')).toEqual({ ok: true, value: 6 });
    expect(readEntry('design.eaves.1.backspanRatio', '2.5')).toEqual({ ok: true, value: 2.5 });
    expect(readEntry('survey.yearBuilt', '1926')).toEqual({ ok: true, value: 1926 });
    expect(readEntry('estimateOn', '2026-04-30')).toEqual({ ok: true, value: '2026-04-30' });
  });

  test('left blank means that the eave’s own value holds, where it may be blank', () => {
    expect(readEntry('survey.eaves.0.rafters.3.thicknessIn', ' ')).toEqual({ ok: true, value: null });
    const blank = readEntry('survey.eaves.0.lengthIn', '');
    expect(blank.ok ? '' : problemSentence(blank.problem)).toBe('Enter a length, like 5\' 6-1/2" or 66-1/2.');
  });

  test.each([
    ['survey.eaves.0.lengthIn', 'about ten', 'is not a length'],
    ['survey.eaves.0.lengthIn', '3"', 'Enter 1\' 0" to'],
    ['survey.eaves.0.pitchRisePer12', '0', 'Enter more than 0'],
    ['survey.eaves.0.pitchRisePer12', '25/12', 'at most 24/12'],
    ['design.eaves.0.backspanRatio', 'two', 'is not a number'],
    ['design.eaves.0.backspanRatio', '99', 'Enter 0.5 to 10'],
    ['survey.yearBuilt', '1926.5', 'whole number'],
    ['survey.eaves.0.name', '', 'Write something'],
    ['survey.eaves.0.name', '   ', 'Write something'],
    ['info.name', ' ', 'Write something'],
    ['design.extraCosts.0.unitCostUsd', '12,x', 'is not a number'],
    ['estimateOn', '30 April', '2026-04-30'],
  ])('at %s typed as %j is answered by a sentence that says what to do', (path, text, sentence) => {
    const read = readEntry(path, text);
    expect(read.ok ? 'read' : problemSentence(read.problem)).toContain(sentence);
    expect(read.ok ? '' : read.problem.field).toBe(path);
  });

  test('that does not read stays as typed, and the last good value stays beside it', () => {
    const good = oneEave(['16', '32']);
    const typed = enter(good, 'survey.eaves.0.rafters.1.readingIn', "2' 8 and a bit");
    expect(valueAt(typed, 'survey.eaves.0.rafters.1.readingIn')).toBe(32);
    expect(typed.drafts).toEqual({ 'survey.eaves.0.rafters.1.readingIn': "2' 8 and a bit" });
    expect(draftProblems(typed).map((problem) => problem.field)).toEqual([
      'survey.eaves.0.rafters.1.readingIn',
    ]);
    const mended = enter(typed, 'survey.eaves.0.rafters.1.readingIn', `2' 8"`);
    expect(mended.drafts).toEqual({});
  });

  test('typed to the value that it had changes nothing', () => {
    const good = oneEave(['16']);
    expect(enter(good, 'survey.eaves.0.rafters.0.readingIn', `1' 4"`)).toBe(good);
  });

  test('gives back every sixteenth that a tape shows', () => {
    assert(
      property(integer({ min: 0, max: 160000 }), (sixteenths) => {
        expect(readEntry('survey.eaves.0.rafters.0.readingIn', formatLength(sixteenths / 16))).toEqual({
          ok: true,
          value: sixteenths / 16,
        });
      }),
    );
  });
});

describe('an added eave', () => {
  test('leaves blank what only a tape can tell, and says so at each entry', () => {
    const documents = addEave(emptyDocuments(), []);
    expect(draftProblems(documents).map((problem) => problem.field)).toEqual([
      'survey.eaves.0.heightAbovePlateIn',
      'survey.eaves.0.lengthIn',
      'survey.eaves.0.pitchRisePer12',
      'design.eaves.0.overhangIn',
    ]);
    expect(surveySchema.safeParse(documents.survey).success).toBe(true);
    expect(designSchema.safeParse(documents.design).success).toBe(true);
  });

  test('takes over the design of the eave before it, without that eave’s pins', () => {
    const pinned = pinTail(oneEave(['16', '32']), 0, 'r1', { side: 'left' });
    const two = addEave(pinned, []);
    expect(two.design.eaves[1]).toEqual({ ...two.design.eaves[0], eaveId: 'eave-2', pins: [] });
  });

  test('leaves the overhang blank where the eave before it has none yet, and takes over what is half typed', () => {
    const two = addEave(addEave(emptyDocuments(), []), []);
    expect(two.drafts['design.eaves.1.overhangIn']).toBe('');
    const half = addEave(enter(oneEave(['16']), 'design.eaves.0.overhangIn', '16 or so'), []);
    expect(half.drafts['design.eaves.1.overhangIn']).toBe('16 or so');
    expect(addEave(oneEave(['16']), []).drafts['design.eaves.1.overhangIn']).toBe(undefined);
  });

  test('can be removed again with what was half typed in it, and the others keep theirs', () => {
    const two = enter(addEave(oneEave(['16']), []), 'survey.eaves.1.lengthIn', 'ten');
    const half = enter(two, 'survey.eaves.0.rafters.0.readingIn', 'oops');
    const first = removeEave(half, 0);
    expect(first.drafts['survey.eaves.0.lengthIn']).toBe('ten');
    expect(Object.keys(first.drafts).filter((path) => path.includes('rafters'))).toEqual([]);
    expect(first.design.eaves.map((design) => design.eaveId)).toEqual(['eave-2']);
  });

  test('moved up takes its half-typed entries along', () => {
    const two = enter(addEave(oneEave(['16']), []), 'survey.eaves.1.lengthIn', 'ten');
    const moved = moveEave(two, 1, -1);
    expect(moved.survey.eaves.map((eave) => eave.id)).toEqual(['eave-2', 'eave-1']);
    expect(moved.drafts['survey.eaves.0.lengthIn']).toBe('ten');
  });
});

describe('the rafter rows', () => {
  test('grow by typing in the empty row under the last one', () => {
    const documents = oneEave(['15-1/2', "2' 8"]);
    expect(documents.survey.eaves[0]?.rafters.map((rafter) => [rafter.id, rafter.readingIn])).toEqual([
      ['r1', 15.5],
      ['r2', 32],
    ]);
    const half = enterNextReading(documents, 0, "4'-");
    expect(half.survey.eaves[0]?.rafters).toHaveLength(2);
    expect(half.drafts['survey.eaves.0.rafters.2.readingIn']).toBe("4'-");
    expect(enterNextReading(half, 0, '').drafts).toEqual({});
  });

  test('keep their half-typed entries when a row is put in or taken out above them', () => {
    const half = enter(oneEave(['16', '32', '48']), 'survey.eaves.0.rafters.2.note', 'x'.repeat(3000));
    const inserted = insertRafter(half, 0, 1);
    expect(inserted.drafts['survey.eaves.0.rafters.3.note']).toHaveLength(3000);
    expect(inserted.drafts['survey.eaves.0.rafters.1.readingIn']).toBe('');
    expect(inserted.survey.eaves[0]?.rafters.map((rafter) => rafter.id)).toEqual(['r1', 'r4', 'r2', 'r3']);
    const back = removeRafter(inserted, 0, 1);
    expect(back.drafts).toEqual(half.drafts);
    expect(back.survey).toEqual(half.survey);
  });

  test('take the pin of a removed rafter with them', () => {
    const pinned = pinTail(oneEave(['16', '32']), 0, 'r2', { side: 'none' });
    expect(removeRafter(pinned, 0, 1).design.eaves[0]?.pins).toEqual([]);
  });

  test('take a pasted column of readings, and keep the one that does not read for mending', () => {
    const pasted = addReadings(oneEave(['16']), 0, ['32', 'four feet', '64']);
    expect(pasted.survey.eaves[0]?.rafters).toHaveLength(4);
    expect(pasted.drafts).toEqual({ 'survey.eaves.0.rafters.2.readingIn': 'four feet' });
  });
});

describe('documents', () => {
  test('are copied only on the way to a changed entry', () => {
    const before = oneEave(['16', '32']);
    const after = withValueAt(before, 'survey.eaves.0.rafters.1.note', 'split');
    expect(after.survey.eaves[0]?.rafters[0]).toBe(before.survey.eaves[0]?.rafters[0]);
    expect(after.design).toBe(before.design);
    expect(before.survey.eaves[0]?.rafters[1]?.note).toBe('');
  });

  test('keep the drafts of other lists in place when one list moves', () => {
    const documents = { ...emptyDocuments(), drafts: { 'a.0.b': '1', 'a.1.b': '2', 'c.0.b': '3' } };
    expect(withMovedDrafts(documents, 'a', (index) => (index === 0 ? null : index - 1)).drafts).toEqual({
      'a.0.b': '2',
      'c.0.b': '3',
    });
  });
});
