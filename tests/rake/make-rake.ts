import { expect } from 'vitest';
import type { z } from 'zod';
import { type EaveDesign, rakeDesignSchema } from '../../core/eave/design-document.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { layOutRake } from '../../core/rake/lay-out-rake.ts';
import type { RakeParts } from '../../core/rake/rake-parts.ts';
import type { RakeLayout } from '../../core/rake/rake-types.ts';
import type { Problem } from '../../core/problems/problem.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { type EaveSurvey, rakeSurveySchema } from '../../core/survey/survey-document.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';

/** What a test changes about the invented rake. */
export type RakeChange = {
  readonly survey?: Partial<z.input<typeof rakeSurveySchema>>;
  readonly design?: Partial<z.input<typeof rakeDesignSchema>>;
  readonly readings?: readonly number[];
  readonly eave?: Parameters<typeof makeEave>[1];
  readonly eaveDesign?: Parameters<typeof makeDesign>[0];
  /** Usable length of every board. [in] */
  readonly longestIn?: number | null;
  readonly sheetLengthIn?: number | null;
};

/** Rafters 1-1/2 thick, the first flush with the wall's left end, the last with its right end at 20 ft. [in] */
export const readings = [0.75, 16, 40, 64, 88, 112, 136, 160, 184, 208, 224, 239.25];

/** Survey, design and laid-out eave of an invented rake: 12 in. out at the left end of a 6/12 eave, 12 ft to the ridge. */
export function rakePartsOf(change: RakeChange = {}): RakeParts & {
  readonly eave: EaveSurvey;
  readonly eaveDesign: EaveDesign;
  readonly layout: EaveLayout;
} {
  const survey = rakeSurveySchema.parse({
    id: 'gable',
    name: 'West rake',
    eaveId: 'north',
    end: 'left',
    runIn: 144,
    ...change.survey,
  });
  const eave = makeEave(change.readings ?? readings, change.eave);
  const eaveDesign = makeDesign({
    fascia: { stock: { section: '1x8' } },
    ends: { [survey.end]: { kind: 'rake', meets: 'gable' } },
    ...change.eaveDesign,
  });
  return {
    survey,
    design: rakeDesignSchema.parse({
      rakeId: 'gable',
      overhangIn: 12,
      lookout: { section: '2x4' },
      barge: { section: '2x6' },
      ...change.design,
    }),
    surveyIndex: 0,
    designIndex: 0,
    eave,
    eaveDesign,
    layout: layOut(eave, eaveDesign),
  };
}

/** Lays out a rake that can be laid out. */
export function makeRake(change: RakeChange = {}): RakeLayout {
  const rake = tryRake(change);
  if (!rake.ok) throw new Error(problemSentence(rake.problem));
  return rake.value;
}

/** Lays out a rake, or gives the problem that stops it. */
export function tryRake(change: RakeChange): ReturnType<typeof layOutRake> {
  const { longestIn = null, sheetLengthIn = null } = change;
  return layOutRake(rakePartsOf(change), { longestIn: () => longestIn, sheetLengthIn });
}

/** Holds a cut length that is rounded up against the exact one: no shorter, and by less than a sixteenth longer. [in] */
export function expectCut(
  { lengthSixteenths }: { readonly lengthSixteenths: number },
  exactIn: number,
): void {
  expect(lengthSixteenths / 16).toBeGreaterThanOrEqual(exactIn - 1e-6);
  expect(lengthSixteenths / 16).toBeLessThan(exactIn + 1 / 16 + 1e-6);
}

/** The texts of a rake's findings together. */
export function saidOf(rake: RakeLayout): string {
  return rake.findings.map(({ text }) => text).join(' ');
}

/** The problem that stops a rake; throws where nothing does. */
export function problemOf(change: RakeChange): Problem {
  const rake = tryRake(change);
  if (rake.ok) throw new Error('the rake is laid out');
  return rake.problem;
}
