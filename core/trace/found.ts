import type { EaveDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout, Extender, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey, RafterSurvey } from '../survey/survey-document.ts';
import { formatLength } from '../units/format-length.ts';
import { formatPitch } from '../units/pitch.ts';
import { ownerOf } from './ref.ts';
import type { TracePart } from './trace.ts';

/** An eave, laid out and as it was entered, and what of it the rest of a ref names. */
export type FoundEave = {
  readonly layout: EaveLayout;
  readonly eave: EaveSurvey;
  readonly design: EaveDesign;
  readonly rest: string;
};

/** A rafter, laid out and as surveyed. */
export type FoundRafter = FoundEave & { readonly rafter: PlacedRafter; readonly reading: RafterSurvey };

/** A tail with the rafter that it is fastened to; of a hung tail the ones on its left and on its right. */
export type FoundTail = FoundEave & {
  readonly extender: Extender;
  readonly left: FoundRafter;
  readonly right: FoundRafter | null;
};

/** The eave that a ref begins with. */
export function findEave(rest: string, input: JobInput, result: JobResult): FoundEave | undefined {
  const found = ownerOf(rest, result.eaves, ({ eaveId }) => eaveId);
  const eave = input.survey.eaves.find(({ id }) => id === found?.owner.eaveId);
  const design = input.design.eaves.find(({ eaveId }) => eaveId === found?.owner.eaveId);
  return found === undefined || eave === undefined || design === undefined
    ? undefined
    : { layout: found.owner, eave, design, rest: found.rest };
}

/** The rafter that a ref names: `EAVE/RAFTER`. */
export function findRafter(rest: string, input: JobInput, result: JobResult): FoundRafter | undefined {
  const found = findEave(rest, input, result);
  const rafter = found?.layout.rafters.find(({ id }) => id === found.rest);
  return found === undefined || rafter === undefined ? undefined : rafterIn(found, rafter);
}

/** The tail that a ref names: `EAVE/TAIL`. */
export function findTail(rest: string, input: JobInput, result: JobResult): FoundTail | undefined {
  const found = findEave(rest, input, result);
  const extender = found?.layout.extenders.find(({ id }) => id === found.rest);
  if (found === undefined || extender === undefined) return undefined;
  const rafter = found.layout.rafters.find(({ id }) => id === extender.rafterId);
  if (rafter === undefined) throw new Error(`tail ${extender.id} without its rafter`);
  const next =
    extender.method === 'block-hung'
      ? found.layout.rafters.find(({ number }) => number === rafter.number + 1)
      : undefined;
  return {
    ...found,
    extender,
    left: rafterIn(found, rafter),
    right: next === undefined ? null : rafterIn(found, next),
  };
}

function rafterIn(found: FoundEave, rafter: PlacedRafter): FoundRafter {
  const reading = found.eave.rafters.find(({ id }) => id === rafter.id);
  if (reading === undefined) throw new Error(`rafter ${rafter.id} is laid out but was not surveyed`);
  return { ...found, rafter, reading };
}

/** The rafter after another one of the same eave. */
export function nextRafter(found: FoundRafter): FoundRafter | undefined {
  const next = found.layout.rafters.find(({ number }) => number === found.rafter.number + 1);
  return next === undefined ? undefined : rafterIn(found, next);
}

/** Station of a rafter, as a part. */
export function stationPart({ layout, rafter }: FoundRafter): TracePart {
  return {
    label: `Station of rafter ${rafter.number}`,
    value: formatLength(rafter.centreIn),
    ref: `station/${layout.eaveId}/${rafter.id}`,
  };
}

/** An entry of the design, as a part. */
export function chosenPart(
  { layout }: Pick<FoundEave, 'layout'>,
  field: string,
  label: string,
  value: string,
): TracePart {
  return { label, value, ref: `design/${layout.eaveId}/${field}` };
}

/** Entries of a rafter that the eave has too, by their names there, and how they are written. */
const shared = {
  thicknessIn: ['rafterThicknessIn', 'Thickness', formatLength],
  pitchRisePer12: ['pitchRisePer12', 'Pitch', formatPitch],
  heightAbovePlateIn: ['heightAbovePlateIn', 'Height above plate', formatLength],
  clearBackspanIn: ['clearBackspanIn', 'Clear backspan', formatLength],
} as const;

/** The entry measured at the rafter, or the eave's own where it was left blank; nothing where neither was entered. */
export function ownOrEavePart(
  { layout, rafter, reading }: FoundRafter,
  field: keyof typeof shared,
): readonly TracePart[] {
  const [eaveField, name, write] = shared[field];
  const value = rafter[field];
  if (value === null) return [];
  const label = `${name} of rafter ${rafter.number}`;
  return [
    reading[field] === null
      ? {
          label: `${label} (of the eave)`,
          value: write(value),
          ref: `eave/${layout.eaveId}/${eaveField}`,
        }
      : {
          label: `${label} (measured here)`,
          value: write(value),
          ref: `rafter/${layout.eaveId}/${rafter.id}/${field}`,
        },
  ];
}
