import type { Problem } from '../problems/problem.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import type { JobInput } from './job-file.ts';

/** What a tape held along a wall can be off by. [in] */
const tapeToleranceIn = 1 / 16;

/**
 * Entries that cannot both be true: two things in the way under one id, one that ends before it begins or past the wall,
 * two pins on one rafter.
 * @param input - survey and design, no eave and no design of it twice.
 * @returns the first, with the path of its entry, or undefined.
 */
export function contradiction(input: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  for (const [index, eave] of input.survey.eaves.entries()) {
    const problem = obstructionProblem(eave, index);
    if (problem !== undefined) return problem;
  }
  return pinnedTwice(input);
}

function obstructionProblem(eave: EaveSurvey, eaveIndex: number): Problem | undefined {
  const seen = new Set<string>();
  for (const [index, { id, label, fromIn, toIn }] of eave.obstructions.entries()) {
    const path = `survey.eaves.${eaveIndex}.obstructions.${index}`;
    if (seen.has(id)) return { code: 'duplicate-id', what: 'obstruction', id, field: `${path}.id` };
    seen.add(id);
    const what = `${eave.name}, ${label.trim() === '' ? `obstruction ${index + 1}` : label.trim()}`;
    const at = (field: string, detail: string): Problem => ({ code: 'entry-invalid', what, detail, field });
    if (toIn < fromIn)
      return at(
        `${path}.toIn`,
        `its right end at ${formatLength(toIn)} stands left of its left end at ${formatLength(fromIn)}. Swap the two, or read the tape again.`,
      );
    if (toIn > eave.lengthIn + tapeToleranceIn)
      return at(
        `${path}.toIn`,
        `its right end at ${formatLength(toIn)} stands past the wall of ${formatLength(eave.lengthIn)}. Check the reading or the wall length.`,
      );
  }
  return undefined;
}

function pinnedTwice({ survey, design }: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  for (const [index, { eaveId, pins }] of design.eaves.entries()) {
    const eave = survey.eaves.find(({ id }) => id === eaveId);
    const seen = new Set<string>();
    for (const [at, { rafterId }] of pins.entries()) {
      const rafter = seen.has(rafterId) ? (eave?.rafters.findIndex(({ id }) => id === rafterId) ?? -1) : -1;
      if (eave !== undefined && rafter >= 0)
        return {
          code: 'entry-invalid',
          what: `${eave.name}, rafter ${rafter + 1}`,
          detail: 'two pins say what goes beside it. Keep one of them.',
          field: `design.eaves.${index}.pins.${at}.rafterId`,
        };
      seen.add(rafterId);
    }
  }
  return undefined;
}
