import { dressedSection } from '../lumber/dressed-sizes.ts';
import { shortened } from '../problems/shortened.ts';
import type { Problem } from '../problems/problem.ts';
import type { JobInput } from './job-file.ts';

/**
 * What is wrong with the rakes of a job as a whole: lumber that the program does not know, two rakes at one end of an eave.
 * Ids are looked at with the other lists.
 * @param input - survey and design, no rake and no design of it twice.
 * @returns the first problem, with the path of its entry, or undefined.
 */
export function rakeProblem(input: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  return sharedEnd(input) ?? unknownRakeSection(input);
}

function sharedEnd({ survey }: Pick<JobInput, 'survey'>): Problem | undefined {
  const atEnd = new Map<string, string>();
  for (const [index, { name, eaveId, end }] of survey.rakes.entries()) {
    const eave = survey.eaves.find(({ id }) => id === eaveId);
    if (eave === undefined) continue;
    const key = `${end} ${eaveId}`;
    const other = atEnd.get(key);
    if (other !== undefined)
      return {
        code: 'entry-invalid',
        what: name.trim(),
        detail: `${other} rises from the ${end} end of ${eave.name.trim()} already. A gable's other rake rises from the other eave: choose that eave, or the other end.`,
        field: `survey.rakes.${index}.end`,
      };
    atEnd.set(key, name.trim());
  }
  return undefined;
}

function unknownRakeSection({ survey, design }: Pick<JobInput, 'survey' | 'design'>): Problem | undefined {
  const surveyed = new Set(survey.rakes.map(({ id }) => id));
  for (const [index, rake] of design.rakes.entries()) {
    if (!surveyed.has(rake.rakeId) || rake.kind === 'none') continue;
    const uses = [
      { use: rake.kind === 'ladder' ? 'the ladder' : 'the lookouts', path: 'lookout', stock: rake.lookout },
      { use: 'the barge rafter', path: 'barge', stock: rake.barge },
      ...(rake.fascia.wanted
        ? [{ use: 'the rake fascia', path: 'fascia.stock', stock: rake.fascia.stock }]
        : []),
    ];
    for (const { use, path, stock } of uses)
      if (dressedSection(stock.section) === undefined)
        return {
          code: 'unknown-section',
          section: stock.section,
          use,
          field: `design.rakes.${index}.${path}.section`,
        };
  }
  return undefined;
}

/**
 * Rakes that nothing is built at, told because it may be an oversight: on an eave that is not surveyed, without a design, or
 * designed without having been measured.
 * @param input - survey and design.
 * @returns one note each, with the path of its entry.
 */
export function looseRakes({ survey, design }: Pick<JobInput, 'survey' | 'design'>): readonly Problem[] {
  const designed = new Set(design.rakes.map(({ rakeId }) => rakeId));
  const measured = new Set(survey.rakes.map(({ id }) => id));
  return [
    ...survey.rakes.flatMap(({ id, name, eaveId }, index): readonly Problem[] => {
      const path = `survey.rakes.${index}`;
      if (!survey.eaves.some((eave) => eave.id === eaveId))
        return [
          note(
            name.trim(),
            `no eave "${shortened(eaveId)}" is surveyed for it to rise from, so nothing of it is built. Choose its eave, or take the rake out.`,
            `${path}.eaveId`,
          ),
        ];
      return designed.has(id)
        ? []
        : [
            note(
              name.trim(),
              'it is measured and has no design, so nothing of it is built. Start its design in Design, or take the rake out.',
              path,
            ),
          ];
    }),
    ...design.rakes.flatMap(({ rakeId }, index): readonly Problem[] =>
      measured.has(rakeId)
        ? []
        : [
            note(
              `Design of "${shortened(rakeId)}"`,
              'no rake of this id is surveyed, so nothing of it is built. Check the id, or take the design out.',
              `design.rakes.${index}.rakeId`,
            ),
          ],
    ),
  ];
}

function note(what: string, detail: string, field: string): Problem {
  return { code: 'entry-invalid', what, detail, field };
}
