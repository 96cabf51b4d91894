import { expect, test } from 'vitest';
import { ownerOf, splitRef } from '../../core/trace/ref.ts';

test('a ref splits at its first slash, so that 5/4 stock keeps its own', () => {
  expect(splitRef('board/5/4x8 primed/2')).toEqual({ kind: 'board', rest: '5/4x8 primed/2' });
  expect(splitRef('alone')).toEqual({ kind: 'alone', rest: '' });
});

test('of two ids that fit, the longer owns the ref, wherever it stands in the list', () => {
  for (const ids of [
    ['a', 'a/b'],
    ['a/b', 'a'],
  ])
    expect(ownerOf('a/b/c', ids, (id) => id)).toEqual({ owner: 'a/b', rest: 'c' });
  expect(ownerOf('ab/c', ['a'], (id) => id)).toBeUndefined();
});
