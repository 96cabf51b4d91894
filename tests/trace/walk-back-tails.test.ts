import { describe, expect, test } from 'vitest';
import type { JobFile } from '../../core/job/job-file.ts';
import type { JobResult } from '../../core/job/job-result.ts';
import { explain } from '../../core/trace/explain.ts';
import type { Explanation } from '../../core/trace/trace.ts';
import { besideOnly, fullJob, resultOf, type Change } from '../checks/checked-job.ts';

/** An eave with a bowed wall and a read plate, a joist on both faces of the third rafter, and rafters of their own. */
const old = {
  rafters: [12, 36, 60, 84, 108].map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index === 2 ? { joist: 'both', joistThicknessIn: 1.75 } : {}),
    ...(index === 3 ? { heightAbovePlateIn: 6, pitchRisePer12: 6.2 } : {}),
  })),
  wallReadings: [
    { id: 'w1', stationIn: 0, outIn: 0 },
    { id: 'w2', stationIn: 70, outIn: 0.75 },
    { id: 'w3', stationIn: 120, outIn: 0 },
  ],
  plateReadings: [
    { id: 'p1', stationIn: 0, upIn: 40 },
    { id: 'p2', stationIn: 120, upIn: 39.5 },
  ],
};

const jobs: readonly (readonly [string, Change])[] = [
  ['a filler', { eave: old, eaveDesign: { layout: { ...besideOnly, allowFiller: true } } }],
  ['a hung tail', { eave: old, eaveDesign: { layout: { ...besideOnly, allowBlockHung: true } } }],
  [
    'tails put in for the gap',
    { eave: old, eaveDesign: { layout: { allowFiller: false, allowFullLength: false, largestGapIn: 16 } } },
  ],
  [
    'kicked-up tails',
    { eave: old, eaveDesign: { layout: besideOnly, kickUpPitchRisePer12: 4, kickUpRaiseIn: 3 } },
  ],
  [
    'a tail of his own between rafters',
    { eave: old, eaveDesign: { layout: besideOnly, addedTails: [{ id: 'mine', stationIn: 49 }] } },
  ],
];

function tailRefs({ eaves }: JobResult): readonly string[] {
  return eaves.flatMap(({ eaveId, extenders }) => [
    `fascia-line/${eaveId}`,
    ...extenders.flatMap(({ id, filler, headers }) => [
      ...['section', 'overhang', 'fit', 'station'].map((kind) => `${kind}/${eaveId}/${id}`),
      ...(filler === null ? [] : [`filler/${eaveId}/${id}`]),
      ...(headers.length === 0 ? [] : [`header/${eaveId}/${id}`]),
    ]),
  ]);
}

/** Walks down from a ref to every end; fails on a ref that leads nowhere and on a circle. */
function walk(job: JobFile, result: JobResult, from: readonly string[]): ReadonlyMap<string, Explanation> {
  const met = new Map<string, Explanation>();
  const step = (ref: string, trail: readonly string[]): void => {
    if (trail.includes(ref)) throw new Error(`a circle: ${[...trail, ref].join(' > ')}`);
    if (met.has(ref)) return;
    const explanation = explain(ref, job, result);
    if (explanation === undefined) throw new Error(`nothing behind ${ref}, from ${trail.join(' > ')}`);
    expect(explanation.ref).toBe(ref);
    for (const part of explanation.parts) if (part.ref !== undefined) step(part.ref, [...trail, ref]);
    met.set(ref, explanation);
  };
  for (const ref of from) step(ref, []);
  return met;
}

describe.each(jobs)('walking back through %s', (_, change) => {
  const job = fullJob(change);
  const result = resultOf(job);
  const met = walk(job, result, [
    ...tailRefs(result),
    ...result.takeoff.pieces.map(({ mark }) => `piece/${mark}`),
  ]);

  test('meets every figure of every tail and piece, and says each in words', () => {
    const said = [...met.values()].flatMap(({ title, value, how, parts }) => [
      title,
      value,
      how,
      ...parts.flatMap((part) => [part.label, part.value]),
    ]);
    expect(said.length).toBeGreaterThan(200);
    expect(said.filter((words) => words.trim() === '' || /undefined|NaN|\[object|null/.test(words))).toEqual(
      [],
    );
  });

  test("reaches the wall's and the plate's readings", () => {
    const readings = [...met.keys()].filter((ref) => /^(wall|plate)\//.test(ref));
    expect(readings.toSorted()).toEqual([
      'plate/wall-1/p1',
      'plate/wall-1/p2',
      'wall/wall-1/w1',
      'wall/wall-1/w2',
      'wall/wall-1/w3',
    ]);
  });
});

/** One of the jobs, its tails, and a step of its walk back. */
function steps(name: string) {
  const change = jobs.find(([told]) => told === name)?.[1];
  const job = fullJob(change);
  const result = resultOf(job);
  return {
    result,
    extenders: result.eaves[0]?.extenders ?? [],
    of: (ref: string) => explain(ref, job, result),
  };
}

describe('a single step', () => {
  test("leads from a tail's own overhang to the two readings beside it, as they were read", () => {
    const { of, extenders } = steps('a filler');
    const tail = extenders.find(({ rafterNumber }) => rafterNumber === 4);
    const told = of(`overhang/wall-1/${tail?.id}`);
    expect(
      told?.parts
        .filter(({ ref }) => ref?.startsWith('wall/'))
        .map(({ label, value }) => `${label}: ${value}`),
    ).toEqual([`Wall reading at 5' 10": 3/4" out`, `Wall reading at 10' 0": 0`]);
    // 0.75 x (120 - 85.5) / 50 = 0.5175 out there: 15-1/2 of 16 are left.
    expect(told?.value).toBe('15-1/2"');
    expect(told?.how).toMatch(/lies 16" out of the reference line, and the wall's face here 1\/2" out/);
  });

  test('leads from a hung tail to both rafters, and from its header to their faces', () => {
    const { of, extenders } = steps('a hung tail');
    const tail = extenders.find(({ method }) => method === 'block-hung');
    const stations = (ref: string) =>
      of(ref)?.parts.flatMap(({ ref: part }) => (part?.startsWith('station/') ? [part] : []));
    const both = [`station/wall-1/${tail?.rafterId}`, `station/wall-1/r${(tail?.rafterNumber ?? 0) + 1}`];
    expect(stations(`station/wall-1/${tail?.id}`)).toEqual(both);
    expect(stations(`header/wall-1/${tail?.id}`)).toEqual(both);
    expect(of(`station/wall-1/${tail?.id}`)?.how).toMatch(/no side free/);
  });

  test('leads from a filler to the joist that it makes up for', () => {
    const { of, extenders } = steps('a filler');
    const tail = extenders.find(({ filler }) => filler !== null);
    expect(of(`filler/wall-1/${tail?.id}`)?.parts[0]).toEqual({
      label: 'Joist at rafter 3 (measured here)',
      value: '1-3/4"',
      ref: 'rafter/wall-1/r3/joistThicknessIn',
    });
  });

  test('tells the packer of a kicked-up tail, and what it follows from', () => {
    const { of, extenders, result } = steps('kicked-up tails');
    const [tail] = extenders;
    const told = of(`fit/wall-1/${tail?.id}`);
    expect(told?.title).toMatch(/^Seat or packer/);
    expect(told?.value).toMatch(/^packer /);
    expect(told?.parts.map(({ ref }) => ref)).toContain('design/wall-1/kickUpRaiseIn');
    const packer = result.takeoff.pieces.find(({ use }) => use === 'packer');
    expect(of(`piece/${packer?.mark}`)?.parts[0]?.ref).toMatch(/^fit\/wall-1\//);
  });

  test('tells a tail of his own by the station that he gave it', () => {
    expect(steps('a tail of his own between rafters').of('station/wall-1/mine')?.parts[0]).toMatchObject({
      label: 'Put in by hand at',
      value: `4' 1"`,
      ref: 'design/wall-1/addedTails',
    });
  });

  test('tells how the fascia line runs, before and after', () => {
    const { of } = steps('a filler');
    // Plate readings 40 at 0 and 39.5 at 120: half an inch in 10 ft.
    expect(of('fascia-line/wall-1')?.how).toMatch(/falling 1\/2" in 10 ft\. .* once they are set\.$/);
  });
});
