import type { IncomingMessage } from 'node:http';

/** The largest body that is read: the largest input of any command, with room for its envelope. [bytes] */
export const largestBody = 150_000_000;

/**
 * Reads a request's body as JSON.
 * @param limit - [bytes]
 * @returns the value; `too-large`, as soon as that is known, or `not-json`.
 */
export async function readJson(
  request: IncomingMessage,
  limit: number,
): Promise<{ readonly value: unknown } | 'too-large' | 'not-json'> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return 'too-large';
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > limit) return 'too-large';
    chunks.push(chunk);
  }
  try {
    return { value: JSON.parse(Buffer.concat(chunks).toString('utf8')) };
  } catch {
    return 'not-json';
  }
}
