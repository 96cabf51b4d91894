/** A thing that a person can tell the program to do. */
export type CommandDefinition = {
  readonly id: string;
  readonly label: string;
  readonly group: 'Go to' | 'Job' | 'Edit' | 'Tail' | 'View';
  /** Keys as tinykeys writes them; `$mod` is Command on macOS and Control elsewhere. */
  readonly keys?: string;
  /** Keys that do the same, for keyboards without the others. */
  readonly otherKeys?: string;
  /** Holds also while one types in a field. */
  readonly whileTyping?: boolean;
  /** The keys hold only while the focus is inside what is marked `data-keys` with this name. */
  readonly within?: 'tails';
};

/**
 * Every command of the program, once: menu, palette and keys are made from this table. A screen says what a command does
 * while it is shown, by `useCommand`; a command that no screen answers is not offered.
 */
export const commandTable = [
  { id: 'go.jobs', label: 'Jobs', group: 'Go to', keys: 'Alt+Shift+KeyJ', whileTyping: true },
  { id: 'go.prices', label: 'Price list', group: 'Go to', keys: 'Alt+Shift+KeyP', whileTyping: true },
  { id: 'go.money', label: 'Money', group: 'Go to', keys: 'Alt+Shift+KeyM', whileTyping: true },
  { id: 'go.settings', label: 'Settings', group: 'Go to', keys: 'Alt+Shift+KeyS', whileTyping: true },
  { id: 'job.survey', label: 'Survey', group: 'Job', keys: 'Alt+Shift+Digit1', whileTyping: true },
  { id: 'job.design', label: 'Design', group: 'Job', keys: 'Alt+Shift+Digit2', whileTyping: true },
  { id: 'job.checks', label: 'Checks', group: 'Job', keys: 'Alt+Shift+Digit3', whileTyping: true },
  { id: 'job.takeoff', label: 'Takeoff', group: 'Job', keys: 'Alt+Shift+Digit4', whileTyping: true },
  { id: 'job.cut-plan', label: 'Cut plan', group: 'Job', keys: 'Alt+Shift+Digit5', whileTyping: true },
  { id: 'job.estimate', label: 'Estimate', group: 'Job', keys: 'Alt+Shift+Digit6', whileTyping: true },
  { id: 'job.quote', label: 'Quote', group: 'Job', keys: 'Alt+Shift+Digit7', whileTyping: true },
  { id: 'job.sheets', label: 'Sheets', group: 'Job', keys: 'Alt+Shift+Digit8', whileTyping: true },
  { id: 'job.cost', label: 'Job cost', group: 'Job', keys: 'Alt+Shift+Digit9', whileTyping: true },
  { id: 'job.billing', label: 'Billing', group: 'Job', keys: 'Alt+Shift+Digit0', whileTyping: true },
  { id: 'job.new', label: 'New job', group: 'Job', keys: 'Alt+Shift+KeyN', whileTyping: true },
  { id: 'job.open-sample', label: 'Open the sample job', group: 'Job' },
  { id: 'job.open-finished-sample', label: 'Bring in finished jobs to look at', group: 'Job' },
  { id: 'edit.undo', label: 'Undo', group: 'Edit', keys: '$mod+KeyZ', whileTyping: true },
  { id: 'edit.redo', label: 'Redo', group: 'Edit', keys: '$mod+Shift+KeyZ', whileTyping: true },
  { id: 'edit.search', label: 'Search this list', group: 'Edit', keys: 'Alt+Shift+KeyF', whileTyping: true },
  { id: 'tail.before', label: 'Tail before it', group: 'Tail', keys: 'ArrowUp', within: 'tails' },
  { id: 'tail.next', label: 'Next tail along the wall', group: 'Tail', keys: 'ArrowDown', within: 'tails' },
  {
    id: 'tail.left',
    label: 'Left by 1/16 in., or to its left side',
    group: 'Tail',
    keys: 'ArrowLeft',
    within: 'tails',
  },
  {
    id: 'tail.right',
    label: 'Right by 1/16 in., or to its right side',
    group: 'Tail',
    keys: 'ArrowRight',
    within: 'tails',
  },
  { id: 'tail.inch-left', label: 'Left by 1 in.', group: 'Tail', keys: 'Shift+ArrowLeft', within: 'tails' },
  {
    id: 'tail.inch-right',
    label: 'Right by 1 in.',
    group: 'Tail',
    keys: 'Shift+ArrowRight',
    within: 'tails',
  },
  { id: 'tail.hang', label: 'Hang a tail behind it', group: 'Tail', keys: 'Insert', within: 'tails' },
  { id: 'tail.pin', label: 'Pin it as it stands', group: 'Tail' },
  { id: 'tail.release', label: 'Release it to the program', group: 'Tail' },
  {
    id: 'tail.remove',
    label: 'Take it away',
    group: 'Tail',
    keys: 'Delete',
    otherKeys: 'Backspace',
    within: 'tails',
  },
  { id: 'view.palette', label: 'All commands', group: 'View', keys: '$mod+KeyK', whileTyping: true },
  { id: 'view.light', label: 'Light', group: 'View' },
  { id: 'view.dark', label: 'Dark', group: 'View' },
  { id: 'view.system', label: 'Light or dark as the computer says', group: 'View' },
] as const satisfies readonly CommandDefinition[];

export type CommandId = (typeof commandTable)[number]['id'];

const names: Readonly<Record<string, string>> = { Alt: 'Alt', Shift: 'Shift', $mod: 'Ctrl' };
const macNames: Readonly<Record<string, string>> = { Alt: 'Option', Shift: 'Shift', $mod: 'Cmd' };

/**
 * Writes keys as they stand on the keyboard.
 * @param keys - as in the table, e.g. `$mod+Shift+KeyZ`.
 * @param isMac - whether the keyboard is Apple's.
 * @returns e.g. `Ctrl+Shift+Z`.
 */
export function keysInWords(keys: string, isMac: boolean): string {
  return keys
    .split('+')
    .map((key) => (isMac ? macNames : names)[key] ?? key.replace(/^(Key|Digit)/, ''))
    .join('+');
}
