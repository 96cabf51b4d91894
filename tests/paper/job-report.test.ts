import { beforeAll, describe, expect, test } from 'vitest';
import { jobReportSheet } from '../../core/documents/job-report-sheet.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { sampleJob } from '../documents/sample.ts';
import { finishedJob } from '../jobcost/learning/finished.ts';
import { readPdf, type ReadPage } from './read-pdf.ts';

const phase = (
  name: string,
  budgetUsd: string,
  actualUsd: string,
  budgetHours: string,
  actualHours: string,
) => ({
  phase: name,
  budgetUsd,
  actualUsd,
  budgetHours,
  actualHours,
});

describe('the report of a finished job', () => {
  const { job, settings } = sampleJob();
  const { closeOut } = finishedJob('a', {
    contractUsd: '14800',
    changesUsd: '330',
    budgetUsd: '10000',
    contingencyUsd: '800',
    overheadUsd: '1800',
    actualUsd: '10400',
    phases: [phase('Framing', '6000', '6500', '60', '66.5'), phase('Soffit', '4000', '3900', '40', '38.25')],
    people: [{ person: 'Rowan Thornbury', hours: '40', costUsd: '1836' }],
  });
  const words = {
    ...closeOut.words,
    owner: 'Rowan Thornbury',
    reasons: { Framing: 'hidden' as const },
    surprise: 'The plate was gone under the valley.',
    willChange: 'Open two bays before the quote.',
  };
  let pages: readonly ReadPage[] = [];
  const said = (): string => pages.flatMap(({ lines }) => lines).join(' ');

  beforeAll(async () => {
    const sheet = jobReportSheet({
      settings,
      job,
      finishedOn: '2026-05-17',
      closeOut: { ...closeOut, words },
    });
    const { pdf } = await renderPdf(sheet, 'letter');
    pages = readPdf(pdf);
  });

  test('is one page', () => {
    expect(pages).toHaveLength(1);
  });

  test('says what was reckoned, what it took, why, what it earned and what will change, as the record has it', () => {
    for (const figure of [
      '$14,800.00',
      '$4,800.00, 32.4 % of the contract',
      '$4,400.00, 29.7 % of the contract',
      '40, Rowan Thornbury',
      '$155.90; $110.90 after overhead',
      '$6,000.00',
      '$6,500.00',
      '+$500.00 (+8.3 %)',
      '-$100.00 (-2.5 %)',
      '66.5',
      '104.75',
      '$10,400.00',
      '+$400.00 (+4 %)',
      'Hidden damage',
      'The plate was gone under the valley.',
      'Open two bays before the quote.',
    ])
      expect(said()).toContain(figure);
  });
});
