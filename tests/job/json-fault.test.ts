import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonFaultLine } from '../../core/job/json-fault.ts';

// The grammar is RFC 8259, "The JavaScript Object Notation (JSON) Data Interchange Format".
describe('a text that is not JSON', () => {
  test.each([
    ['', 1],
    ['rafters', 1],
    ['{"a": 1,}', 1],
    ['{\n  "a": 1\n  "b": 2\n}', 3],
    ['{\n  "a": 01\n}', 2],
    ['{"a":\r\n[1, 2,\r\n}', 3],
    ['{"a": [1, 2\n\n\n', 1],
    ['{}\n{}', 2],
    ["{\n\n'a': 1}", 3],
    ['[1]\n]', 2],
    ['["a\nb"]', 1],
    ['[true, nul]', 1],
    ['{"a" 1}', 1],
    ['{1: 1}', 1],
    ['[1, "\\x"]', 1],
  ])('%j goes wrong on line %i', (text, line) => {
    expect(() => void JSON.parse(text)).toThrow(SyntaxError);
    expect(jsonFaultLine(text)).toBe(line);
  });

  test('goes wrong where a slip was put in, whatever stands around it', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        const lines = JSON.stringify({ before, slip: 0, after }, null, 1).split('\n');
        const at = lines.findIndex((line) => line === ' "slip": 0,');
        const text = lines.with(at, ' "slip": zero,').join('\n');
        expect(jsonFaultLine(text)).toBe(at + 1);
      }),
    );
  });
});
