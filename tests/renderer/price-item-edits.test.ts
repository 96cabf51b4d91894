import { describe, expect, test } from 'vitest';
import type { Reply } from '../../core/contract/reply.ts';
import { priceItemSchema, type PriceItem } from '../../core/pricing/price-list.ts';
import {
  createPriceItemEdits,
  type PriceItemEntries,
} from '../../renderer/screens/prices/price-item-edits.ts';

const larch = priceItemSchema.parse({ id: 'larch', category: 'lumber', description: 'Larch', unit: 'each' });

/**
 * A screen, a list and a host, each of which goes on when it is told to: the host answers late, and the screen is handed
 * the newest list late.
 */
function slowWorld() {
  const answers: ((reply: Reply<unknown>) => void)[] = [];
  let newest: readonly PriceItem[] = [larch];
  let onScreen = newest;
  let fetching = false;
  const edits = createPriceItemEdits({
    save: () => new Promise((resolve) => answers.push(resolve)),
    onSaved(entries: PriceItemEntries) {
      newest = [{ ...entries, prices: [] }];
      fetching = true;
    },
    isNewest: (list) => list === newest && !fetching,
  });
  const shown = (): string => edits.editedOf('larch')?.entries.supplier ?? onScreen[0]?.supplier ?? '';
  const settle = (): void => edits.settle(onScreen);
  return {
    edits,
    shown,
    settle,
    /** A key is pressed in the field as the screen shows it. */
    press(key: string) {
      edits.change(onScreen[0] ?? larch, { supplier: shown() + key });
    },
    async answer() {
      answers.shift()?.({ ok: true, value: {} });
      await new Promise((resolve) => setTimeout(resolve));
    },
    /** The screen is drawn with the newest list. */
    draw() {
      onScreen = newest;
      settle();
    },
    /** The list that was asked for comes in. */
    come(list: readonly PriceItem[] = newest) {
      newest = list;
      fetching = false;
    },
    waits: () => answers.length,
  };
}

describe('an item that is typed in', () => {
  test('keeps every letter, though the list on the screen is old when the save is answered', async () => {
    const world = slowWorld();
    world.press('Y');
    await world.answer();
    world.settle();
    expect(world.shown()).toBe('Y');
    world.press('a');
    world.draw();
    world.press('r');
    await world.answer();
    await world.answer();
    world.settle();
    world.press('d');
    expect(world.shown()).toBe('Yard');
  });

  test('keeps every letter while a list is still on its way that may be of before the save', async () => {
    const world = slowWorld();
    world.press('Y');
    await world.answer();
    world.draw();
    expect(world.shown()).toBe('Y');
    world.press('a');
    expect(world.shown()).toBe('Ya');
  });

  test('follows the list again once that is drawn, so that what another window changes shows', async () => {
    const world = slowWorld();
    world.press('Y');
    await world.answer();
    world.come();
    world.draw();
    expect(world.edits.editedOf('larch')).toBe(undefined);
    world.come([{ ...larch, supplier: 'Theirs' }]);
    world.draw();
    expect(world.shown()).toBe('Theirs');
  });

  test('is not let go of while it is not saved', () => {
    const world = slowWorld();
    world.press('Y');
    world.draw();
    expect(world.shown()).toBe('Y');
    expect(world.edits.editedOf('larch')?.saveState).toEqual({ kind: 'saving' });
  });
});
