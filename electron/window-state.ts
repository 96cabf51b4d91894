import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { writeFileSafely } from './write-file-safely.ts';

export type Rectangle = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

const stateSchema = z.strictObject({
  x: z.int(),
  y: z.int(),
  width: z.int().min(400).max(20000),
  height: z.int().min(300).max(20000),
  maximized: z.boolean(),
});

export type WindowState = z.infer<typeof stateSchema>;

/** Where the window starts the first time, and whenever its old place is of no use. */
export const firstSize = { width: 1280, height: 800 } as const;

/**
 * Reads where the window was.
 * @param screens - work areas of the screens that are there now.
 * @returns undefined where nothing usable is known, or where the title bar would be on no screen.
 */
export function readWindowState(path: string, screens: readonly Rectangle[]): WindowState | undefined {
  let value: unknown;
  try {
    value = JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
  const state = stateSchema.safeParse(value);
  return state.success && screens.some((screen) => canGrab(state.data, screen)) ? state.data : undefined;
}

/** The window's place alone, as Electron takes it. */
export function placeOf({ x, y, width, height }: WindowState): Rectangle {
  return { x, y, width, height };
}

/** Keeps where the window is. A place that cannot be kept is not worth a message. */
export function writeWindowState(path: string, state: WindowState): void {
  try {
    writeFileSafely(path, Buffer.from(JSON.stringify(stateSchema.parse(state))));
  } catch {
    // The next start uses the first size.
  }
}

/** True where at least 100 x 20 px of the window's top edge lie on the screen, enough to take hold of it. */
function canGrab(window: Rectangle, screen: Rectangle): boolean {
  const across = Math.min(window.x + window.width, screen.x + screen.width) - Math.max(window.x, screen.x);
  const top = window.y >= screen.y && window.y + 20 <= screen.y + screen.height;
  return across >= 100 && top;
}
