import { describe, expect, it } from 'vitest';
import { extenderSchedule } from '../../core/documents/piece-schedules.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';

describe('the schedule of the extenders', () => {
  it('gives each piece that clears the plate its shim, and none where no tape shows one', () => {
    // 2x6 at 6/12: plumb depth 6.149 in. HAP 6-1/2 clears by 0.351, 6.16 by 0.011; HAP 5 is notched, seat 2.298 in.
    const survey = makeEave([], {
      rafters: [
        { id: 'a', readingIn: 20, heightAbovePlateIn: 6.5 },
        { id: 'b', readingIn: 42, heightAbovePlateIn: 6.16 },
        { id: 'c', readingIn: 64, heightAbovePlateIn: 5 },
      ],
    });
    const table = extenderSchedule(layOut(survey, makeDesign({ fasciaLine: 'as-found' })));
    if (table.kind !== 'table') throw new Error('the schedule is no table');
    const seat = table.columns.findIndex(({ title }) => title === 'Seat');
    expect(table.rows.map(({ cells }) => cells[seat])).toEqual(['shim 3/8"', 'on corner', '2-5/16"']);
  });
});
