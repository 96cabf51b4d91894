import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeRuns, noMeetings, type Meeting } from '../../core/layout/eave-ends.ts';
import { boardsOnJoints, breakFascia, jointsOf } from '../../core/layout/fascia-joints.ts';
import type { FasciaRun, RunEnd } from '../../core/layout/layout-types.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

const square = (stationIn: number): RunEnd => ({ kind: 'square', faceIn: stationIn, backIn: stationIn });

function run({ toIn = 240, ...rest }: Partial<FasciaRun> & { readonly toIn?: number }): FasciaRun {
  return {
    letter: 'A',
    kind: 'F',
    left: square(0),
    right: square(toIn),
    tailCentresIn: [],
    thicknessIn: 0.75,
    bevelJoints: false,
    longestIn: 192,
    ...rest,
  };
}

const every = (stepIn: number, toIn: number) =>
  Array.from({ length: Math.floor(toIn / stepIn) }, (_, index) => (index + 1) * stepIn);

describe('fascia boards', () => {
  it('run the wall and past its ends in one board where that is long enough', () => {
    const { fascia, fasciaLengthIn } = layOut(
      makeEave([16, 40, 64, 88], { lengthIn: 100 }),
      makeDesign({ fascia: { stock: { section: '1x8' }, pastLeftIn: 2, pastRightIn: 3 } }),
    );
    expect(fascia).toEqual([
      {
        mark: 'A-F01',
        fromIn: -2,
        toIn: 103,
        lengthSixteenths: 105 * 16,
        shortSixteenths: 105 * 16,
        leftEnd: 'square',
        rightEnd: 'square',
      },
    ]);
    expect(fasciaLengthIn).toBe(105);
  });

  it('are as few as can be, and then as even as the tails allow: 20 ft with tails every 16 in. breaks at 112 or 128', () => {
    const { pieces } = breakFascia(run({ tailCentresIn: every(16, 240) }));
    expect(pieces).toHaveLength(2);
    expect([112, 128]).toContain(pieces[0]?.toIn);
  });

  it('are no two where one reaches, however even two would be', () => {
    expect(breakFascia(run({ toIn: 192, tailCentresIn: every(16, 192) })).pieces).toHaveLength(1);
  });

  it('overlap on a bevel by half their thickness at each joint: the long point', () => {
    const { pieces } = breakFascia(run({ toIn: 320, tailCentresIn: [160], bevelJoints: true }));
    expect(pieces.map(({ lengthSixteenths }) => lengthSixteenths / 16)).toEqual([160.375, 160.375]);
    expect(pieces.map(({ leftEnd, rightEnd }) => [leftEnd, rightEnd])).toEqual([
      ['square', 'bevel'],
      ['bevel', 'square'],
    ]);
  });

  it('butt where bevels are not wanted', () => {
    const { pieces } = breakFascia(run({ toIn: 320, tailCentresIn: [160] }));
    expect(pieces.map(({ lengthSixteenths }) => lengthSixteenths / 16)).toEqual([160, 160]);
    expect(pieces[0]?.rightEnd).toBe('butt');
  });

  it('fit the longest board with the bevel counted in', () => {
    const tails = [96, 191.8, 288];
    expect(breakFascia(run({ toIn: 383, tailCentresIn: tails })).pieces).toHaveLength(2);
    expect(breakFascia(run({ toIn: 383, tailCentresIn: tails, bevelJoints: true })).pieces).toHaveLength(3);
  });

  it('are assumed to come in 16 ft where no price list says better', () => {
    const tailCentresIn = every(16, 240);
    expect(breakFascia(run({ tailCentresIn, longestIn: null }))).toEqual(breakFascia(run({ tailCentresIn })));
  });

  it('need tails: without any there are none', () => {
    expect(breakFascia(run({}))).toEqual({ pieces: [], gaps: [] });
  });

  it('that no tail lets be short enough are told as a gap, and the rest is still broken well', () => {
    const { pieces, gaps } = breakFascia(run({ toIn: 500, tailCentresIn: [20, 250, 400] }));
    expect(gaps).toMatchObject([{ fromIn: 20, toIn: 250 }]);
    expect(pieces.map(({ fromIn, toIn }) => [fromIn, toIn])).toEqual([
      [0, 20],
      [20, 250],
      [250, 400],
      [400, 500],
    ]);
  });

  it('longer than any board are a finding with the stretch, so that a half-typed survey still draws', () => {
    const { findings, fascia } = layOut(makeEave([16, 40], { lengthIn: 400 }), makeDesign(), 186);
    expect(fascia.at(-1)).toMatchObject({ fromIn: 41.5, toIn: 400 });
    expect(findings.find(({ topic }) => topic === 'fascia-gap')).toMatchObject({
      stationIn: 220.75,
      text: expect.stringContaining(
        'no tail to break on for 29\' 10-1/2", from 3\' 5-1/2" to 33\' 4", and the longest board, 15\' 6" usable, does not reach',
      ),
    });
  });
});

describe('whatever the tails', () => {
  const tails = fc.uniqueArray(fc.integer({ min: 1, max: 479 }), { minLength: 1, maxLength: 9 });
  const anyRun = fc.record({
    tails,
    longestIn: fc.integer({ min: 60, max: 240 }),
    bevelJoints: fc.boolean(),
  });

  it('boards join end to end from one end to the other, and every joint lands on a tail', () => {
    fc.assert(
      fc.property(anyRun, ({ tails: tailCentresIn, ...rest }) => {
        const { pieces } = breakFascia(run({ toIn: 480, tailCentresIn, ...rest }));
        expect(pieces[0]?.fromIn).toBe(0);
        expect(pieces.at(-1)?.toIn).toBe(480);
        for (const [index, { fromIn }] of pieces.slice(1).entries()) {
          expect(fromIn).toBe(pieces[index]?.toIn);
          expect(tailCentresIn).toContain(fromIn);
        }
        expect(pieces.map(({ mark }) => mark)).toEqual(
          pieces.map((_, index) => `A-F0${index + 1}`.replace('010', '10')),
        );
      }),
    );
  });

  it('no other choice of joints has fewer boards, or as few and more even ones (all choices tried)', () => {
    fc.assert(
      fc.property(anyRun, ({ tails: tailCentresIn, ...rest }) => {
        const bevelIn = rest.bevelJoints ? 0.375 : 0;
        const sorted = tailCentresIn.toSorted((a, b) => a - b);
        let best: readonly [number, number, number] = [Infinity, Infinity, Infinity];
        for (let choice = 0; choice < 2 ** sorted.length; choice += 1) {
          const stops = [0, ...sorted.filter((_, index) => (choice >> index) & 1), 480];
          const lengths = stops
            .slice(1)
            .map(
              (to, index) =>
                to - (stops[index] ?? 0) + (index === 0 ? 0 : bevelIn) + (to === 480 ? 0 : bevelIn),
            );
          const tooLong = lengths.filter((length) => length > rest.longestIn).length;
          const squares = lengths.reduce((sum, length) => sum + length ** 2, 0);
          const score = [tooLong, lengths.length, squares] as const;
          const order =
            [score[0] - best[0], score[1] - best[1], score[2] - best[2]].find((by) => by !== 0) ?? 0;
          // A board that is too long may only span two neighbouring tails.
          const spread = lengths.some(
            (length, index) =>
              length > rest.longestIn &&
              sorted.some((at) => at > (stops[index] ?? 0) && at < (stops[index + 1] ?? 0)),
          );
          if (!spread && order < 0) best = score;
        }
        const { pieces, gaps } = breakFascia(run({ toIn: 480, tailCentresIn, ...rest }));
        const lengths = pieces.map(({ fromIn, toIn }, index) => {
          const joints = (index === 0 ? 0 : 1) + (toIn === 480 ? 0 : 1);
          return toIn - fromIn + joints * bevelIn;
        });
        expect([gaps.length, pieces.length]).toEqual([best[0], best[1]]);
        expect(lengths.reduce((sum, length) => sum + length ** 2, 0)).toBeCloseTo(best[2], 6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('joints that others chose', () => {
  it('give the same boards as the joints found here', () => {
    const chosen = run({ tailCentresIn: every(16, 400), toIn: 400, bevelJoints: true });
    const { pieces } = breakFascia(chosen);
    expect(boardsOnJoints(chosen, jointsOf(pieces))).toEqual(pieces);
    expect(boardsOnJoints(chosen, [64, 208]).map(({ fromIn, toIn }) => [fromIn, toIn])).toEqual([
      [0, 64],
      [64, 208],
      [208, 400],
    ]);
  });
});

describe('a sub-fascia behind the fascia', () => {
  const tailCentresIn = every(16, 240);

  it('breaks on another tail than the fascia does, with no board more', () => {
    const fascia = breakFascia(run({ tailCentresIn }));
    const behind = breakFascia(run({ tailCentresIn, kind: 'U' }), jointsOf(fascia.pieces));
    expect(behind.pieces.map(({ mark }) => mark)).toEqual(['A-U01', 'A-U02']);
    expect(jointsOf(fascia.pieces)).not.toContain(jointsOf(behind.pieces)[0]);
  });

  it('breaks on the same one where there is no other', () => {
    const only = run({ tailCentresIn: [120] });
    expect(jointsOf(breakFascia(only, [120]).pieces)).toEqual([120]);
  });

  it('shares no joint that any choice of joints could spare (all choices tried)', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 479 }), { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 120, max: 300 }),
        (tails, longestIn) => {
          const sorted = tails.toSorted((a, b) => a - b);
          const own = run({ toIn: 480, tailCentresIn: sorted, longestIn });
          const avoid = jointsOf(breakFascia(own).pieces);
          const { pieces, gaps } = breakFascia(own, avoid);
          let fewest = Infinity;
          for (let choice = 0; choice < 2 ** sorted.length; choice += 1) {
            const joints = sorted.filter((_, index) => (choice >> index) & 1);
            const stops = [0, ...joints, 480];
            const long = stops.flatMap((to, index) => {
              const from = stops[index - 1] ?? 0;
              return to - from > longestIn ? [{ from, to }] : [];
            });
            // A board that is too long may only span two neighbouring tails.
            const spread = long.some(({ from, to }) => sorted.some((at) => at > from && at < to));
            if (spread || long.length > gaps.length) continue;
            fewest = Math.min(fewest, joints.filter((joint) => avoid.includes(joint)).length);
          }
          expect(jointsOf(pieces).filter((joint) => avoid.includes(joint)).length).toBe(fewest);
        },
      ),
      { numRuns: 60 },
    );
  });
});

const ends = (meetings: { left?: Meeting; right?: Meeting }, subFascia = false) =>
  edgeRuns(
    {
      letter: 'A',
      wallLengthIn: 240,
      design: makeDesign({
        fascia: {
          stock: { section: '1x8' },
          pastLeftIn: 2,
          pastRightIn: 3,
          subFascia: { wanted: subFascia },
        },
      }),
      tailCentresIn: every(24, 230),
    },
    { ...noMeetings, ...meetings },
    { fasciaIn: 284, subFasciaIn: 284 },
  );

/** Where two faces cross that stand so far out of their walls, the corner at the origin. */
const crossing = (ownOff: number, otherOff: number) => ({ x: -otherOff, y: -ownOff });

describe('the ends of the edge', () => {
  const corner: Meeting = {
    kind: 'outside-corner',
    name: 'East eave',
    overhangIn: 16,
    subFasciaIn: 0,
    fasciaIn: 0.75,
  };

  it('run past a free end as designed, and are square there', () => {
    const { fascia, subFascia } = ends({});
    expect([fascia.left, fascia.right]).toEqual([square(-2), square(243)]);
    expect(subFascia).toBeNull();
  });

  it('reach the long point of the mitre at an outside corner: the other overhang and its thickness', () => {
    // Backs meet 16 in. past the wall's end; at 45 degrees the faces meet one thickness further: 16-3/4 in.
    const { fascia } = ends({ left: corner, right: corner });
    const [board] = breakFascia({ ...fascia, longestIn: 300 }).pieces;
    expect(board).toMatchObject({
      fromIn: -16.75,
      toIn: 256.75,
      lengthSixteenths: 273.5 * 16,
      shortSixteenths: 272 * 16,
      leftEnd: 'mitre',
      rightEnd: 'mitre',
    });
  });

  it('meet the rake the same way, at the barge rafter and its fascia', () => {
    const { fascia } = ends({ right: { ...corner, kind: 'rake', overhangIn: 8 } });
    expect(fascia.right).toEqual({ kind: 'mitre', backIn: 248, faceIn: 248.75 });
    expect(ends({ right: { ...corner, kind: 'rake', overhangIn: 8, fasciaIn: 0 } }).fascia.right).toEqual(
      square(248),
    );
  });

  it("stop at an inside corner at the other fascia's line, with the long point on the back", () => {
    const { fascia } = ends({ left: { ...corner, kind: 'inside-corner' } });
    const [board] = breakFascia({ ...fascia, longestIn: 300 }).pieces;
    // Back from 16, face from 16-3/4 to the free end at 243.
    expect(board).toMatchObject({
      fromIn: 16.75,
      lengthSixteenths: 227 * 16,
      shortSixteenths: 226.25 * 16,
      leftEnd: 'inside-mitre',
      rightEnd: 'square',
    });
  });

  it('take the sub-fascia round the corner behind the fascia, board against its like', () => {
    const { fascia, subFascia } = ends({ left: { ...corner, subFasciaIn: 1.5 } }, true);
    // Sub-fascia: 16 on the back, 17-1/2 on the face; the fascia before it: 17-1/2 and 18-1/4.
    expect(subFascia?.left).toEqual({ kind: 'mitre', backIn: -16, faceIn: -17.5 });
    expect(fascia.left).toEqual({ kind: 'mitre', backIn: -17.5, faceIn: -18.25 });
    // Where the other eave has none, or at a rake, it ends square behind the fascia.
    expect(ends({ left: corner }, true).subFascia?.left).toEqual(square(-16));
  });

  it('are where the two fascia faces cross, drawn from the walls out (second construction)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 40, noNaN: true }),
        fc.double({ min: 6, max: 40, noNaN: true }),
        fc.constantFrom(0.75, 1, 1.5),
        (ownIn, otherIn, thickIn) => {
          // Own wall along x, out is -y; the other wall runs back along y from the corner at x = 0, its outside at x < 0.
          const backs = crossing(ownIn, otherIn);
          const faces = crossing(ownIn + 0.75, otherIn + thickIn);
          const { fascia } = ends({ left: { ...corner, overhangIn: otherIn, fasciaIn: thickIn } });
          expect(fascia.left.backIn).toBeCloseTo(backs.x, 9);
          expect(fascia.left.faceIn).toBeCloseTo(faces.x, 9);
          // A mitre of like boards is the bisector of a right angle; of others its sides are as their thicknesses.
          expect((backs.x - faces.x) * 0.75).toBeCloseTo((backs.y - faces.y) * thickIn, 9);
        },
      ),
    );
  });
});
