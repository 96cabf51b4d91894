import { fail, ok, type Result } from '../result.ts';
import type { Problem } from '../problems/problem.ts';

/** A picture that can be printed, as its own bytes say. */
export type Picture = {
  readonly mediaType: 'image/png' | 'image/jpeg';
  readonly widthPx: number;
  readonly heightPx: number;
};

/** Most that a logo may weigh, and how wide or high it may be: it is printed less than two inches wide. */
export const mostPictureBytes = 1024 * 1024;
const mostPx = 4000;

const pngSign = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/**
 * Reads what kind of picture a file is by how it begins, never by its name, and how large it is. PNG: the header chunk
 * (ISO/IEC 15948, 11.2.2); JPEG: the first start-of-frame segment (ITU-T T.81, B.2.2); both from memory.
 * @returns e.g. a PNG of 300 by 120 points; or why it is none that can be printed.
 */
export function readPicture(bytes: Uint8Array): Result<Picture, Problem> {
  if (bytes.length > mostPictureBytes)
    return refused({ what: 'picture-too-large', mostKb: mostPictureBytes / 1024 });
  const picture = pngOf(bytes) ?? jpegOf(bytes);
  if (picture === undefined || picture.widthPx < 1 || picture.heightPx < 1)
    return refused({ what: 'picture-unreadable' });
  return Math.max(picture.widthPx, picture.heightPx) > mostPx
    ? refused({ what: 'picture-too-wide', mostPx })
    : ok(picture);
}

function refused(fault: Extract<Problem, { code: 'offer' }>['fault']): Result<never, Problem> {
  return fail({ code: 'offer', fault });
}

function pngOf(bytes: Uint8Array): Picture | undefined {
  if (bytes.length < 33 || !pngSign.every((byte, at) => bytes[at] === byte)) return undefined;
  const name = String.fromCharCode(...bytes.subarray(12, 16));
  if (name !== 'IHDR') return undefined;
  const view = viewOf(bytes);
  return { mediaType: 'image/png', widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
}

function jpegOf(bytes: Uint8Array): Picture | undefined {
  if (bytes.length < 12 || bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  const view = viewOf(bytes);
  for (let at = 2; at + 9 <= bytes.length; ) {
    const marker = view.getUint16(at);
    if (marker === 0xffff) at += 1;
    else if (isFrame(marker))
      return { mediaType: 'image/jpeg', heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    else if (marker < 0xff01 || marker === 0xffda) return undefined;
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

/** SOF0 to SOF15, without the tables and restarts that lie between. */
function isFrame(marker: number): boolean {
  return marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
