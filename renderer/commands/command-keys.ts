import { tinykeys } from 'tinykeys';
import { runCommand } from './command-handlers.ts';
import { commandTable, type CommandDefinition } from './command-table.ts';

/** Listens for the keys of the table; returns the function that stops it. */
export function listenForKeys(target: Window): () => void {
  const bindings = commandTable.flatMap(
    (command: CommandDefinition & { id: (typeof commandTable)[number]['id'] }) =>
      command.keys === undefined
        ? []
        : [
            [
              command.keys,
              (event: KeyboardEvent) => {
                if (command.whileTyping !== true && isTyping(event.target)) return;
                if (runCommand(command.id)) event.preventDefault();
              },
            ] as const,
          ],
  );
  return tinykeys(target, Object.fromEntries(bindings), { ignore: (event) => event.isComposing });
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.matches('input, textarea, select, [contenteditable]');
}
