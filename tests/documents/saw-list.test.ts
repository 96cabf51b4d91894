import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { cell, computed, sampleJob, tables, wordsOf } from './sample.ts';

const job = sampleJob();
const result = computed(job);
const sawList = makeSheet('saw-list', job, result);
const cuts = tables(sawList).filter(({ columns }) => columns[2]?.title === 'Mark');
const rows = cuts.flatMap((table) => table.rows);
const pieceRows = rows.filter((row) => row.style !== 'group' && cell(row, 2) !== 'offcut');

describe('the saw list', () => {
  it('cuts every piece of the takeoff from a board once, at its own length', () => {
    const needed = result.takeoff.pieces
      .filter(({ inPlace }) => inPlace !== true)
      .map((piece) => `${piece.mark} ${formatLength(inchesOf(piece.lengthSixteenths))}`);
    expect(pieceRows.map((row) => `${cell(row, 2)} ${cell(row, 3)}`).sort()).toEqual(needed.sort());
  });

  it('numbers the cuts of each board, has a box to tick for each, and names every board', () => {
    const boards = rows.filter(({ style }) => style === 'group').map((row) => cell(row, 0));
    expect(boards).toHaveLength(result.cutPlans.reduce((sum, { boards: all }) => sum + all.length, 0));
    const counts = result.cutPlans.flatMap(({ boards: all }) => all.map(({ items }) => items.length));
    expect(pieceRows.map((row) => cell(row, 1))).toEqual(
      counts.flatMap((count) => Array.from({ length: count }, (_, index) => String(index + 1))),
    );
    expect(new Set(pieceRows.map((row) => cell(row, 0)))).toEqual(new Set(['☐']));
  });

  it('tells the length along the top edge of a piece with two plumb ends, and which end to cut first', () => {
    const slanted = result.cutPlans.flatMap(({ boards }) =>
      boards.flatMap(({ items }) => items.filter(({ slantSixteenths = 0 }) => slantSixteenths > 0)),
    );
    expect(slanted.length).toBeGreaterThan(0);
    for (const { mark, lengthSixteenths, slantSixteenths = 0 } of slanted) {
      const words = cell(
        pieceRows.find((row) => cell(row, 2) === mark),
        4,
      );
      expect(words).toContain(
        `${formatLength((lengthSixteenths - slantSixteenths) / 16)} along the top edge`,
      );
    }
    const firsts = pieceRows.filter((row) => cell(row, 4).startsWith('left end cut plumb first'));
    const boardsWithSlants = result.cutPlans.flatMap(({ boards }) =>
      boards.filter(({ items }) => items.some(({ slantSixteenths = 0 }) => slantSixteenths > 0)),
    );
    expect(firsts.length).toBeGreaterThanOrEqual(boardsWithSlants.length);
  });

  it('says which hand a piece has, where it has one', () => {
    const handed = result.takeoff.pieces.map((piece, index) =>
      index === 0 ? { ...piece, hand: 'left' as const } : piece,
    );
    const sheet = makeSheet('saw-list', job, { ...result, takeoff: { ...result.takeoff, pieces: handed } });
    expect(wordsOf(sheet)).toContain('left hand');
  });

  it('lists the offcuts that are long enough to keep, and no others', () => {
    const changed = {
      ...job,
      settings: { ...job.settings, cutting: { ...job.settings.cutting, keepOffcutIn: 18 } },
    };
    const kept = tables(makeSheet('saw-list', changed, result))
      .filter(({ columns }) => columns[0]?.title === 'Kept')
      .flatMap((table) => table.rows);
    const long = result.cutPlans.flatMap(({ boards }) =>
      boards.filter(({ offcutSixteenths }) => offcutSixteenths >= 18 * 16),
    );
    expect(long.length).toBeGreaterThan(0);
    expect(kept.map((row) => cell(row, 2)).sort()).toEqual(
      long.map(({ offcutSixteenths }) => formatLength(inchesOf(offcutSixteenths))).sort(),
    );
  });
});
