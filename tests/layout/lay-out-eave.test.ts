import { describe, expect, it } from 'vitest';
import { eaveIndex, eaveLetter } from '../../core/layout/eave-letter.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

describe('an eave cannot be laid out', () => {
  it('while its readings cannot stand, and the path names the eave by its letter', () => {
    expect(layOutEave(makeEave([40, 16]), makeDesign(), 'C', null)).toMatchObject({
      ok: false,
      problem: { code: 'rafter-out-of-order', field: 'survey.eaves.2.rafters.1.readingIn' },
    });
  });

  it('from stock that is not known', () => {
    expect(layOutEave(makeEave([40]), makeDesign({ extender: { section: '2x7' } }), 'A', null)).toEqual({
      ok: false,
      problem: { code: 'unknown-section', section: '2x7', use: 'the extenders' },
    });
    expect(
      layOutEave(makeEave([40]), makeDesign({ fascia: { stock: { section: '9x9' } } }), 'A', null),
    ).toMatchObject({
      problem: { code: 'unknown-section', use: 'the fascia' },
    });
  });

  it('where the fascia takes the whole overhang', () => {
    const design = makeDesign({ overhangIn: 1.5, overhangTo: 'fascia-face' });
    expect(layOutEave(makeEave([40]), design, 'A', null)).toMatchObject({
      ok: false,
      problem: { code: 'overhang-nothing-left', eave: 'North eave' },
    });
  });
});

describe('a laid-out eave', () => {
  it('gives the overhang level to the framing, however it was entered', () => {
    // 3-4-5 triangle: 20 in. along a 9/12 slope is 16 in. level; less the 1-1/2 in. of a 2x fascia.
    const design = makeDesign({ overhangIn: 20, overhangMeasured: 'along-slope', overhangTo: 'fascia-face' });
    const layout = layOut(makeEave([40], { pitchRisePer12: 9 }), design);
    expect(layout.overhangLevelIn).toBeCloseTo(14.5, 12);
    expect(layout.extenders[0]?.section.overhangLevelIn).toBeCloseTo(14.5, 12);
  });

  it('marks each extender with the number of its rafter, so that saw list and layout agree', () => {
    const rafters = [
      { id: 'a', readingIn: 40 },
      { id: 'b', readingIn: 64, joist: 'both' as const },
      { id: 'c', readingIn: 88 },
    ];
    const layout = layOut(makeEave([], { rafters }));
    expect(layout.extenders.map(({ mark }) => mark)).toEqual(['A-E01', 'A-E03']);
  });

  it('rounds blanks up to a sixteenth, never down', () => {
    // 57.4156 in. -> 57-7/16
    const [extender] = layOut(makeEave([40])).extenders;
    expect(extender?.blankSixteenths).toBe(57 * 16 + 7);
  });

  it('is the same for the same survey', () => {
    const eave = makeEave([16, 40, 64, 88], { hasOldBlocks: true });
    expect(layOut(eave)).toEqual(layOut(structuredClone(eave)));
  });

  it('of five hundred rafters keeps every one', () => {
    const rafters = Array.from({ length: 500 }, (_, index) => ({
      id: `r${index}`,
      readingIn: 16 + index * 20,
      heightAbovePlateIn: 5 + (index % 7) / 16,
    }));
    const layout = layOut(makeEave([], { lengthIn: 10_020, rafters }));
    expect(layout.extenders).toHaveLength(500);
    expect(layout.extenders.at(-1)?.mark).toBe('A-E500');
    expect(layout.bays).toHaveLength(499);
  });
});

describe('the letter of an eave', () => {
  it('runs A to Z, then AA', () => {
    expect([0, 1, 25, 26, 27, 39, 51, 52].map(eaveLetter)).toEqual([
      'A',
      'B',
      'Z',
      'AA',
      'AB',
      'AN',
      'AZ',
      'BA',
    ]);
  });

  it('leads back to its place in the survey', () => {
    for (let index = 0; index < 800; index += 1) expect(eaveIndex(eaveLetter(index))).toBe(index);
  });
});
