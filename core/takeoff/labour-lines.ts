import { Decimal } from 'decimal.js';
import { decimalText } from '../units/money.ts';
import { isSteeper } from '../units/pitch.ts';
import type { JobInput } from '../job/job-file.ts';
import type { RateMark } from '../pricing/shop-settings.ts';
import type { TracePart } from '../trace/trace.ts';
import type { CoveredEave } from './cover.ts';
import { labourTasks, type LabourTask, type LabourTaskKey } from './labour-tasks.ts';
import { hundredths, sumDecimals } from './quantities.ts';
import { assertNever } from '../result.ts';
import { eaveLabel, whereText } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/** A factor on hours, and why. */
export type HoursFactor = { readonly factor: number; readonly label: string; readonly ref: string };

/** What one task asks of each eave. */
export type LabourWork = {
  readonly task: LabourTask;
  readonly hoursPerUnit: number;
  readonly rateMark: RateMark;
  readonly eaves: readonly {
    readonly layout: CoveredEave['layout'];
    /** In the task's unit, hundredths half up. */
    readonly quantity: string;
    readonly factors: readonly HoursFactor[];
    /** Quantity x hours a unit x factors, hundredths half up. [h] */
    readonly hours: string;
  }[];
};

/**
 * The work of each task that has anything to do, eave by eave: quantity x hours a unit x factors.
 * Each eave's hours are rounded to hundredths half up.
 * @param eaves - the eaves with their cover.
 * @param input - for the shop's rates and factors. [h/unit, -]
 * @returns e.g. 17 extenders at 0.45 h on two storeys, x 1.25 -> 9.56 h.
 */
export function labourWork(eaves: readonly CoveredEave[], input: JobInput): readonly LabourWork[] {
  return labourTasks.flatMap((task): readonly LabourWork[] => {
    const rate = rateOf(task, input);
    const worked = eaves
      .map((eave) => {
        const quantity = hundredths(taskQuantity(task.key, eave));
        const factors = hoursFactors(task, eave, input);
        const exact = factors.reduce(
          (hours, { factor }) => hours.times(factor),
          new Decimal(quantity).times(rate.hoursPerUnit),
        );
        return { layout: eave.layout, quantity, factors, hours: hundredths(exact) };
      })
      .filter(({ hours }) => Number(hours) > 0);
    if (worked.length === 0) return [];
    const rateMark = rate.own ? 'own' : 'placeholder';
    return [{ task, hoursPerUnit: rate.hoursPerUnit, rateMark, eaves: worked }];
  });
}

/**
 * One line for each task that has anything to do: quantity x hours a unit x factors.
 * Each eave's hours are rounded to hundredths half up, and a line is the sum of its eaves, so that it adds up by hand.
 * @param eaves - the eaves with their cover.
 * @param input - for the shop's rates and factors. [h/unit, -]
 * @returns lines such as `labour-install-extenders`; 17 extenders at 0.45 h, no factor -> 7.65 h.
 */
export function labourLines(eaves: readonly CoveredEave[], input: JobInput): readonly TakeoffLine[] {
  return labourWork(eaves, input).map(({ task, hoursPerUnit, rateMark, eaves: worked }): TakeoffLine => {
    const hours = decimalText(sumDecimals(worked.map((eave) => eave.hours)));
    const quantity = sumDecimals(worked.map((eave) => eave.quantity)).toFixed();
    return {
      id: `labour-${task.key}`,
      kind: 'labour',
      phase: task.phase,
      description: `${task.label}, ${quantity} ${unitWord(task, quantity)} at ${hoursPerUnit} h`,
      clientWording: task.clientWording,
      quantity: hours,
      unit: 'h',
      taxable: false,
      where: whereText(worked.map((eave) => ({ layout: eave.layout, amount: `${eave.hours} h` }))),
      madeOf: [
        {
          label: `Hours for one ${task.unit}, ${rateMark === 'own' ? "the shop's own" : 'placeholder (common practice, no source)'}`,
          value: `${hoursPerUnit} h`,
          ref: `labour/${task.key}`,
        },
        ...worked.flatMap((eave): readonly TracePart[] => [
          {
            label: `${eaveLabel(eave.layout)}: ${eave.quantity} ${unitWord(task, eave.quantity)}${eave.factors
              .map(({ factor, label }) => ` x ${factor} (${label})`)
              .join('')}`,
            value: `${eave.hours} h`,
            ref: `eave/${eave.layout.eaveId}/${task.unit === 'LF' || task.unit === 'SF' ? 'lengthIn' : 'rafters'}`,
          },
          ...eave.factors.map(({ label, factor, ref }) => ({
            label: `${eaveLabel(eave.layout)}: factor, ${label}`,
            value: `x ${factor}`,
            ref,
          })),
        ]),
      ],
      need: {
        kind: 'labour',
        task: task.key,
        hours,
        unitHours: hoursPerUnit,
        rateMark,
      },
    };
  });
}

/**
 * Factors that slow or speed a task on an eave. Source: shop settings (common practice, no source).
 * @param task - storeys and pitch count only where it is done at the roof edge.
 * @returns factors other than 1, multiplied together; two storeys -> 1.25. [-]
 */
export function hoursFactors(
  task: Pick<LabourTask, 'aloft'>,
  { survey }: Pick<CoveredEave, 'survey'>,
  input: JobInput,
): readonly HoursFactor[] {
  const { labour } = input.settings;
  const { storeys, access } = input.survey;
  const factors: HoursFactor[] = [];
  if (task.aloft && storeys > 1) {
    factors.push({
      factor: new Decimal(labour.perStoreyAboveOne).pow(storeys - 1).toNumber(),
      label: `${storeys} storeys`,
      ref: 'setting/labour.perStoreyAboveOne',
    });
  }
  if (task.aloft && isSteeper(survey.pitchRisePer12, labour.steepAbovePitch)) {
    factors.push({
      factor: labour.steepFactor,
      label: `steeper than ${labour.steepAbovePitch}/12`,
      ref: 'setting/labour.steepFactor',
    });
  }
  if (access === 'easy') {
    factors.push({
      factor: labour.easyAccessFactor,
      label: 'easy access',
      ref: 'setting/labour.easyAccessFactor',
    });
  }
  if (access === 'hard') {
    factors.push({
      factor: labour.hardAccessFactor,
      label: 'hard access',
      ref: 'setting/labour.hardAccessFactor',
    });
  }
  return factors.filter(({ factor }) => factor !== 1);
}

function rateOf(task: LabourTask, input: JobInput): { readonly hoursPerUnit: number; readonly own: boolean } {
  const set = input.settings.labour.rates.find((rate) => rate.task === task.key);
  return { hoursPerUnit: set?.hoursPerUnit ?? task.hoursPerUnit, own: set?.mark === 'own' };
}

/** How much of a task an eave asks for. [sides, rafters, LF, bays, pieces, SF] */
function taskQuantity(key: LabourTaskKey, eave: CoveredEave): number {
  const { layout, design, cover } = eave;
  switch (key) {
    case 'survey-rafters':
      return layout.rafters.length;
    case 'set-up-side':
    case 'clean-up-side':
      return 1;
    case 'strip-roof-edge':
    case 'strip-fascia':
      return layout.wallLengthIn / 12;
    case 'old-blocks-out':
      return layout.bays.filter((bay) => bay.oldBlockOut).length;
    case 'cut-extenders':
    case 'install-extenders':
      return layout.extenders.length;
    case 'cut-tails':
      return design.trimAllowanceIn > 0 ? layout.extenders.length : 0;
    case 'blocks':
      return layout.bays.filter((bay) => bay.block === 'block').length;
    case 'fascia':
      return layout.fasciaLengthIn / 12;
    case 'sheathing':
      return cover.kind === 'none' ? 0 : cover.strip.areaSqFt;
    case 'drip-edge':
      return design.dripEdge ? layout.fasciaLengthIn / 12 : 0;
    default:
      return assertNever(key);
  }
}

function unitWord(task: LabourTask, quantity: string): string {
  return task.unit === 'LF' || task.unit === 'SF' || Number(quantity) === 1 ? task.unit : `${task.unit}s`;
}
