import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { eaveSurveySchema } from '../../core/survey/survey-document.ts';

type Entry = z.input<typeof eaveSurveySchema>;

function read(rest: Partial<Entry>) {
  return eaveSurveySchema.safeParse({
    id: 'north',
    name: 'North eave',
    lengthIn: 240,
    pitchRisePer12: 6,
    heightAbovePlateIn: 5,
    rafters: [],
    ...rest,
  });
}

function messageOf(rest: Partial<Entry>): string | undefined {
  return read(rest).error?.issues[0]?.message;
}

describe('a survey document', () => {
  it('takes lengths and pitches as numbers or as a carpenter writes them', () => {
    expect(
      read({ lengthIn: "20'", pitchRisePer12: '26.565 deg', heightAbovePlateIn: '5 1/4' }).data,
    ).toMatchObject({
      lengthIn: 240,
      pitchRisePer12: expect.closeTo(6, 4),
      heightAbovePlateIn: 5.25,
    });
  });

  it('leaves blank what was not measured', () => {
    const [rafter] = read({ rafters: [{ id: 'r1', readingIn: '1-4-0' }] }).data?.rafters ?? [];
    expect(rafter).toMatchObject({ readingIn: 16, thicknessIn: null, pitchRisePer12: null, joist: 'none' });
  });

  it.each([
    [{ lengthIn: 'long' }, /^"long" is not a length/],
    [{ lengthIn: 6 }, /^6" is out of range\. Enter 1' 0" to 1000' 0"/],
    [{ pitchRisePer12: 0 }, /^A pitch of 0\/12 cannot be built/],
    [{ pitchRisePer12: '25/12' }, /^A pitch of 25\/12 cannot be built.*at most 24\/12/],
    [{ pitchRisePer12: 'steep' }, /is not a pitch/],
    [{ heightAbovePlateIn: '5 1/3' }, /fraction that no tape shows/],
    [{ rafters: [{ id: 'r1', readingIn: '5-6' }] }, /can be read two ways/],
    [{ rafters: [{ id: 'r1', readingIn: -4 }] }, /out of range/],
  ] as const satisfies readonly (readonly [unknown, RegExp])[])(
    '%j is questioned in a sentence',
    (entry, sentence) => {
      expect(messageOf(entry as Partial<Entry>)).toMatch(sentence);
    },
  );

  it('takes no number that is none', () => {
    expect(read({ lengthIn: Number.NaN }).success).toBe(false);
    expect(read({ lengthIn: Number.POSITIVE_INFINITY }).success).toBe(false);
  });

  it.each([1e308, -1e308, 1e21, 12_000_001])('a number as large as %d is told by its size', (huge) => {
    const entries: Partial<Entry>[] = [
      { lengthIn: huge },
      { pitchRisePer12: huge },
      { rafters: [{ id: 'r1', readingIn: huge }] },
    ];
    for (const entry of entries) {
      const sentence = messageOf(entry);
      expect(sentence).toMatch(/^A (length|pitch) of (over|under) -?1000000/);
      expect(sentence).not.toMatch(/NaN|Infinity|e\+/);
    }
  });

  it('repeats no more than 40 characters of what was typed', () => {
    expect(messageOf({ lengthIn: 'x'.repeat(5000) })).toMatch(/^"x{39}…" is not a length/);
    expect(messageOf({ pitchRisePer12: '7'.repeat(5000) })?.length).toBeLessThan(120);
  });
});
