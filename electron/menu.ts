import type { MenuItemConstructorOptions } from 'electron';

type Role = NonNullable<MenuItemConstructorOptions['role']>;

/** The program's menu as one table; what a screen offers of its own stands in the page's command table. */
const table: readonly (readonly [title: string, items: readonly (Role | '-')[]])[] = [
  ['File', ['close', 'quit']],
  ['Edit', ['undo', 'redo', '-', 'cut', 'copy', 'paste', 'selectAll']],
  ['View', ['resetZoom', 'zoomIn', 'zoomOut', '-', 'togglefullscreen']],
  ['Window', ['minimize', 'zoom']],
];

/**
 * Makes the menu.
 * @param platform - macOS expects the program's own menu first.
 */
export function menuTemplate(platform: NodeJS.Platform): MenuItemConstructorOptions[] {
  const own: MenuItemConstructorOptions[] = platform === 'darwin' ? [{ role: 'appMenu' }] : [];
  return [
    ...own,
    ...table.map(([label, items]) => ({
      label,
      submenu: items.map((item) => (item === '-' ? { type: 'separator' as const } : entry(item))),
    })),
  ];
}

/** Undo and redo belong to the page, which undoes entries and not only letters: the keys are shown, not taken. */
function entry(role: Role): MenuItemConstructorOptions {
  return role === 'undo' || role === 'redo' ? { role, registerAccelerator: false } : { role };
}
