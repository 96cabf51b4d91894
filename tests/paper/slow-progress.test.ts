import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { slowProgress } from '../../electron/slow-progress.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a run without a window', () => {
  it('says the paper that it is making once 5 seconds are over, and each later one', () => {
    const said: string[] = [];
    const progress = slowProgress(5000, (line) => said.push(line));
    progress.at('Making the first.');
    vi.advanceTimersByTime(4000);
    progress.at('Making the second.');
    expect(said).toEqual([]);
    vi.advanceTimersByTime(60000);
    expect(said).toEqual(['Making the second.']);
    progress.at('Making the third.');
    expect(said).toEqual(['Making the second.', 'Making the third.']);
  });

  it('says nothing where it is over before that', () => {
    const said: string[] = [];
    const progress = slowProgress(5000, (line) => said.push(line));
    progress.at('Making the first.');
    progress.end();
    vi.advanceTimersByTime(60000);
    expect(said).toEqual([]);
  });
});
