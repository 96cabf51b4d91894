import { describe, expect, test } from 'vitest';
import { type Documents, valueAt } from '../../renderer/job/editor/documents.ts';
import { type JobEditor, openEditor } from '../../renderer/job/editor/job-editor.ts';
import { enterNextReading } from '../../renderer/job/editor/rafter-list.ts';
import { oneEave } from './fixture.ts';

/** An editor whose saves are answered at once; nothing is looked at but what it holds. */
function editing(documents: Documents): JobEditor {
  return openEditor(
    {
      jobId: 'job',
      send: async () => ({ ok: true, value: { revision: 2 } }),
      fetchAgain: async () => ({ ok: true, value: { revision: 2, documents } }),
      later: () => undefined,
    },
    documents,
    1,
  );
}

function typeInto(editor: JobEditor, path: string, text: string): void {
  for (let length = 1; length <= text.length; length += 1)
    editor.type('reading', path, text.slice(0, length));
}

describe('a text that does not read, typed key by key', () => {
  test('leaves the value as it was before the typing, not what its beginning reads as', () => {
    const path = 'survey.eaves.0.rafters.1.readingIn';
    const editor = editing(oneEave(['16', '82']));
    typeInto(editor, path, '6-10-3/');
    const { present } = editor.read().history;
    expect(valueAt(present, path)).toBe(82);
    expect(present.drafts[path]).toBe('6-10-3/');
    typeInto(editor, path, '6-10-3/8');
    // 6-10-3/8 is feet, inches and eighths: 6 ft 10-3/8 in.
    expect(valueAt(editor.read().history.present, path)).toBe(82.375);
    editor.undo();
    expect(valueAt(editor.read().history.present, path)).toBe(82);
  });

  test('in the empty row makes no rafter of its beginning, and erased leaves nothing behind', () => {
    const path = 'survey.eaves.0.rafters.1.readingIn';
    const editor = editing(oneEave(['16']));
    const typeNext = (text: string): void =>
      valueAt(editor.read().history.present, path) === undefined
        ? editor.typeWith('reading', path, (now) => enterNextReading(now, 0, text))
        : editor.type('reading', path, text);
    for (const text of ['6', '6-', '6-1']) typeNext(text);
    expect(editor.read().history.present.survey.eaves[0]?.rafters).toHaveLength(1);
    expect(editor.read().history.present.drafts[path]).toBe('6-1');
    for (const text of ['6', '']) typeNext(text);
    expect(editor.read().history.present.survey.eaves[0]?.rafters).toHaveLength(1);
    expect(editor.read().history.present.drafts).toEqual({});
  });
});
