import { describe, expect, it } from 'vitest';
import type { Problem } from '../../core/problems/problem.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import { makeEave } from '../survey/make-eave.ts';
import { layOut, makeDesign } from './make-layout.ts';

const stations = [16, 40, 64, 88, 112, 136];

/** The eave with one rafter's own readings. */
function withRafter(number: number, own: Record<string, number>, rest: Record<string, number> = {}) {
  const rafters = stations.map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index + 1 === number ? own : {}),
  }));
  return makeEave([], { rafters, ...rest });
}

function problemOf(...[survey, design]: Parameters<typeof layOut>): Problem {
  const laid = layOutEave(survey, design ?? makeDesign(), 'B', null);
  if (laid.ok) throw new Error('the eave was laid out');
  return laid.problem;
}

describe('a tail that cannot come to the fascia line', () => {
  // Five tails at 40 - 8 = 32 in., the third at 5 - 0.667 = 4.333 in.; their mean is 27.389 in., 23.056 in. above it.
  // From its back end, 32 in. inside and 6.333 in. up, the piece would have to rise to 27.389 in.
  const survey = withRafter(
    3,
    { pitchRisePer12: 0.5, heightAbovePlateIn: 5 },
    { heightAbovePlateIn: 40, pitchRisePer12: 6 },
  );

  it('because the new piece would rise outward, stops the job at the reading to measure again', () => {
    const problem = problemOf(survey);
    expect(problem).toEqual({
      code: 'tail-out-of-reach',
      eave: 'North eave',
      rafter: '3',
      liftIn: expect.closeTo(23.056, 3),
      steepness: 'rises-outward',
      furthestRafter: '3',
      furthestLiftIn: expect.closeTo(23.056, 3),
      field: 'survey.eaves.1.rafters.2.heightAbovePlateIn',
    });
    expect(problemSentence(problem)).toBe(
      `North eave, rafter 3: its tail would have to come up 1' 11-1/16" to the fascia line, and the new piece would no longer fall outward. Measure its pitch and height above plate again, or choose As found for the fascia line in Design, so that each tail follows its own rafter.`,
    );
  });

  it('because the new piece would fall steeper than 24/12, stops the job too', () => {
    const steep = withRafter(4, { heightAbovePlateIn: 60 }, { pitchRisePer12: 18 });
    expect(problemOf(steep)).toMatchObject({
      code: 'tail-out-of-reach',
      rafter: '4',
      steepness: 'too-steep',
    });
    expect(problemSentence(problemOf(steep))).toContain('come down');
  });

  it('is no matter where each tail follows its own rafter', () => {
    const layout = layOut(survey, makeDesign({ fasciaLine: 'as-found' }));
    expect(layout.extenders.map(({ pitchRisePer12 }) => pitchRisePer12)).toEqual(
      [6, 6, 0.5, 6, 6, 6].map((pitch) => expect.closeTo(pitch, 9)),
    );
  });

  it('names the reading that lies furthest off the line, since that one is the slip', () => {
    // Tails by hand at 3/12 and 16 in.: 1, -1 and 54 in., mean 18. The first two would rise; the third is misread.
    const rafters = [
      { id: 'a', readingIn: 20 },
      { id: 'b', readingIn: 44, heightAbovePlateIn: 3 },
      { id: 'c', readingIn: 68, heightAbovePlateIn: 58 },
    ];
    const problem = problemOf(makeEave([], { rafters, pitchRisePer12: 3 }));
    expect(problem).toMatchObject({
      rafter: '1',
      liftIn: expect.closeTo(17, 9),
      furthestRafter: '3',
      furthestLiftIn: expect.closeTo(-36, 9),
      field: 'survey.eaves.1.rafters.2.heightAbovePlateIn',
    });
    expect(problemSentence(problem)).toContain('Rafter 3 lies furthest off, down 3\' 0": measure its pitch');
  });

  it('is not what an old roof of 24/12 brings along: its tails come down by a quarter inch', () => {
    const roof = withRafter(2, { heightAbovePlateIn: 12.25 }, { pitchRisePer12: 24, heightAbovePlateIn: 12 });
    const steepest = layOut(roof).extenders.map(({ pitchRisePer12 }) => pitchRisePer12);
    expect(Math.max(...steepest)).toBeGreaterThan(24);
    expect(Math.max(...steepest)).toBeLessThan(24.2);
  });
});
