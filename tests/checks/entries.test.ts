import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eaveDesignSchema } from '../../core/eave/design-document.ts';
import { decisionSchema, structureSchema } from '../../core/eave/structure.ts';
import { siteSchema } from '../../core/survey/site.ts';
import { eaveSurveySchema, surveySchema } from '../../core/survey/survey-document.ts';
import { sampleText, soundJob } from '../job/example-job.ts';

const page = readFileSync(new URL('../../fixtures/job-file.md', import.meta.url), 'utf8');

describe('the entries that checks read', () => {
  test('are all described on the page of the job file', () => {
    const names = [siteSchema, structureSchema, eaveSurveySchema, decisionSchema].flatMap(({ shape }) =>
      Object.keys(shape),
    );
    const untold = names.filter((name) => !page.includes(`\`${name}\``) && !page.includes(`"${name}"`));
    expect(untold).toEqual([]);
    expect(names.length).toBeGreaterThan(40);
  });

  test('take their defaults in a document of before, so that it still reads', () => {
    const raw: { survey: { site?: object }; design: { eaves: { structure?: object }[] } } = JSON.parse(
      sampleText(),
    );
    delete raw.survey.site;
    for (const eave of raw.design.eaves) delete eave.structure;
    const job = soundJob(JSON.stringify(raw));
    expect(job.survey.site).toMatchObject({ groundSnowPsf: null, thermalFactor: 1.1, icedEave: 'doubled' });
    expect(job.design.eaves[0]?.structure).toMatchObject({ species: null, grade: 'no-2', panelRating: null });
  });

  test('refuse what makes no sense', () => {
    expect(siteSchema.safeParse({ groundSnowPsf: -1 }).success).toBe(false);
    expect(siteSchema.safeParse({ windUpliftPsf: Number.POSITIVE_INFINITY }).success).toBe(false);
    expect(structureSchema.safeParse({ panelRating: '16/8' }).success).toBe(false);
    expect(decisionSchema.safeParse({ checkId: 'notch/a', who: '', date: '2026-05-04' }).success).toBe(false);
    expect(decisionSchema.safeParse({ checkId: 'notch/a', who: 'A', date: '2026-02-30' }).success).toBe(
      false,
    );
    expect(surveySchema.safeParse({ version: 1, eaves: [], site: { snow: 3 } }).success).toBe(false);
    expect(Object.keys(eaveDesignSchema.shape)).toContain('structure');
  });
});
