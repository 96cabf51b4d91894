import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blockLength } from '../../core/takeoff/pieces.ts';
import { layOut, lineOf, smallJob, smallTakeoff } from './small-job.ts';

const blockCuts = (faces: string) =>
  smallTakeoff({
    eaveDesign: { blocks: { stock: { section: '2x6', grade: 'No.2' }, faces } },
  }).pieces.find((piece) => piece.use === 'block')?.cuts;

const squareTailCuts = (backEnd: string) =>
  smallTakeoff({ eaveDesign: { tailCut: 'square', trimAllowanceIn: 0, backEnd } }).pieces[0]?.cuts;

describe('pieces', () => {
  test('a mark stands for one piece in the whole job', () => {
    const { pieces } = smallTakeoff({
      moreEaves: [
        [12, 40, 64],
        [20, 44],
      ],
    });
    expect(new Set(pieces.map((piece) => piece.mark)).size).toBe(pieces.length);
    expect(pieces.length).toBe(20);
  });

  test('an extender keeps the length of the layout', () => {
    const job = smallJob();
    const [layout] = layOut(job);
    const extenders = smallTakeoff().pieces.filter((piece) => piece.use === 'extender');
    expect(extenders.map(({ mark, lengthSixteenths }) => [mark, lengthSixteenths])).toEqual(
      layout?.extenders.map(({ mark, blankSixteenths }) => [mark, blankSixteenths]),
    );
    expect(extenders).toHaveLength(5);
  });

  test('a block is never longer than the bay it goes into, nor shorter by a sixteenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (clearIn) => {
        const lengthIn = blockLength({ clearIn }) / 16;
        expect(lengthIn).toBeLessThanOrEqual(clearIn + 1e-7);
        expect(lengthIn).toBeGreaterThan(clearIn - 1 / 16);
      }),
    );
  });

  test('the saw is told the tail, the seat and the side', () => {
    // 6/12 is 26.565 deg. HAP 4.5 in., 2x6: d s = 6.149 in. -> heel 1.649 = 1-5/8 in., seat 3.298 = 3-5/16 in.
    // Overhang 16 in. level: the wall's face crosses the top edge 2 x 16 x 1.118 = 35.777 in. from the back end.
    const [first] = smallTakeoff().pieces;
    expect(first?.cuts).toBe(
      'plumb tail 26.6 deg, left 1" long and cut to the string; back end plumb, parallel to the tail; seat 3-5/16", heel 1-5/8", wall line 2\' 11-3/4" from the back end on the top edge; on the right of rafter 1',
    );
  });

  test('a square tail cut to length at once says so', () => {
    expect(squareTailCuts('square')).toMatch(/^square tail; seat /);
    expect(squareTailCuts('parallel')).toMatch(/^square tail; back end plumb 26\.6 deg; seat /);
  });

  test('an extender that clears the plate gets its shim named', () => {
    const { pieces } = smallTakeoff({ eave: { heightAbovePlateIn: 6.5 } });
    // 6.5 - 5.5 x 1.118 = 0.351 in. -> 3/8 in.
    expect(pieces[0]?.cuts).toContain('no seat cut, 3/8" shim on the plate');
  });

  test('blocks stand plumb with a bevelled top or square to the slope, as designed', () => {
    expect(blockCuts('plumb')).toBe('square ends; set plumb, top edge bevelled 26.6 deg');
    expect(blockCuts('square')).toBe('square ends; set square to the slope');
  });

  test('pieces of different use but one stock stand on lines of their own', () => {
    const takeoff = smallTakeoff();
    expect(lineOf(takeoff, 'extenders-2x6-No.2').quantity).toBe('5');
    expect(lineOf(takeoff, 'blocks-2x6-No.2').where).toBe('Eave A: 4');
    const fascia = lineOf(takeoff, 'fascia-1x8-primed');
    expect(fascia.unit).toBe('LF');
    expect(Number(fascia.quantity)).toBeGreaterThanOrEqual(10);
  });

  test('every lumber line names all its pieces, and every piece is on one line', () => {
    const takeoff = smallTakeoff({ moreEaves: [[12, 40, 64]] });
    const onLines = takeoff.lines.flatMap((line) => (line.need.kind === 'lumber' ? line.need.marks : []));
    expect(onLines.toSorted()).toEqual(takeoff.pieces.map((piece) => piece.mark).toSorted());
  });
});
