import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostPictureBytes, readPicture } from '../../core/documents/picture.ts';

/** The head of a PNG: its sign, then the IHDR chunk. Source: ISO/IEC 15948, 5.2 and 11.2.2, from memory. */
function pngHead(widthPx: number, heightPx: number): Uint8Array {
  const bytes = new Uint8Array(64);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  const view = new DataView(bytes.buffer);
  view.setUint32(16, widthPx);
  view.setUint32(20, heightPx);
  return bytes;
}

/** The head of a JPEG: start of image, an application segment, a start of frame. Source: ITU-T T.81, B.1 and B.2.2, from memory. */
function jpegHead(widthPx: number, heightPx: number, frame = 0xc0): Uint8Array {
  const start = [0xff, 0xd8];
  const application = [0xff, 0xe0, 0x00, 0x06, 1, 2, 3, 4];
  const size = [heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255];
  return Uint8Array.from([
    ...start,
    ...application,
    0xff,
    frame,
    0x00,
    0x0b,
    8,
    ...size,
    1,
    1,
    0x11,
    0,
    0xff,
    0xda,
  ]);
}

test('a PNG and a JPEG tell their size, whatever their file is called', () => {
  expect(readPicture(pngHead(300, 120))).toEqual({
    ok: true,
    value: { mediaType: 'image/png', widthPx: 300, heightPx: 120 },
  });
  expect(readPicture(jpegHead(640, 480))).toEqual({
    ok: true,
    value: { mediaType: 'image/jpeg', widthPx: 640, heightPx: 480 },
  });
  // Progressive frames count too; tables of the coder between are no frame.
  expect(readPicture(jpegHead(640, 480, 0xc2)).ok).toBe(true);
  expect(readPicture(jpegHead(640, 480, 0xc4)).ok).toBe(false);
});

test.each([
  ['a drawing in letters', new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"></svg>')],
  ['a moving picture', new TextEncoder().encode('GIF89a                                  ')],
  ['nothing', new Uint8Array(0)],
  ['a PNG without a width', pngHead(0, 10)],
])('%s is refused', (_, bytes) => {
  expect(readPicture(bytes)).toEqual({
    ok: false,
    problem: { code: 'offer', fault: { what: 'picture-unreadable' } },
  });
});

test('a picture that is too heavy or too wide says by how much', () => {
  expect(readPicture(new Uint8Array(mostPictureBytes + 1))).toMatchObject({
    problem: { fault: { what: 'picture-too-large', mostKb: 1024 } },
  });
  expect(readPicture(pngHead(5000, 10))).toMatchObject({
    problem: { fault: { what: 'picture-too-wide', mostPx: 4000 } },
  });
});

test('whatever bytes follow the signs, reading them comes to an end with an answer', () => {
  fc.assert(
    fc.property(
      fc.constantFrom([0xff, 0xd8], [0x89, 0x50], []),
      fc.uint8Array({ maxLength: 400 }),
      (sign, rest) => {
        expect(typeof readPicture(Uint8Array.from([...sign, ...rest])).ok).toBe('boolean');
      },
    ),
    { numRuns: 2000 },
  );
});
