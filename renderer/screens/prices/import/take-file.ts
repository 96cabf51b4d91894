import { problemSentence } from '../../../../core/problems/sentence.ts';
import { readDay } from '../../../../core/units/written-date.ts';
import type { CommandOutput } from '../../../../core/contract/contract.ts';
import { invoke } from '../../../bridge.ts';
import { toBase64 } from '../../../host/base64.ts';
import { tell } from '../../../host/queries.ts';
import { HostLost } from '../../../host/transport.ts';
import { noteStep } from '../price-steps.ts';
import { holdImport } from './held-import.ts';

/** Largest file that is taken: what the bridge carries. [bytes] */
const largestFile = 70_000_000;

/** What became of a file: taken in whole, waiting for its columns to be named, or refused. */
export type TakenFile =
  | { readonly kind: 'done'; readonly words: string }
  | { readonly kind: 'columns' }
  | { readonly kind: 'problem'; readonly words: string };

/**
 * Takes a price list file in hand. One with the program's own columns comes in at once; any other waits until its columns
 * are named.
 */
export async function takeFile(file: File): Promise<TakenFile> {
  try {
    if (file.size > largestFile)
      return { kind: 'problem', words: `${file.name}: The file is larger than 70 MB. Split it.` };
    const importId = crypto.randomUUID();
    const bytes = new Uint8Array(await file.arrayBuffer());
    const opened = await invoke('prices.importOpen', { importId, base64: await toBase64(bytes) });
    if (!opened.ok) return { kind: 'problem', words: `${file.name}: ${problemSentence(opened.problem)}` };
    const { isOurs, encoding, separator } = opened.value;
    if (isOurs && encoding === 'utf-8' && separator === ',') {
      await invoke('prices.importStop', { importId });
      const reply = await tell('prices.importCsv', { text: new TextDecoder().decode(bytes) });
      if (!reply.ok) return { kind: 'problem', words: `${file.name}: ${problemSentence(reply.problem)}` };
      noteStep(`import of ${file.name}`, reply.value.stepId);
      return { kind: 'done', words: importWords(reply.value) };
    }
    holdImport({ importId, fileName: file.name, opened: opened.value });
    return { kind: 'columns' };
  } catch (error) {
    if (!(error instanceof HostLost)) throw error;
    return {
      kind: 'problem',
      words: 'Eavewright does not answer, so nothing was imported. Try again once it does.',
    };
  }
}

/** What came in, and how days were read where they can be read two ways. */
function importWords(came: CommandOutput<'prices.importCsv'>): string {
  const items = `${came.items} ${came.items === 1 ? 'item' : 'items'}`;
  const prices = `${came.prices} new ${came.prices === 1 ? 'price' : 'prices'}`;
  const days =
    came.monthFirst === null
      ? ''
      : ` Days with strokes were read month first: ${came.monthFirst} as ${readDay(came.monthFirst)}.`;
  return `${items} with ${prices} came in.${days}`;
}
