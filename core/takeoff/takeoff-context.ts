import type { EaveDesign } from '../eave/design-document.ts';
import type { Phase } from '../eave/phases.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';

/** An eave with everything that its takeoff needs: what was measured, what was designed, and where things go. */
export type EaveToTakeOff = {
  readonly layout: EaveLayout;
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  /** Place of the design in the job document, for problems at a field. */
  readonly designIndex: number;
};

/**
 * Joins each laid-out eave with its survey and design. An eave without an extender is left out; the takeoff names it
 * in what it lacks.
 */
export function eavesToTakeOff(input: JobInput, layouts: readonly EaveLayout[]): readonly EaveToTakeOff[] {
  return layouts.flatMap((layout) => {
    const survey = input.survey.eaves.find((eave) => eave.id === layout.eaveId);
    const designIndex = input.design.eaves.findIndex((design) => design.eaveId === layout.eaveId);
    const design = input.design.eaves[designIndex];
    if (survey === undefined || design === undefined || layout.extenders.length === 0) return [];
    return [{ layout, survey, design, designIndex }];
  });
}

/** How an eave is named where quantities are split by eave: `Eave A`. */
export function eaveLabel(layout: EaveLayout): string {
  return `Eave ${layout.letter}`;
}

/** Says where a quantity is used: `Eave A: 17, Eave B: 12`; eaves with nothing are left out. */
export function whereText(
  perEave: readonly { readonly layout: EaveLayout; readonly amount: string }[],
): string {
  return whereLabels(perEave.map(({ layout, amount }) => ({ label: eaveLabel(layout), amount })));
}

/** The same of eaves and rakes by their labels: `Eave A: 17, Rake R1: 9`. */
export function whereLabels(places: readonly { readonly label: string; readonly amount: string }[]): string {
  return places.map(({ label, amount }) => `${label}: ${amount}`).join(', ');
}

/** How a rake is named where quantities are split: `Rake R1`. */
export function rakeLabel(rake: Pick<RakeLayout, 'mark'>): string {
  return `Rake ${rake.mark}`;
}

/** Turns words into a part of a line's id: `2x6 No.2` -> `2x6-No.2`. */
export function idPart(words: string): string {
  return words.trim().replace(/\s+/g, '-');
}

/** Counts `1 piece`, `2 pieces`. */
export function counted(count: number | string, one: string, many = `${one}s`): string {
  return `${count} ${Number(count) === 1 ? one : many}`;
}

/** Of several phases, the one with the largest weight; the earlier in the list where two weigh the same. */
export function heaviestPhase(weights: readonly { readonly phase: Phase; readonly weight: number }[]): Phase {
  const sums = new Map<Phase, number>();
  for (const { phase, weight } of weights) sums.set(phase, (sums.get(phase) ?? 0) + weight);
  let heaviest: Phase = 'Framing';
  let most = Number.NEGATIVE_INFINITY;
  for (const [phase, weight] of sums) {
    if (weight > most) [heaviest, most] = [phase, weight];
  }
  return heaviest;
}
