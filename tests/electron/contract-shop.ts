import { expect, test } from 'vitest';
import { sample, type Asker } from './contract-asker.ts';

/** The shop, its settings, and what is refused at the door. */
export function checkShop(asker: Asker): void {
  const { value, problem, transport, expected } = asker;
  test('says what it is', async () => {
    const info = await value('app.info', {});
    expect(info).toMatchObject(expected);
    expect(info.today).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(info.version).toMatch(/^\d+\.\d+\.\d+/);
  });

  test.each(['jobs.drop', '__proto__', 'constructor', 'toString', ''])(
    'does not know the command "%s"',
    async (command) => {
      expect(await transport().invoke(command, {})).toEqual({
        ok: false,
        problem: { code: 'not-here', what: 'That' },
      });
    },
  );

  test('a new shop has no jobs, no customers, no prices and untouched settings', async () => {
    expect(await value('jobs.list', { search: '', archived: false })).toEqual([]);
    expect(await value('customers.list', {})).toEqual([]);
    expect(await value('prices.list', {})).toEqual([]);
    expect(await value('settings.get', {})).toMatchObject({ revision: 0 });
  });

  test('the sample job opens in one call, with its prices, and fills settings that nobody has touched', async () => {
    const { id } = await value('jobs.openSample', {});
    const job = await value('jobs.get', { id });
    expect(job).toMatchObject({
      info: sample.job,
      survey: sample.survey,
      design: sample.design,
      estimateOn: sample.asOf,
      revision: 0,
      archived: false,
      drafts: {},
    });
    expect(await value('prices.list', {})).toEqual(sample.priceList);
    expect(await value('settings.get', {})).toEqual({ settings: sample.settings, revision: 1 });
    expect(await value('customers.list', {})).toMatchObject([{ customer: sample.job.customer, jobs: 1 }]);
  });

  test('settings are saved, saved again after a lost answer, and never over those of another window', async () => {
    const { settings, revision } = await value('settings.get', {});
    const named = { ...settings, shopName: 'Wren & Daughter', nextQuoteNumber: 42 };
    expect(await value('settings.save', { settings: named, baseRevision: revision })).toEqual({
      revision: revision + 1,
    });
    expect(await value('settings.save', { settings: named, baseRevision: revision })).toEqual({
      revision: revision + 1,
    });
    expect(
      await problem('settings.save', { settings: { ...named, shopName: 'Late' }, baseRevision: revision }),
    ).toEqual({ code: 'changed-elsewhere', what: 'settings' });
    expect((await value('settings.get', {})).settings).toEqual(named);
    expect(
      await problem('settings.save', {
        settings: { ...named, money: { ...named.money, overheadPercent: 'much' } },
        baseRevision: revision + 1,
      }),
    ).toEqual({ code: 'number-unreadable', typed: 'much', field: 'settings.money.overheadPercent' });
  });

  test('labour rates come back as they were saved', async () => {
    const { settings, revision } = await value('settings.get', {});
    const rates = [
      { task: 'install-extenders', hoursPerUnit: 0.45, mark: 'own' as const },
      { task: 'blocks', hoursPerUnit: 0.2, mark: 'placeholder' as const },
    ];
    await value('settings.save', {
      settings: { ...settings, labour: { ...settings.labour, rates } },
      baseRevision: revision,
    });
    expect((await value('settings.get', {})).settings.labour.rates).toEqual(rates);
  });

  test.each([
    ['jobs.create', { name: '' }, 'name'],
    ['jobs.create', {}, 'name'],
    ['jobs.create', { name: 'x', colour: 'red' }, ''],
    ['jobs.get', { id: 7 }, 'id'],
    ['jobs.get', null, ''],
    ['jobs.get', [], ''],
    ['jobs.list', { search: 'x' }, 'archived'],
    ['jobs.save', { id: 'x', baseRevision: -1 }, 'baseRevision'],
    ['paper.make', { jobId: 'x', sheet: 'menu', paperSize: 'a4' }, 'sheet'],
    [
      'prices.observe',
      { itemId: 'x', observation: { priceUsd: '-4', observedOn: '2026-01-01' } },
      'observation.priceUsd',
    ],
    [
      'prices.observe',
      { itemId: 'x', observation: { priceUsd: '4', observedOn: 'today' } },
      'observation.observedOn',
    ],
  ] as const)('%s refuses %j at its field', async (command, input, field) => {
    expect(await problem(command, input)).toMatchObject({ field });
  });

  test.each([
    ['jobs.get', { id: 'gone' }],
    ['jobs.save', { id: 'gone', baseRevision: 0 }],
    ['jobs.copy', { id: 'gone', name: 'x' }],
    ['jobs.archive', { id: 'gone', archived: true }],
    ['jobs.export', { id: 'gone' }],
    ['estimates.save', { jobId: 'gone' }],
    ['estimates.list', { jobId: 'gone' }],
    ['paper.make', { jobId: 'gone', sheet: 'quote', paperSize: 'a4' }],
  ] as const)('%s of a job that is gone says so', async (command, input) => {
    expect(await problem(command, input)).toEqual({ code: 'not-found', what: 'job' });
  });
}
