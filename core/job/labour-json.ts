import type { JobInput } from './job-file.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { CoveredEave } from '../takeoff/cover.ts';
import { labourWork } from '../takeoff/labour-lines.ts';
import { sumDecimals } from '../takeoff/quantities.ts';
import type { Json } from './json.ts';

/**
 * The labour of a job as JSON: what each task counts, its rate, and the factors eave by eave and rake by rake.
 * @param covered - the eaves with their cover.
 * @param input - for the shop's rates and factors.
 * @param rakes - the rakes, in order.
 */
export function labourJson(covered: readonly CoveredEave[], input: JobInput, rakes: readonly RakeLayout[]) {
  return labourWork(covered, input, rakes).map(
    ({ task, hoursPerUnit, rateMark, places }) =>
      ({
        task: task.key,
        takeoffLineId: `labour-${task.key}`,
        unit: task.unit,
        hoursPerUnit,
        rateMark,
        quantity: sumDecimals(places.map(({ quantity }) => quantity)).toFixed(),
        labourHours: sumDecimals(places.map(({ hours }) => hours)).toFixed(),
        eaves: places.map(({ eaveId, rakeId, quantity, factors, hours }) => ({
          eaveId,
          rakeId,
          quantity,
          factors: factors.map(({ factor, label }) => ({ label, hoursRatio: factor })),
          labourHours: hours,
        })),
      }) satisfies Json,
  );
}
