import { describe, expect, test } from 'vitest';
import { readEntry } from '../../renderer/fields/entry.ts';
import {
  decimalKind,
  lengthKind,
  moneyKind,
  numberKind,
  pitchKind,
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
    expect(crew.read('2.5').ok).toBe(false);
  });

  test('keeps the text of a percentage exact', () => {
    expect(decimalKind({ least: 0, most: 50 }).read('7.125 %')).toEqual({ ok: true, value: '7.125' });
  });
});

test('a pitch typed in degrees is shown as rise in 12', () => {
  const read = pitchKind.read('26.565 deg');
  expect(read.ok && pitchKind.write(read.value)).toBe('6/12');
});
