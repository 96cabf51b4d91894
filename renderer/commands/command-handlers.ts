import { useEffect, useRef, useSyncExternalStore } from 'react';
import { commandTable, type CommandDefinition, type CommandId } from './command-table.ts';

type Handler = { readonly run: () => void };

/** A command that can be given now. */
export type LiveCommand = CommandDefinition & { readonly id: CommandId; readonly run: () => void };

let handlers: ReadonlyMap<CommandId, readonly Handler[]> = new Map();
let live: readonly LiveCommand[] = [];
const listeners = new Set<() => void>();

/**
 * Says what a command does while this component is shown.
 * @param id - the command.
 * @param run - what it does.
 * @param isEnabled - false while it makes no sense, such as Undo with nothing to undo.
 */
export function useCommand(id: CommandId, run: () => void, isEnabled = true): void {
  const latest = useRef(run);
  useEffect(() => {
    latest.current = run;
  });
  useEffect(() => {
    if (!isEnabled) return undefined;
    return addHandler(id, { run: () => latest.current() });
  }, [id, isEnabled]);
}

/** The commands that can be given now, in the table's order. */
export function useLiveCommands(): readonly LiveCommand[] {
  return useSyncExternalStore(subscribe, () => live);
}

/** Runs a command if a screen answers it; says whether one did. */
export function runCommand(id: CommandId): boolean {
  const handler = handlers.get(id)?.at(-1);
  handler?.run();
  return handler !== undefined;
}

function addHandler(id: CommandId, handler: Handler): () => void {
  set(id, [...(handlers.get(id) ?? []), handler]);
  return () =>
    set(
      id,
      (handlers.get(id) ?? []).filter((one) => one !== handler),
    );
}

function set(id: CommandId, list: readonly Handler[]): void {
  handlers = new Map([...handlers, [id, list]]);
  live = commandTable
    .filter((command) => (handlers.get(command.id)?.length ?? 0) > 0)
    .map((command) => ({
      ...command,
      run: () => {
        runCommand(command.id);
      },
    }));
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
