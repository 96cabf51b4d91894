import { toBase64 } from './base64.ts';
import { invoke } from '../bridge.ts';
import { notify } from '../kit/notices.tsx';
import { problemSentence } from '../../core/problems/sentence.ts';

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
  const info = await invoke('app.info', {});
  if (info.ok && info.value.savesFiles) {
    const reply = await invoke('files.save', { fileName, base64: await toBase64(bytes) });
    if (!reply.ok) notify(problemSentence(reply.problem), 'problem');
    else if (reply.value.saved) notify(`${fileName} was saved.`);
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
