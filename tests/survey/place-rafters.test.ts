import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemSentence } from '../../core/problems/sentence.ts';
import { placeRafters } from '../../core/survey/place-rafters.ts';
import type { EaveSurvey } from '../../core/survey/survey-document.ts';
import { makeEave } from './make-eave.ts';

function centres(eave: EaveSurvey): readonly number[] {
  const placed = placeRafters(eave, 0);
  if (!placed.ok) throw new Error(problemSentence(placed.problem));
  return placed.value.rafters.map(({ centreIn }) => centreIn);
}

function problemOf(eave: EaveSurvey, index = 0) {
  const placed = placeRafters(eave, index);
  if (placed.ok) throw new Error('expected a problem');
  return placed.problem;
}

const sentence = (stations: readonly number[]) => {
  const problem = problemOf(makeEave(stations));
  return problem === undefined ? '' : problemSentence(problem);
};

describe('stations from a running tape', () => {
  it('to the centre are the centres', () => {
    expect(centres(makeEave([16, 40, 62.5]))).toEqual([16, 40, 62.5]);
  });

  it('to the near face lie half a rafter before the centre', () => {
    expect(centres(makeEave([15.25, 39.25], { readingTo: 'near-face' }))).toEqual([16, 40]);
  });

  it('to the far face lie half a rafter behind the centre', () => {
    expect(centres(makeEave([16.75, 40.75], { readingTo: 'far-face' }))).toEqual([16, 40]);
  });

  it("use each rafter's own thickness where it was measured", () => {
    const rafters = [
      { id: 'r1', readingIn: 15, thicknessIn: 2 },
      { id: 'r2', readingIn: 39.25 },
    ];
    expect(centres(makeEave([], { readingTo: 'near-face', rafters }))).toEqual([16, 40]);
  });
});

describe('stations bay by bay', () => {
  it('add up clear bays and the rafters between them, the first from the wall end', () => {
    expect(centres(makeEave([14.5, 22.5, 21], { readingMode: 'bays-clear' }))).toEqual([15.25, 39.25, 61.75]);
  });

  it('add up distances from centre to centre', () => {
    expect(centres(makeEave([16, 24, 22.5], { readingMode: 'bays-centres' }))).toEqual([16, 40, 62.5]);
  });

  it('count the full thickness of an old rafter between two clear bays', () => {
    const rafters = [
      { id: 'r1', readingIn: 15, thicknessIn: 2 },
      { id: 'r2', readingIn: 22 },
    ];
    expect(centres(makeEave([], { readingMode: 'bays-clear', rafters }))).toEqual([16, 39.75]);
  });

  it('do not depend on what running readings are taken to', () => {
    const near = makeEave([14.5, 22.5], { readingMode: 'bays-clear', readingTo: 'near-face' });
    const far = makeEave([14.5, 22.5], { readingMode: 'bays-clear', readingTo: 'far-face' });
    expect(centres(near)).toEqual(centres(far));
  });

  it('give the same wall as the running tape, whatever the rafters', () => {
    const bay = fc.record({
      clear: fc.integer({ min: 8, max: 400 }).map((sixteenths) => sixteenths / 16),
      thicknessIn: fc.constantFrom(1.5, 1.625, 1.75, 2),
    });
    fc.assert(
      fc.property(fc.array(bay, { minLength: 1, maxLength: 40 }), (bays) => {
        const lengthIn = 12_000;
        const thick = bays.map(({ clear, thicknessIn }, index) => ({
          id: `r${index}`,
          readingIn: clear,
          thicknessIn,
        }));
        const clear = makeEave([], { lengthIn, readingMode: 'bays-clear', rafters: thick });
        const walked = centres(clear);
        const running = (readingTo: 'centre' | 'near-face' | 'far-face', share: number) =>
          makeEave([], {
            lengthIn,
            readingTo,
            rafters: thick.map((rafter, index) => ({
              ...rafter,
              readingIn: (walked[index] ?? 0) + share * rafter.thicknessIn,
            })),
          });
        const between = thick.map((rafter, index) => ({
          ...rafter,
          readingIn: (walked[index] ?? 0) - (walked[index - 1] ?? 0),
        }));
        const byCentres = makeEave([], { lengthIn, readingMode: 'bays-centres', rafters: between });
        for (const other of [
          running('centre', 0),
          running('near-face', -0.5),
          running('far-face', 0.5),
          byCentres,
        ]) {
          for (const [index, centreIn] of centres(other).entries()) {
            expect(centreIn).toBeCloseTo(walked[index] ?? 0, 6);
          }
        }
      }),
    );
  });
});

describe("a rafter's own values", () => {
  it("stand before the eave's, which hold where nothing was measured", () => {
    const rafters = [
      {
        id: 'r1',
        readingIn: 16,
        depthIn: 6,
        pitchRisePer12: 6.4,
        heightAbovePlateIn: 5.25,
        clearBackspanIn: 30,
      },
      { id: 'r2', readingIn: 40 },
    ];
    const placed = placeRafters(makeEave([], { rafters, clearBackspanIn: 60 }), 0);
    expect(placed).toMatchObject({
      ok: true,
      value: {
        rafters: [
          { number: 1, depthIn: 6, pitchRisePer12: 6.4, heightAbovePlateIn: 5.25, clearBackspanIn: 30 },
          { number: 2, depthIn: 5.5, pitchRisePer12: 6, heightAbovePlateIn: 5, clearBackspanIn: 60 },
        ],
      },
    });
  });
});

describe('what stands on the plate', () => {
  it('are rafters, the joists against their faces, and what else is in the way, from left to right', () => {
    const rafters = [
      { id: 'r1', readingIn: 16, joist: 'right' as const, joistThicknessIn: 1.625 },
      { id: 'r2', readingIn: 40, joist: 'both' as const },
    ];
    const obstructions = [{ id: 'o1', label: 'chimney', fromIn: 70, toIn: 50 }];
    const placed = placeRafters(makeEave([], { rafters, obstructions }), 0);
    const spans =
      placed.ok && placed.value.occupied.map(({ kind, leftIn, rightIn }) => [kind, leftIn, rightIn]);
    expect(spans).toEqual([
      ['rafter', 15.25, 16.75],
      ['joist', 16.75, 18.375],
      ['joist', 37.75, 39.25],
      ['rafter', 39.25, 40.75],
      ['joist', 40.75, 42.25],
      ['obstruction', 50, 70],
    ]);
  });
});

describe('readings that cannot stand', () => {
  it('no rafters at all', () => {
    expect(problemOf(makeEave([]), 2)).toEqual({
      code: 'no-rafters',
      eave: 'North eave',
      field: 'survey.eaves.2.rafters',
    });
  });

  it('two rafters of one id', () => {
    const rafters = [
      { id: 'a', readingIn: 16 },
      { id: 'a', readingIn: 40 },
    ];
    expect(problemOf(makeEave([], { rafters }))).toMatchObject({
      code: 'duplicate-id',
      field: 'survey.eaves.0.rafters.1.id',
    });
  });

  it('a reading smaller than the one before is out of order, and both are named', () => {
    const problem = problemOf(makeEave([16, 64, 40]), 1);
    expect(problem).toEqual({
      code: 'rafter-out-of-order',
      eave: 'North eave',
      rafter: '3',
      stationIn: 40,
      previousIn: 64,
      field: 'survey.eaves.1.rafters.2.readingIn',
    });
    expect(problemSentence(problem)).toContain('3\' 4" stands before the last one at 5\' 4"');
  });

  it('neighbours that overlap by their faces, with how much', () => {
    expect(problemOf(makeEave([16, 17]))).toMatchObject({
      code: 'rafters-overlap',
      rafter: '2',
      previous: '1',
      overlapIn: 0.5,
      field: 'survey.eaves.0.rafters.1.readingIn',
    });
  });

  it('the same reading twice is an overlap, not an order', () => {
    expect(problemOf(makeEave([16, 16]))).toMatchObject({ code: 'rafters-overlap', overlapIn: 1.5 });
  });

  it('doubled rafters may touch, and a sixteenth of tape error is let pass', () => {
    expect(centres(makeEave([16, 17.5]))).toEqual([16, 17.5]);
    expect(centres(makeEave([16, 17.4375]))).toEqual([16, 17.4375]);
  });

  it('a rafter past either end of the wall by more than a sixteenth', () => {
    expect(centres(makeEave([0.75 - 1 / 16, 239.25 + 1 / 16]))).toHaveLength(2);
    expect(problemOf(makeEave([0.5]))).toMatchObject({
      code: 'rafter-past-wall',
      end: 'left',
      field: 'survey.eaves.0.rafters.0.readingIn',
    });
    expect(problemOf(makeEave([16, 239.5]))).toMatchObject({
      code: 'rafter-past-wall',
      rafter: '2',
      stationIn: 239.5,
      wallIn: 240,
      end: 'right',
      field: 'survey.eaves.0.rafters.1.readingIn',
    });
  });

  it('past the left end is told by that end, past the right end by the length of the wall', () => {
    expect(sentence([0.5])).toContain('past the left end, station 0.');
    expect(sentence([0.5])).not.toContain("20' 0");
    expect(sentence([16, 239.5])).toContain('the wall of 20\' 0": it reaches past the right end.');
  });

  it('bays that add up past the wall are told at the first bay that is too much', () => {
    const eave = makeEave([100, 100, 100], { readingMode: 'bays-clear' });
    expect(problemOf(eave)).toMatchObject({
      code: 'rafter-past-wall',
      rafter: '3',
      stationIn: 303.75,
      field: 'survey.eaves.0.rafters.2.readingIn',
    });
  });
});
