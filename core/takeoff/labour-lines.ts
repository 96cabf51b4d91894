import { Decimal } from 'decimal.js';
import { decimalText } from '../units/money.ts';
import { isSteeper } from '../units/pitch.ts';
import type { JobInput } from '../job/job-file.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { EaveSurvey } from '../survey/survey-document.ts';
import type { RateMark } from '../pricing/shop-settings.ts';
import type { TracePart } from '../trace/trace.ts';
import type { CoveredEave } from './cover.ts';
import { eaveTaskQuantity } from './eave-quantities.ts';
import { eaveTasks, type LabourTask } from './labour-tasks.ts';
import { hundredths, sumDecimals } from './quantities.ts';
import { rakeTasks } from './rake-labour-tasks.ts';
import { rakeTaskQuantity } from './rake-quantities.ts';
import { eaveLabel, rakeLabel, whereLabels } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/** A factor on hours, and why. */
export type HoursFactor = { readonly factor: number; readonly label: string; readonly ref: string };

/** What a task asks of one eave or rake. */
export type WorkPlace = {
  /** `Eave A`, `Rake R1`. */
  readonly label: string;
  readonly eaveId: string;
  /** Null for the eave itself. */
  readonly rakeId: string | null;
  /** What gave the quantity. */
  readonly ref: string;
  /** In the task's unit, hundredths half up. */
  readonly quantity: string;
  readonly factors: readonly HoursFactor[];
  /** Quantity x hours a unit x factors, hundredths half up. [h] */
  readonly hours: string;
};

/** What one task asks of each eave or rake. */
export type LabourWork = {
  readonly task: LabourTask;
  readonly hoursPerUnit: number;
  readonly rateMark: RateMark;
  readonly places: readonly WorkPlace[];
};

/**
 * The work of each task that has anything to do, eave by eave, then rake by rake: quantity x hours a unit x factors.
 * Each place's hours are rounded to hundredths half up.
 * @param eaves - the eaves with their cover.
 * @param input - for the shop's rates and factors. [h/unit, -]
 * @param rakes - the rakes, in order.
 * @returns e.g. 17 extenders at 0.45 h on two storeys, x 1.25 -> 9.56 h.
 */
export function labourWork(
  eaves: readonly CoveredEave[],
  input: JobInput,
  rakes: readonly RakeLayout[] = [],
): readonly LabourWork[] {
  return [
    ...eaveTasks.map((task) =>
      workOf(
        task,
        input,
        eaves.map((eave) => eaveAsk(task, eave)),
      ),
    ),
    ...rakeTasks.map((task) =>
      workOf(
        task,
        input,
        rakes.flatMap((rake) => rakeAsk(task, rake, input)),
      ),
    ),
  ].filter(({ places }) => places.length > 0);
}

/** How much of a task is asked for at a place, before it is turned into hours. */
type Ask = Pick<WorkPlace, 'label' | 'eaveId' | 'rakeId' | 'ref'> & {
  readonly amount: number;
  readonly survey: Pick<EaveSurvey, 'pitchRisePer12'>;
};

function eaveAsk(task: (typeof eaveTasks)[number], eave: CoveredEave): Ask {
  const { eaveId } = eave.layout;
  const byLength = task.unit === 'LF' || task.unit === 'SF';
  return {
    label: eaveLabel(eave.layout),
    eaveId,
    rakeId: null,
    ref: `eave/${eaveId}/${byLength ? 'lengthIn' : 'rafters'}`,
    amount: eaveTaskQuantity(task.key, eave),
    survey: eave.survey,
  };
}

function rakeAsk(task: (typeof rakeTasks)[number], rake: RakeLayout, { design }: JobInput): readonly Ask[] {
  const ofRake = design.rakes.find(({ rakeId }) => rakeId === rake.rakeId);
  if (ofRake === undefined) return [];
  return [
    {
      label: rakeLabel(rake),
      eaveId: rake.eaveId,
      rakeId: rake.rakeId,
      ref: `rake/${rake.rakeId}/${task.unit === 'SF' ? 'strip' : 'barge'}`,
      amount: rakeTaskQuantity(task.key, rake, ofRake),
      survey: { pitchRisePer12: rake.gable.pitchRisePer12 },
    },
  ];
}

function workOf(task: LabourTask, input: JobInput, asked: readonly Ask[]): LabourWork {
  const rate = rateOf(task, input);
  const places = asked
    .map(({ amount, survey, ...place }): WorkPlace => {
      const quantity = hundredths(amount);
      const factors = hoursFactors(task, { survey }, input);
      const exact = factors.reduce(
        (hours, { factor }) => hours.times(factor),
        new Decimal(quantity).times(rate.hoursPerUnit),
      );
      return { ...place, quantity, factors, hours: hundredths(exact) };
    })
    .filter(({ hours }) => Number(hours) > 0);
  return { task, hoursPerUnit: rate.hoursPerUnit, rateMark: rate.own ? 'own' : 'placeholder', places };
}

/**
 * One line for each task that has anything to do: quantity x hours a unit x factors.
 * Each place's hours are rounded to hundredths half up, and a line is the sum of its places, so that it adds up by hand.
 * @param eaves - the eaves with their cover.
 * @param input - for the shop's rates and factors. [h/unit, -]
 * @param rakes - the rakes, in order.
 * @returns lines such as `labour-install-extenders`; 17 extenders at 0.45 h, no factor -> 7.65 h.
 */
export function labourLines(
  eaves: readonly CoveredEave[],
  input: JobInput,
  rakes: readonly RakeLayout[] = [],
): readonly TakeoffLine[] {
  return labourWork(eaves, input, rakes).map(({ task, hoursPerUnit, rateMark, places }): TakeoffLine => {
    const hours = decimalText(sumDecimals(places.map((place) => place.hours)));
    const quantity = sumDecimals(places.map((place) => place.quantity)).toFixed();
    return {
      id: `labour-${task.key}`,
      kind: 'labour',
      phase: task.phase,
      description: `${task.label}, ${quantity} ${unitWord(task, quantity)} at ${hoursPerUnit} h`,
      clientWording: task.clientWording,
      quantity: hours,
      unit: 'h',
      taxable: false,
      where: whereLabels(places.map((place) => ({ label: place.label, amount: `${place.hours} h` }))),
      madeOf: [
        {
          label: `Hours for one ${task.unit}, ${rateMark === 'own' ? "the shop's own" : 'placeholder (common practice, no source)'}`,
          value: `${hoursPerUnit} h`,
          ref: `labour/${task.key}`,
        },
        ...places.flatMap((place): readonly TracePart[] => [
          {
            label: `${place.label}: ${place.quantity} ${unitWord(task, place.quantity)}${place.factors
              .map(({ factor, label }) => ` x ${factor} (${label})`)
              .join('')}`,
            value: `${place.hours} h`,
            ref: place.ref,
          },
          ...place.factors.map(({ label, factor, ref }) => ({
            label: `${place.label}: factor, ${label}`,
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
  { survey }: { readonly survey: Pick<EaveSurvey, 'pitchRisePer12'> },
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

function unitWord(task: LabourTask, quantity: string): string {
  return task.unit === 'LF' || task.unit === 'SF' || Number(quantity) === 1 ? task.unit : `${task.unit}s`;
}
