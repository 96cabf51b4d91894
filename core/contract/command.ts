import { z } from 'zod';

/** The id of a job, an item, a record. */
export const id = z.string().min(1).max(60);

/** A command without input, or without anything to tell. */
export const none = z.strictObject({});

/** A text file that the shell saves or the page downloads. */
export const namedText = z.strictObject({ fileName: z.string(), text: z.string() });

/** A file of bytes that the shell saves or the page downloads. */
export const namedBytes = z.strictObject({ fileName: z.string(), base64: z.string() });

/** A printed sheet. */
export const printedSheet = z.strictObject({
  fileName: z.string(),
  pdfBase64: z.string(),
  pages: z.int(),
});

export const paperSize = z.enum(['letter', 'a4']);

/** A command that changes nothing. */
export function read<I extends z.ZodType, O extends z.ZodType>(input: I, output: O) {
  return { input, output, effect: 'read' as const };
}

/** A command that changes the shop file. */
export function write<I extends z.ZodType, O extends z.ZodType>(input: I, output: O) {
  return { input, output, effect: 'write' as const };
}
