import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explain } from '../../core/trace/explain.ts';
import { parseLength } from '../../core/units/parse-length.ts';
import { bend } from './beam-by-stiffness.ts';
import { besideOnly, checkOf, checksOf, fullJob, resultOf, type Change } from './checked-job.ts';

/** Rafters 24 in. apart, invented; joists lie on both faces of the third, so that it finds no side free. */
function stuck(change: Change = {}, stations: readonly number[] = [12, 36, 60, 84, 108]): Change {
  const rafters = stations.map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index === 2 ? { joist: 'both' } : {}),
  }));
  return { ...change, eave: { rafters, ...change.eave } };
}
const hung = (change: Change = {}) => checkOf('block-hung', stuck(change));
const stepOf = (change: Change, label: RegExp) =>
  hung(change).why.find((step) => label.test(step.label))?.result;
const nailsOf = (section: string) => stepOf({ eaveDesign: { extender: { section } } }, /as many at each end/);
const ratioOf = (change: Change) => hung(change).ratio ?? Number.POSITIVE_INFINITY;

/** Far out, hardly further back, under deep snow: the customary nails do not take it. */
const heavy: Change = { site: { groundSnowPsf: 80 }, eaveDesign: { overhangIn: 36, backspanRatio: 1 } };
const reaching = (overhangIn: number) =>
  hung({ ...heavy, eaveDesign: { overhangIn, backspanRatio: 1 } }).verdict;

describe('a tail hung on a header block', () => {
  test('between rafters 24 in. apart asks 155.8 lb of three 16d nails that take 354', () => {
    // Worked by hand; the job of worked-example.test.ts. Extenders stand at 37-1/2 and 85-1/2, so half the way to each is 24
    // in. wherever the hung tail stands between them. Dead 7.649 x 24 / 144 = 1.2749, the 2x6 itself 0.1868: 1.4617 lb/in.
    // Worker of 300 lb: M = 1.4617 x 16^2 / 2 + 300 x 16 = 4987.1 lb-in.; over 32 in. level (2 to 1): 155.85 lb.
    // One 16d common in Douglas fir-larch, 2 in. deep of 10 D = 1.62: 140.89 lb (NDS 2018, Table 12N: 141); x 1.25 (Table
    // 2.3.2, seven days) x 0.67 (end grain, as seen in transcription) = 117.99; three (common practice, no source): 354.0.
    const { value, limit, ratio, verdict, where } = hung();
    expect(value?.number).toBeCloseTo(155.85, 1);
    expect(limit?.number).toBeCloseTo(354, 0);
    expect(ratio).toBeCloseTo(0.44, 2);
    expect([verdict, where]).toEqual(['within', `Rafter 3 at 5' 0"`]);
  });

  test('in the middle hands half of it to each end of its block, from face to face of the rafters', () => {
    // 155.85 / 2 = 77.9; 24 less a rafter of 1-1/2 = 22-1/2. Rafters 3 and 4: an extender stands between 2 and 3.
    expect(stepOf({}, /nearer end of the block/)).toBe('78 lb');
    expect(hung().assumptions.join(' ')).toMatch(
      /between rafters 3 and 4 .* 1' 10-1\/2", and stands in the middle of it/,
    );
  });

  test('is pulled as an independent beam solution by direct stiffness says, load case by load case', () => {
    // Statics: plate at the outer edge and block are the two supports; the load lies on the overhang alone.
    const change = { site: { groundSnowPsf: 200 }, eaveDesign: { overhangIn: 40, backspanRatio: 1 } };
    const iced = 1.4617 + (2 * 0.7 * 1.1 * 200 * 24) / 144;
    const even = { fromIn: 40, toIn: 80, lbPerIn: iced };
    const bent = bend({ nodesIn: [0, 20, 40, 60, 80], stiffness: 1e6, supports: [0, 2], even });
    expect((hung(change).value?.number ?? 0) / -(bent.reactionsLb.get(0) ?? Number.NaN)).toBeCloseTo(1, 3);
  });

  test('is held up by its block under wind: 220.5 lb where 300 psf lift it, of 453 that its nails take', () => {
    // Worked by hand: 300 psf on 17.889 x 24 / 144 = 2.9815 sq ft = 894.4 lb. Weight square to the slope: (5.5 + 1.5 / 1.118)
    // x 2.9815 = 20.40 and the 2x6 0.1671 x 17.889 = 2.99, by 1.118: 20.92. 894.4 - 0.6 x 20.92 = 881.9; by moments about the
    // plate's edge x 8.944 / 35.777 = 220.5. Nails: 3 x 140.89 x 1.6 (NDS 2018, Table 2.3.2, wind) x 0.67 = 453.1.
    const strong = hung({ site: { windUpliftPsf: 300, windUpliftBasis: 'allowable' } });
    expect(strong.value?.number).toBeCloseTo(220.5, 1);
    expect(strong.limit?.number).toBeCloseTo(453.1, 1);
    expect(strong.why.map(({ label }) => label)).toContain('The block holds the back end up');
  });

  test('of 2x4 has two nails, of 2x6 and 2x8 three, of thinner stock no customary number', () => {
    // Common practice, no source.
    expect(['2x4', '2x6', '2x8', '2x12'].map(nailsOf)).toEqual(['2 nails', '3 nails', '3 nails', '3 nails']);
    const thin = hung({ eaveDesign: { extender: { section: '5/4x6' } } });
    expect([thin.verdict, thin.value]).toEqual(['not-covered', null]);
  });

  test('goes by the ends of its block where the rafters are so thick that little of the nail is left', () => {
    // NDS 2018, 12.1.6.4. 2-1/2 in. rafters leave 1.00 of a 3-1/2 in. nail, 0.617 of 10 D = 1.62, and an end takes 0.5 of
    // the load: the tail governs. 2-3/4 leave 0.75, less than 6 D = 0.972: nothing.
    expect(hung({ eave: { rafterThicknessIn: 2.5 } }).assumptions.join(' ')).toMatch(/tail's end govern/);
    const thick = hung({ eave: { rafterThicknessIn: 2.75 } });
    expect(thick).toMatchObject({ verdict: 'beyond', ratio: null, limit: { number: 0 } });
    expect(thick.assumptions.join(' ')).toMatch(/through a rafter into an end of the block govern/);
  });

  test('is told as one that is not laid out, with what stays not covered', () => {
    const { assumptions, source } = hung();
    expect(assumptions[0]).toMatch(/No such tail is laid out, counted or priced/);
    expect(assumptions.join(' ')).toMatch(/Not covered: bending and splitting of the block, .* two rafters/);
    expect(source.map(({ mark }) => mark)).toContain('common-practice');
    expect(checkOf('old-rafter', stuck()).assumptions.join(' ')).not.toMatch(/block-hung/);
  });

  test('counts wet lumber as it does in the sister joint', () => {
    // NDS 2018, Table 11.3.3, as seen in transcription: 0.7.
    const wet = hung({ structure: { wetService: true } }).limit?.number ?? Number.NaN;
    expect(wet / (hung().limit?.number ?? Number.NaN)).toBeCloseTo(0.7, 9);
  });

  test('does not stand as within while the snow or the wind is not known', () => {
    expect(hung({ site: { groundSnowPsf: null } })).toMatchObject({
      verdict: 'not-covered',
      missingField: 'survey.site.groundSnowPsf',
    });
    expect(hung({ site: { windUpliftPsf: null } })).toMatchObject({
      verdict: 'not-covered',
      missingField: 'survey.site.windUpliftPsf',
    });
  });
});

describe('where a tail may hang', () => {
  test('is nowhere to be told where every rafter has its extender, or none is wanted', () => {
    for (const change of [{}, { eaveDesign: { pins: [{ rafterId: 'r3', side: 'none' }] } }]) {
      const { verdict, value, remedy, why } = checkOf('block-hung', change);
      expect([verdict, value, remedy]).toEqual(['within', null, null]);
      expect(why.at(0)?.result).toBe('no tail has to be hung');
    }
  });

  test('is the other bay where something stands in the middle of the first', () => {
    const obstructions = [{ id: 'pipe', label: 'Vent pipe', fromIn: 71, toIn: 73 }];
    expect(hung({ eave: { obstructions } }).assumptions.join(' ')).toMatch(
      /between rafters 2 and 3 .*An extender stands in that bay/s,
    );
    const both = [...obstructions, { id: 'flue', label: 'Flue', fromIn: 47, toIn: 49 }];
    expect(hung({ eave: { obstructions: both } }).assumptions.join(' ')).toMatch(
      /has to stand off the middle/,
    );
  });

  test('is no bay at all where the neighbours stand closer than a tail is thick', () => {
    const tight = checkOf('block-hung', stuck({}, [12, 57.5, 60, 62.5, 108]));
    expect(tight.verdict).toBe('not-covered');
    expect(tight.remedy).toMatch(/beside rafter.* 3.* no bay is as wide as a tail is thick/);
  });
});

describe('a remedy for the nails of a hung tail brings them within', () => {
  const { remedy, verdict, ratio } = hung(heavy);

  test('by more nails, as far as they fit', () => {
    expect(verdict).toBe('beyond');
    const nails = Number(/^(\d) nails at each end/.exec(remedy ?? '')?.[1]);
    expect(((ratio ?? 0) * 3) / nails).toBeLessThanOrEqual(1);
    expect(((ratio ?? 0) * 3) / (nails - 1)).toBeGreaterThan(1);
    // More than four do not fit a 2x6, 1 in. apart and from its edges: none are proposed.
    expect(hung({ ...heavy, site: { groundSnowPsf: 200 } }).remedy).toMatch(/^Hangers/);
  });

  test('by a longer backspan', () => {
    const backspanRatio = lengthIn(remedy, 'backspan of') / (36 * Math.hypot(1, 0.5));
    expect(hung({ ...heavy, eaveDesign: { overhangIn: 36, backspanRatio } }).verdict).toBe('within');
  });

  test('by a shorter overhang, and a quarter inch more would not', () => {
    const overhangIn = lengthIn(remedy, 'overhang of');
    expect([reaching(overhangIn), reaching(overhangIn + 0.25)]).toEqual(['within', 'beyond']);
  });

  test('by hangers rated for the whole pull', () => {
    const rated = Number(/at the tail (\d+) lb against lifting/.exec(remedy ?? '')?.[1]);
    const pull = hung(heavy).value?.number ?? Number.NaN;
    expect(rated).toBeGreaterThanOrEqual(pull);
    expect(rated).toBeLessThan(pull + 5);
  });
});

describe('more load on a hung tail never makes its figure better', () => {
  test.each([
    ['snow', (groundSnowPsf: number): Change => ({ site: { groundSnowPsf } })],
    ['wind', (windUpliftPsf: number): Change => ({ site: { windUpliftPsf } })],
    ['overhang', (inches: number): Change => ({ eaveDesign: { overhangIn: Math.min(90, inches / 2 + 2) } })],
  ])('%s', (_, change) => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), (a, b) => {
        const [less, more] = [ratioOf(change(Math.min(a, b))), ratioOf(change(Math.max(a, b)))];
        expect(less).toBeLessThanOrEqual(more * (1 + 1e-9));
      }),
      { numRuns: 25 },
    );
  });

  test('a longer backspan never makes it worse', () => {
    const ratios = [0.5, 1, 2, 3, 6].map((backspanRatio) => ratioOf({ eaveDesign: { backspanRatio } }));
    expect(ratios).toEqual(ratios.toSorted((a, b) => b - a));
  });
});

/** The same rafters, the third one's tail laid out on a header block between it and a neighbour. */
const laidOut = (change: Change = {}): Change =>
  stuck({
    ...change,
    eaveDesign: { layout: { ...besideOnly, allowBlockHung: true }, ...change.eaveDesign },
  });

describe('a tail that is laid out on a header block', () => {
  const job = fullJob(laidOut());
  const result = resultOf(job);
  const tail = result.eaves[0]?.extenders.find(({ method }) => method === 'block-hung');
  const check = checksOf(job).find(({ id }) => id === 'block-hung/wall-1');

  test('is reckoned where it stands, and no longer as a proposal', () => {
    expect(check?.where).toMatch(/^Tail A-T01 at/);
    expect(check?.stationIn).toBe(tail?.centreIn);
    expect(check?.assumptions.join(' ')).not.toMatch(/No such tail is laid out|has no tail/);
  });

  test('is held down by its own block: moment over backspan, of its own roof and overhang', () => {
    // Statics, with the numbers of worked-example.test.ts: dead 7.649 psf on half the way to each neighbour, the 2x6 itself
    // 0.1868 lb/in., 300 lb at the end; 16 in. out and 32 in. back, level.
    const eave = result.eaves[0];
    const index = eave?.extenders.findIndex(({ id }) => id === tail?.id) ?? -1;
    const [before, after] = [eave?.extenders[index - 1], eave?.extenders[index + 1]];
    const roofIn = ((after?.centreIn ?? 0) - (before?.centreIn ?? 0)) / 2;
    const deadLbPerIn = (7.649 * roofIn) / 144 + 0.1868;
    const pullLb = ((deadLbPerIn * 16 ** 2) / 2 + 300 * 16) / 32;
    const told = check?.why.find(({ label }) => /holds the back end down/.test(label))?.result;
    expect(Number(told?.replace(' lb', ''))).toBe(Math.round(pullLb));
  });

  test('hands the nearer end of its block the longer part of the pull over the whole', () => {
    const [block] = tail?.headers ?? [];
    const [left, right] = [block?.leftIn ?? 0, block?.rightIn ?? 0];
    const at = tail?.centreIn ?? 0;
    const share = Math.max(at - left, right - at) / (right - left);
    expect(check?.why.find(({ label }) => /nearer end/.test(label))?.withNumbers).toContain(
      share.toFixed(3).replace(/0+$/, ''),
    );
  });

  test('is left out of the nails beside rafters, and has toenails on both faces', () => {
    const sister = checksOf(job).find(({ id }) => id === 'sister-nails/wall-1');
    expect(sister?.assumptions.join(' ')).toMatch(
      /hung on header blocks and whole rafters are not among these/,
    );
    expect(sister?.where).toMatch(/^Rafter/);
    const few = { settings: { fastening: { plateToenailsBothFaces: 2 } } };
    expect(checkOf('plate-toenails', laidOut(few))).toMatchObject({
      value: { number: 2 },
      verdict: 'beyond',
    });
    expect(checkOf('plate-toenails', stuck(few))).toMatchObject({ value: { number: 3 }, verdict: 'within' });
  });

  test('walks back, step by step', () => {
    const refs = check?.why.flatMap(({ ref }) => ref ?? []) ?? [];
    expect(refs).toContain(`section/wall-1/${tail?.id}`);
    expect(refs.filter((ref) => explain(ref, job, result) === undefined)).toEqual([]);
  });
});

function lengthIn(remedy: string | null, before: string): number {
  const text = new RegExp(`${before} ((?:\\d+' )?[\\d-/]+")`).exec(remedy ?? '')?.[1];
  const read = parseLength(text ?? '');
  if (!read.ok) throw new Error(`no length after ${before}: ${remedy}`);
  return read.value;
}
