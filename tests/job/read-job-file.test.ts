import { describe, expect, test } from 'vitest';
import { entryName } from '../../core/job/entry-name.ts';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { exampleText, sampleText, soundJob, soundResult } from './example-job.ts';

const told = (text: string) => {
  const read = readJobFile(text);
  return read.ok ? [] : read.problem.map((problem) => [problem.field ?? '', problemSentence(problem)]);
};
/** The example with one entry changed, by dotted path. */
const withEntry = (path: string, value: unknown): string => {
  const raw: unknown = JSON.parse(exampleText());
  const names = path.split('.');
  let at = raw as Record<string, unknown>;
  for (const name of names.slice(0, -1)) at = at[name] as Record<string, unknown>;
  at[names.at(-1) ?? ''] = value;
  return JSON.stringify(raw);
};

describe('a job file', () => {
  test('as the page describes it reads and computes, with nothing lacking', () => {
    const job = soundJob(exampleText());
    expect(job.survey.eaves[0]).toMatchObject({ lengthIn: 80, plateWidthIn: 3.5, readingMode: 'running' });
    expect(job.survey.eaves[0]?.rafters[3]?.readingIn).toBe(79.25);
    const { estimate, takeoff } = soundResult(job);
    expect(estimate.lacks).toEqual([]);
    expect(takeoff.pieces.filter(({ use }) => use === 'extender')).toHaveLength(4);
    expect(estimate.validUntil).toBe('2026-05-10');
  });

  test('of the fixtures reads, and reads again as it was written', () => {
    const job = soundJob(sampleText());
    expect(soundJob(JSON.stringify(job))).toEqual(job);
  });

  test('may begin with a byte order mark', () => {
    expect(readJobFile(`\uFEFF${exampleText()}`).ok).toBe(true);
  });

  test('that is no JSON, no object, another file or a newer version is refused in a sentence', () => {
    expect(told('{"format":')[0]?.[1]).toMatch(/^The file is not a job file: it is not JSON, at line 1\./);
    expect(told('[1]')[0]?.[1]).toMatch(/^The file is not a job file: /);
    expect(told('{"format":"other"}')).toEqual([
      ['format', 'The file is not a job file: its "format" is not "eavewright-job". Choose another file.'],
    ]);
    expect(told(withEntry('version', 2))[0]?.[0]).toBe('version');
  });

  test.each([
    ['survey.eaves.0.rafters.1.readingIn', '5-6', /can be read two ways/],
    [
      'survey.eaves.0.rafters.1.readingIn',
      null,
      /^Survey, eave 1, rafter 2, reading: Enter a number, or text/,
    ],
    ['survey.eaves.0.rafters.1.readingIn', undefined, /^Survey, eave 1, rafter 2, reading: It is missing\./],
    ['survey.eaves.0.rafters.1.joist', 'top', /rafter 2, joist: Choose one of: none, left, right, both\.$/],
    ['survey.eaves.0.pitchRisePer12', '0/12', /cannot be built here/],
    ['survey.eaves.0.pitchRisePer12', '25/12', /cannot be built here/],
    ['survey.eaves.0.lengthIn', '2 miles', /is not a length/],
    ['survey.eaves.0.lengthIn', 5, /out of range/],
    ['survey.eaves', 'none', /^Survey, eaves: Enter a list\.$/],
    ['asOf', '2026-02-30', /^As of: Write a day of the calendar/],
    ['design.eaves.0.overhangIn', '-3', /below zero/],
    [
      'design.eaves.0.extender',
      undefined,
      /^Design, eave 1, extender: It is missing\. Enter a group of entries\.$/,
    ],
    ['design.eaves.0.dripEdge', 'yes', /Enter true or false\.$/],
    ['design.extraCosts.0.unitCostUsd', 'lots', /is not a number/],
    ['settings.labour.crewSize', 0, /crew size: Enter 1 or more\.$/],
    ['settings.labour.crewSize', 99, /crew size: Enter 20 or less\.$/],
    ['priceList.0.id', '', /^Price item 1, id: Enter at least one character\.$/],
    ['priceList.0.description', 'x'.repeat(200), /Shorten it to 120 characters\.$/],
    ['priceList.0.prices.0.observedOn', 'today', /^Price item 1, price 1, observed on: Write a day/],
  ])('with %s = %j is told at that entry', (path, value, sentence) => {
    const problems = told(withEntry(path, value));
    expect(problems.map(([field]) => field)).toEqual([path]);
    expect(problems[0]?.[1]).toMatch(sentence);
  });

  test('with a misspelt entry is refused by its name, so that nothing is lost in silence', () => {
    expect(told(withEntry('design.eaves.0.overhang', 16))).toEqual([
      ['design.eaves.0', 'Design, eave 1: Not known here: overhang. Check the spelling, or take it out.'],
    ]);
  });

  test('with several wrong entries tells them all', () => {
    const raw = withEntry('survey.eaves.0.lengthIn', 'long');
    const twice = raw.replace('"2026-04-30"', '"soon"');
    expect(told(twice).map(([field]) => field)).toEqual(['asOf', 'survey.eaves.0.lengthIn']);
  });

  test('names entries in words', () => {
    expect(entryName('survey.eaves.0.rafters.3.heightAbovePlateIn')).toBe(
      'Survey, eave 1, rafter 4, height above plate',
    );
    expect(entryName('')).toBe('The job file');
  });
});
