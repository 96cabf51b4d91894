import type { EaveDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
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
import { roofCarried } from './roof-carried.ts';
import { nailPlaces, reckonTail, type ReckonedTail, type TailShape } from './statics/reckon-tail.ts';

/** A tail to check: the extender, its rafter, what it carries and how it stands. */
export type Tail = ReckonedTail & {
  readonly extender: Extender;
  readonly rafter: PlacedRafter;
  /** To the further of its neighbours, centre to centre; 0 where it stands alone. [in] */
  readonly gapIn: number;
  /** Length over which it bears on the plate or on a shim over it. [in] */
  readonly bearingLengthIn: number;
  /** What its shape is walked back to. */
  readonly shapeRef: string;
  /** True where three or more tails stand and both gaps are no more than 24 in. */
  readonly repetitive: boolean;
};

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
  readonly loads: EaveLoads;
  readonly tails: readonly Tail[];
  readonly sisterNail: Nail | undefined;
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
  const loads = eaveLoads(input.survey.site, survey.pitchRisePer12, {
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
    loads,
    tails: layout.extenders.map((extender, index) =>
      tailOf(extender, index, { input, layout, survey, design, stock, loads }),
    ),
    sisterNail: findNail(input.settings.fastening.sister.nail),
  };
}

type Known = Pick<EaveToCheck, 'input' | 'layout' | 'survey' | 'design' | 'stock' | 'loads'>;

function tailOf(extender: Extender, index: number, known: Known): Tail {
  const { layout, stock } = known;
  const rafter = layout.rafters[extender.rafterNumber - 1];
  if (rafter === undefined) throw new Error('an extender without its rafter');
  const before = layout.extenders[index - 1];
  const after = layout.extenders[index + 1];
  const { section } = extender;
  const { tributaryIn, gapIn } = roofCarried(layout, extender, before, after);
  const shape: TailShape = {
    overhangLevelIn: section.overhangLevelIn,
    slope: extender.pitchRisePer12 / 12,
    backspanIn: section.backspanIn,
    thicknessIn: stock.thicknessIn,
    depthIn: stock.depthIn,
    jointDepthIn: Math.min(stock.depthIn, rafter.depthIn),
    tributaryIn,
  };
  return {
    ...reckonTail(shape, placesOf(shape, known), known.loads),
    extender,
    rafter,
    gapIn,
    shapeRef: `section/${layout.eaveId}/${extender.rafterId}`,
    bearingLengthIn: bearingLength(extender, known.survey),
    repetitive: layout.extenders.length >= 3 && gapIn <= 24,
  };
}

/** The same tail with another shape or pattern, to find what would bring a value within its limit. */
export function reshaped(
  eave: Pick<EaveToCheck, 'input' | 'design' | 'loads'>,
  shape: TailShape,
  pattern: { readonly rows: number; readonly spacingIn: number; readonly endDistanceIn: number },
): ReckonedTail {
  return reckonTail(shape, nailPlaces(shape, pattern, eave.design.structure.nailEdgeDistanceIn), eave.loads);
}

function placesOf(shape: TailShape, { input, design }: Pick<Known, 'input' | 'design'>) {
  return nailPlaces(shape, input.settings.fastening.sister, design.structure.nailEdgeDistanceIn);
}

/** A shim is taken to be as long as the plate is wide; a bottom edge on the plate's corner bears on nothing. */
function bearingLength({ section: { bearing } }: Extender, survey: EaveSurvey): number {
  if (bearing.kind === 'notched') return Math.max(0, bearing.bearingLengthIn);
  return bearing.kind === 'shimmed' ? survey.plateWidthIn : 0;
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
