import type { EaveDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { dressedSection, type DressedSection } from '../lumber/dressed-sizes.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { Species } from '../survey/site.ts';
import { coverEave, type CoveredEave } from '../takeoff/cover.ts';
import { findNail, type Nail } from '../takeoff/nails.ts';
import { panelThicknessWhereUnknownIn } from './data/dead-weights.ts';
import type { LumberValues } from './data/lumber-values.ts';
import { speciesGroups, speciesWhereUnknown } from './data/species.ts';
import { eaveLoads, type EaveLoads } from './loads/eave-loads.ts';
import { valuesOf, type Lumber } from './lumber/adjusted-values.ts';
import { tailsToCheck, type Tail } from './tail-to-check.ts';

/** An eave with everything that the checks read, reckoned once. */
export type EaveToCheck = {
  readonly input: JobInput;
  readonly result: JobResult;
  readonly layout: EaveLayout;
  readonly survey: EaveSurvey;
  readonly design: EaveDesign;
  /** Places in the documents, for the paths of missing entries. */
  readonly surveyIndex: number;
  readonly designIndex: number;
  readonly cover: CoveredEave['cover'];
  readonly stock: DressedSection;
  readonly fasciaStock: DressedSection;
  readonly lumber: Lumber;
  /** Undefined where no design values are on file for the lumber. */
  readonly values: LumberValues | undefined;
  readonly oldSpecies: Species;
  /** What was taken where nobody chose the species: of the extenders, and of the old wood. */
  readonly taken: { readonly extender: readonly string[]; readonly oldWood: readonly string[] };
  readonly sheathingThicknessIn: number;
  /** Pitch of the new roof over the overhang: that of a kick-up, else the eave's. [in/12 in] */
  readonly overhangRisePer12: number;
  readonly loads: EaveLoads;
  readonly tails: readonly Tail[];
  readonly sisterNail: Nail | undefined;
  readonly throughFillerNail: Nail | undefined;
};

/**
 * Gathers what the checks of one eave read.
 * @param input - the job; @param result - computed from it; @param layout - one of its eaves. [in]
 * @returns undefined where the eave has no survey or design, or its sections are not known (a layout has all three).
 */
export function eaveToCheck(input: JobInput, result: JobResult, layout: EaveLayout): EaveToCheck | undefined {
  const surveyIndex = input.survey.eaves.findIndex(({ id }) => id === layout.eaveId);
  const designIndex = input.design.eaves.findIndex(({ eaveId }) => eaveId === layout.eaveId);
  const survey = input.survey.eaves[surveyIndex];
  const design = input.design.eaves[designIndex];
  const stock = dressedSection(design?.extender.section ?? '');
  const fasciaStock = dressedSection(design?.fascia.stock.section ?? '');
  if (!survey || !design || !stock || !fasciaStock) return undefined;

  const { cover } = coverEave({ layout, survey, design, designIndex }, input);
  const sheathingThicknessIn = thicknessOf(cover);
  const lumber: Lumber = {
    species: design.structure.species ?? speciesWhereUnknown,
    grade: design.structure.grade,
    depthIn: stock.depthIn,
  };
  const overhangRisePer12 = design.kickUpPitchRisePer12 ?? survey.pitchRisePer12;
  const loads = eaveLoads(input.survey.site, overhangRisePer12, {
    sheathingThicknessIn,
    soffitPsf: design.structure.soffitWeightPsf,
  });
  return {
    input,
    result,
    layout,
    survey,
    design,
    surveyIndex,
    designIndex,
    cover,
    stock,
    fasciaStock,
    lumber,
    values: stock.nominalThicknessIn === 2 ? valuesOf(lumber) : undefined,
    oldSpecies: survey.oldSpecies ?? speciesWhereUnknown,
    taken: takenSpecies(survey, design),
    sheathingThicknessIn,
    overhangRisePer12,
    loads,
    tails: tailsToCheck({ input, layout, survey, design, stock, loads }),
    sisterNail: findNail(input.settings.fastening.sister.nail),
    throughFillerNail: findNail(input.settings.fastening.throughFillerNail),
  };
}

function thicknessOf(cover: CoveredEave['cover']): number {
  if (cover.kind === 'none') return 0;
  if (cover.kind === 'panels') return cover.item?.thicknessIn ?? panelThicknessWhereUnknownIn;
  return cover.item?.thicknessIn ?? dressedSection(cover.item?.section ?? '')?.thicknessIn ?? 0.75;
}

function takenSpecies(survey: EaveSurvey, design: EaveDesign): EaveToCheck['taken'] {
  const weakest = speciesGroups[speciesWhereUnknown].name;
  return {
    extender:
      design.structure.species === null
        ? [
            `The extenders' species is not chosen: taken as ${weakest}, the weakest in nails of the four groups on file. Some sold lumber is weaker still; choose the species stamped on it.`,
          ]
        : [],
    oldWood:
      survey.oldSpecies === null
        ? [
            `The old wood's species is not known: taken as ${weakest}, the weakest in nails of the four groups.`,
          ]
        : [],
  };
}
