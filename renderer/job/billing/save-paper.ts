import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { saveFile } from '../../host/save-file.ts';

/** Prints one of the papers of the billing and saves it as PDF. */
export async function savePaper(
  command: 'billing.changePaper' | 'billing.invoicePaper',
  id: string,
  paperSize: 'letter' | 'a4',
): Promise<void> {
  const paper = await attempt(command, { id, paperSize });
  if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
}

/** Prints what a client was billed and paid on all of his jobs. */
export async function saveStatement(jobId: string, paperSize: 'letter' | 'a4'): Promise<void> {
  const paper = await attempt('billing.statement', { jobId, paperSize });
  if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
}
