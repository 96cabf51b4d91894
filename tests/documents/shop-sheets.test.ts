import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { fileName } from '../../core/documents/sheet-head.ts';
import { sheetKinds } from '../../core/documents/sheet.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { formatUsd } from '../../core/units/money.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { cell, centsOf, computed, sampleJob, tables, tableUnder, wordsOf } from './sample.ts';

const job = sampleJob();
const result = computed(job);
const takeoff = makeSheet('takeoff', job, result);
const cutList = makeSheet('cut-list', job, result);

function hundredths(text: string): number {
  return Math.round(Number(text) * 100);
}

/** The cautions on the quote of a house of a year. */
function cautionsFor(year: number | null): string {
  const changed = sampleJob();
  changed.survey.yearBuilt = year;
  const { blocks } = makeSheet('quote', changed, computed(changed));
  return JSON.stringify(blocks.filter((block) => block.kind === 'caution'));
}

describe('the takeoff', () => {
  it("adds up by hand: materials to buy make the estimate's materials to the cent", () => {
    const { rows } = tableUnder(takeoff, 'Materials to buy');
    const sum = rows.slice(0, -1).reduce((cents, row) => cents + centsOf(cell(row, 5)), 0);
    const materials = result.estimate.totals.find((total) => total.key === 'materials');
    expect(sum).toBe(centsOf(cell(rows.at(-1), 5)));
    expect(cell(rows.at(-1), 5)).toBe(formatUsd(materials?.amountUsd ?? ('' as never)));
  });

  it('shows each buying line as quantity times price, rounded to the cent', () => {
    const { rows } = tableUnder(takeoff, 'Materials to buy');
    for (const row of rows.slice(0, -1)) {
      const cents = Number(cell(row, 2)) * centsOf(cell(row, 4));
      expect(Math.abs(cents - centsOf(cell(row, 5)))).toBeLessThanOrEqual(0.5);
    }
  });

  it('adds up by hand: tasks make the sums of their phases, and those make all hours', () => {
    const { rows } = tableUnder(takeoff, 'Hours');
    const sums: (readonly [stated: number, byHand: number])[] = [];
    let running = 0;
    for (const row of rows.slice(0, -1)) {
      if (row.style === 'subtotal') {
        sums.push([hundredths(cell(row, 2)), running]);
        running = 0;
      } else running += row.style === 'group' ? 0 : hundredths(cell(row, 2));
    }
    expect(sums.length).toBeGreaterThan(3);
    expect(sums.map(([stated]) => stated)).toEqual(sums.map(([, byHand]) => byHand));
    const all = sums.reduce((sum, [stated]) => sum + stated, 0);
    expect(hundredths(cell(rows.at(-1), 2))).toBe(all);
    expect(all).toBe(hundredths(result.takeoff.labourHours));
  });

  it("marks hours at a placeholder rate, so that they pass for nobody's own", () => {
    const changed = sampleJob();
    changed.settings.labour.rates = [{ task: 'fascia', hoursPerUnit: 0.1, mark: 'own' }];
    const { rows } = tableUnder(makeSheet('takeoff', changed, computed(changed)), 'Hours');
    const marks = new Map(rows.map((row) => [cell(row, 0).split(',')[0], cell(row, 3)]));
    expect(marks.get('Set fascia')).toBe('own');
    expect(marks.get('Cut extenders')).toBe('placeholder');
  });

  it('names every line of the takeoff once', () => {
    const named = tables(takeoff).flatMap((table) => table.rows.map((row) => cell(row, 0)));
    for (const line of result.takeoff.lines) {
      expect(named.filter((name) => name === line.description)).toHaveLength(1);
    }
  });

  it('schedules every extender with its rafter, station, side and blank', () => {
    for (const eave of result.eaves) {
      const stock = job.design.eaves.find((design) => design.eaveId === eave.eaveId)?.extender.section;
      const { rows } = tableUnder(takeoff, `Extenders of ${eave.name}, ${stock}`);
      expect(rows.map((row) => row.cells.slice(0, 3))).toEqual(
        eave.extenders.map((extender) => [
          extender.mark,
          extender.method === 'block-hung'
            ? `${extender.rafterNumber}-${extender.rafterNumber + 1}`
            : String(extender.rafterNumber),
          formatLength(extender.centreIn),
        ]),
      );
      expect(rows.map((row) => cell(row, 4))).toEqual(
        eave.extenders.map((extender) => formatLength(inchesOf(extender.blankSixteenths))),
      );
    }
  });

  it('repeats what is to be looked at before work begins', () => {
    for (const finding of result.findings)
      expect(wordsOf(takeoff)).toContain(JSON.stringify(finding.text).slice(1, -1));
  });

  it('names every mark of every piece of an eave in one of its schedules', () => {
    const named = new Set(tables(takeoff).flatMap((table) => table.rows.map((row) => cell(row, 0))));
    for (const { mark, use, rakeId } of result.takeoff.pieces) {
      // Fillers stand under their own mark, whatever they are built of; pieces of rakes on the crew's sheets; what carries
      // a soffit is drawn together where it is alike.
      if (rakeId !== undefined || use === 'soffit-nailer' || use === 'ledger') continue;
      expect(named).toContain(use === 'filler' ? mark.replace(/[a-z]$/, '') : mark);
    }
  });

  it('draws what carries a soffit together, and loses no piece of it', () => {
    const listed = tables(takeoff)
      .filter((table) => table.columns[0]?.title === 'Marks')
      .flatMap((table) => table.rows.map((row) => Number(cell(row, 1))));
    const needed = result.takeoff.pieces.filter(({ use }) => use === 'soffit-nailer' || use === 'ledger');
    expect(listed.reduce((sum, count) => sum + count, 0)).toBe(needed.length);
    expect(needed.length).toBeGreaterThan(30);
  });

  it('says what is in place, and counts it no more', () => {
    const changed = sampleJob();
    changed.design.asBuilt = [
      { eaveId: 'south', extenderId: 's1', inPlace: true, stationIn: null, note: '' },
    ];
    const begun = computed(changed);
    const sheet = makeSheet('takeoff', changed, begun);
    expect(wordsOf(sheet)).toMatch(/In place already.*1 of \d+ tails are in place.*In place: A-E01\./);
    const line = begun.takeoff.lines.find(({ id }) => id.startsWith('extenders-2x6'));
    expect(line?.description).toContain('1 piece in place');
    const cut = begun.cutPlans.flatMap(({ boards }) =>
      boards.flatMap(({ items }) => items.map(({ mark }) => mark)),
    );
    expect(cut).not.toContain('A-E01');
    expect(begun.estimate.notes.map(problemSentence).join(' ')).toContain(
      'no longer counted, so the sums are of what is still to be done',
    );
  });

  it('tells what its sums leave out, by name', () => {
    const changed = sampleJob();
    changed.priceList = changed.priceList.filter((item) => item.category !== 'edge');
    const lacking = computed(changed);
    const sheet = makeSheet('takeoff', changed, lacking);
    expect(sheet.blocks[1]).toEqual({ kind: 'heading', text: 'This takeoff is not complete' });
    const problems = [...lacking.takeoff.lacks, ...lacking.estimate.lacks].map(problemSentence);
    expect(problems.length).toBeGreaterThan(0);
    expect(sheet.blocks[3]).toEqual({ kind: 'list', items: [...new Set(problems)] });
  });
});

describe('the cut list', () => {
  it("adds up by hand: boards to buy, count times price, make the plan's cost", () => {
    const buying = tables(cutList).filter((table) => table.columns[0]?.title === 'Boards to buy');
    expect(buying).toHaveLength(result.cutPlans.length);
    for (const [index, { rows }] of buying.entries()) {
      const plan = result.cutPlans[index];
      const lines = rows.slice(0, -1);
      for (const row of lines)
        expect(Number(cell(row, 1)) * centsOf(cell(row, 2))).toBe(centsOf(cell(row, 3)));
      expect(lines.reduce((sum, row) => sum + centsOf(cell(row, 3)), 0)).toBe(centsOf(cell(rows.at(-1), 3)));
      expect(lines.reduce((sum, row) => sum + Number(cell(row, 1)), 0)).toBe(plan?.boards.length);
      expect(cell(rows.at(-1), 3)).toBe(formatUsd(plan?.costUsd ?? ('' as never)));
    }
  });

  it('draws every board of every plan', () => {
    const drawn = cutList.blocks.flatMap((block) =>
      block.kind === 'drawing'
        ? block.drawing.shapes.flatMap((shape) =>
            shape.kind === 'polygon' && shape.ref?.startsWith('board/') === true ? [shape.ref] : [],
          )
        : [],
    );
    expect(drawn).toEqual(
      result.cutPlans.flatMap((plan) => plan.boards.map((board) => `board/${plan.group}/${board.number}`)),
    );
  });

  it('names the pieces that no board can hold', () => {
    const changed = sampleJob();
    changed.priceList = changed.priceList.filter(
      (item) => item.category !== 'lumber' || item.section !== '2x6' || (item.lengthFt ?? 0) < 4,
    );
    const outcome = computed(changed);
    expect(outcome.unplanned.length).toBeGreaterThan(0);
    const words = wordsOf(makeSheet('cut-list', changed, outcome));
    expect(words).toContain('This cut list is not complete');
    expect(words).toContain(outcome.unplanned[0]?.group);
  });
});

describe('every sheet', () => {
  for (const kind of sheetKinds) {
    const sheet = makeSheet(kind, job, result);

    it(`${kind}: carries the caution that local code, the building department and an engineer decide`, () => {
      const cautions = sheet.blocks.flatMap((block) => (block.kind === 'caution' ? [block.text] : []));
      expect(cautions.join(' ')).toMatch(
        /advisory.*Local code, the building department and a licensed engineer decide/s,
      );
    });

    it(`${kind}: never words a structural figure as approval`, () => {
      expect(wordsOf(sheet)).not.toMatch(/\bOK\b|\bapproved\b|\bpasses\b|\b(?:is|are) safe\b|\badequate\b/i);
    });

    it(`${kind}: shows no NaN, undefined or infinity`, () => {
      expect(wordsOf(sheet)).not.toMatch(/NaN|undefined|Infinity|null"/);
    });
  }

  it('warns of lead paint in a house from before 1978 (40 CFR 745), and asks where the year is not known', () => {
    expect(cautionsFor(1977)).toContain('may hold lead');
    expect(cautionsFor(1978)).not.toContain('lead');
    expect(cautionsFor(null)).toContain('not known');
  });

  it('has a file name that sorts by day and job, and that every computer takes', () => {
    const names = sheetKinds.map((kind) => makeSheet(kind, job, result).fileName);
    for (const name of names) expect(name.startsWith(`${job.asOf} ${job.job.name}`)).toBe(true);
    expect(fileName('2026-04-30 a/b\\c:d*e?f"g<h>i|j\u0007 - quote')).toBe(
      '2026-04-30 a b c d e f g h i j - quote',
    );
    expect(fileName(`2026-04-30 ${'x'.repeat(200)} - cut list`)).toMatch(/^2026-04-30 x+ - cut list$/);
    expect(fileName(`2026-04-30 ${'x'.repeat(200)} - cut list`).length).toBeLessThanOrEqual(100);
  });
});
