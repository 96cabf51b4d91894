import type { Problem } from '../problems/problem.ts';
import { nearestWords } from '../problems/nearest-words.ts';
import { shortened } from '../problems/shortened.ts';
import { findLabourTask, labourTasks } from '../takeoff/labour-tasks.ts';
import { entryName } from './entry-name.ts';
import type { JobFile } from './job-file.ts';

/**
 * What is wrong with a job file beyond its single entries: blank names and ids, labour rates of no task or of one task
 * twice, lengths that no yard has. These are asked of a file that comes in, not of what the program has stored: a shop
 * file that holds one from before must still open.
 * @param job - with its names trimmed.
 * @returns every problem, with the path of its entry.
 */
export function fileProblems(job: JobFile): readonly Problem[] {
  return [...blankNames(job), ...rateProblems(job), ...excludedLengthProblems(job)];
}

/**
 * Settings as a job file may hold them: without the labour rates and lengths that bind nothing, which an older shop file
 * may have stored and which no screen shows.
 */
export function settingsForFile(settings: JobFile['settings']): JobFile['settings'] {
  const { labour, cutting } = settings;
  return {
    ...settings,
    labour: {
      ...labour,
      rates: labour.rates.filter(
        ({ task }, index) =>
          findLabourTask(task) !== undefined &&
          labour.rates.findIndex((rate) => rate.task === task) === index,
      ),
    },
    cutting: { ...cutting, excludedLengthsFt: cutting.excludedLengthsFt.filter(isStockLength) },
  };
}

function blankNames({ job, survey, design, priceList }: JobFile): readonly Problem[] {
  const names: (readonly [field: string, text: string])[] = [['job.name', job.name]];
  for (const [index, eave] of survey.eaves.entries()) {
    const path = `survey.eaves.${index}`;
    names.push([`${path}.id`, eave.id], [`${path}.name`, eave.name]);
    for (const [at, { id }] of eave.rafters.entries()) names.push([`${path}.rafters.${at}.id`, id]);
    for (const [at, { id }] of eave.obstructions.entries()) names.push([`${path}.obstructions.${at}.id`, id]);
  }
  for (const [index, { id, name }] of survey.rakes.entries())
    names.push([`survey.rakes.${index}.id`, id], [`survey.rakes.${index}.name`, name]);
  for (const [index, { eaveId }] of design.eaves.entries())
    names.push([`design.eaves.${index}.eaveId`, eaveId]);
  for (const [index, { rakeId }] of design.rakes.entries())
    names.push([`design.rakes.${index}.rakeId`, rakeId]);
  for (const [index, { id, description }] of design.extraCosts.entries())
    names.push(
      [`design.extraCosts.${index}.id`, id],
      [`design.extraCosts.${index}.description`, description],
    );
  for (const [index, { id, description }] of priceList.entries())
    names.push([`priceList.${index}.id`, id], [`priceList.${index}.description`, description]);
  return names.flatMap(([field, text]) =>
    text === '' ? [invalid(field, 'Enter at least one character that is no space.')] : [],
  );
}

function rateProblems({ settings }: JobFile): readonly Problem[] {
  const keys = labourTasks.map(({ key }) => key);
  const firstOf = new Map<string, number>();
  return settings.labour.rates.flatMap(({ task }, index): readonly Problem[] => {
    const field = `settings.labour.rates.${index}.task`;
    const earlier = firstOf.get(task);
    if (earlier === undefined) firstOf.set(task, index);
    if (findLabourTask(task) === undefined)
      return [
        invalid(
          field,
          `"${shortened(task)}" is no task known here. The nearest are ${nearestWords(task, keys, 2).join(' and ')}. Write one that is known, or take the rate out.`,
        ),
      ];
    return earlier === undefined
      ? []
      : [invalid(field, `Labour rate ${earlier + 1} is for ${task} already. Keep one of the two.`)];
  });
}

/** Stock lengths that a price item can have. [ft] */
const leastStockFt = 1;
const mostStockFt = 60;

function isStockLength(lengthFt: number): boolean {
  return lengthFt >= leastStockFt && lengthFt <= mostStockFt;
}

function excludedLengthProblems({ settings }: JobFile): readonly Problem[] {
  return settings.cutting.excludedLengthsFt.flatMap((lengthFt, index): readonly Problem[] =>
    isStockLength(lengthFt)
      ? []
      : [
          invalid(
            `settings.cutting.excludedLengthsFt.${index}`,
            `No board has such a length. Enter ${leastStockFt} to ${mostStockFt} feet, or take it out.`,
          ),
        ],
  );
}

function invalid(field: string, detail: string): Problem {
  return { code: 'entry-invalid', what: entryName(field), detail, field };
}
