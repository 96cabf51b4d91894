import { tinykeys } from 'tinykeys';
import { runCommand } from './command-handlers.ts';
import { commandTable, type CommandDefinition } from './command-table.ts';

/** Listens for the keys of the table; returns the function that stops it. */
export function listenForKeys(target: Window): () => void {
  const bindings = commandTable.flatMap(
    (command: CommandDefinition & { id: (typeof commandTable)[number]['id'] }) =>
      [command.keys, command.otherKeys].flatMap((keys) =>
        keys === undefined
          ? []
          : [
              [
                keys,
                (event: KeyboardEvent) => {
                  if (!holdsAt(command, event.target)) return;
                  if (runCommand(command.id)) event.preventDefault();
                },
              ] as const,
            ],
      ),
  );
  return tinykeys(target, Object.fromEntries(bindings), { ignore: (event) => event.isComposing });
}

function holdsAt({ whileTyping, within }: CommandDefinition, target: EventTarget | null): boolean {
  if (within !== undefined)
    return target instanceof Element && target.closest(`[data-keys="${within}"]`) !== null;
  return whileTyping === true || !isTyping(target);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.matches('input, textarea, select, [contenteditable]');
}
