import { shortened } from '../problems/shortened.ts';
import type { Problem } from '../problems/problem.ts';
import type { JobInput } from './job-file.ts';

/**
 * What the design says of eaves and rafters that are not surveyed. It binds nothing and the sum is whole, but it may be
 * an id that is misspelt.
 * @param input - survey and design.
 * @returns one note each, with the path of its entry.
 */
export function looseEnds({ survey, design }: Pick<JobInput, 'survey' | 'design'>): readonly Problem[] {
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
    ];
  });
}
