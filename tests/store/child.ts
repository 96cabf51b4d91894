import { spawn, type ChildProcess } from 'node:child_process';
import { createInterface } from 'node:readline';

export type Child = {
  readonly process: ChildProcess;
  /** Lines of standard output so far. */
  readonly lines: readonly string[];
  /** Waits for the first line that fits. */
  readonly line: (fits: (line: string) => boolean) => Promise<string>;
  readonly exited: Promise<number | null>;
};

/** Runs a script of ours in a Node of its own. */
export function runChild(
  args: readonly string[],
  env: Record<string, string | undefined> = process.env,
): Child {
  const child = spawn(process.execPath, args, { env, stdio: ['ignore', 'pipe', 'pipe'] });
  const lines: string[] = [];
  const waiting = new Set<() => void>();
  let ended = false;
  for (const stream of [child.stdout, child.stderr]) {
    createInterface({ input: stream }).on('line', (line) => {
      lines.push(line);
      for (const look of waiting) look();
    });
  }
  const exited = new Promise<number | null>((resolve) => {
    child.once('close', (code) => {
      ended = true;
      for (const look of waiting) look();
      resolve(code);
    });
  });
  return {
    process: child,
    lines,
    exited,
    line: (fits) =>
      new Promise((resolve, reject) => {
        const look = (): void => {
          const found = lines.find(fits);
          if (found === undefined && !ended) return;
          waiting.delete(look);
          if (found === undefined)
            reject(new Error(`the child ended without that line:\n${lines.join('\n')}`));
          else resolve(found);
        };
        waiting.add(look);
        look();
      }),
  };
}
