import { describe, expect, test } from 'vitest';
import { siteSchema } from '../../core/survey/site.ts';
import { eaveSurveySchema } from '../../core/survey/survey-document.ts';
import { structureSchema } from '../../core/eave/structure.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { checkEntryName } from '../../core/trace/entry-labels.ts';
import { choiceWord, choiceWords } from '../../core/trace/choice-words.ts';
import { addEave, removeEave } from '../../renderer/job/editor/eave-list.ts';
import { appendTo } from '../../renderer/job/editor/list-edits.ts';
import { readEntry } from '../../renderer/job/editor/read-entry.ts';
import { whereIs } from '../../renderer/job/parts/use-go-to.ts';
import { oneEave } from './fixture.ts';

describe('an entry that the checks ask for', () => {
  test.each([
    ['survey.site.groundSnowPsf', '32.5', 32.5],
    ['survey.site.groundSnowPsf', '', null],
    ['survey.site.atticAreaSqFt', '820', 820],
    ['survey.eaves.0.lotLineIn', `8' 2"`, 98],
    ['design.eaves.0.structure.nailEdgeDistanceIn', '1-1/4', 1.25],
    ['design.eaves.0.structure.soffitVentSqInPerFt', '', null],
  ])('at %s typed as %j is read by the rule of the job document', (path, text, value) => {
    expect(readEntry(path, text)).toEqual({ ok: true, value });
  });

  test.each([
    ['survey.site.groundSnowPsf', '-3', 'Enter 0 to 400'],
    ['survey.site.groundSnowPsf', 'much', 'is not a number'],
    ['survey.site.roofingLayers', '1.5', 'whole number'],
    ['design.eaves.0.structure.plateTieUpliftLb', '', 'Enter a number'],
  ])('at %s typed as %j is answered by a sentence that says what to do', (path, text, sentence) => {
    const read = readEntry(path, text);
    expect(read.ok ? 'read' : problemSentence(read.problem)).toContain(sentence);
  });

  test('has a name on screen and paper, and words for each of its choices', () => {
    const asked = [
      ...Object.keys(siteSchema.shape),
      ...Object.keys(structureSchema.shape),
      ...Object.keys(eaveSurveySchema.shape).slice(
        Object.keys(eaveSurveySchema.shape).indexOf('rafterSpanIn'),
      ),
    ];
    expect(asked.length).toBeGreaterThan(25);
    expect(asked.filter((name) => checkEntryName(name) === undefined)).toEqual([]);
    const { shape } = siteSchema;
    for (const value of shape.roofing.def.innerType.options)
      expect(choiceWord('roofing', value)).toBeTypeOf('string');
    for (const value of structureSchema.shape.grade.def.innerType.options)
      expect(choiceWord('grade', value)).toBeTypeOf('string');
    expect(Object.keys(choiceWords.icedEave).toSorted()).toEqual(
      [...shape.icedEave.def.innerType.options].toSorted(),
    );
    expect(choiceWord('constructor', 'x')).toBeUndefined();
  });

  test('is found where it is typed', () => {
    const documents = oneEave(['16', '32']);
    const eaveId = documents.survey.eaves[0]?.id;
    expect(whereIs('survey.site.groundSnowPsf', documents)).toEqual({ section: 'survey', eaveId: null });
    expect(whereIs('survey.eaves.0.lotLineIn', documents)).toEqual({ section: 'survey', eaveId });
    expect(whereIs('design.eaves.0.structure.species', documents)).toEqual({ section: 'design', eaveId });
    expect(whereIs('design.notchRule', documents)).toEqual({ section: 'checks', eaveId: null });
  });
});

describe('a recorded decision', () => {
  test('goes with its eave, so that another eave of the same id does not inherit it', () => {
    const decision = { checkId: '', who: 'A. Quist', date: '2026-05-04', note: '', figure: '' };
    const two = addEave(oneEave(['16', '32']), []);
    const [first, second] = two.survey.eaves.map(({ id }) => id);
    const decided = [first, second].reduce(
      (so_far, id) => appendTo(so_far, 'design.decisions', { ...decision, checkId: `bending/${id}` }),
      two,
    );
    const without = removeEave(decided, 1);
    expect(without.design.decisions.map(({ checkId }) => checkId)).toEqual([`bending/${first}`]);
    expect(addEave(without, []).survey.eaves.at(-1)?.id).toBe(second);
  });
});
