import { describe, expect, it } from 'vitest';
import { checkGroups, type CheckResult, type SourceMark } from '../../core/checks/check-types.ts';
import { runChecks } from '../../core/checks/run-checks.ts';
import { checkFootCaution } from '../../core/documents/cautions.ts';
import {
  limitText,
  markWords,
  ratioText,
  sourceText,
  verdictWords,
} from '../../core/documents/check-words.ts';
import { decisionText } from '../../core/documents/decision-words.ts';
import { titleOf } from '../../core/documents/grouped-checks.ts';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { Row } from '../../core/documents/sheet.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { resultsJson } from '../../core/job/results-json.ts';
import { renderPdf } from '../../electron/paper/render-pdf.ts';
import { readPdf } from '../paper/read-pdf.ts';
import { computed, sampleJob, tableUnder, wordsOf } from './sample.ts';

/** The sample job with everything that the checks ask for. The loads are invented for the scenario. */
function filledJob(): JobFile {
  const job = sampleJob();
  job.survey.site.groundSnowPsf = 40;
  job.survey.site.windUpliftPsf = 32;
  job.survey.site.iceBarrierRequired = true;
  job.survey.site.atticAreaSqFt = 820;
  for (const eave of job.survey.eaves) Object.assign(eave, { rafterSpanIn: 144, lotLineIn: 96 });
  for (const eave of job.design.eaves)
    Object.assign(eave.structure, { species: 'spruce-pine-fir', panelRating: '24/16' });
  return job;
}

const job = filledJob();
const result = computed(job);
const checks = runChecks(job, result);
const sheet = makeSheet('calculation', job, result);

function rowsOf(letter: string): readonly Row[] {
  return tableUnder(sheet, `Summary of eave ${letter}`).rows.filter((row) => row.style !== 'group');
}

function wordsOfJob(of: JobFile): string {
  return wordsOf(makeSheet('calculation', of, computed(of)));
}

/** The blocks of a check on the sheet, from its heading to the next. */
function blocksOf(number: string) {
  const start = sheet.blocks.findIndex(
    (block) => block.kind === 'heading' && block.text.startsWith(`${number}. `),
  );
  const length = sheet.blocks.slice(start + 1).findIndex((block) => block.kind === 'heading');
  return start < 0 ? [] : sheet.blocks.slice(start, length < 0 ? undefined : start + 1 + length);
}

/** Each check with its number on the sheet: by eave, by group, in the order of the registry. */
const numbered = result.eaves.flatMap(({ eaveId, letter }) => {
  const ofEave = checks.filter((check) => check.eaveId === eaveId);
  const order = rowsOf(letter).map((row) => row.cells[1]);
  return ofEave
    .toSorted((a, b) => order.indexOf(titleOf(a)) - order.indexOf(titleOf(b)))
    .map((check, index) => ({ check, number: `${letter}${index + 1}` }));
});

describe('the calculation sheet', () => {
  it('says in its summary every figure of every check, none twice and none left out', () => {
    const told = result.eaves.flatMap(({ letter }) =>
      rowsOf(letter).map((row) => row.cells.slice(1).join('|')),
    );
    const found = checks.map((check: CheckResult) =>
      [
        titleOf(check),
        check.where,
        check.value?.text ?? '–',
        limitText(check),
        check.ratio === null ? '–' : ratioText(check.ratio),
        verdictWords[check.verdict],
      ].join('|'),
    );
    expect(found.length).toBeGreaterThan(20);
    expect(told.toSorted()).toEqual(found.toSorted());
  });

  it('walks each check step by step, with formula, numbers and result as reckoned', () => {
    for (const { check, number } of numbered) {
      const table = blocksOf(number).find((block) => block.kind === 'table');
      const told =
        table?.kind === 'table'
          ? table.rows.filter((row) => row.style === undefined).map((row) => row.cells.slice(1))
          : [];
      expect([number, told]).toEqual([
        number,
        check.why.map((step) => [step.formula, step.withNumbers, step.result]),
      ]);
    }
  });

  it('names each source with its mark, each assumption and each remedy beside its figure', () => {
    for (const { check, number } of numbered) {
      const words = JSON.stringify(blocksOf(number));
      const wanted = [...check.source.map(sourceText), ...check.assumptions, check.remedy ?? ''];
      expect(wanted.filter((text) => !words.includes(JSON.stringify(text).slice(1, -1)))).toEqual([]);
    }
    const marks = new Set(checks.flatMap((check) => check.source.map((source) => source.mark)));
    expect(marks).toContain('from-memory' satisfies SourceMark);
    expect(wordsOf(sheet)).toContain(`(${markWords['from-memory']})`);
  });

  it('shows what was entered, and says of a blank that it was not entered', () => {
    expect(wordsOfJob(job)).toContain('"Ground snow","40 psf"');
    const blank = sampleJob();
    blank.survey.site.groundSnowPsf = null;
    expect(wordsOfJob(blank)).toContain('"Ground snow","not entered"');
  });

  it('never hides a figure behind a decision, and tells when the figure has moved since', () => {
    const [first] = checks;
    if (first === undefined) throw new Error('no check');
    const decided = filledJob();
    decided.design.decisions = [
      { checkId: first.id, who: 'R. Vantongeren, PE', date: '2026-05-04', note: 'May stay', figure: 'Old.' },
    ];
    const of = makeSheet('calculation', decided, computed(decided));
    const words = wordsOf(of);
    expect(words).toContain('Decided by R. Vantongeren, PE on 2026-05-04: May stay.');
    expect(words).toContain('The figure has changed since; it was then: Old. Ask again.');
    const summary = tableUnder(of, 'Summary of eave A');
    expect(summary.rows.map((row) => row.cells)).toEqual(
      tableUnder(sheet, 'Summary of eave A').rows.map((row) => row.cells),
    );
  });

  it('tells a decision on a check that is no longer made', () => {
    const decided = filledJob();
    decided.design.decisions = [
      { checkId: 'gone/south', who: 'City of Larkmere', date: '2026-05-04', note: '', figure: 'It was 3.' },
    ];
    expect(wordsOf(makeSheet('calculation', decided, computed(decided)))).toContain(
      'Decided by City of Larkmere on 2026-05-04. The check is no longer made; it said then: It was 3.',
    );
  });

  for (const paperSize of ['letter', 'a4'] as const) {
    it(`carries the caution on every page of ${paperSize}, and every figure of the checks`, async () => {
      const pages = readPdf((await renderPdf(sheet, paperSize)).pdf);
      expect(pages.length).toBeGreaterThan(3);
      for (const [index, page] of pages.entries()) {
        const caution = page.lines.filter((line) => line.includes(checkFootCaution));
        expect([index + 1, caution.length]).toEqual([index + 1, 1]);
      }
      const printed = pages.flatMap((page) => page.lines).join(' ');
      const figures = checks.flatMap((check) => [check.value?.text ?? '', check.limit?.text ?? '']);
      const squeezed = printed.replaceAll(/\s+/g, '');
      expect(figures.filter((text) => !squeezed.includes(text.replaceAll(/\s+/g, '')))).toEqual([]);
    });
  }
});

describe('the other papers', () => {
  it('say no verdict of a check: the quote and the takeoff promise nothing by it', () => {
    for (const kind of ['quote', 'takeoff', 'cut-list'] as const) {
      const words = wordsOf(makeSheet(kind, job, result));
      expect(Object.values(verdictWords).filter((verdict) => words.includes(verdict))).toEqual([]);
    }
  });
});

describe('the results as JSON', () => {
  it('list every check with value, limit, ratio, verdict, source and its mark, and who decided', () => {
    const decided = filledJob();
    const id = checks[0]?.id ?? '';
    decided.design.decisions = [
      { checkId: id, who: 'A. Quist, PE', date: '2026-05-04', note: '', figure: '' },
    ];
    const json = resultsJson(decided, result);
    expect(
      json.checks.map(({ id, value, limit, limitRatio, verdict, source }) => ({
        id,
        value,
        limit,
        ratio: limitRatio,
        verdict,
        source,
      })),
    ).toEqual(
      checks.map(({ id, value, limit, ratio, verdict, source }) => ({
        id,
        value,
        limit,
        ratio,
        verdict,
        source,
      })),
    );
    expect(json.checks[0]?.decisions).toEqual([{ who: 'A. Quist, PE', date: '2026-05-04', note: '' }]);
  });
});

describe('the words of a check', () => {
  it('write a ratio just above 1 so that it does not read as 1', () => {
    expect([0.834, 0.9999, 1, 1.004, 1.0004, 1.234, 12].map(ratioText)).toEqual([
      '0.83',
      '1.00',
      '1.00',
      '1.004',
      '1.0004',
      '1.23',
      '12.00',
    ]);
  });

  it('put the weakest mark of its sources beside the limit', () => {
    const [check] = checks;
    if (check === undefined) throw new Error('no check');
    const limit = { text: '5 psf', number: 5, unit: 'psf' };
    const marked = (...marks: readonly SourceMark[]) =>
      limitText({ ...check, limit, source: marks.map((mark) => ({ text: 'A table', mark })) });
    expect(marked('from-memory')).toBe('5 psf, from memory');
    expect(marked('published', 'from-memory', 'secondary')).toBe('5 psf, partly from memory');
    expect(marked('published', 'common-practice')).toBe('5 psf, partly common practice');
    expect(marked('published', 'entered')).toBe('5 psf');
    expect(limitText({ ...check, limit: null })).toBe('–');
  });

  it('are no approval in any verdict or mark', () => {
    const words = [...Object.values(verdictWords), ...Object.values(markWords), ...checkGroups].join(' ');
    expect(words).not.toMatch(/\bOK\b|approv|\bpass|\bsafe\b|adequate|complies/i);
  });

  it('leave a decision without note or figure as who and when', () => {
    const decision = { checkId: 'a/b', who: 'A. Quist', date: '2026-05-04', note: '', figure: '' };
    expect(decisionText(decision, null)).toBe('Decided by A. Quist on 2026-05-04.');
  });
});
