import type { z } from 'zod';
import type { eaveDesignSchema, EaveDesign } from '../../core/eave/design-document.ts';
import type { EaveLayout, Extender } from '../../core/layout/layout-types.ts';
import type { eaveSurveySchema, EaveSurvey } from '../../core/survey/survey-document.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';

export type OldHouse = {
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  readonly layout: EaveLayout;
};

/**
 * An invented old house: 16 ft of wall that bows out by 3/4 in., irregular rafters, a joist on the right of the second, on
 * both sides of the fourth and of the sixth; 16 in. of overhang, a sub-fascia, hung tails where no side is free.
 */
export function oldHouse(
  survey: Partial<z.input<typeof eaveSurveySchema>> = {},
  design: Partial<z.input<typeof eaveDesignSchema>> = {},
): OldHouse {
  const measured = makeEave([], {
    lengthIn: 192,
    rafters: [
      { id: 'r1', readingIn: 1 },
      { id: 'r2', readingIn: 22.5, joist: 'right' },
      { id: 'r3', readingIn: 47 },
      { id: 'r4', readingIn: 69.25, joist: 'both', oldTailIn: 3 },
      { id: 'r5', readingIn: 95 },
      { id: 'r6', readingIn: 117.5, joist: 'both' },
      { id: 'r7', readingIn: 143.75 },
      { id: 'r8', readingIn: 166 },
      { id: 'r9', readingIn: 191 },
    ],
    wallReadings: [
      { id: 'w1', stationIn: 0, outIn: 0 },
      { id: 'w2', stationIn: 96, outIn: 0.75 },
      { id: 'w3', stationIn: 192, outIn: 0.25 },
    ],
    windowHeadBelowPlateIn: 14,
    ...survey,
  });
  const designed = makeDesign({
    layout: { allowFiller: false },
    fascia: {
      stock: { section: '1x8' },
      subFascia: { wanted: true, stock: { section: '2x6' } },
    },
    ...design,
  });
  return { survey: measured, design: designed, layout: layOut(measured, designed, 144) };
}

/** The first tail of a house with a method. */
export function tailBy(house: OldHouse, method: Extender['method']): Extender {
  const found = house.layout.extenders.find((extender) => extender.method === method);
  if (found === undefined) throw new Error(`the house has no tail ${method}`);
  return found;
}
