import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { soundResult } from '../job/example-job.ts';
import { lineOf } from '../takeoff/small-job.ts';
import { prices, rakeJob, type RakeJob } from './rake-job.ts';

const takeoffOf = (change: RakeJob = {}) => soundResult(rakeJob(change)).takeoff;
const rakeOf = (change: RakeJob = {}) => soundResult(rakeJob(change)).rakes[0]!;
const ofUse = (change: RakeJob, ...uses: readonly string[]) =>
  takeoffOf(change).pieces.filter((piece) => piece.rakeId === 'gable' && uses.includes(piece.use));
/** Nails of one kind that the rake takes. */
const nailsOf = (change: RakeJob, nail: string): number =>
  Number(/Rake R1: (\d+)/.exec(lineOf(takeoffOf(change), `nails-${nail}`).where)?.[1]);

describe('the pieces of a rake', () => {
  test('have marks of their own, beside those of the eave', () => {
    const { pieces } = takeoffOf();
    const marks = pieces.map(({ mark }) => mark);
    expect(new Set(marks).size).toBe(marks.length);
    expect(marks).toEqual(expect.arrayContaining(['R1-K01', 'R1-G01', 'R1-F01', 'A-E01', 'A-F01']));
    expect(pieces.filter(({ mark }) => mark.startsWith('R1')).every(({ rakeId }) => rakeId === 'gable')).toBe(
      true,
    );
  });

  test('are lookouts, one barge rafter and its fascia; of a butted rake a block behind each lookout as well', () => {
    const count = rakeOf().lookouts.length;
    expect(ofUse({}, 'lookout')).toHaveLength(count);
    expect(ofUse({}, 'barge')).toHaveLength(1);
    expect(ofUse({}, 'rake-fascia')).toHaveLength(1);
    const butted = { rakeDesign: { atGableRafter: 'butted' } };
    expect(ofUse(butted, 'lookout')).toHaveLength(2 * count);
    expect(ofUse(butted, 'lookout').filter(({ mark }) => /-B\d\d$/.test(mark))).toHaveLength(count);
  });

  test('of a ladder are a rail and rungs', () => {
    const pieces = ofUse({ rakeDesign: { kind: 'ladder', overhangIn: 9, spacingIn: 16 } }, 'ladder');
    expect(pieces.filter(({ mark }) => /-R\d\d$/.test(mark))).toHaveLength(1);
    expect(pieces.filter(({ mark }) => /-K\d\d$/.test(mark)).length).toBeGreaterThan(9);
  });

  test('have no hand, but for the rake fascia: its mitred end is on the right where the eave is, seen from outside', () => {
    const hands = new Set(
      takeoffOf().pieces.flatMap(({ use, hand, rakeId }) =>
        rakeId === undefined ? [] : [`${use} ${hand ?? 'either'}`],
      ),
    );
    expect(hands).toEqual(new Set(['lookout either', 'barge either', 'rake-fascia right']));
    const right = {
      rake: { end: 'right' },
      eaveDesign: { ends: { right: { kind: 'rake', meets: 'gable' } } },
    };
    expect(ofUse(right, 'rake-fascia')[0]!.hand).toBe('left');
  });

  test('say their cuts in words of the saw', () => {
    const [lookout] = ofUse({}, 'lookout');
    expect(lookout!.cuts).toBe('square ends, left 1" long and cut to the string; let 1-1/2" into A-E01');
    expect(ofUse({}, 'barge')[0]!.cuts).toBe('plumb tail 26.6 deg; plumb ridge cut 26.6 deg');
    expect(ofUse({}, 'rake-fascia')[0]!.cuts).toBe(
      'plumb corner cut 26.6 deg, mitred 45 deg, long point 13/16" past the short one on the face; plumb ridge cut 26.6 deg',
    );
  });
});

describe('the nails of a rake', () => {
  // Nine lookouts here, by hand: one past the wall crosses the tail alone (3 joints with the member inside and the barge),
  // those beside the tail cross it and the rafter (4), those above it the rafter (3); 3 nails a joint.
  test('hold a lookout to each member it crosses, to the member inside and to the barge rafter, three each', () => {
    const { lookouts } = rakeOf();
    const joints = lookouts.reduce((sum, { crosses }) => sum + crosses.length + 2, 0);
    expect(lookouts.map(({ crosses }) => crosses.length)).toContain(2);
    // Ridge and foot of the barge rafter are two joints more.
    expect(nailsOf({}, '16d-common')).toBe(3 * (joints + 2));
  });

  test('hold a butted lookout at gable and barge, and its block at both ends: four joints', () => {
    const change = { rakeDesign: { atGableRafter: 'butted' } };
    expect(nailsOf(change, '16d-common')).toBe(3 * (4 * rakeOf(change).lookouts.length + 2));
  });

  test('hold a rung to rail and barge, and the rail to the gable rafter beside it: three joints', () => {
    const change = { rakeDesign: { kind: 'ladder', overhangIn: 9 } };
    expect(nailsOf(change, '16d-common')).toBe(3 * (3 * rakeOf(change).lookouts.length + 2));
  });

  test('hold the rake fascia three times at each lookout, being deeper than 5-1/2 in.', () => {
    expect(nailsOf({}, '8d-common-galvanized')).toBe(3 * rakeOf().lookouts.length);
    expect(
      lineOf(takeoffOf({ rakeDesign: { fascia: { wanted: false } } }), 'nails-8d-common-galvanized').where,
    ).not.toMatch(/Rake/);
  });

  test('hold planks twice on barge, gable rafter and first rafter inside, course by course', () => {
    const change = { rakeDesign: { sheathing: { kind: 'planks', itemId: 'plank' } }, priceList: prices };
    // From the top of the eave's strip at 17.889 to the ridge at 178.885: 160.997 / 5-1/2 -> 30 courses x 3 x 2.
    expect(nailsOf(change, '8d-common')).toBe(180);
  });
});

describe('the sheathing of a rake', () => {
  const panels = {
    rakeDesign: { sheathing: { itemId: 'sheet' } },
    eaveDesign: { ends: { left: { kind: 'rake', meets: 'gable' } }, sheathing: { itemId: 'sheet' } },
    priceList: prices,
  };

  test('is a strip over fascia, barge and lookouts to the middle of the first rafter inside: 28-3/4 in. by 161 in.', () => {
    // By hand: 28.75 x (178.885 - 17.889) / 144 = 32.14 sq ft.
    const line = lineOf(takeoffOf(panels), 'rake-sheathing-sheet');
    expect(line.quantity).toBe('32.14');
    expect(line.where).toBe('Rake R1: 32.14 SF');
  });

  test('shares its sheets with the eave: together no more than both would buy alone', () => {
    const { lines } = takeoffOf(panels);
    const sheets = lines.map(({ need }) => (need.kind === 'sheets' ? need.sheets : 0));
    const all = sheets.reduce((sum, one) => sum + one, 0);
    const eaveAlone = lineOf(
      takeoffOf({ ...panels, rakeDesign: { sheathing: { kind: 'none' } } }),
      'sheathing-sheet',
    );
    expect(eaveAlone.need).toMatchObject({ kind: 'sheets' });
    const alone = eaveAlone.need.kind === 'sheets' ? eaveAlone.need.sheets : 0;
    // Two panels up the slope, 28-3/4 wide: one sheet each, and the rest of each is too narrow for the other.
    expect(all).toBeLessThanOrEqual(alone + 2);
    expect(all).toBeGreaterThanOrEqual(alone);
  });

  test('of planks runs course on course across the rake, with waste', () => {
    // 30 courses x 28-3/4 / 12 = 71.88 LF; with 10 % 79.07.
    const change = { rakeDesign: { sheathing: { kind: 'planks', itemId: 'plank' } }, priceList: prices };
    const line = lineOf(takeoffOf(change), 'rake-sheathing-plank');
    expect(line.quantity).toBe('71.88');
    expect(line.need).toMatchObject({ kind: 'planks', itemId: 'plank', lengthFt: '79.07' });
  });

  test('that is not chosen is named among what lacks, at its entry', () => {
    const lack = takeoffOf().lacks.find(({ field }) => field === 'design.rakes.0.sheathing.itemId');
    expect(problemSentence(lack!)).toMatch(/Sheathing of Rake R1 \(West rake\)/);
    expect(
      takeoffOf({ rakeDesign: { sheathing: { kind: 'none' } } }).lacks.map(({ field }) => field),
    ).not.toContain('design.rakes.0.sheathing.itemId');
  });
});

describe('the edge and the work of a rake', () => {
  // Long point 0.839 past the tail's top corner, 178.885 to the ridge: 179.724 in. = 14.98 LF.
  test('are counted by the length up the slope, corner to ridge', () => {
    const takeoff = takeoffOf();
    expect(lineOf(takeoff, 'drip-edge').where).toMatch(/Rake R1: 14\.98 LF/);
    expect(lineOf(takeoff, 'labour-rake-framing').quantity).toBe('5.62');
    expect(lineOf(takeoff, 'labour-rake-barge').quantity).toBe('2.4');
    expect(lineOf(takeoff, 'labour-rake-corner').quantity).toBe('2.5');
  });

  test('laps drip edge 2 in.: 15 ft from 10 ft pieces are two', () => {
    // IRC R905.2.8.5 (2015, as seen in transcription): laps of 2 in. at eaves and rakes; ceil((179.72 - 2) / 118) = 2.
    expect(
      lineOf(takeoffOf(), 'drip-edge')
        .madeOf.map(({ label }) => label)
        .join(' '),
    ).toMatch(/Rake R1: 14\.98 LF in 2 pieces, over the underlayment/);
    expect(lineOf(takeoffOf({ rakeDesign: { dripEdge: false } }), 'drip-edge').where).not.toMatch(/Rake/);
  });

  test("goes by the shop's own rate where it has one", () => {
    const own = { settings: { labour: { rates: [{ task: 'rake-corner', hoursPerUnit: 4 }] } } };
    expect(lineOf(takeoffOf(own), 'labour-rake-corner')).toMatchObject({
      quantity: '4',
      need: { rateMark: 'own' },
    });
    expect(lineOf(takeoffOf(), 'labour-rake-corner').need).toMatchObject({ rateMark: 'placeholder' });
  });
});

describe('the price of a rake', () => {
  const priced: RakeJob = {
    priceList: prices,
    rakeDesign: { sheathing: { itemId: 'sheet' } },
    eaveDesign: { ends: { left: { kind: 'rake', meets: 'gable' } }, sheathing: { itemId: 'sheet' } },
  };

  test('lacks nothing where everything has a price, and is part of the sum', () => {
    const result = soundResult(rakeJob(priced));
    expect(result.estimate.lacks.map(problemSentence)).toEqual([]);
    const without = soundResult(rakeJob({ ...priced, rakeDesign: { kind: 'none' } }));
    expect(without.rakes).toEqual([]);
    expect(Number(result.estimate.totalUsd)).toBeGreaterThan(Number(without.estimate.totalUsd));
    const planned = result.cutPlans.flatMap(({ boards }) =>
      boards.flatMap(({ items }) => items.map(({ mark }) => mark)),
    );
    for (const { mark } of result.takeoff.pieces) expect(planned).toContain(mark);
  });
});
