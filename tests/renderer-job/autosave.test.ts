import { describe, expect, test } from 'vitest';
import type { CommandInput } from '../../core/contract/contract.ts';
import { type SaveState, startSaver } from '../../renderer/job/editor/autosave.ts';
import type { Documents } from '../../renderer/job/editor/documents.ts';
import { enter } from '../../renderer/job/editor/enter.ts';
import { oneEave } from './fixture.ts';

/** A host in memory that can be lost before or after it writes, and a clock that is turned by hand. */
function world() {
  const start = oneEave(['16', '32']);
  const host = {
    documents: start,
    revision: 4,
    mode: 'well' as 'well' | 'lost' | 'lost-after-writing' | 'full',
  };
  const sent: CommandInput<'jobs.save'>[] = [];
  const states: SaveState[] = [];
  const taken: Documents[] = [];
  let timers: { act: () => void; dueMs: number }[] = [];
  let nowMs = 0;
  const saver = startSaver(
    {
      jobId: 'job',
      send: async (input) => {
        sent.push(input);
        if (host.mode === 'lost') throw new Error('no answer');
        if (host.mode === 'full') return { ok: false, problem: { code: 'disk-full' } };
        if (input.baseRevision !== host.revision)
          return { ok: false, problem: { code: 'changed-elsewhere', what: 'job' } };
        const { id: _id, baseRevision: _base, ...parts } = input;
        host.documents = { ...host.documents, ...(parts as Partial<Documents>) };
        host.revision += 1;
        if (host.mode === 'lost-after-writing') throw new Error('no answer');
        return { ok: true, value: { revision: host.revision } };
      },
      fetchAgain: async () => ({
        ok: true,
        value: {
          revision: host.revision,
          documents: JSON.parse(JSON.stringify(host.documents)) as Documents,
        },
      }),
      later: (act, afterMs) => timers.push({ act, dueMs: nowMs + afterMs }),
      told: (state) => states.push(state),
      took: (documents) => taken.push(documents),
    },
    start,
    host.revision,
  );
  async function pass(ms: number): Promise<void> {
    const until = nowMs + ms;
    for (;;) {
      await settled();
      const next = timers.filter((timer) => timer.dueMs <= until).sort((a, b) => a.dueMs - b.dueMs)[0];
      if (next === undefined) break;
      timers = timers.filter((timer) => timer !== next);
      nowMs = Math.max(nowMs, next.dueMs);
      next.act();
    }
    nowMs = until;
    await settled();
  }
  return { start, host, sent, states, taken, saver, pass, last: () => states.at(-1)?.kind };
}

async function settled(): Promise<void> {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
}

const path = 'survey.eaves.0.rafters.0.readingIn';

describe('saving as he types', () => {
  test('sends within 150 ms, and only the parts that changed', async () => {
    const w = world();
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(150);
    expect(w.sent).toHaveLength(1);
    expect(Object.keys(w.sent[0] ?? {}).sort()).toEqual(['baseRevision', 'id', 'survey']);
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(17);
    expect(w.last()).toBe('saved');
  });

  test('sends one save at a time, and then the newest', async () => {
    const w = world();
    let documents = w.start;
    for (const text of ['1', '17', '17-', '17-1', '17-1/', '17-1/2']) {
      documents = enter(documents, path, text);
      w.saver.changed(documents);
    }
    await w.pass(500);
    expect(w.sent.length).toBeLessThanOrEqual(2);
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(17.5);
    expect(w.host.documents.drafts).toEqual({});
  });

  test('keeps what was typed while the host is lost and saves it when the host is back', async () => {
    const w = world();
    w.host.mode = 'lost';
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(2000);
    expect(w.last()).toBe('host-lost');
    expect(w.saver.isSaved()).toBe(false);
    w.host.mode = 'well';
    await w.pass(5000);
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(17);
    expect(w.last()).toBe('saved');
  });

  test('knows its own save again when only the answer was lost', async () => {
    const w = world();
    w.host.mode = 'lost-after-writing';
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(150);
    w.host.mode = 'well';
    w.saver.changed(enter(w.start, path, '18'));
    await w.pass(5000);
    expect(w.last()).toBe('saved');
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(18);
  });

  test('never writes over what another window saved, until the person says so', async () => {
    const w = world();
    w.host.documents = enter(w.start, path, '20');
    w.host.revision += 1;
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(5000);
    expect(w.last()).toBe('changed-elsewhere');
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(20);
    w.saver.keepMine();
    await w.pass(5000);
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(17);
    expect(w.last()).toBe('saved');
  });

  test('takes what another window saved as soon as it hears of it, where nothing waits here', async () => {
    const w = world();
    w.host.documents = enter(w.start, path, '20');
    w.host.revision += 1;
    w.saver.heard();
    w.saver.heard();
    await w.pass(500);
    expect(w.taken.map((documents) => documents.survey.eaves[0]?.rafters[0]?.readingIn)).toEqual([20]);
    // What is typed next goes on from there and is saved without a question.
    const [taken] = w.taken;
    if (taken === undefined) throw new Error('nothing was taken');
    w.saver.changed(enter(taken, path, '21'));
    await w.pass(500);
    expect(w.last()).toBe('saved');
    expect(w.host.documents.survey.eaves[0]?.rafters[0]?.readingIn).toBe(21);
  });

  test('takes nothing from another window over what is typed here', async () => {
    const w = world();
    w.host.documents = enter(w.start, path, '20');
    w.host.revision += 1;
    w.saver.changed(enter(w.start, path, '17'));
    w.saver.heard();
    await w.pass(5000);
    expect(w.taken).toEqual([]);
    expect(w.last()).toBe('changed-elsewhere');
  });

  test('does not take its own save for another window’s', async () => {
    const w = world();
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(150);
    w.saver.heard();
    await w.pass(500);
    expect(w.taken).toEqual([]);
  });

  test('says that the disk is full and tries again', async () => {
    const w = world();
    w.host.mode = 'full';
    w.saver.changed(enter(w.start, path, '17'));
    await w.pass(500);
    expect(w.last()).toBe('refused');
    w.host.mode = 'well';
    await w.pass(5000);
    expect(w.last()).toBe('saved');
  });

  test('has nothing to send when a change is taken back before it was sent', async () => {
    const w = world();
    w.saver.changed(enter(w.start, path, '17'));
    w.saver.changed(w.start);
    await w.pass(500);
    expect(w.sent).toEqual([]);
    expect(w.last()).toBe('saved');
  });

  test('sends at once when the page goes away', async () => {
    const w = world();
    w.saver.changed(enter(w.start, path, '17'));
    w.saver.flush();
    await settled();
    expect(w.sent).toHaveLength(1);
  });
});
