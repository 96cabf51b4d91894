import { stockGroup } from '../cutting/stock-group.ts';
import type { JobInput } from '../job/job-file.ts';
import { priceOn } from '../pricing/price-on.ts';
import { formatRate, perUnit } from '../pricing/cost-draft.ts';
import { problemSentence } from '../problems/sentence.ts';
import type { EaveSurvey, RafterSurvey } from '../survey/survey-document.ts';
import { findLabourTask } from '../takeoff/labour-tasks.ts';
import { formatLength } from '../units/format-length.ts';
import { eaveEntryName } from './entry-labels.ts';
import { entryValue, entryWords } from './entry-value.ts';
import { ownerOf } from './ref.ts';
import type { Explanation } from './trace.ts';

/** Where walking back ends: what a tape showed. `reading/EAVE/RAFTER` */
export function explainReading(rest: string, input: JobInput): Explanation | undefined {
  const found = rafterOf(rest, input);
  if (found === undefined) return undefined;
  const { eave, rafter, number } = found;
  const reading = formatLength(rafter.readingIn);
  return {
    ref: `reading/${rest}`,
    title: `Tape reading at rafter ${number}, ${eave.name}`,
    value: reading,
    how: `${readingWords(eave)}: ${reading}.${rafter.note === '' ? '' : ` Note: ${rafter.note}`}`,
    parts: [],
  };
}

/** A survey entry of an eave. `eave/EAVE/FIELD` */
export function explainEaveEntry(rest: string, input: JobInput): Explanation | undefined {
  const found = ownerOf(rest, input.survey.eaves, ({ id }) => id);
  if (found === undefined) return undefined;
  const { owner: eave, rest: field } = found;
  const value = valueAt(eave, field);
  if (value === undefined) return undefined;
  if (field === 'rafters')
    return {
      ref: `eave/${rest}`,
      title: `Rafters, ${eave.name}`,
      value: `${eave.rafters.length}`,
      how: `Counted from the readings: ${eave.rafters.length} along a wall of ${formatLength(eave.lengthIn)}.`,
      parts: eave.rafters.map((rafter, index) => ({
        label: `Reading at rafter ${index + 1}`,
        value: formatLength(rafter.readingIn),
        ref: `reading/${eave.id}/${rafter.id}`,
      })),
    };
  return entered(`eave/${rest}`, field, value, eave.name, 'Measured or entered in the survey.');
}

/** A survey entry of one rafter. `rafter/EAVE/RAFTER/FIELD` */
export function explainRafterEntry(rest: string, input: JobInput): Explanation | undefined {
  const cut = rest.lastIndexOf('/');
  const field = rest.slice(cut + 1);
  const found = cut < 0 ? undefined : rafterOf(rest.slice(0, cut), input);
  if (found === undefined) return undefined;
  const value = valueAt(found.rafter, field);
  if (value === undefined) return undefined;
  const where = `rafter ${found.number}, ${found.eave.name}`;
  return entered(`rafter/${rest}`, field, value, where, 'Measured at this rafter.');
}

/** A survey entry of the whole house. `survey/FIELD` */
export function explainSurveyEntry(field: string, input: JobInput): Explanation | undefined {
  const value = valueAt(input.survey, field);
  return value === undefined
    ? undefined
    : entered(`survey/${field}`, field, value, 'the house', 'Entered in the survey.');
}

/** A design entry of an eave, an entered cost or a board on hand. `design/EAVE/FIELD`, `design/extraCosts/ID`, `design/onHand/ID` */
export function explainDesignEntry(rest: string, input: JobInput): Explanation | undefined {
  const extra = input.design.extraCosts.find(({ id }) => rest === `extraCosts/${id}`);
  if (extra !== undefined)
    return {
      ref: `design/${rest}`,
      title: extra.description,
      value: `${extra.quantity} ${extra.unit} at ${formatRate(extra.unitCostUsd)}`,
      how: `Entered by hand in the design, as ${extra.kind}.`,
      parts: [],
    };
  const board = input.design.cutting.onHand.find(({ id }) => rest === `onHand/${id}`);
  if (board !== undefined)
    return {
      ref: `design/${rest}`,
      title: `${stockGroup(board)} on hand, ${formatLength(board.lengthIn)}`,
      value: `${board.count} at ${formatRate(board.valueUsd)}`,
      how: 'Entered by hand on Cut plan: what he has, and what one is worth to him.',
      parts: [],
    };
  const found = ownerOf(rest, input.design.eaves, ({ eaveId }) => eaveId);
  const value = found === undefined ? undefined : valueAt(found.owner, found.rest);
  if (found === undefined || value === undefined) return undefined;
  const name = input.survey.eaves.find(({ id }) => id === found.owner.eaveId)?.name ?? found.owner.eaveId;
  return entered(`design/${rest}`, found.rest, value, name, 'Chosen in the design.');
}

/** A setting of the shop. `setting/PATH` */
export function explainSetting(path: string, input: JobInput): Explanation | undefined {
  const value = valueAt(input.settings, path);
  return value === undefined
    ? undefined
    : entered(`setting/${path}`, path, value, 'Settings', "The shop's own setting; change it in Settings.");
}

/** A production rate. `labour/TASK` */
export function explainLabourRate(key: string, input: JobInput): Explanation | undefined {
  const task = findLabourTask(key);
  const set = input.settings.labour.rates.find((rate) => rate.task === key);
  const hours = set?.hoursPerUnit ?? task?.hoursPerUnit;
  if (hours === undefined) return undefined;
  const own = set?.mark === 'own';
  return {
    ref: `labour/${key}`,
    title: `Hours: ${task?.label ?? key}`,
    value: `${hours} h for each ${task?.unit ?? 'unit'}`,
    how: own
      ? "The shop's own rate, from Settings."
      : 'A placeholder (common practice, no source). Enter your own hours in Settings.',
    parts: [],
  };
}

/** The price of an item on the estimate's day. `price/ITEM` */
export function explainPrice(id: string, input: JobInput): Explanation | undefined {
  const item = input.priceList.find((candidate) => candidate.id === id);
  if (item === undefined) return undefined;
  const price = priceOn(item, input.asOf, input.settings.money.priceStaleDays);
  if (!price.ok)
    return {
      ref: `price/${id}`,
      title: `Price of ${item.description}`,
      value: 'no price',
      how: problemSentence(price.problem),
      parts: [],
    };
  const { observation, ageDays, stale } = price.value;
  const from = item.supplier === '' ? observation.source : `${observation.source} of ${item.supplier}`;
  const until = observation.validUntil === null ? '' : ` Held until ${observation.validUntil}.`;
  return {
    ref: `price/${id}`,
    title: `Price of ${item.description}`,
    value: `${formatRate(observation.priceUsd)} ${perUnit(item.unit)}`,
    how: `Seen on ${observation.observedOn} (${from}): the newest price on or before ${input.asOf}, ${ageDays} days old.${until}${stale ? ' It is older than your limit, or no longer held: ask again before you quote.' : ''}`,
    parts: [],
  };
}

/** An entry at the end of a walk back, in words. */
export function entered(ref: string, path: string, value: unknown, where: string, how: string): Explanation {
  const names = path.split('.');
  const words = names.map((name) => eaveEntryName(name) ?? entryWords(name)).join(', ');
  return {
    ref,
    title: `${words.charAt(0).toUpperCase()}${words.slice(1)}, ${where}`,
    value: entryValue(names.at(-1) ?? '', value),
    how,
    parts: [],
  };
}

function readingWords(eave: EaveSurvey): string {
  const to = { centre: 'centre', 'near-face': 'near (left) face', 'far-face': 'far (right) face' }[
    eave.readingTo
  ];
  switch (eave.readingMode) {
    case 'running':
      return `Read on one tape from the left end of the wall to the rafter's ${to}`;
    case 'bays-clear':
      return "Read as the clear distance from the last rafter's far face (the first from the wall's end)";
    case 'bays-centres':
      return "Read from the last rafter's centre (the first from the wall's end) to this one's centre";
    default:
      return '';
  }
}

function rafterOf(
  rest: string,
  input: JobInput,
): { readonly eave: EaveSurvey; readonly rafter: RafterSurvey; readonly number: number } | undefined {
  const found = ownerOf(rest, input.survey.eaves, ({ id }) => id);
  const index = found?.owner.rafters.findIndex(({ id }) => id === found.rest) ?? -1;
  const rafter = found?.owner.rafters[index];
  return found === undefined || rafter === undefined
    ? undefined
    : { eave: found.owner, rafter, number: index + 1 };
}

/** The entry at a dotted path; undefined where there is none. */
export function valueAt(document: unknown, path: string): unknown {
  let at = document;
  for (const name of path.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = Reflect.get(at, name);
  }
  return at;
}
