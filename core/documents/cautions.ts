import type { JobInput } from '../job/job-file.ts';
import type { Block } from './sheet.ts';

/** Stands on every sheet that shows a structural figure. */
export const structuralCaution =
  'Sizes, seats, notches, backspans, spacings and nails on this sheet are advisory and rest on common practice. ' +
  'They do not judge the old rafters, the wall, uplift, snow load or earthquake. ' +
  'Local code, the building department and a licensed engineer decide what may be built.';

/** The same in one line, for the foot of every page of every sheet. */
export const footCaution =
  'Advisory figures: local code, the building department and a licensed engineer decide what may be built.';

/** Stands beside every figure of a check, on screen and on paper. */
export const checkCaution =
  'Every check is advisory: it holds entered figures against published or customary limits and judges nothing else. ' +
  'A figure within its limit is no permission to build, and a limit marked "from memory" has to be looked up. ' +
  'Local code, the building department and a licensed engineer decide what may be built.';

/** The same in one line, for the foot of every page. */
export const checkFootCaution =
  'Advisory figures. Within a limit is no permission to build: ' +
  'local code, the building department and a licensed engineer decide.';

/** What no check reaches, said wherever the checks stand. */
export const notReckoned =
  'No check here reaches: the strength of the wall and of its footing, earthquake, drifted, sliding or unbalanced ' +
  'snow, ice dams, rot and hidden damage, asbestos, and work at height near wires.';

/**
 * Stands where the house is older than the rule's year. Source: 40 CFR 745, subpart E: houses built before 1978;
 * more than 20 sq ft of painted surface disturbed outside.
 */
export const leadCaution =
  'The house was built before 1978, so its paint may hold lead. The federal lead-safe rule applies once more than ' +
  '20 sq ft of painted surface is disturbed outside; one eave with its fascia and frieze can pass that. ' +
  'Ask the building department, and have the paint tested or treat it as lead paint.';

/** Stands where the year of the house is not known. */
export const yearUnknownCaution =
  'The year of the house is not known. If it was built before 1978, its paint may hold lead and the federal ' +
  'lead-safe rule may apply. Find out before work begins.';

/** Stands on the crew's sheets, which follow the layout sheet with all cautions. */
export const structuralBlock: Block = { kind: 'caution', text: structuralCaution };

/** The cautions that a job's papers carry. */
export function cautionBlocks(input: JobInput): readonly Block[] {
  return [structuralBlock, ...paintCautionBlocks(input)];
}

/** What is said of old paint, by the year of the house. */
export function paintCautionBlocks(input: JobInput): readonly Block[] {
  const { yearBuilt } = input.survey;
  if (yearBuilt === null) return [{ kind: 'caution', text: yearUnknownCaution }];
  return yearBuilt < 1978 ? [{ kind: 'caution', text: leadCaution }] : [];
}
