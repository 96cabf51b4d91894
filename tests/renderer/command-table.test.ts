import { describe, expect, test } from 'vitest';
import { commandTable, keysInWords, type CommandDefinition } from '../../renderer/commands/command-table.ts';

const commands: readonly CommandDefinition[] = commandTable;

describe('the table of commands', () => {
  test('gives no two commands the same name or the same keys', () => {
    const ids = commands.map((command) => command.id);
    const keys = commands.flatMap((command) => [command.keys ?? [], command.otherKeys ?? []].flat());
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('has no key that types a letter, so that no word typed is taken for a command', () => {
    const bare = commands.filter((command) => command.keys !== undefined && !/\$mod|Alt/.test(command.keys));
    expect(bare.filter(({ within }) => within === undefined)).toEqual([]);
    const letters = bare.filter(({ keys, otherKeys }) => /Key|Digit|^.$/.test(`${keys} ${otherKeys}`));
    expect(letters).toEqual([]);
  });

  test('writes keys as they stand on the keyboard', () => {
    expect(keysInWords('$mod+Shift+KeyZ', false)).toBe('Ctrl+Shift+Z');
    expect(keysInWords('Alt+Shift+Digit1', true)).toBe('Option+Shift+1');
  });
});
