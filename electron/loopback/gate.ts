import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';

/** Why a request is turned away, as an HTTP status. */
export type Refusal = 401 | 403 | 404 | 405 | 413 | 415 | 421;

/**
 * What every request must satisfy: the exact Host (another name that resolves to this machine is an attack), and where an
 * Origin is sent, ours.
 * @param host - `127.0.0.1:PORT`.
 */
export function refuseAny(headers: IncomingHttpHeaders, host: string): Refusal | undefined {
  if (headers.host !== host) return 421;
  if (headers.origin !== undefined && headers.origin !== `http://${host}`) return 403;
  return undefined;
}

/** What a command must satisfy beyond that: sent by our page, by POST, as JSON, with the key of this run. */
export function refuseCommand(
  method: string | undefined,
  headers: IncomingHttpHeaders,
  host: string,
  key: string,
): Refusal | undefined {
  if (method !== 'POST') return 405;
  if (headers.origin !== `http://${host}`) return 403;
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return 403;
  if (headers['content-type'] !== 'application/json') return 415;
  return hasKey(headers.authorization, key) ? undefined : 401;
}

/** Compares the presented key in constant time, by digests of equal length. */
export function hasKey(authorization: unknown, key: string): boolean {
  if (typeof authorization !== 'string') return false;
  return timingSafeEqual(digest(authorization), digest(`Bearer ${key}`));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text, 'utf8').digest();
}
