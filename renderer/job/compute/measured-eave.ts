import { findOutOfLine } from '../../../core/layout/find-out-of-line.ts';
import type { Finding } from '../../../core/layout/layout-types.ts';
import type { Problem } from '../../../core/problems/problem.ts';
import { occupiedPlaces } from '../../../core/survey/occupied-places.ts';
import { type PlacedEave, placeRafters } from '../../../core/survey/place-rafters.ts';
import type { EaveSurvey } from '../../../core/survey/survey-document.ts';
import type { Documents } from '../editor/documents.ts';
import { isUnfilled } from '../editor/unfilled.ts';

/** An eave as far as it was measured, whatever the design still lacks. */
export type MeasuredEave = {
  /** Rafters that stand where their readings say, up to the first that cannot. [in] */
  readonly placed: PlacedEave;
  /** Reading that cannot stand where it says; null where all can. */
  readonly problem: Problem | null;
  /** Null until the wall was measured. [in] */
  readonly wallIn: number | null;
  /** Readings that are questioned, as far as pitch and height are known. */
  readonly findings: readonly Finding[];
};

/** Longest wall that the survey takes: stands for one that was not measured yet. [in] */
const anyWallIn = 12000;

/**
 * Places the rafters of an eave by their readings alone, so that the tape can be checked on the ladder, before anything is
 * designed. Blank readings are left out; bay by bay, what comes after one waits for it.
 * @param index - place of the eave in the survey, from 0. [-]
 */
export function measuredEave(documents: Documents, index: number): MeasuredEave | undefined {
  const eave = documents.survey.eaves[index];
  if (eave === undefined) return undefined;
  const isBlank = (key: string) => isUnfilled(documents, `survey.eaves.${index}.${key}`);
  const wallIn = isBlank('lengthIn') ? null : eave.lengthIn;
  const rows = measuredRows(eave, (row) => isBlank(`rafters.${row}.readingIn`));
  const measured: EaveSurvey = {
    ...eave,
    lengthIn: wallIn ?? anyWallIn,
    obstructions: eave.obstructions.filter(
      (_, at) => !isBlank(`obstructions.${at}.fromIn`) && !isBlank(`obstructions.${at}.toIn`),
    ),
  };
  const { placed, problem } = place(measured, index, rows);
  const canQuestion = !isBlank('pitchRisePer12') && !isBlank('heightAbovePlateIn');
  return { placed, problem, wallIn, findings: canQuestion ? findOutOfLine(eave.id, placed.rafters) : [] };
}

/** The readings of every eave that cannot stand where they say. */
export function placementProblems(documents: Documents): readonly Problem[] {
  return documents.survey.eaves.flatMap((_, index) => {
    const problem = measuredEave(documents, index)?.problem ?? null;
    return problem === null ? [] : [problem];
  });
}

/** Rows with a reading, by their place in the grid. */
function measuredRows(eave: EaveSurvey, isBlank: (row: number) => boolean): readonly number[] {
  const rows = eave.rafters.map((_, row) => row);
  if (eave.readingMode === 'running') return rows.filter((row) => !isBlank(row));
  const firstBlank = rows.find(isBlank);
  return firstBlank === undefined ? rows : rows.slice(0, firstBlank);
}

function place(
  eave: EaveSurvey,
  index: number,
  rows: readonly number[],
): { readonly placed: PlacedEave; readonly problem: Problem | null } {
  if (rows.length === 0) return { placed: { rafters: [], occupied: [] }, problem: null };
  const rafters = rows.flatMap((row) => eave.rafters[row] ?? []);
  const result = placeRafters({ ...eave, rafters }, index);
  if (result.ok) {
    const numbered = result.value.rafters.map((rafter, at) => ({ ...rafter, number: (rows[at] ?? at) + 1 }));
    const occupied = occupiedPlaces({ ...eave, rafters }, numbered);
    return { placed: { rafters: numbered, occupied }, problem: null };
  }
  const at = Number(result.problem.field?.split('.')[4] ?? 0);
  return { placed: place(eave, index, rows.slice(0, at)).placed, problem: inGrid(result.problem, rows, at) };
}

/** The problem with the rafters' numbers and path of the grid, where blank rows count too. */
function inGrid(problem: Problem, rows: readonly number[], at: number): Problem {
  const row = rows[at] ?? at;
  const field = problem.field?.replace(/\.rafters\.\d+/, `.rafters.${row}`);
  const there = field === undefined ? {} : { field };
  switch (problem.code) {
    case 'rafter-out-of-order':
    case 'rafter-past-wall':
      return { ...problem, ...there, rafter: String(row + 1) };
    case 'rafters-overlap':
      return {
        ...problem,
        ...there,
        rafter: String(row + 1),
        previous: String((rows[at - 1] ?? row - 1) + 1),
      };
    default:
      return { ...problem, ...there };
  }
}
