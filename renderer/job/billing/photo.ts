import { attempt } from '../../host/attempt.ts';
import { fromBase64, toBase64 } from '../../host/base64.ts';
import { saveFile } from '../../host/save-file.ts';

/** Gives out a photo that was kept with the job. */
export async function openPhoto(id: string): Promise<void> {
  const photo = await attempt('costs.openAttachment', { id });
  if (photo !== undefined)
    await saveFile(photo.fileName, fromBase64(photo.base64), 'application/octet-stream');
}

/** Keeps a photo or PDF with the job; answers its id, or undefined where it was not kept, which has been said. */
export async function keepPhoto(jobId: string, file: File): Promise<string | undefined> {
  const base64 = await toBase64(new Uint8Array(await file.arrayBuffer()));
  return (await attempt('costs.attach', { jobId, name: file.name, base64 }))?.id;
}
