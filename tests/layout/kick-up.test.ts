import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import type { eaveDesignSchema } from '../../core/eave/design-document.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { formatInches } from '../../core/units/format-length.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

type Entry = Partial<z.input<typeof eaveDesignSchema>>;

/** A steep old roof whose rafters stand unevenly high on the plate: 8/12, 5-1/2 to 6-1/2 in. */
const heights = [6, 6.25, 5.5, 6.5, 6];
const steep = (rest: Parameters<typeof makeEave>[1] = {}) =>
  makeEave([], {
    pitchRisePer12: 8,
    deckStaysOn: false,
    rafters: heights.map((heightAbovePlateIn, index) => ({
      id: `r${index + 1}`,
      readingIn: 20 + 24 * index,
      heightAbovePlateIn,
    })),
    ...rest,
  });

const kicked = (rest: Entry = {}) =>
  makeDesign({ kickUpPitchRisePer12: 4, kickUpRaiseIn: 4, layout: { largestGapIn: 48 }, ...rest });

function texts({ findings }: EaveLayout, topic: string): readonly string[] {
  return findings.filter((one) => one.topic === topic).map(({ text }) => text);
}

function problemOf(...[survey, design]: Parameters<typeof layOut>): Problem {
  const laid = layOutEave(survey, design ?? makeDesign(), 'B', null);
  if (laid.ok) throw new Error('the eave was laid out');
  return laid.problem;
}

/**
 * Where a flush tail on the level line leaves its rafter's side: 3.5 x 1.20185 + (6.05 - own height), times 3, along its
 * slope of 1.05409. [in]
 */
function lap(heightIn: number): number {
  return (3.5 * Math.hypot(1, 2 / 3) + 6.05 - heightIn) * 3 * Math.hypot(1, 1 / 3);
}

describe('kicked-up tails', () => {
  it('all have the one flatter pitch, and end on one level line', () => {
    const { extenders, fasciaLine } = layOut(steep(), kicked());
    for (const { pitchRisePer12, section } of extenders) {
      expect(pitchRisePer12).toBe(4);
      expect(section.tailTopAbovePlateIn).toBeCloseTo(fasciaLine.atStartIn, 9);
    }
    // Mean height 6.05, raised 4: 10.05 - 16 / 3.
    expect(fasciaLine.atStartIn).toBeCloseTo(10.05 - 16 / 3, 9);
  });

  it('stand on packers of one height, since their line is one and the plate is level, and break where their own roof is', () => {
    const { extenders } = layOut(steep(), kicked());
    for (const [index, { section, fit }] of extenders.entries()) {
      // 10.05 - 5.5 x 1.05409 = 4.2525.
      expect(section.bearing).toEqual({ kind: 'shimmed', shimIn: expect.closeTo(4.2525, 4) });
      expect(fit.shimSixteenths).toBe(68);
      // The roof's line is 1/3 steeper: the break lies 3 in. inside for each inch that the tail stands above the rafter.
      expect(section.kickUp?.breakOutIn).toBeCloseTo(-3 * (10.05 - (heights[index] ?? 0)), 9);
    }
  });

  it('as found stand on packers of their own, each by its rafter', () => {
    const { extenders } = layOut(steep(), kicked({ fasciaLine: 'as-found' }));
    for (const [index, { section, liftAtTailIn }] of extenders.entries()) {
      expect(liftAtTailIn).toBe(0);
      const shimIn = (heights[index] ?? 0) + 4 - 5.5 * Math.hypot(1, 1 / 3);
      expect(section.bearing).toEqual({ kind: 'shimmed', shimIn: expect.closeTo(shimIn, 9) });
      expect(section.kickUp?.breakOutIn).toBeCloseTo(-12, 9);
    }
  });

  it('raise the soffit by what they drop less and are raised', () => {
    const plain = layOut(steep(), kicked({ kickUpPitchRisePer12: null, fasciaLine: 'as-found' })).extenders[0]
      ?.section;
    const up = layOut(steep(), kicked({ fasciaLine: 'as-found' })).extenders[0]?.section;
    // Drop 16 x 8/12 less 16 x 4/12, raised 4, and d s is less by 5.5 (1.20185 - 1.05409).
    const gain = 16 / 3 + 4 + 5.5 * (Math.hypot(1, 2 / 3) - Math.hypot(1, 1 / 3));
    expect((plain?.soffitBelowPlateIn ?? 0) - (up?.soffitBelowPlateIn ?? 0)).toBeCloseTo(gain, 9);
  });
});

describe('what is told of a kick-up', () => {
  it('is where the roof breaks, and the packers', () => {
    const [text] = texts(layOut(steep(), kicked({ fasciaLine: 'as-found' })), 'kick-up');
    expect(text).toBe(
      'The tails are kicked up to 4/12: the roof\'s pitch breaks 1\' 0" inside the wall line. Packers over the plate: 5, 3-11/16" to 4-11/16" high.',
    );
    const flush = texts(layOut(steep(), kicked({ kickUpRaiseIn: 0, fasciaLine: 'as-found' })), 'kick-up');
    expect(flush[0]).toContain('breaks at the wall line');
  });

  it('is where a tail leaves its rafter before it has reached back far enough', () => {
    const short = texts(layOut(steep(), kicked({ kickUpRaiseIn: 0 })), 'kick-up').filter((text) =>
      /leaves the rafter/.test(text),
    );
    expect(short).toHaveLength(1);
    const ends = [lap(6.5), lap(5.5)].map(formatInches).join(' to ');
    expect(short[0]).toContain(
      `Rafters 1-5: the kicked-up tail leaves the rafter's side ${ends} inside the wall`,
    );
    expect(
      texts(layOut(steep(), kicked({ kickUpPitchRisePer12: 7.5, kickUpRaiseIn: 0 })), 'kick-up'),
    ).toHaveLength(1);
  });

  it('is that it stands against a deck that stays on', () => {
    const layout = layOut(steep({ deckStaysOn: true }), kicked());
    expect(texts(layout, 'under-deck')[0]).toContain('above the rafter at the wall, against the old deck');
  });
});

describe('a kick-up cannot be built', () => {
  it('that is not flatter by half an inch in twelve than every rafter', () => {
    const problem = problemOf(steep(), kicked({ kickUpPitchRisePer12: 7.75 }));
    expect(problem).toMatchObject({
      code: 'kick-up-not-flatter',
      rafter: '1',
      field: 'design.eaves.0.kickUpPitchRisePer12',
    });
    expect(problemSentence(problem)).toBe(
      'North eave: a tail kicked up to 7.75/12 is not flatter by 1/2 in 12 than rafter 1 at 8/12. Enter a flatter pitch for the kick-up, or none.',
    );
    expect(layOut(steep(), kicked({ kickUpPitchRisePer12: 7.5 })).extenders).toHaveLength(5);
  });

  it('where a height above plate is read a foot and a half wrong', () => {
    const rafters = heights.map((heightAbovePlateIn, index) => ({
      id: `r${index + 1}`,
      readingIn: 20 + 24 * index,
      heightAbovePlateIn: index === 2 ? 24 : heightAbovePlateIn,
    }));
    const problem = problemOf(steep({ rafters }), kicked());
    expect(problem).toMatchObject({ code: 'tail-out-of-reach', rafter: '3', steepness: 'too-far' });
    expect(problemSentence(problem)).toContain('would stand more than a foot out of its place');
  });
});
