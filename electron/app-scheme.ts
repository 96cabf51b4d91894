import type { BuiltFiles } from './built-files.ts';
import { pageHeaders } from './page-headers.ts';
import { isOurAddress } from './security.ts';

/**
 * Answers a request of the page for one of its own files.
 * @param files - the fixed map; what is not in it does not exist.
 */
export function answerFromFiles(
  files: BuiltFiles,
  request: { readonly method: string; readonly url: string },
): Response {
  if (!isOurAddress(request.url)) return refusal(403);
  if (request.method !== 'GET') return refusal(405);
  const file = files.get(new URL(request.url).pathname);
  if (file === undefined) return refusal(404);
  return new Response(file.bytes, { status: 200, headers: { ...pageHeaders, 'content-type': file.type } });
}

function refusal(status: number): Response {
  return new Response(null, { status, headers: pageHeaders });
}
