import type { JobEditor } from '../editor/job-editor.ts';

/** Waits until the host holds everything typed, for what it makes from the saved job; at most two seconds. */
export async function allSaved(editor: JobEditor): Promise<void> {
  for (let turn = 0; turn < 40 && !editor.isSaved(); turn += 1) {
    editor.flush();
    // oxlint-disable-next-line no-await-in-loop -- a pause between looks is the point.
    await new Promise((resolve) => window.setTimeout(resolve, 50));
  }
}
