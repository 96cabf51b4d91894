import { describe, expect, test } from 'vitest';
import { enter } from '../../renderer/job/editor/enter.ts';
import { record, redo, seal, startHistory, undo } from '../../renderer/job/editor/history.ts';
import { oneEave } from './fixture.ts';

const reading = 'survey.eaves.0.rafters.0.readingIn';

function typing(texts: readonly string[], path = reading, history = startHistory(oneEave(['16', '32']))) {
  return texts.reduce(
    (so_far, text) => record(so_far, enter(so_far.present, path, text), 'reading of rafter 1', path),
    history,
  );
}

describe('undo and redo', () => {
  test('take back all keystrokes of one entry at once', () => {
    const start = startHistory(oneEave(['16', '32']));
    const typed = typing(['1', "1'", "1' 5"], reading, start);
    expect(typed.past).toHaveLength(1);
    expect(undo(typed).present).toBe(start.present);
    expect(redo(undo(typed)).present).toBe(typed.present);
  });

  test('take back entries one by one once the entry was left', () => {
    const typed = typing(['18'], reading, seal(typing(['17'])));
    expect(typed.past).toHaveLength(2);
    expect(undo(typed).present.survey.eaves[0]?.rafters[0]?.readingIn).toBe(17);
  });

  test('bring back what was half typed', () => {
    const half = seal(typing(['oops']));
    const mended = typing(['18'], reading, half);
    expect(undo(mended).present.drafts).toEqual({ [reading]: 'oops' });
  });

  test('forget the way forward when something new is typed', () => {
    const back = undo(seal(typing(['17'])));
    expect(typing(['19'], reading, back).future).toEqual([]);
  });

  test('do nothing where there is nothing to take back', () => {
    const start = startHistory(oneEave(['16']));
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
  });
});
