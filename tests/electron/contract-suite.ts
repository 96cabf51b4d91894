import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  contract,
  type CommandInput,
  type CommandName,
  type CommandOutput,
} from '../../core/contract/contract.ts';
import type { Reply } from '../../core/contract/reply.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { jobFileSchema } from '../../core/job/job-file.ts';

/** One way to the host, opened on an empty shop file. */
export type OpenTransport = {
  readonly invoke: (command: string, input: unknown) => Promise<unknown>;
  readonly subscribe: (callback: (event: unknown) => void) => () => void;
  readonly close: () => Promise<void>;
};

const sampleText = readFileSync(new URL('../../fixtures/sample-job.json', import.meta.url), 'utf8');
const sample: JobFile = jobFileSchema.parse(JSON.parse(sampleText));

/**
 * The same checks for every transport: each command of the contract, when it goes well and when it does not. A command
 * that no check asks for fails the suite.
 */
export function describeContract(
  name: string,
  open: () => Promise<OpenTransport>,
  expected: { readonly shell: 'electron' | 'loopback'; readonly savesFiles: boolean },
): void {
  describe(`the contract over ${name}`, () => {
    let transport: OpenTransport;
    const asked = new Set<CommandName>();

    beforeAll(async () => {
      transport = await open();
    });
    afterAll(() => transport.close());

    async function ask<N extends CommandName>(
      command: N,
      input: CommandInput<N>,
    ): Promise<Reply<CommandOutput<N>>> {
      asked.add(command);
      return (await transport.invoke(command, input)) as Reply<CommandOutput<N>>;
    }

    async function value<N extends CommandName>(
      command: N,
      input: CommandInput<N>,
    ): Promise<CommandOutput<N>> {
      const reply = await ask(command, input);
      if (!reply.ok) throw new Error(`${command}: ${JSON.stringify(reply.problem)}`);
      return reply.value;
    }

    async function problem(command: CommandName, input: unknown): Promise<unknown> {
      const reply = await ask(command, input as CommandInput<CommandName>);
      return reply.ok ? 'no problem' : reply.problem;
    }

    const gone = { code: 'not-found', what: 'job' };

    test('says what it is', async () => {
      const info = await value('app.info', {});
      expect(info).toMatchObject(expected);
      expect(info.today).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      expect(info.version).toMatch(/^\d+\.\d+\.\d+/);
    });

    test.each(['jobs.drop', '__proto__', 'constructor', 'toString', ''])(
      'does not know the command "%s"',
      async (command) => {
        expect(await transport.invoke(command, {})).toEqual({
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
        { task: 'install-extender', hoursPerUnit: 0.45, mark: 'own' as const },
        { task: 'blocks', hoursPerUnit: 0.2, mark: 'placeholder' as const },
      ];
      await value('settings.save', {
        settings: { ...settings, labour: { ...settings.labour, rates } },
        baseRevision: revision,
      });
      expect((await value('settings.get', {})).settings.labour.rates).toEqual(rates);
    });

    test('a job is made, typed into, and comes back as typed, with what does not parse yet', async () => {
      const { id } = await value('jobs.create', { name: 'Marsh cottage' });
      const info = {
        name: 'Marsh cottage, north',
        siteAddress: '3 Reed Lane',
        notes: 'dog',
        customer: { name: 'Ib Teal', address: '', phone: '555-0199', email: '' },
      };
      const drafts = { 'survey.eaves.0.lengthIn': "26' 4 3/" };
      expect(await value('jobs.save', { id, baseRevision: 0, info, survey: sample.survey, drafts })).toEqual({
        revision: 1,
      });
      expect(await value('jobs.get', { id })).toMatchObject({
        info,
        survey: sample.survey,
        design: { version: 1, eaves: [] },
        drafts,
        revision: 1,
        estimateOn: null,
      });
      expect(await value('jobs.save', { id, baseRevision: 1, estimateOn: '2026-04-21' })).toEqual({
        revision: 2,
      });
      expect(await value('jobs.get', { id })).toMatchObject({ info, estimateOn: '2026-04-21', drafts });
    });

    test('lengths may be typed as a carpenter writes them, and are kept in inches', async () => {
      const { id } = await value('jobs.create', { name: 'Typed' });
      const [eave] = sample.survey.eaves;
      const survey = { ...sample.survey, eaves: [{ ...eave, lengthIn: '26\' 4-1/2"' }] };
      await transport.invoke('jobs.save', { id, baseRevision: 0, survey });
      expect((await value('jobs.get', { id })).survey.eaves[0]?.lengthIn).toBe(316.5);
    });

    test('a bad entry is refused at its field and nothing of the save is kept', async () => {
      const { id } = await value('jobs.create', { name: 'Bad entry' });
      const [eave] = sample.survey.eaves;
      const rafters = [{ id: 'r1', readingIn: '2 cubits' }];
      expect(
        await problem('jobs.save', {
          id,
          baseRevision: 0,
          info: { ...sample.job, name: 'Changed' },
          survey: { ...sample.survey, eaves: [{ ...eave, rafters }] },
        }),
      ).toMatchObject({ code: 'length-unreadable', field: 'survey.eaves.0.rafters.0.readingIn' });
      expect(await value('jobs.get', { id })).toMatchObject({ revision: 0, info: { name: 'Bad entry' } });
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

    test('a save over a change of another window is refused; the same save once more is not', async () => {
      const { id } = await value('jobs.create', { name: 'Two windows' });
      const design = { ...sample.design, scopeNote: 'first' };
      const save = { id, baseRevision: 0, design };
      expect(await value('jobs.save', save)).toEqual({ revision: 1 });
      expect(await value('jobs.save', save)).toEqual({ revision: 1 });
      expect(await problem('jobs.save', { ...save, design: { ...design, scopeNote: 'second' } })).toEqual({
        code: 'changed-elsewhere',
        what: 'job',
      });
      expect((await value('jobs.get', { id })).design.scopeNote).toBe('first');
    });

    test('a job is found by any words of its name, customer and address, last changed first', async () => {
      const names = async (search: string) =>
        (await value('jobs.list', { search, archived: false })).map((job) => job.name);
      expect(await names('teal reed')).toEqual(['Marsh cottage, north']);
      expect(await names('QUILLFEATHER sandpiper')).toEqual([sample.job.name]);
      expect(await names('nobody')).toEqual([]);
      const [marsh] = await value('jobs.list', { search: 'marsh', archived: false });
      await value('jobs.save', {
        id: marsh?.id ?? '',
        baseRevision: 2,
        drafts: {},
      });
      expect((await names(''))[0]).toBe('Marsh cottage, north');
    });

    test('a copy has all of the job but its name, and changes alone', async () => {
      const [marsh] = await value('jobs.list', { search: 'marsh', archived: false });
      const original = await value('jobs.get', { id: marsh?.id ?? '' });
      const { id } = await value('jobs.copy', { id: original.id, name: 'Marsh cottage, south' });
      const copy = await value('jobs.get', { id });
      expect(copy).toEqual({
        ...original,
        id,
        revision: 0,
        info: { ...original.info, name: 'Marsh cottage, south' },
      });
      const customer = { ...copy.info.customer, name: 'Another' };
      await value('jobs.save', { id, baseRevision: 0, info: { ...copy.info, customer } });
      expect((await value('jobs.get', { id: original.id })).info.customer.name).toBe('Ib Teal');
      expect((await value('customers.list', {})).map(({ customer: { name } }) => name).sort()).toEqual([
        'Another',
        'Ib Teal',
        'Odalys Quillfeather',
      ]);
    });

    test('a job put away is in the other list, and can be taken out again', async () => {
      const { id } = await value('jobs.create', { name: 'Away' });
      await value('jobs.archive', { id, archived: true });
      const away = { search: 'away', archived: true };
      expect(await value('jobs.list', { ...away, archived: false })).toEqual([]);
      expect(await value('jobs.list', away)).toMatchObject([{ id, archived: true }]);
      await value('jobs.archive', { id, archived: false });
      expect(await value('jobs.list', away)).toEqual([]);
    });

    test('a job goes out as a file and comes in again the same, prices of the shop untouched', async () => {
      const [marsh] = await value('jobs.list', { search: 'south', archived: false });
      const { text, fileName } = await value('jobs.export', { id: marsh?.id ?? '' });
      expect(fileName).toBe('Marsh cottage, south.eavewright-job.json');
      const pricesBefore = await value('prices.list', {});
      const { id } = await value('jobs.import', { text });
      const [from, to] = [await value('jobs.get', { id: marsh?.id ?? '' }), await value('jobs.get', { id })];
      expect({ ...to, id: '', revision: 0 }).toEqual({ ...from, id: '', revision: 0, drafts: {} });
      expect(await value('prices.list', {})).toEqual(pricesBefore);
      expect((await value('settings.get', {})).settings.shopName).toBe('Wren & Daughter');
    });

    test.each([
      ['not JSON', 'rafters', 'file-not-json'],
      ['JSON of something else', '{"format":"recipe"}', 'file-not-a-job'],
      ['a job with a bad entry', sampleText.replace('"storeys": 1', '"storeys": 9'), 'entry-invalid'],
    ])('a file that is %s is refused and nothing is taken in', async (_what, text, code) => {
      const before = await value('jobs.list', { search: '', archived: false });
      expect(await problem('jobs.import', { text })).toMatchObject({ code });
      expect(await value('jobs.list', { search: '', archived: false })).toEqual(before);
    });

    test('a price item is added and changed, and its prices are noted once each', async () => {
      const item = { id: 'staging', category: 'other', description: 'Staging', unit: 'each' } as const;
      await value('prices.saveItem', { item });
      const observation = { priceUsd: '120.50', observedOn: '2026-05-01' };
      await value('prices.observe', { itemId: 'staging', observation });
      await value('prices.observe', { itemId: 'staging', observation });
      await value('prices.observe', { itemId: 'staging', observation: { ...observation, priceUsd: 130 } });
      await value('prices.saveItem', { item: { ...item, description: 'Staging, a week', retired: true } });
      const stored = (await value('prices.list', {})).find(({ id }) => id === 'staging');
      expect(stored).toMatchObject({ description: 'Staging, a week', retired: true });
      expect(stored?.prices.map(({ priceUsd }) => priceUsd)).toEqual(['120.50', '130']);
      expect(await problem('prices.observe', { itemId: 'nothing', observation })).toEqual({
        code: 'not-found',
        what: 'price item',
      });
      expect(await problem('prices.saveItem', { item: { ...item, unit: 'bushel' } })).toMatchObject({
        field: 'item.unit',
      });
    });

    test('the price list goes out as CSV and comes in again without a change', async () => {
      const before = await value('prices.list', {});
      const { text, fileName } = await value('prices.exportCsv', {});
      expect(fileName).toMatch(/^price-list-\d{4}-\d{2}-\d{2}\.csv$/);
      expect(await value('prices.importCsv', { text })).toEqual({ items: before.length, prices: 0 });
      expect(await value('prices.list', {})).toEqual(before);
    });

    test('a price list with wrong columns, a bad row or broken quotes is refused whole', async () => {
      const before = await value('prices.list', {});
      const { text } = await value('prices.exportCsv', {});
      expect(await problem('prices.importCsv', { text: 'item,cost\r\n2x6,9\r\n' })).toMatchObject({
        code: 'csv-columns',
      });
      expect(await problem('prices.importCsv', { text: text.replace('"120.50"', '"a lot"') })).toMatchObject({
        code: 'csv-row',
      });
      expect(await problem('prices.importCsv', { text: `${text}"open` })).toMatchObject({
        code: 'csv-broken',
      });
      expect(await problem('prices.importCsv', { text: '' })).toMatchObject({ code: 'csv-broken', row: 1 });
      expect(await value('prices.list', {})).toEqual(before);
    });

    test('an estimate is frozen under the next number and shows in the list of jobs', async () => {
      const [job] = await value('jobs.list', { search: 'quillfeather', archived: false });
      const jobId = job?.id ?? '';
      const first = await value('estimates.save', { jobId });
      const second = await value('estimates.save', { jobId });
      expect([first.number, second.number]).toEqual([1, 2]);
      const list = await value('estimates.list', { jobId });
      expect(list).toMatchObject([
        { id: second.id, number: 2, asOf: sample.asOf, intact: true },
        { id: first.id, number: 1, asOf: sample.asOf, intact: true },
      ]);
      expect(list[0]?.totalUsd).toMatch(/^\d+\.\d{2}$/);
      const [after] = await value('jobs.list', { search: 'quillfeather', archived: false });
      expect(after?.lastEstimateUsd).toBe(list[0]?.totalUsd);
    });

    test('a job that cannot be computed gives a reason instead of an estimate or a sheet', async () => {
      const { id } = await value('jobs.create', { name: 'Nothing measured' });
      expect(await problem('estimates.save', { jobId: id })).toMatchObject({ code: 'no-eaves' });
      expect(await problem('paper.make', { jobId: id, sheet: 'quote', paperSize: 'letter' })).toMatchObject({
        code: 'no-eaves',
      });
      expect(await value('estimates.list', { jobId: id })).toEqual([]);
    });

    test('a sheet comes as a PDF', async () => {
      const [job] = await value('jobs.list', { search: 'quillfeather', archived: false });
      const paper = await value('paper.make', {
        jobId: job?.id ?? '',
        sheet: 'takeoff',
        paperSize: 'letter',
      });
      expect(Buffer.from(paper.pdfBase64, 'base64').subarray(0, 5).toString()).toBe('%PDF-');
      expect(paper.fileName).toMatch(/\.pdf$/);
      expect(paper.pages).toBeGreaterThan(0);
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
      expect(await problem(command, input)).toEqual(gone);
    });

    test('a write is told to whoever listens, a read and a refused write are not', async () => {
      const heard: unknown[] = [];
      const stop = transport.subscribe((event) => heard.push(event));
      await expect
        .poll(async () => {
          await value('prices.saveItem', {
            item: { id: 'heard', category: 'other', description: 'Heard', unit: 'each' },
          });
          return heard.at(-1);
        })
        .toEqual({ kind: 'changed', what: 'prices' });
      heard.length = 0;
      await value('jobs.list', { search: '', archived: false });
      await problem('jobs.archive', { id: 'gone', archived: true });
      await value('jobs.create', { name: 'Heard too' });
      await expect.poll(() => heard).toContainEqual({ kind: 'changed', what: 'jobs' });
      expect(heard).toEqual([{ kind: 'changed', what: 'jobs' }]);
      stop();
    });

    test(`saving through a dialog is ${expected.savesFiles ? 'the shell’s' : 'not this shell’s'}`, async () => {
      const file = { fileName: 'list.csv', base64: Buffer.from('a').toString('base64') };
      const reply = await ask('files.save', file);
      expect(reply).toEqual(
        expected.savesFiles
          ? { ok: true, value: { saved: false } }
          : { ok: false, problem: { code: 'not-here', what: 'Saving through a dialog' } },
      );
    });

    test('every command of the contract was asked for', () => {
      expect([...asked].sort()).toEqual(Object.keys(contract).sort());
    });
  });
}
