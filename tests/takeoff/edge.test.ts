import { describe, expect, test } from 'vitest';
import { computeJob } from '../../core/job/compute-job.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { findNail } from '../../core/takeoff/nails.ts';
import { layOut, lineOf, smallJob, type SmallJob, smallTakeoff } from './small-job.ts';

const end = (kind: string, meets: string) => ({ kind, meets });

/** Two walls of 10 ft at a corner: the right end of the first meets the left end of the second. */
function cornered(kind: string, change: SmallJob = {}) {
  const job = smallJob({ ...change, moreEaves: [[12, 36, 60, 84, 108]] });
  const [one, two] = job.design.eaves;
  if (one === undefined || two === undefined) throw new Error('two eaves');
  one.ends = { left: end('free', ''), right: end(kind, 'wall-2') } as typeof one.ends;
  two.ends = { left: end(kind, 'wall-1'), right: end('free', '') } as typeof two.ends;
  two.overhangIn = 12;
  two.fasciaLine = 'as-found';
  return job;
}

function resultOf(job: ReturnType<typeof smallJob>) {
  const result = computeJob(job);
  if (!result.ok) throw new Error(problemSentence(result.problem));
  return result.value;
}

const fasciaOf = (job: ReturnType<typeof smallJob>, mark: string) =>
  resultOf(job).takeoff.pieces.find((piece) => piece.mark === mark);
const cornerTexts = (job: ReturnType<typeof smallJob>, eaveId: string) =>
  resultOf(job)
    .findings.filter((finding) => finding.topic === 'corner' && finding.eaveId === eaveId)
    .map(({ text }) => text);

const joints = (boards: readonly { fromIn: number }[]) => boards.slice(1).map(({ fromIn }) => fromIn);

describe('fascia round an outside corner', () => {
  test('runs past the wall by the other overhang, its long point by that thickness more', () => {
    const job = cornered('outside-corner');
    // First: 120 + 12 + 3/4 on the face, 132 on the back. Second: 16 + 120 and 16-3/4 + 120.
    expect(fasciaOf(job, 'A-F01')).toMatchObject({
      lengthSixteenths: 132.75 * 16,
      shortSixteenths: 132 * 16,
      hand: 'right',
      cuts: 'left end square, right end mitre 45 deg, long point on the face; long point to long point 11\' 0-3/4", short to short 11\' 0"',
    });
    expect(fasciaOf(job, 'B-F01')).toMatchObject({
      lengthSixteenths: 136.75 * 16,
      shortSixteenths: 136 * 16,
      hand: 'left',
    });
  });

  test('costs the fitting of a mitre at each of the two boards', () => {
    const line = lineOf(resultOf(cornered('outside-corner')).takeoff, 'labour-mitres');
    expect([line.quantity, line.where]).toEqual(['1', 'Eave A: 0.5 h, Eave B: 0.5 h']);
  });

  test('brings sheathing to its long point, and drip edge along its face', () => {
    const { takeoff } = resultOf(
      cornered('outside-corner', { eaveDesign: { sheathing: { coversFascia: false } } }),
    );
    // 132.75 x 17.889 / 144 + 136.75 x 13.416 / 144 = 16.49 + 12.74.
    expect(lineOf(takeoff, 'sheathing-panels').where).toBe('Eave A: 16.49 SF, Eave B: 12.74 SF');
    expect(lineOf(takeoff, 'drip-edge').where).toBe('Eave A: 11.06 LF, Eave B: 11.4 LF');
  });

  test('tells that the hip there is not counted, and edges that come to it at two heights', () => {
    const texts = cornerTexts(cornered('outside-corner'), 'wall-1');
    // Tails at HAP 4-1/2: -3-1/2 over 16 in., -1-1/2 over 12 in.: two inches apart.
    expect(texts).toEqual([
      expect.stringMatching(
        /^The right end comes to the corner 2" lower than the edge of Wall 2, both plates at one height\./,
      ),
      expect.stringMatching(/^The right end makes an outside corner with Wall 2\. A hip tail there/),
    ]);
    const alike = cornered('outside-corner');
    const second = alike.design.eaves[1];
    if (second !== undefined) second.overhangIn = 16;
    expect(cornerTexts(alike, 'wall-1')).toHaveLength(1);
  });
});

describe('fascia at an inside corner', () => {
  test("stops at the other fascia's line, with its long point on the back", () => {
    const job = cornered('inside-corner');
    // First: back to 120 - 12, face to 120 - 12-3/4.
    expect(fasciaOf(job, 'A-F01')).toMatchObject({
      lengthSixteenths: 108 * 16,
      shortSixteenths: 107.25 * 16,
      cuts: expect.stringContaining('right end mitre 45 deg, long point on the back') as unknown,
    });
    expect(layOut(job)[0]?.fascia.at(-1)?.toIn).toBe(107.25);
  });

  test('brings the sheathing to the wall end, where its upper edge meets the valley', () => {
    const { takeoff } = resultOf(
      cornered('inside-corner', { eaveDesign: { sheathing: { coversFascia: false } } }),
    );
    expect(lineOf(takeoff, 'sheathing-panels').where).toBe('Eave A: 14.91 SF, Eave B: 11.18 SF');
  });
});

describe('an end that should meet something', () => {
  test('is free and says so while nothing is chosen, or what is chosen is not there', () => {
    for (const [kind, meets] of [
      ['outside-corner', ''],
      ['outside-corner', 'gone'],
      ['inside-corner', 'wall-1'],
      ['rake', 'gone'],
    ] as const) {
      const job = smallJob({ eaveDesign: { ends: { right: end(kind, meets) } } });
      expect(layOut(job)[0]?.fasciaRun.right).toEqual({ kind: 'square', faceIn: 120, backIn: 120 });
      expect(cornerTexts(job, 'wall-1')).toEqual([expect.stringMatching(/its edge ends free/)]);
    }
  });

  test('says where the other eave does not answer', () => {
    const job = cornered('outside-corner');
    const second = job.design.eaves[1];
    if (second !== undefined) second.ends.left.kind = 'free';
    expect(cornerTexts(job, 'wall-1')).toEqual([
      'The right end makes an outside corner with Wall 2, but no end of Wall 2 makes one with it. Set it there too in Design.',
    ]);
  });
});

describe('a 1x fascia on a 2x sub-fascia', () => {
  const stations = Array.from({ length: 17 }, (_, index) => 12 + 24 * index);
  const long: SmallJob = { stations, eave: { lengthIn: 408 } };
  const onSub = (rest: object = {}): SmallJob => ({
    ...long,
    eaveDesign: {
      fascia: {
        stock: { section: '1x8', grade: 'primed' },
        subFascia: { wanted: true, stock: { section: '2x6', grade: 'No.2' } },
      },
      ...rest,
    },
  });

  test('has boards of its own, whose joints are on tails and never where the fascia is jointed', () => {
    const [layout] = layOut(smallJob(onSub()));
    const fascia = joints(layout?.fascia ?? []);
    const sub = joints(layout?.subFascia ?? []);
    const tails = layout?.extenders.map(({ centreIn }) => centreIn);
    expect(sub.length).toBeGreaterThan(0);
    for (const joint of sub) {
      expect(tails).toContain(joint);
      expect(fascia).not.toContain(joint);
    }
    const pieces = smallTakeoff(onSub()).pieces.filter(({ use }) => use === 'sub-fascia');
    expect(pieces.map(({ mark }) => mark)).toEqual(sub.concat(0).map((_, index) => `A-U0${index + 1}`));
    // Bevels of a 2x: 3/4 in. past each joint.
    expect(pieces.reduce((sum, { lengthSixteenths }) => sum + inchesOf(lengthSixteenths), 0)).toBe(
      408 + 2 * sub.length * 0.75,
    );
  });

  test('is nailed 2x to tails and 1x to the 2x', () => {
    const takeoff = smallTakeoff(onSub());
    const boards = layOut(smallJob(onSub()))[0];
    const subJoints = (boards?.subFascia.length ?? 0) - 1;
    // Sub-fascia 5-1/2 in. deep: two at each tail, and at each joint. Common practice, no source.
    expect(lineOf(takeoff, 'nails-16d-common-galvanized').quantity).toBe(String((17 + subJoints) * 2));
    // Fascia: each board of L in. has ceil(L / 16) + 1 groups of three.
    const groups = (boards?.fascia ?? []).reduce(
      (sum, { fromIn, toIn }) => sum + Math.ceil((toIn - fromIn) / 16 - 1e-9) + 1,
      0,
    );
    expect(lineOf(takeoff, 'nails-8d-common-galvanized').quantity).toBe(String(groups * 3));
    // 34 LF x 0.065 h.
    expect(lineOf(takeoff, 'labour-sub-fascia').quantity).toBe('2.21');
  });

  test('takes the room of both off an overhang that is given to its face, and is covered by the sheathing', () => {
    const toFace = layOut(smallJob(onSub({ overhangTo: 'fascia-face' })))[0];
    expect(toFace?.overhangLevelIn).toBe(16 - 2.25);
    // (16 + 2-1/4) x 1.118 = 20.404 in. wide.
    const line = lineOf(smallTakeoff(onSub()), 'sheathing-panels');
    expect(line.madeOf[0]?.value).toBe('1\' 8-3/8"');
  });

  test('is missing by name where its lumber is not known', () => {
    const job = smallJob(onSub());
    const [design] = job.design.eaves;
    if (design !== undefined) design.fascia.subFascia.stock.section = '2x7';
    expect(computeJob(job)).toMatchObject({
      ok: false,
      problem: { code: 'unknown-section', field: 'design.eaves.0.fascia.subFascia.stock.section' },
    });
  });

  test('goes on with nails that do not rust', () => {
    expect(findNail(smallJob().settings.fastening.subFasciaNail)?.finish).toBe('galvanized');
  });
});
