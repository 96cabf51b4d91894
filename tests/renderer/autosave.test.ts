import { describe, expect, test } from 'vitest';
import type { Reply } from '../../core/contract/reply.ts';
import { createAutosave } from '../../renderer/host/autosave.ts';

/** A host that answers when it is told to. */
function slowHost() {
  const asked: { value: string; answer: (reply: Reply<unknown>) => void; lose: () => void }[] = [];
  const save = (value: string): Promise<Reply<unknown>> =>
    new Promise((resolve, reject) => {
      asked.push({ value, answer: resolve, lose: () => reject(new Error('lost')) });
    });
  return { asked, save };
}

/** Lets every promise that can go on go on. */
const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

const done: Reply<unknown> = { ok: true, value: {} };

describe('autosave', () => {
  test('sends the newest value once the one before is answered, and skips those between', async () => {
    const { asked, save } = slowHost();
    const autosave = createAutosave(save);
    autosave.put('a');
    autosave.put('ab');
    autosave.put('abc');
    expect(asked.map((one) => one.value)).toEqual(['a']);
    expect(autosave.state()).toEqual({ kind: 'saving' });
    asked[0]?.answer(done);
    await settle();
    expect(asked.map((one) => one.value)).toEqual(['a', 'abc']);
    asked[1]?.answer(done);
    await settle();
    expect(autosave.state()).toEqual({ kind: 'saved' });
  });

  test('keeps what a lost host did not take, and sends it when tried again', async () => {
    const { asked, save } = slowHost();
    const autosave = createAutosave(save);
    autosave.put('kept');
    asked[0]?.lose();
    await settle();
    expect(autosave.state()).toEqual({ kind: 'waiting' });
    autosave.retry();
    expect(asked.map((one) => one.value)).toEqual(['kept', 'kept']);
    asked[1]?.answer(done);
    await settle();
    expect(autosave.state()).toEqual({ kind: 'saved' });
  });

  test('sends what was typed while the host was lost, not what it lost', async () => {
    const { asked, save } = slowHost();
    const autosave = createAutosave(save);
    autosave.put('old');
    autosave.put('new');
    asked[0]?.lose();
    await settle();
    autosave.retry();
    expect(asked.map((one) => one.value)).toEqual(['old', 'new']);
  });

  test('shows the problem that the host found and is not saved', async () => {
    const { asked, save } = slowHost();
    const autosave = createAutosave(save);
    autosave.put('x');
    asked[0]?.answer({ ok: false, problem: { code: 'disk-full' } });
    await settle();
    expect(autosave.state()).toEqual({ kind: 'problem', problem: { code: 'disk-full' } });
  });
});
