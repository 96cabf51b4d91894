import type { EaveLayout } from '../layout/layout-types.ts';
import { longestUsableIn } from '../pricing/stock-lengths.ts';
import type { Problem } from '../problems/problem.ts';
import { layOutRake } from '../rake/lay-out-rake.ts';
import type { RakeParts } from '../rake/rake-parts.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import { ok, type Result } from '../result.ts';
import type { JobInput } from './job-file.ts';

/**
 * Lays out every rake of a job that is measured and designed on a surveyed eave, in the order of the survey, marked R1, R2.
 * One that is measured only, or whose design builds nothing, is left out; a note of `looseEnds` tells it.
 * @param input - documents without contradictions, prices and settings. [in]
 * @param eaves - the laid-out eaves.
 * @returns the layouts; or the first problem that stops one, with the path of the entry to mend.
 */
export function layOutRakes(
  input: JobInput,
  eaves: readonly EaveLayout[],
): Result<readonly RakeLayout[], Problem> {
  const rakes: RakeLayout[] = [];
  for (const parts of rakesWithParts(input, eaves)) {
    const sheet = input.priceList.find(
      ({ id, category }) => category === 'sheet' && id === parts.design.sheathing.itemId,
    );
    const rake = layOutRake(parts, {
      longestIn: (stock) => longestUsableIn(input, stock),
      sheetLengthIn: sheet?.lengthIn ?? null,
    });
    if (!rake.ok) return rake;
    rakes.push(rake.value);
  }
  return ok(rakes);
}

/** The rakes of a job that get built, each with its survey, its design and its eave. */
export function rakesWithParts(input: JobInput, eaves: readonly EaveLayout[]): readonly RakeParts[] {
  return input.survey.rakes.flatMap((survey, surveyIndex) => {
    const designIndex = input.design.rakes.findIndex(({ rakeId }) => rakeId === survey.id);
    const design = input.design.rakes[designIndex];
    const eave = input.survey.eaves.find(({ id }) => id === survey.eaveId);
    const eaveDesign = input.design.eaves.find(({ eaveId }) => eaveId === survey.eaveId);
    const layout = eaves.find(({ eaveId }) => eaveId === survey.eaveId);
    return design === undefined ||
      design.kind === 'none' ||
      eave === undefined ||
      eaveDesign === undefined ||
      layout === undefined
      ? []
      : [{ survey, design, surveyIndex, designIndex, eave, eaveDesign, layout }];
  });
}
