import { expect, test } from 'vitest';
import { sampleText, type Asker } from './contract-asker.ts';

const board = (id: string, supplier: string) => ({
  id,
  supplier,
  category: 'lumber' as const,
  description: `5/4x6 cypress, ${supplier}`,
  unit: 'each' as const,
  section: '5/4x6',
  grade: 'clear',
  lengthFt: 12,
});

/** The shop's boards on hand, and what prices did over time. */
export function checkStockAndHistory(asker: Asker): void {
  const { value, problem } = asker;
  const piece = { section: '2x6', grade: 'No.2', lengthIn: 61.3, valueUsd: '2.5', note: 'from the barn' };

  test('boards come onto the rack, are set right, thrown out and brought back', async () => {
    expect(await value('stock.add', { ...piece, count: 2 })).toEqual({ added: 2 });
    const [one, two] = await value('stock.list', {});
    // 61.3 in. is cut down to a whole sixteenth: 61-1/4.
    expect(one).toMatchObject({ sequence: 1, lengthIn: 61.25, valueUsd: '2.50', forJob: null, goneOn: null });
    await value('stock.change', { id: one?.id ?? '', piece: { ...piece, lengthIn: 48 } });
    await value('stock.throwOut', { id: two?.id ?? '' });
    expect((await value('stock.list', {})).map(({ lengthIn }) => lengthIn)).toEqual([48]);
    expect(await problem('stock.throwOut', { id: two?.id })).toMatchObject({ code: 'not-found' });
    expect(await value('stock.list', { withGone: true })).toHaveLength(2);
    await value('stock.bringBack', { id: two?.id ?? '' });
    expect(await value('stock.list', {})).toHaveLength(2);
    expect(await problem('stock.change', { id: 'nothing', piece })).toMatchObject({ code: 'not-found' });
    expect(await problem('stock.add', { ...piece, lengthIn: 0 })).toMatchObject({ field: 'lengthIn' });
  });

  test('a job takes a board by naming it, and gives back what it is cut from', async () => {
    const { id: jobId } = await value('jobs.import', { text: sampleText });
    const job = await value('jobs.get', { id: jobId });
    const cutting = {
      ...job.design.cutting,
      onHand: [{ id: 'stock-1', section: '2x6', grade: '', lengthIn: 48, count: 1, valueUsd: '2.50' }],
    };
    await value('jobs.save', {
      id: jobId,
      baseRevision: job.revision,
      design: { ...job.design, cutting },
    });
    expect((await value('stock.list', {}))[0]?.forJob).toEqual({ id: jobId, name: job.info.name });
    const finish = { jobId, used: [1], offcuts: [piece, piece, piece] };
    expect(await problem('stock.finishJob', { ...finish, used: [2] })).toMatchObject({ code: 'prices' });
    expect(await value('stock.finishJob', finish)).toEqual({ added: 3 });
    expect(await problem('stock.finishJob', finish)).toMatchObject({ fault: { what: 'offcuts-in-already' } });
    expect(await value('stock.list', {})).toHaveLength(4);
    await value('stock.takeBackJob', { jobId });
    expect(await value('stock.list', {})).toHaveLength(2);
    expect(await problem('stock.takeBackJob', { jobId: 'nothing' })).toMatchObject({ code: 'not-found' });
  });

  test('prices are told as they went, since a day, and between suppliers', async () => {
    await value('prices.saveItem', { item: board('cypress-a', 'Hollin Yard') });
    await value('prices.saveItem', { item: board('cypress-b', 'Fernhollow Lumber') });
    for (const [itemId, priceUsd, observedOn] of [
      ['cypress-a', '20', '2026-01-10'],
      ['cypress-a', '22', '2026-03-10'],
      ['cypress-b', '24.20', '2026-01-10'],
    ] as const)
      await value('prices.observe', { itemId, observation: { priceUsd, observedOn } });
    const [history] = await value('prices.histories', { itemIds: ['cypress-a', 'nothing'] });
    expect(history?.prices.map(({ priceUsd }) => priceUsd)).toEqual(['20', '22']);
    const changed = await value('prices.changesSince', { since: '2026-02-01' });
    expect(changed.find(({ itemId }) => itemId === 'cypress-a')).toMatchObject({
      before: { priceUsd: '20' },
      after: { priceUsd: '22' },
      percent: '10.0',
    });
    expect(changed.some(({ itemId }) => itemId === 'cypress-b')).toBe(false);
    const spreads = await value('prices.spread', { on: '2026-03-20' });
    expect(spreads.find(({ what }) => what.startsWith('5/4x6'))).toMatchObject({ spreadPercent: '10.0' });
  });

  test('an index series comes in from two columns, is corrected by a later file, and goes', async () => {
    const first = { series: 'Made-up index', text: 'month,value\n2026-01,100\n2026-02,101\n' };
    expect(await value('prices.importIndex', first)).toEqual({ months: 2, changed: 0 });
    const later = { series: 'Made-up index', text: '2026-02,102\n2026-03,103\n' };
    expect(await value('prices.importIndex', later)).toEqual({ months: 2, changed: 1 });
    expect(await value('prices.indexes', {})).toEqual([
      {
        series: 'Made-up index',
        values: [
          { month: '2026-01', value: '100' },
          { month: '2026-02', value: '102' },
          { month: '2026-03', value: '103' },
        ],
      },
    ]);
    expect(await problem('prices.importIndex', { series: 'x', text: '2026-02,-4' })).toMatchObject({
      code: 'csv-broken',
    });
    await value('prices.removeIndex', { series: 'Made-up index' });
    expect(await problem('prices.removeIndex', { series: 'Made-up index' })).toMatchObject({
      code: 'not-found',
    });
  });
}
