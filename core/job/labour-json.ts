import type { JobInput } from './job-file.ts';
import type { CoveredEave } from '../takeoff/cover.ts';
import { labourWork } from '../takeoff/labour-lines.ts';
import { sumDecimals } from '../takeoff/quantities.ts';
import type { Json } from './json.ts';

/**
 * The labour of a job as JSON: what each task counts, its rate, and the factors eave by eave.
 * @param covered - the eaves with their cover.
 * @param input - for the shop's rates and factors.
 */
export function labourJson(covered: readonly CoveredEave[], input: JobInput) {
  return labourWork(covered, input).map(
    ({ task, hoursPerUnit, rateMark, eaves }) =>
      ({
        task: task.key,
        takeoffLineId: `labour-${task.key}`,
        unit: task.unit,
        hoursPerUnit,
        rateMark,
        quantity: sumDecimals(eaves.map(({ quantity }) => quantity)).toFixed(),
        labourHours: sumDecimals(eaves.map(({ hours }) => hours)).toFixed(),
        eaves: eaves.map(({ layout, quantity, factors, hours }) => ({
          eaveId: layout.eaveId,
          quantity,
          factors: factors.map(({ factor, label }) => ({ label, hoursRatio: factor })),
          labourHours: hours,
        })),
      }) satisfies Json,
  );
}
