import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJobFile } from '../../core/job/read-job-file.ts';
import { explain } from '../../core/trace/explain.ts';
import type { TracePart } from '../../core/trace/trace.ts';
import { computeNext, nothingComputed, type Surroundings } from '../../renderer/job/compute/computation.ts';
import { type Documents, valueAt, withDraft } from '../../renderer/job/editor/documents.ts';
import { addEave } from '../../renderer/job/editor/eave-list.ts';
import { enter } from '../../renderer/job/editor/enter.ts';
import { appendTo } from '../../renderer/job/editor/list-edits.ts';
import { insertRafter } from '../../renderer/job/editor/rafter-list.ts';
import { whereIs } from '../../renderer/job/parts/use-go-to.ts';
import { placeOfRef } from '../../renderer/job/walk-back/place-of-ref.ts';
import { emptyDocuments } from './fixture.ts';

function sample(): { documents: Documents; surroundings: Surroundings } {
  const read = readJobFile(readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the sample job does not read');
  const { asOf, job, survey, design, settings, priceList } = read.value;
  return {
    documents: { estimateOn: asOf, info: job, survey, design, drafts: {} },
    surroundings: { today: asOf, settings, prices: priceList },
  };
}

describe('the figures on the screen', () => {
  test('follow what is typed', () => {
    const { documents, surroundings } = sample();
    const first = computeNext(nothingComputed, documents, surroundings);
    const longer = computeNext(first, enter(documents, 'design.eaves.0.overhangIn', '18'), surroundings);
    expect(first.current && longer.current).toBe(true);
    expect(longer.good?.result.eaves[0]?.overhangLevelIn).toBe(18);
  });

  test('stay as they were, and say so, while an entry does not read', () => {
    const { documents, surroundings } = sample();
    const first = computeNext(nothingComputed, documents, surroundings);
    const path = 'design.eaves.0.overhangIn';
    const bad = computeNext(first, enter(documents, path, '1 foot and 4'), surroundings);
    expect(bad.good).toBe(first.good);
    expect(bad.current).toBe(false);
    expect(bad.problems.map((problem) => problem.field)).toEqual([path]);
  });

  test('stay as they were, with the problem at its entry, while the survey does not hold together', () => {
    const { documents, surroundings } = sample();
    const first = computeNext(nothingComputed, documents, surroundings);
    const path = 'survey.eaves.0.rafters.4.readingIn';
    const bad = computeNext(first, enter(documents, path, '3'), surroundings);
    expect(bad.good).toBe(first.good);
    expect(bad.problems.map((problem) => [problem.code, problem.field])).toEqual([
      ['rafter-out-of-order', path],
    ]);
  });

  test('come from the last good values when a job is opened with a half-typed entry', () => {
    const { documents, surroundings } = sample();
    const opened = computeNext(
      nothingComputed,
      enter(documents, 'survey.eaves.0.lengthIn', "34' 4-1/"),
      surroundings,
    );
    expect(opened.good?.result.eaves).toHaveLength(2);
    expect(opened.current).toBe(false);
  });

  test('come from the last good values when a job is opened with an entry that was cleared', () => {
    const { documents, surroundings } = sample();
    const path = 'survey.eaves.0.rafters.4.readingIn';
    const opened = computeNext(nothingComputed, enter(documents, path, ''), surroundings);
    expect(opened.good?.result.eaves[0]?.rafters).toHaveLength(
      documents.survey.eaves[0]?.rafters.length ?? 0,
    );
    expect(opened.problems.map((problem) => problem.field)).toEqual([path]);
  });

  test('leave out a cost and a row that were added and never filled when a job is opened', () => {
    const { documents, surroundings } = sample();
    const rafters = documents.survey.eaves[0]?.rafters.length ?? 0;
    const inserted = insertRafter(documents, 0, 3);
    const cost = { ...documents.design.extraCosts[0], id: 'x99', unitCostUsd: '0' };
    const at = `design.extraCosts.${documents.design.extraCosts.length}`;
    const added = withDraft(appendTo(inserted, 'design.extraCosts', cost), `${at}.unitCostUsd`, '');
    const opened = computeNext(nothingComputed, added, surroundings);
    expect(opened.good?.result.eaves[0]?.rafters).toHaveLength(rafters);
    expect(opened.good?.input.design.extraCosts).toEqual(documents.design.extraCosts);
    expect(opened.current).toBe(false);
  });

  test('are never made from an entry that was never filled', () => {
    const { surroundings } = sample();
    const blank = computeNext(nothingComputed, addEave(emptyDocuments(), []), surroundings);
    expect(blank.good).toBe(null);
    expect(blank.problems).toHaveLength(4);
  });

  test('do not wait for the customer’s name or an address', () => {
    const { documents, surroundings } = sample();
    const nameless = computeNext(nothingComputed, enter(documents, 'info.name', ''), surroundings);
    expect(nameless.current).toBe(true);
  });
});

describe('walking back', () => {
  test('ends at an entry that stands on Survey, Design, Settings or the price list', () => {
    const { documents, surroundings } = sample();
    const { good } = computeNext(nothingComputed, documents, surroundings);
    if (good === null) throw new Error('the sample job does not compute');
    const seen = new Set<string>();
    const leaves: string[] = [];
    const walk = (parts: readonly TracePart[]): void => {
      for (const { ref } of parts) {
        if (ref === undefined || seen.has(ref)) continue;
        seen.add(ref);
        const step = explain(ref, good.input, good.result);
        if (step === undefined || step.parts.length === 0) leaves.push(ref);
        else walk(step.parts);
      }
    };
    walk(good.result.estimate.totals.flatMap((total) => total.madeOf));
    walk(good.result.takeoff.lines.flatMap((line) => line.madeOf));
    const lost = leaves.filter((ref) => {
      const place = placeOfRef(ref, documents);
      return place === undefined || (place.kind === 'entry' && valueAt(documents, place.path) === undefined);
    });
    expect(leaves.length).toBeGreaterThan(50);
    expect(lost).toEqual([]);
  });

  test('finds the reading of a rafter by its eave and id', () => {
    const { documents } = sample();
    expect(placeOfRef('reading/south/s3', documents)).toEqual({
      kind: 'entry',
      path: 'survey.eaves.0.rafters.2.readingIn',
    });
    expect(placeOfRef('reading/south/nobody', documents)).toBe(undefined);
    expect(placeOfRef('price/nails 16d/5 lb', documents)).toMatchObject({
      route: '/prices/nails%2016d%2F5%20lb',
    });
    expect(placeOfRef('section/south/s3', documents)).toBe(undefined);
  });

  test('shows the eave in which an entry stands', () => {
    const { documents } = sample();
    expect(whereIs('survey.eaves.0.rafters.2.readingIn', documents)).toEqual({
      section: 'survey',
      eaveId: 'south',
    });
    expect(whereIs('design.extraCosts.0.unitCostUsd', documents)).toEqual({
      section: 'design',
      eaveId: null,
    });
    expect(whereIs('estimateOn', documents)).toEqual({ section: 'estimate', eaveId: null });
  });
});
