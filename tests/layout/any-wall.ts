import * as fc from 'fast-check';
import { makeEave } from '../survey/make-eave.ts';
import { makeDesign } from './make-layout.ts';
import { makeWall } from './make-wall.ts';

type Joist = 'none' | 'left' | 'right' | 'both';

const rafter = fc.record({
  clearIn: fc.constantFrom(3, 6, 9, 14.5, 18, 22.5, 30),
  joist: fc.constantFrom<Joist>('none', 'none', 'left', 'right', 'both', 'both'),
});

/** Any small wall: up to four rafters, joists, a pipe, panels or planks, methods allowed or not. */
export const anyWall = fc
  .record({
    rafters: fc.array(rafter, { minLength: 1, maxLength: 4 }),
    restIn: fc.constantFrom(0, 1, 2, 8),
    largestGapIn: fc.constantFrom(16, 20, 24, 30),
    sheetLengthIn: fc.constantFrom(32, 48, 61),
    kind: fc.constantFrom<'panels' | 'planks'>('panels', 'planks'),
    wholePanels: fc.boolean(),
    allowFiller: fc.boolean(),
    allowBlockHung: fc.boolean(),
    otherSide: fc.constantFrom(0, 1),
    pipe: fc.option(fc.constantFrom(20, 27, 40, 52), { nil: undefined }),
  })
  .map(({ rafters, restIn, largestGapIn, sheetLengthIn, kind, otherSide, pipe, ...allow }) => {
    const lengthIn = Math.max(
      12,
      restIn + rafters.map(({ clearIn }) => clearIn + 1.5).reduce((sum, one) => sum + one),
    );
    const survey = makeEave([], {
      lengthIn,
      readingMode: 'bays-clear',
      rafters: rafters.map(({ clearIn, joist }, index) => ({ id: `r${index}`, readingIn: clearIn, joist })),
      obstructions:
        pipe === undefined || pipe + 3 > lengthIn
          ? []
          : [{ id: 'p', label: 'pipe', fromIn: pipe, toIn: pipe + 3 }],
    });
    const design = makeDesign({
      sheathing: { kind },
      layout: { ...allow, allowFullLength: false, largestGapIn },
    });
    const built = makeWall(survey, design, { sheetLengthIn });
    return { ...built, weights: { ...built.weights, otherSide } };
  });
