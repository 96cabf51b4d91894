import { describe, expect, test } from 'vitest';
import { explain } from '../../core/trace/explain.ts';
import type { Explanation } from '../../core/trace/trace.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { exampleText, sampleText, soundJob, soundResult } from '../job/example-job.ts';

/** Where walking back may end. */
const ends = new Set([
  'reading',
  'wall',
  'plate',
  'eave',
  'rafter',
  'survey',
  'design',
  'setting',
  'price',
  'labour',
]);

/** A rake's own entries lie under it: `rake/ID/survey/FIELD`, `rake/ID/design/FIELD`. */
const isEnd = (ref: string): boolean => ends.has(kindOf(ref)) || /^rake\/.+\/(survey|design)\//.test(ref);

const kindOf = (ref: string): string => ref.slice(0, ref.indexOf('/'));

/** Walks down from a ref to every end; fails on a ref that leads nowhere and on a circle. */
function walk(job: JobFile, result: JobResult, from: readonly string[]) {
  const finished = new Map<string, Explanation>();
  const trail: string[] = [];
  const step = (ref: string): void => {
    if (finished.has(ref)) return;
    if (trail.includes(ref)) throw new Error(`a circle: ${[...trail, ref].join(' > ')}`);
    const explanation = explain(ref, job, result);
    if (explanation === undefined) throw new Error(`nothing behind ${ref}, from ${trail.join(' > ')}`);
    if (explanation.ref !== ref) throw new Error(`${ref} is explained as ${explanation.ref}`);
    trail.push(ref);
    for (const part of explanation.parts) if (part.ref !== undefined) step(part.ref);
    trail.pop();
    finished.set(ref, explanation);
  };
  for (const ref of from) step(ref);
  return finished;
}

function figuresOf(result: JobResult): readonly string[] {
  return [
    ...result.takeoff.lines.map(({ id }) => `line/${id}`),
    ...result.takeoff.pieces.map(({ mark }) => `piece/${mark}`),
    ...result.cutPlans.flatMap(({ group, boards }) => boards.map(({ number }) => `board/${group}/${number}`)),
    ...result.estimate.lines.map(({ id }) => `cost/${id}`),
    ...result.estimate.totals.map(({ key }) => `total/${key}`),
    ...result.eaves.flatMap(({ eaveId, rafters }) => rafters.map(({ id }) => `station/${eaveId}/${id}`)),
  ];
}

const jobs = [
  ['the sample job', sampleText()],
  ['the example of the job file page', exampleText()],
  ['a job read bay by bay to the far face, in 5/4 stock', inBays()],
] as const;

function inBays(): string {
  const job = JSON.parse(exampleText()) as {
    survey: { eaves: Record<string, unknown>[] };
    design: { eaves: Record<string, unknown>[] };
    priceList: Record<string, unknown>[];
  };
  const readings = ['0', '2\' 2-1/4"', '1\' 9-1/2"', '1\' 11-1/4"'];
  const rafters = readings.map((readingIn, index) => ({
    id: `p/${index}`,
    readingIn,
    ...(index === 1 ? { thicknessIn: '1-7/8"', clearBackspanIn: '2\' 6"' } : {}),
  }));
  Object.assign(job.survey.eaves[0] ?? {}, { id: 'a/b', readingMode: 'bays-clear', rafters });
  Object.assign(job.design.eaves[0] ?? {}, {
    eaveId: 'a/b',
    fascia: { stock: { section: '5/4x8', grade: 'primed' }, pastRightIn: 3 },
  });
  const fascia = job.priceList.find(({ id }) => id === '1x8-8');
  Object.assign(fascia ?? {}, { section: '5/4x8' });
  return JSON.stringify(job);
}

describe.each(jobs)('walking back through %s', (_, text) => {
  const job = soundJob(text);
  const result = soundResult(job);
  const found = walk(job, result, figuresOf(result));

  test('meets every figure, leads nowhere in a circle, and ends at readings, entries, prices and settings', () => {
    const leaves = [...found].filter(([, { parts }]) => parts.every(({ ref }) => ref === undefined));
    expect(leaves.length).toBeGreaterThan(20);
    // A sum with no line in it, such as no equipment, ends at itself.
    const odd = leaves.filter(([ref, { value }]) => !isEnd(ref) && value !== '$0.00');
    expect(odd.map(([ref]) => ref)).toEqual([]);
  });

  test('reaches the tape reading of every rafter from the total', () => {
    const fromTotal = walk(job, result, ['total/total']);
    const readings = job.survey.eaves.flatMap((eave) =>
      eave.rafters.map((rafter) => `reading/${eave.id}/${rafter.id}`),
    );
    expect(readings.filter((ref) => !fromTotal.has(ref))).toEqual([]);
    expect([...fromTotal.keys()].filter((ref) => kindOf(ref) === 'price').length).toBeGreaterThan(4);
  });

  test('says each step in words, without a hole', () => {
    const said = [...found.values()].flatMap(({ title, value, how, parts }) => [
      title,
      value,
      how,
      ...parts.flatMap((part) => [part.label, part.value]),
    ]);
    expect(said.filter((words) => words.trim() === '' || /undefined|NaN|\[object|null/.test(words))).toEqual(
      [],
    );
  });
});

describe('single steps', () => {
  const job = soundJob(exampleText());
  const result = soundResult(job);
  const refsOf = (ref: string) => explain(ref, job, result)?.parts.map((part) => part.ref) ?? [];

  test('a reading is told as it was read, with its mode', () => {
    expect(explain('reading/porch/p2', job, result)).toEqual({
      ref: 'reading/porch/p2',
      title: 'Tape reading at rafter 2, Porch eave',
      value: `2' 2-1/2"`,
      how: `Read on one tape from the left end of the wall to the rafter's centre: 2' 2-1/2".`,
      parts: [],
    });
  });

  test('a section leads to the pitch measured at its rafter, and to the eave where none was', () => {
    expect(refsOf('section/porch/p3')).toContain('rafter/porch/p3/pitchRisePer12');
    expect(refsOf('section/porch/p2')).toContain('eave/porch/pitchRisePer12');
  });

  test('a price is told with its day, its source and how long it is held', () => {
    expect(explain('price/2x6-12', job, result)).toMatchObject({
      value: '$835.00 a thousand board feet',
      how: 'Seen on 2026-04-13 (quote): the newest price on or before 2026-04-30, 17 days old. Held until 2026-05-10.',
    });
  });

  test('a production rate says whether it is a placeholder or the shop its own', () => {
    const own = { ...job, settings: { ...job.settings } };
    own.settings.labour = {
      ...job.settings.labour,
      rates: [{ task: 'fascia', hoursPerUnit: 0.07, mark: 'own' }],
    };
    expect(explain('labour/fascia', job, result)?.how).toMatch(/^A placeholder/);
    expect(explain('labour/fascia', own, soundResult(own))).toMatchObject({
      value: '0.07 h for each LF',
      how: "The shop's own rate, from Settings.",
    });
  });

  test('a ref of something that is gone opens nothing', () => {
    const gone = [
      'piece/Z-E99',
      'board/2x6 No.2/99',
      'reading/porch/p9',
      'setting/money.constructor',
      'odd',
      'x/y',
    ];
    expect(gone.map((ref) => explain(ref, job, result))).toEqual(gone.map(() => undefined));
  });
});
