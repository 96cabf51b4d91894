import type { TextEncoding } from '../../core/pricing/import/layout.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { fail, ok, type Result } from '../../core/result.ts';

/** How much of a file is looked at to tell how it is written. [bytes] */
const lookedAt = 64_000;

/**
 * Reads the bytes of a text file.
 *
 * Where nothing is told: a mark at its start says UTF-8 or UTF-16; every other byte a zero is UTF-16; what reads as UTF-8
 * is UTF-8; all else is the Western code page of spreadsheets (windows-1252, which holds all letters of Latin-1).
 * @returns the text and how it was read; or `not-text` for workbooks, PDFs and other bytes.
 */
export function readTextBytes(
  bytes: Uint8Array,
  told: TextEncoding | null,
): Result<{ readonly text: string; readonly encoding: TextEncoding }, Problem> {
  const looksLike = startOf(bytes);
  if (looksLike !== null) return fail({ code: 'prices', fault: { what: 'not-text', looksLike } });
  const encoding = told ?? guessEncoding(bytes);
  const text = new TextDecoder(encoding).decode(bytes);
  return text.slice(0, lookedAt).includes('\0')
    ? fail({ code: 'prices', fault: { what: 'not-text', looksLike: 'bytes' } })
    : ok({ text, encoding });
}

function startOf(bytes: Uint8Array): 'workbook' | 'pdf' | null {
  const start = String.fromCharCode(...bytes.slice(0, 4));
  if (start === 'PK\u0003\u0004' || start === '\u00d0\u00cf\u0011\u00e0') return 'workbook';
  return start === '%PDF' ? 'pdf' : null;
}

function guessEncoding(bytes: Uint8Array): TextEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const start = bytes.slice(0, lookedAt);
  const pairs = Math.floor(start.length / 2);
  const zeros = (from: 0 | 1): number =>
    start.reduce((count, byte, index) => count + (index % 2 === from && byte === 0 ? 1 : 0), 0);
  if (pairs > 2 && zeros(1) > pairs / 2) return 'utf-16le';
  if (pairs > 2 && zeros(0) > pairs / 2) return 'utf-16be';
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return 'utf-8';
  } catch {
    return 'windows-1252';
  }
}
