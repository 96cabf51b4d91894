import { toBase64 } from './base64.ts';
import { attempt } from './attempt.ts';
import { notify } from '../kit/notices.tsx';

/**
 * Saves bytes where the person says: by the shell's own dialog where it has one, else as a download of the page.
 * @param fileName - the name that is offered.
 * @param bytes - the file.
 * @param type - its media type.
 */
export async function saveFile(
  fileName: string,
  bytes: Uint8Array<ArrayBuffer>,
  type: string,
): Promise<void> {
  const info = await attempt('app.info', {});
  if (info === undefined) return;
  if (info.savesFiles) {
    const done = await attempt('files.save', { fileName, base64: await toBase64(bytes) });
    if (done?.saved === true) notify(`${fileName} was saved.`);
    return;
  }
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
  notify(`${fileName} was downloaded.`);
}

/** Saves text as a file in UTF-8. */
export function saveTextFile(fileName: string, text: string, type: string): Promise<void> {
  return saveFile(fileName, new TextEncoder().encode(text), type);
}
