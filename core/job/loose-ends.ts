import { ownIdStart } from '../layout/solver/held-tails.ts';
import { shortened } from '../problems/shortened.ts';
import type { Problem } from '../problems/problem.ts';
import type { JobInput } from './job-file.ts';

/**
 * What survey and design say of eaves, rafters and tails that are not there. It binds nothing and the sum is whole, but it may be
 * an id that is misspelt.
 * @param input - survey and design.
 * @returns one note each, with the path of its entry.
 */
export function looseEnds(input: Pick<JobInput, 'survey' | 'design'>): readonly Problem[] {
  return [...looseDesigns(input), ...looseOldBlocks(input), ...looseBuilt(input)];
}

function looseDesigns({ survey, design }: Pick<JobInput, 'survey' | 'design'>): readonly Problem[] {
  return design.eaves.flatMap((eaveDesign, index): readonly Problem[] => {
    const path = `design.eaves.${index}`;
    const eave = survey.eaves.find(({ id }) => id === eaveDesign.eaveId);
    if (eave === undefined)
      return [
        {
          code: 'entry-invalid',
          what: `Design of "${shortened(eaveDesign.eaveId)}"`,
          detail:
            'no eave of this id is surveyed, so nothing of it is built. Check the id, or take the design out.',
          field: `${path}.eaveId`,
        },
      ];
    const rafters = new Set(eave.rafters.map(({ id }) => id));
    const loose = (what: string, id: string, field: string): readonly Problem[] =>
      rafters.has(id)
        ? []
        : [
            {
              code: 'entry-invalid',
              what: `${eave.name}, ${what} "${shortened(id)}"`,
              detail: 'no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
              field,
            },
          ];
    return [
      ...eaveDesign.pins.flatMap(({ rafterId }, at) =>
        loose('pin of', rafterId, `${path}.pins.${at}.rafterId`),
      ),
      ...eaveDesign.blocks.openBays.flatMap((id, at) =>
        loose('open bay right of', id, `${path}.blocks.openBays.${at}`),
      ),
      ...eaveDesign.layout.baysWithoutTail.flatMap((id, at) =>
        loose('bay without a tail right of', id, `${path}.layout.baysWithoutTail.${at}`),
      ),
    ];
  });
}

function looseOldBlocks({ survey }: Pick<JobInput, 'survey'>): readonly Problem[] {
  return survey.eaves.flatMap(({ name, rafters, otherOldBlocks }, index) =>
    otherOldBlocks.flatMap((id, at): readonly Problem[] =>
      rafters.some((rafter) => rafter.id === id)
        ? []
        : [
            {
              code: 'entry-invalid',
              what: `${name}, bay with another old block, right of "${shortened(id)}"`,
              detail: 'no rafter of this id is surveyed, so it binds nothing. Check the id, or take it out.',
              field: `survey.eaves.${index}.otherOldBlocks.${at}`,
            },
          ],
    ),
  );
}

/** What was built is known by the id of its rafter, of the person's own tail, or of one that the program hung. */
function looseBuilt({ survey, design }: Pick<JobInput, 'survey' | 'design'>): readonly Problem[] {
  return design.asBuilt.flatMap(({ eaveId, extenderId }, at): readonly Problem[] => {
    const eave = survey.eaves.find(({ id }) => id === eaveId);
    const added = design.eaves.find((one) => one.eaveId === eaveId)?.addedTails ?? [];
    const known = [...(eave?.rafters ?? []), ...added].some(({ id }) => id === extenderId);
    if (eave !== undefined && (known || extenderId.startsWith(ownIdStart))) return [];
    return [
      {
        code: 'entry-invalid',
        what: `Built tail "${shortened(extenderId)}" of ${eave?.name ?? `"${shortened(eaveId)}"`}`,
        detail:
          eave === undefined
            ? 'no eave of this id is surveyed, so it binds nothing. Check the id, or take it out.'
            : 'no tail of this id is laid out, so it binds nothing. Check the id, or take it out.',
        field: `design.asBuilt.${at}.${eave === undefined ? 'eaveId' : 'extenderId'}`,
      },
    ];
  });
}
