import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';

describe('a sentence for an entry', () => {
  test.each([
    [{ code: 'pitch-unreadable', typed: ' ' }, 'Enter a pitch, like 6/12 or 26.6 deg.'],
    [{ code: 'money-unreadable', typed: '' }, 'Enter an amount, like 12.50.'],
    [{ code: 'number-unreadable', typed: '' }, 'Enter a number, like 12.'],
    [
      { code: 'number-not-whole', typed: '2.5' },
      '2.5 is not a whole number. Enter one without a fraction, like 12.',
    ],
    [
      { code: 'out-of-range', what: '0', least: '1', most: '20 people' },
      '0 is out of range. Enter 1 to 20 people.',
    ],
    [
      { code: 'out-of-range', what: '0', least: '1', most: '9007199254740991' },
      '0 is out of range. Enter 1 or more.',
    ],
    [{ code: 'out-of-range', what: '9', least: '', most: '8' }, '9 is out of range. Enter 8 or less.'],
  ] as const)('%j', (problem, sentence) => {
    expect(problemSentence(problem)).toBe(sentence);
  });

  test('for several faults of a file names each entry once', () => {
    expect(
      problemSentence({
        code: 'file-faults',
        count: 2,
        faults: [
          {
            code: 'length-unreadable',
            typed: '2 cubits',
            reason: 'form',
            field: 'survey.eaves.0.rafters.3.readingIn',
          },
          {
            code: 'entry-invalid',
            what: 'Survey, storeys',
            detail: 'Enter 4 or less.',
            field: 'survey.storeys',
          },
        ],
      }),
    ).toMatch(
      /^2 entries of the file cannot be read\. Survey, eave 1, rafter 4, reading: "2 cubits" is not a length\..* Survey, storeys: Enter 4 or less\.$/,
    );
  });
});
