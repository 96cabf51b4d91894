import { expect, test, vi } from 'vitest';
import { z } from 'zod';
import { fail, ok } from '../../core/result.ts';
import { createDispatcher } from '../../electron/dispatcher.ts';
import { storeProblem } from '../../electron/store/classify.ts';

const contract = {
  double: { input: z.strictObject({ of: z.number() }), output: z.number().max(100), effect: 'read' },
  write: { input: z.strictObject({}), output: z.strictObject({}), effect: 'write' },
  throws: { input: z.unknown(), output: z.unknown(), effect: 'write' },
} as const;

function make() {
  const reportBug = vi.fn<(command: string, error: unknown) => void>();
  const wrote = vi.fn<(command: string) => void>();
  const dispatch = createDispatcher(
    contract,
    {
      double: ({ of }: { of: number }) => ok(of * 2),
      write: () => ok({}),
      throws: (error: unknown) => {
        throw error;
      },
    },
    { problemOf: storeProblem, reportBug, wrote },
  );
  return { dispatch, reportBug, wrote };
}

test('a command gets its input as its schema reads it, and its answer goes out', async () => {
  expect(await make().dispatch('double', { of: 21 })).toEqual(ok(42));
});

test('an input that does not fit is told at its field and the handler never sees it', async () => {
  const { dispatch, reportBug } = make();
  expect(await dispatch('double', { of: 'x' })).toMatchObject({
    ok: false,
    problem: { code: 'entry-invalid', field: 'of' },
  });
  expect(reportBug).not.toHaveBeenCalled();
});

test('an output that does not fit its schema is a bug of ours and does not go out', async () => {
  const { dispatch, reportBug } = make();
  expect(await dispatch('double', { of: 51 })).toEqual(fail({ code: 'internal' }));
  expect(reportBug).toHaveBeenCalledOnce();
});

test.each([new Error('secret /home/x'), 'a string', undefined, null, { code: 'ODD' }])(
  'what a handler throws stays inside',
  async (thrown) => {
    const { dispatch, reportBug, wrote } = make();
    expect(await dispatch('throws', thrown)).toEqual(fail({ code: 'internal' }));
    expect(reportBug).toHaveBeenCalledWith('throws', thrown);
    expect(wrote).not.toHaveBeenCalled();
  },
);

test('a full disk is no bug but something to mend', async () => {
  const { dispatch, reportBug } = make();
  expect(await dispatch('throws', Object.assign(new Error(), { code: 'SQLITE_FULL' }))).toEqual(
    fail({ code: 'disk-full' }),
  );
  expect(reportBug).not.toHaveBeenCalled();
});

test.each([
  'nothing',
  '__proto__',
  'hasOwnProperty',
  7,
  null,
  undefined,
  ['double'],
  { toString: () => 'double' },
])('%j is no command', async (name) => {
  expect(await make().dispatch(name, {})).toEqual(fail({ code: 'not-here', what: 'That' }));
});

test('only a write that took place is told on', async () => {
  const { dispatch, wrote } = make();
  await dispatch('double', { of: 1 });
  await dispatch('write', { more: 1 });
  expect(wrote).not.toHaveBeenCalled();
  await dispatch('write', {});
  expect(wrote).toHaveBeenCalledExactlyOnceWith('write');
});
