import type { Problem } from '../problems/problem.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import type { JobInput } from './job-file.ts';

/** What a tape held along a wall can be off by. [in] */
const tapeToleranceIn = 1 / 16;

/**
 * Entries that cannot both be true: two things in the way under one id, one that ends before it begins or past the wall,
 * two readings of a wall or plate under one id, two pins on one rafter, a tail of the person's own that is called as another
 * or stands past the wall, one tail built twice.
 * @param input - survey and design, no eave and no design of it twice.
 * @returns the first, with the path of its entry, or undefined.
 */
export function contradiction(input: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  for (const [index, eave] of input.survey.eaves.entries()) {
    const problem = obstructionProblem(eave, index) ?? readingProblem(eave, index);
    if (problem !== undefined) return problem;
  }
  return pinnedTwice(input) ?? addedTailProblem(input) ?? builtTwice(input);
}

function readingProblem(eave: EaveSurvey, eaveIndex: number): Problem | undefined {
  for (const list of ['wallReadings', 'plateReadings'] as const) {
    const at = secondOf(eave[list].map(({ id }) => id));
    const id = eave[list][at]?.id;
    if (id !== undefined)
      return {
        code: 'duplicate-id',
        what: list === 'wallReadings' ? 'wall reading' : 'plate reading',
        id,
        field: `survey.eaves.${eaveIndex}.${list}.${at}.id`,
      };
  }
  return undefined;
}

/** Index of the first entry that was there before, -1 where none was. */
function secondOf(ids: readonly string[]): number {
  const seen = new Set<string>();
  return ids.findIndex((id) => seen.size === seen.add(id).size);
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

function addedTailProblem({ survey, design }: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  for (const [index, { eaveId, addedTails }] of design.eaves.entries()) {
    const eave = survey.eaves.find(({ id }) => id === eaveId);
    if (eave === undefined) continue;
    const path = `design.eaves.${index}.addedTails`;
    const taken = eave.rafters.map(({ id }) => id);
    const second = secondOf([...taken, ...addedTails.map(({ id }) => id)]) - taken.length;
    const id = addedTails[second]?.id;
    if (id !== undefined) return { code: 'duplicate-id', what: 'tail', id, field: `${path}.${second}.id` };
    const past = addedTails.findIndex(({ stationIn }) => stationIn > eave.lengthIn + tapeToleranceIn);
    const stationIn = addedTails[past]?.stationIn;
    if (stationIn !== undefined)
      return {
        code: 'entry-invalid',
        what: `${eave.name}, added tail ${past + 1}`,
        detail: `it stands at ${formatLength(stationIn)}, past the wall of ${formatLength(eave.lengthIn)}. Check the station or the wall length.`,
        field: `${path}.${past}.stationIn`,
      };
  }
  return undefined;
}

function builtTwice({ design }: Pick<JobInput, 'design'>): Problem | undefined {
  const at = secondOf(design.asBuilt.map(({ eaveId, extenderId }) => JSON.stringify([eaveId, extenderId])));
  const id = design.asBuilt[at]?.extenderId;
  return id === undefined
    ? undefined
    : { code: 'duplicate-id', what: 'tail as built', id, field: `design.asBuilt.${at}.extenderId` };
}
