import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { formatInches, formatLength } from '../../core/units/format-length.ts';
import type { LengthReason } from '../../core/problems/problem.ts';
import { parseLength, parseSignedLength } from '../../core/units/parse-length.ts';

describe('a length written the way a carpenter writes it', () => {
  it.each([
    // the forms of issue 2
    ['5\' 6-1/2"', 66.5],
    ['66.5', 66.5],
    ['66 1/2', 66.5],
    ['5-6-8/16', 66.5],
    ['1.69 m', 1690 / 25.4],
    ['1690 mm', 1690 / 25.4],
    ['5\' 6½"', 66.5],
    // and their neighbours
    ['66-1/2', 66.5],
    ['66 - 1/2', 66.5],
    ['66-½', 66.5],
    ['66 ½ in.', 66.5],
    ['66 1/2 inches', 66.5],
    ['66-1/2inch', 66.5],
    ['66-1/2"', 66.5],
    ['5-6-8', 66.5],
    ['5-6-1/2', 66.5],
    ["5'6", 66],
    ["5'-6-1/2''", 66.5],
    ["5' - 6 1/2", 66.5],
    ['5 ft 6 1/2 in.', 66.5],
    ['5ft6in', 66],
    ['5 feet 6 inches', 66],
    ['5 ft. 6 in', 66],
    ['5′ 6 1⁄2″', 66.5],
    ['5’ 6”', 66],
    ["5'", 60],
    ["5.5'", 66],
    ['5\' 1/2"', 60.5],
    ['5\' 6.5"', 66.5],
    ['1/2', 0.5],
    ['⅝', 0.625],
    ['3/64', 3 / 64],
    ['.5', 0.5],
    ['0', 0],
    ['  12  ', 12],
    ['66.5354330708661', 66.5354330708661],
    ['169 cm', 1690 / 25.4],
    ['25.4MM', 1],
  ])('%s is read', (text, inches) => {
    expect(parseLength(text)).toEqual({ ok: true, value: inches });
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['-5', 'negative'],
    ['−5\' 6"', 'negative'],
    ['5-6', 'ambiguous-dash'],
    ['5\' 12"', 'inches-over-12'],
    ['5-12-0', 'inches-over-12'],
    ['66 4/4', 'fraction-over-1'],
    ['66 9/8', 'fraction-over-1'],
    ['5-6-16', 'fraction-over-1'],
    ['66 1/3', 'denominator'],
    ['66 1/0', 'denominator'],
    ['66 3/10', 'denominator'],
    ['six', 'form'],
    ['5 6', 'form'],
    ['66.5 1/2', 'form'],
    ["5.5' 6", 'form'],
    ['1e3', 'form'],
    ['1,690 mm', 'form'],
    ['5 yd', 'form'],
    ['NaN', 'form'],
    ['Infinity', 'form'],
    ['9'.repeat(400), 'form'],
    ['1/2/3', 'form'],
  ] as const satisfies readonly (readonly [string, LengthReason])[])(
    '"%s" is questioned for its reason: %s',
    (typed, reason) => {
      const read = parseLength(typed);
      expect(read).toEqual({ ok: false, problem: { code: 'length-unreadable', typed, reason } });
    },
  );

  it('never gives NaN, an endless or a negative number, whatever is typed', () => {
    const typed = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...Array.from('0123456789\'"-/. ftinm½')), maxLength: 14 }),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const read = parseLength(text);
        const value = read.ok ? read.value : 0;
        expect(Number.isFinite(value) && value >= 0).toBe(true);
        expect(read.ok ? 'Enter' : problemSentence(read.problem)).toMatch(/^("|Enter)/);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what is written can be read again', () => {
  const sixteenths = fc.integer({ min: 0, max: 12_000 * 16 });

  it('in feet, inches and a fraction, to the sixteenth', () => {
    fc.assert(
      fc.property(sixteenths, (count) => {
        expect(parseLength(formatLength(count / 16))).toEqual({ ok: true, value: count / 16 });
      }),
    );
  });

  it('in inches and a fraction, to the sixteenth', () => {
    fc.assert(
      fc.property(sixteenths, (count) => {
        expect(parseLength(formatInches(count / 16))).toEqual({ ok: true, value: count / 16 });
      }),
    );
  });

  it('in feet-inches-sixteenths', () => {
    fc.assert(
      fc.property(sixteenths, (count) => {
        const feet = Math.floor(count / 192);
        const inches = Math.floor((count % 192) / 16);
        expect(parseLength(`${feet}-${inches}-${count % 16}`)).toEqual({ ok: true, value: count / 16 });
      }),
    );
  });
});

describe('a length on either side of a line', () => {
  it.each([
    ['-3/8', -0.375],
    ['− 1-1/2"', -1.5],
    ['+1/4', 0.25],
    ['1/4', 0.25],
    ['-0', 0],
    ["-1' 2", -14],
  ])('reads %j', (text, inches) => {
    expect(parseSignedLength(text)).toEqual({ ok: true, value: inches });
  });

  it('says what was typed where it does not read, and takes one sign alone', () => {
    for (const text of ['-', '--3/8', '-much', '+'])
      expect(parseSignedLength(text)).toMatchObject({ ok: false, problem: { typed: text } });
  });
});
