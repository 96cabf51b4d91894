import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { resultsJson } from '../../core/job/results-json.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { exampleText, sampleText, soundJob, soundResult } from '../job/example-job.ts';
import { prices, rakeJob, type RakeJob } from './rake-job.ts';

function problemOf(change: RakeJob) {
  const result = computeJob(rakeJob(change));
  if (result.ok) throw new Error('the job computes');
  return result.problem;
}
const notesOf = (change: RakeJob) => soundResult(rakeJob(change)).estimate.notes.map(problemSentence);

const second = { id: 'other', name: 'Other rake', eaveId: 'wall-1', end: 'right', runIn: 144 };
const first = { id: 'gable', name: 'West rake', eaveId: 'wall-1', end: 'left', runIn: 144 };

describe('a job with a rake', () => {
  test("runs the eave's fascia out past the wall to the rake's corner, both sides of the mitre alike", () => {
    const { eaves, rakes } = soundResult(rakeJob());
    const corner = rakes[0]!.corner;
    const [eave] = eaves;
    // The eave's own layout puts its fascia's left end there by itself: face and back of the mitre, left of station 0.
    expect(eave!.fasciaRun.left).toEqual({
      kind: 'mitre',
      faceIn: -corner.eaveLongOutIn,
      backIn: -corner.eaveShortOutIn,
    });
    expect(eave!.fascia[0]!.leftEnd).toBe('mitre');
  });

  test('tells no loose end where the eave meets the rake', () => {
    expect(notesOf({}).join(' ')).not.toMatch(/rake/i);
    expect(soundResult(rakeJob()).findings.filter(({ topic }) => topic === 'rake').length).toBeGreaterThan(0);
  });

  test('is the same by name, letter and mark however often it is computed', () => {
    expect(soundResult(rakeJob())).toEqual(soundResult(rakeJob()));
  });
});

describe('what stops a job', () => {
  test('two rakes at one end of an eave', () => {
    const problem = problemOf({ survey: { rakes: [first, { ...second, end: 'left' }] } });
    expect(problem.field).toBe('survey.rakes.1.end');
    expect(problemSentence(problem)).toMatch(/West rake rises from the left end of Wall 1 already/);
  });

  test('two rakes, or two designs of a rake, under one id', () => {
    expect(problemOf({ survey: { rakes: [first, { ...second, id: 'gable' }] } })).toMatchObject({
      code: 'duplicate-id',
      field: 'survey.rakes.1.id',
    });
    const design = {
      rakeId: 'gable',
      overhangIn: 12,
      lookout: { section: '2x4' },
      barge: { section: '2x6' },
    };
    expect(problemOf({ design: { rakes: [design, design] } })).toMatchObject({
      code: 'duplicate-id',
      field: 'design.rakes.1.rakeId',
    });
  });

  test.each([
    ['lookout', { lookout: { section: '3x5' } }, 'design.rakes.0.lookout.section'],
    ['barge rafter', { barge: { section: '9x9' } }, 'design.rakes.0.barge.section'],
    ['rake fascia', { fascia: { stock: { section: '1x7' } } }, 'design.rakes.0.fascia.stock.section'],
  ])('lumber that is not known: the %s', (_, rakeDesign, field) => {
    expect(problemOf({ rakeDesign })).toMatchObject({ code: 'unknown-section', field });
  });

  test('an overhang that the barge rafter takes whole', () => {
    expect(problemOf({ rakeDesign: { overhangIn: 1.5 } }).field).toBe('design.rakes.0.overhangIn');
  });
});

describe('what does not stop a job and is told as a note', () => {
  test('a rake on an eave that is not surveyed', () => {
    expect(notesOf({ rake: { eaveId: 'barn' } }).join(' ')).toMatch(/no eave "barn" is surveyed/);
    expect(soundResult(rakeJob({ rake: { eaveId: 'barn' } })).rakes).toEqual([]);
  });

  test('a rake without a design, and a design without its rake', () => {
    expect(notesOf({ design: { rakes: [] } }).join(' ')).toMatch(/measured and has no design/);
    expect(notesOf({ survey: { rakes: [] }, eaveDesign: { ends: {} } }).join(' ')).toMatch(
      /Design of "gable".*no rake of this id is surveyed/,
    );
  });

  test('lumber that is not known stops nothing where nothing is built', () => {
    const none = { rakeDesign: { kind: 'none', barge: { section: '9x9' } } };
    expect(soundResult(rakeJob(none)).rakes).toEqual([]);
  });
});

describe('a job file with a rake', () => {
  test('of the samples reads and computes, with the rake in the results', () => {
    const job = soundJob(sampleText());
    const result = soundResult(job);
    const json = resultsJson(job, result);
    expect(json.rakes).toHaveLength(1);
    expect(json.rakes[0]).toMatchObject({ rakeId: 'west', mark: 'R1', end: 'left', kind: 'lookouts' });
    expect(json.pieces.filter(({ rakeId }) => rakeId === 'west')).toHaveLength(
      result.takeoff.pieces.filter(({ rakeId }) => rakeId === 'west').length,
    );
    expect(json.takeoff.nails.some(({ rakeId }) => rakeId === 'west')).toBe(true);
    expect(json.checks.filter(({ rakeId }) => rakeId === 'west').map(({ check }) => check)).toEqual([
      'rake-backspan',
      'rake-overhang',
      'rake-notch-tail',
      'rake-notch-rafter',
    ]);
  });

  test('takes the spaces off names and ids, so that both ends still meet', () => {
    const file = JSON.parse(sampleText()) as {
      survey: { rakes: Record<string, unknown>[] };
      design: { rakes: Record<string, unknown>[] };
    };
    Object.assign(file.survey.rakes[0]!, { id: ' west ', name: '  West gable ', eaveId: 'south ' });
    Object.assign(file.design.rakes[0]!, { rakeId: 'west ' });
    const job = soundJob(JSON.stringify(file));
    expect(job.survey.rakes[0]).toMatchObject({ id: 'west', name: 'West gable', eaveId: 'south' });
    expect(soundResult(job).rakes).toHaveLength(1);
  });

  test('names a blank name and an entry that does not read, by their places', () => {
    const file = JSON.parse(sampleText()) as { survey: { rakes: Record<string, unknown>[] } };
    Object.assign(file.survey.rakes[0]!, { name: ' ' });
    const blank = readJobFile(JSON.stringify(file));
    expect(blank).toMatchObject({ ok: false, problem: [{ field: 'survey.rakes.0.name' }] });
    Object.assign(file.survey.rakes[0]!, { name: 'West', runIn: '12 feet and a bit' });
    const unread = readJobFile(JSON.stringify(file));
    expect(unread).toMatchObject({ ok: false, problem: [{ field: 'survey.rakes.0.runIn' }] });
  });

  test('from before there were rakes reads as one without', () => {
    expect(soundJob(exampleText()).survey.rakes).toEqual([]);
    expect(soundResult(soundJob(exampleText())).rakes).toEqual([]);
  });
});

test('the results tell the nails of a rake as its lines count them', () => {
  const job = rakeJob({ priceList: prices });
  const result = soundResult(job);
  const told = resultsJson(job, result)
    .takeoff.nails.filter(({ rakeId, nail }) => rakeId === 'gable' && nail === '16d common')
    .reduce((sum, { countNails }) => sum + countNails, 0);
  const line = result.takeoff.lines.find(({ id }) => id === 'nails-16d-common');
  expect(line!.where).toMatch(new RegExp(`Rake R1: ${told}$`));
});
