import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Problem } from '../problems/problem.ts';
import { contradiction } from './contradictions.ts';
import type { JobInput } from './job-file.ts';
import { rakeProblem } from './rake-problems.ts';

/**
 * What is wrong with the documents of a job as a whole: nothing to lay out, two entries of one id, an eave without
 * design, lumber that the program does not know, entries that contradict each other. Entries one by one were checked when the documents were read.
 * @returns the first problem, with the path of its entry, or undefined. Pins and open bays of rafters that are gone are
 * no problem: they bind nothing.
 */
export function documentProblem(input: JobInput): Problem | undefined {
  if (input.survey.eaves.length === 0) return { code: 'no-eaves', field: 'survey.eaves' };
  return (
    sharedId(input) ??
    missingDesign(input) ??
    unknownSection(input) ??
    contradiction(input) ??
    rakeProblem(input)
  );
}

function sharedId(input: JobInput): Problem | undefined {
  return (
    firstShared(input.survey.eaves, ({ id }) => id, 'eave', 'survey.eaves', 'id') ??
    firstShared(input.design.eaves, ({ eaveId }) => eaveId, 'eave design', 'design.eaves', 'eaveId') ??
    firstShared(input.survey.rakes, ({ id }) => id, 'rake', 'survey.rakes', 'id') ??
    firstShared(input.design.rakes, ({ rakeId }) => rakeId, 'rake design', 'design.rakes', 'rakeId') ??
    firstShared(input.design.extraCosts, ({ id }) => id, 'extra cost', 'design.extraCosts', 'id') ??
    firstShared(
      input.design.cutting.onHand,
      ({ id }) => id,
      'board on hand',
      'design.cutting.onHand',
      'id',
    ) ??
    firstShared(input.priceList, ({ id }) => id, 'price item', 'priceList', 'id')
  );
}

function firstShared<T>(
  entries: readonly T[],
  idOf: (entry: T) => string,
  what: string,
  path: string,
  field: string,
): Problem | undefined {
  const seen = new Set<string>();
  for (const [index, entry] of entries.entries()) {
    const id = idOf(entry);
    if (seen.has(id)) return { code: 'duplicate-id', what, id, field: `${path}.${index}.${field}` };
    seen.add(id);
  }
  return undefined;
}

function missingDesign(input: JobInput): Problem | undefined {
  const designed = new Set(input.design.eaves.map(({ eaveId }) => eaveId));
  for (const [index, eave] of input.survey.eaves.entries())
    if (!designed.has(eave.id)) return { code: 'no-design', eave: eave.name, field: `survey.eaves.${index}` };
  return undefined;
}

function unknownSection(input: JobInput): Problem | undefined {
  const surveyed = new Set(input.survey.eaves.map(({ id }) => id));
  for (const [index, design] of input.design.eaves.entries()) {
    if (!surveyed.has(design.eaveId)) continue;
    const uses = [
      { use: 'extenders', path: 'extender', stock: design.extender },
      { use: 'fascia', path: 'fascia.stock', stock: design.fascia.stock },
      ...(design.fascia.subFascia.wanted
        ? [{ use: 'sub-fascia', path: 'fascia.subFascia.stock', stock: design.fascia.subFascia.stock }]
        : []),
      ...(design.blocks.wanted ? [{ use: 'blocks', path: 'blocks.stock', stock: design.blocks.stock }] : []),
    ];
    for (const { use, path, stock } of uses)
      if (dressedSection(stock.section) === undefined)
        return {
          code: 'unknown-section',
          section: stock.section,
          use,
          field: `design.eaves.${index}.${path}.section`,
        };
  }
  return undefined;
}
