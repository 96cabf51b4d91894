import { expect, test } from 'vitest';
import { sample, type Asker } from './contract-asker.ts';

/** Jobs and what is typed into them. */
export function checkJobs(asker: Asker): void {
  const { value, problem, transport } = asker;
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
    await transport().invoke('jobs.save', { id, baseRevision: 0, survey });
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
}
