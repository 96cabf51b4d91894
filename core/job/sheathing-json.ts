import type { CoveredEave } from '../takeoff/cover.ts';
import { plankCourses } from '../takeoff/sheathing-strip.ts';
import type { Json } from './json.ts';

/**
 * What covers each eave as JSON: the strip of new sheathing and its courses, from the edge up. [in, SF]
 * @param covered - the eaves with their cover.
 */
export function sheathingJson(covered: readonly CoveredEave[]) {
  return covered.map(({ layout, cover }) => {
    const eave = { eaveId: layout.eaveId, kind: cover.kind };
    if (cover.kind === 'none') return eave satisfies Json;
    const { strip } = cover;
    const laid = {
      ...eave,
      itemId: cover.item?.id ?? null,
      stripWidthIn: strip.widthIn,
      stripLengthIn: strip.lengthIn,
      areaSqFt: strip.areaSqFt,
    };
    return cover.kind === 'panels'
      ? ({
          ...laid,
          sheetWidthIn: cover.sheet.widthIn,
          sheetLengthIn: cover.sheet.lengthIn,
          courses: cover.courses.courseWidthsIn.map((widthIn) => ({ widthIn })),
          countPanelsAlong: cover.courses.panelsAlong,
        } satisfies Json)
      : ({
          ...laid,
          coverIn: cover.coverIn,
          countCourses: plankCourses(strip.widthIn, cover.coverIn),
        } satisfies Json);
  });
}
