import { expect, test } from 'vitest';
import { planOf, makeProblem } from '../cutting/make-problem.ts';

/** Pieces that one board gives, and what is left of it. [in] */
function fromOneBoard(pieceIn: number, feet: number, kerfIn: number) {
  const most = Math.floor((feet * 12) / pieceIn) + 1;
  for (let count = most; count > 0; count -= 1) {
    const plan = planOf(makeProblem(Array<number>(count).fill(pieceIn), [[feet, 1000]], { kerfIn }));
    const [board] = plan.boards;
    if (plan.boards.length === 1 && board !== undefined)
      return { count, leftIn: board.offcutSixteenths / 16 };
  }
  return { count: 0, leftIn: feet * 12 };
}

test('28 in. pieces: four from a 10 ft board with 8 in. left, five from 12 ft with 4 in. left, kerf not counted', () => {
  // Source: US Army EN0069A, "Frame Structures".
  expect(fromOneBoard(28, 10, 0)).toEqual({ count: 4, leftIn: 8 });
  expect(fromOneBoard(28, 12, 0)).toEqual({ count: 5, leftIn: 4 });
});

test('with a kerf of 1/8 in. there are still five, and 3-3/8 in. behind the last cut', () => {
  // Computed by hand: 144 - 5 x 28 - 5 x 1/8 = 3.375. Kerf: common practice, no source.
  expect(fromOneBoard(28, 12, 0.125)).toEqual({ count: 5, leftIn: 3.375 });
});

test.each([
  // Blank, and blanks from boards of 8, 10, 12, 14, 16 and 20 ft; 2x6, kerf 1/8 in., computed by hand as
  // floor((L + k) / (blank + k)).
  [41.3, [2, 2, 3, 4, 4, 5]],
  [60.3, [1, 1, 2, 2, 3, 3]],
  [46.4, [2, 2, 3, 3, 4, 5]],
  [67.2, [1, 1, 2, 2, 2, 3]],
  [88.1, [1, 1, 1, 1, 2, 2]],
  [76.4, [1, 1, 1, 2, 2, 3]],
])('a blank of %f in. comes out of the stock lengths as often as worked by hand', (blankIn, counts) => {
  expect([8, 10, 12, 14, 16, 20].map((feet) => fromOneBoard(blankIn, feet, 0.125).count)).toEqual(counts);
});

test('tails of 16 in. along the slope make 4 ft pieces: two from 8 ft, three from 12 ft where saw and trim take nothing', () => {
  // Common practice, no source: 16 in. out and twice as far back, 48 in. A kerf makes the second one short.
  expect(fromOneBoard(48, 8, 0).count).toBe(2);
  expect(fromOneBoard(48, 12, 0).count).toBe(3);
  expect(fromOneBoard(48, 8, 0.125).count).toBe(1);
});
