import { describe, expect, test } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { readEntry } from '../../renderer/fields/entry.ts';
import {
  decimalKind,
  lengthKind,
  moneyKind,
  numberKind,
  pitchKind,
  pitchLimitKind,
} from '../../renderer/fields/entry-kinds.ts';

const money = moneyKind({ least: 0, most: 1_000_000 });
const wall = lengthKind({ least: 12, most: 12_000 });

describe('a length field', () => {
  test("reads what a carpenter writes and shows it in the carpenter's form", () => {
    const read = wall.read('66 1/2');
    expect(read).toEqual({ ok: true, value: 66.5 });
    expect(wall.write(66.5)).toBe('5\' 6-1/2"');
  });

  test('says the range in feet and inches where a length makes no sense', () => {
    expect(wall.read('3')).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', what: '3', least: '1\' 0"', most: '1000\' 0"' },
    });
  });
});

test.each([
  [0.09375, '3/32"'],
  [0.1, '0.1"'],
  [0.125, '1/8"'],
  [5.03125, '5-1/32"'],
  [65.015625, '5\' 5-1/64"'],
  [66.53543, '5\' 6-9/16"'],
])('a field shows %d in. as %s, never a finer length as another', (inches, shown) => {
  expect(lengthKind({ least: 0, most: 100 }).write(inches)).toBe(shown);
});

describe('a blank field', () => {
  test('stands for the general value where that is allowed', () => {
    expect(readEntry(wall, '  ', true)).toEqual({ value: null, text: '  ', problem: null });
  });

  test('is a problem where a value is needed', () => {
    expect(readEntry(wall, '', false).problem).toMatchObject({ code: 'length-unreadable', reason: 'empty' });
  });
});

describe('a money field', () => {
  test.each([
    ['12.5', '12.5', '12.50'],
    ['$1,250.00', '1250', '1,250.00'],
    ['0.0725', '0.0725', '0.0725'],
    ['.5', '0.5', '0.50'],
    ['1234567.891', null, null],
  ])('reads %s exactly and shows two places or more', (typed, value, shown) => {
    const entry = readEntry(money, typed, false);
    expect(entry.value).toBe(value);
    expect(entry.value === null ? null : money.write(entry.value)).toBe(shown);
  });

  test.each(['', 'ten', '12.3.4', '1,2,3', '1e3', '12 50'])('calls %j no amount', (typed) => {
    expect(readEntry(money, typed, false).problem).toMatchObject({ code: 'money-unreadable' });
  });
});

describe('a number field', () => {
  const crew = numberKind({ least: 1, most: 20 }, true);

  test('takes whole numbers alone where things are counted', () => {
    expect(crew.read('2')).toEqual({ ok: true, value: 2 });
    expect(crew.read('2.5')).toEqual({ ok: false, problem: { code: 'number-not-whole', typed: '2.5' } });
  });

  test.each([
    ["14'", 14],
    ['14 ft', 14],
    ['14 feet', 14],
    ['14ft.', 14],
    ['14\' 6"', 14.5],
    ['14', 14],
  ])('of feet reads %s as a tape does', (typed, feet) => {
    expect(numberKind({ least: 1, most: 60 }, false, 'ft').read(typed)).toEqual({ ok: true, value: feet });
  });

  test('reads its own unit after the number, and no other', () => {
    expect(numberKind({ least: 0.1, most: 1000 }, false, 'lb').read('50 lbs')).toEqual({
      ok: true,
      value: 50,
    });
    expect(numberKind({ least: 1, most: 24 }, false, 'hours').read('7.5h')).toEqual({ ok: true, value: 7.5 });
    expect(numberKind({ least: 1, most: 24 }, false, 'hours').read('7.5 lb').ok).toBe(false);
  });

  test('says the range with its unit, and no end that is none', () => {
    expect(numberKind({ least: 1, most: 20 }, true, 'people').read('0')).toMatchObject({
      problem: { least: '1 people', most: '20 people' },
    });
    const number = numberKind({ least: 1, most: Number.MAX_SAFE_INTEGER }, true).read('0');
    expect(number.ok ? '' : problemSentence(number.problem)).toBe('0 is out of range. Enter 1 or more.');
    expect(money.read('2000000')).toMatchObject({ problem: { least: '$0.00', most: '$1,000,000.00' } });
  });

  test('keeps the text of a percentage exact', () => {
    expect(decimalKind({ least: 0, most: 50 }).read('7.125 %')).toEqual({ ok: true, value: '7.125' });
  });
});

test('a pitch typed in degrees is shown as rise in 12', () => {
  const read = pitchKind.read('26.565 deg');
  expect(read.ok && pitchKind.write(read.value)).toBe('6/12');
});

test('what is steep begins above a pitch, written as one, or above a level roof', () => {
  expect(pitchLimitKind.read('8/12')).toEqual({ ok: true, value: 8 });
  expect(pitchLimitKind.read('0')).toEqual({ ok: true, value: 0 });
  expect(pitchLimitKind.write(8)).toBe('8/12');
});
