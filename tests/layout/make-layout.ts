import type { z } from 'zod';
import { eaveDesignSchema, type EaveDesign } from '../../core/eave/design-document.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import type { EaveSurvey } from '../../core/survey/survey-document.ts';

type Entry = z.input<typeof eaveDesignSchema>;

/** Tails beside their rafters and nowhere else, however far apart they stand. */
export const besideRafters = {
  allowFiller: false,
  allowBlockHung: false,
  allowFullLength: false,
  largestGapIn: 96,
  panelJointsOnTails: false,
};

/** An invented design: 2x6 extenders 16 in. out beside the rafters, 2x8 fascia, 2x6 blocks. */
export function makeDesign(rest: Partial<Entry> = {}): EaveDesign {
  return eaveDesignSchema.parse({
    eaveId: 'north',
    overhangIn: 16,
    extender: { section: '2x6' },
    fascia: { stock: { section: '2x8' } },
    soffit: {},
    blocks: { stock: { section: '2x6' } },
    sheathing: {},
    layout: besideRafters,
    ...rest,
  } satisfies Entry);
}

/** Lays out an eave that can be laid out. */
export function layOut(
  survey: EaveSurvey,
  design: EaveDesign = makeDesign(),
  longestFasciaIn: number | null = null,
): EaveLayout {
  const layout = layOutEave(survey, design, 'A', longestFasciaIn);
  if (!layout.ok) throw new Error(problemSentence(layout.problem));
  return layout.value;
}
