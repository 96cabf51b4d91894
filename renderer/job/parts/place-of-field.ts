import type { Problem } from '../../../core/problems/problem.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { boardEntryName, rakeEntryName } from '../../../core/trace/entry-labels.ts';
import { entryWords } from '../../../core/trace/entry-value.ts';
import type { Documents } from '../editor/documents.ts';
import { sections } from '../sections.ts';
import { settingName } from './shop-places.ts';
import { whereIs } from './use-go-to.ts';

/** Where an entry stands, in words: `South eave, overhang` on `Design`. */
export type FieldPlace = { readonly name: string; readonly screen: string };

/** What an entry is called on the screen, where its own name in the document says it otherwise. */
const names: Readonly<Record<string, string>> = {
  lengthIn: 'wall, corner to corner',
  trimAllowanceIn: 'long by, to trim',
  tieBackIn: 'in over the wall',
  dropIn: 'drop below tail',
  tailFaceIn: 'tail face left',
  kickUpPitchRisePer12: 'kick-up pitch',
  kickUpRaiseIn: 'raised at the wall',
  ventNetFreeSqIn: 'net free area of a vent',
  ventItemId: 'vents',
  outIn: 'out',
  upIn: 'up',
  unitCostUsd: 'cost for one',
  description: 'what it is',
  label: 'what it is',
  estimateOn: 'day of the prices',
  itemId: 'bought as',
};

/**
 * Says in words where an entry stands.
 * @param path - dotted path, e.g. `design.eaves.0.overhangIn`, `settings.money.profitPercent`.
 */
export function placeOfField(path: string, documents: Documents, prices: readonly PriceItem[]): FieldPlace {
  const [root, ...keys] = path.split('.');
  if (root === 'settings') {
    const setting = keys.join('.');
    return { name: settingName(setting), screen: 'Settings' };
  }
  if (root === 'priceList')
    return { name: prices[Number(keys[0])]?.description ?? 'prices', screen: 'Price list' };
  const screen = sections[whereIs(path, documents).section];
  const name = [ownerWords(path, documents), ...(labelWords(keys) ?? fieldWords(keys))]
    .filter((word) => word !== '')
    .join(', ');
  return { name: name === '' ? entryWords(root ?? '') : name, screen };
}

/**
 * The path of what mends a problem: its entry, or the item of the price list or the setting that it speaks of. Undefined
 * where the sentence alone has to do.
 */
export function fieldOfProblem(problem: Problem, prices: readonly PriceItem[]): string | undefined {
  if (problem.field !== undefined) return problem.field;
  switch (problem.code) {
    case 'no-price':
    case 'price-not-yet':
    case 'price-of-nothing':
    case 'unit-does-not-fit': {
      const item = prices.findIndex((one) => one.description === problem.item);
      return item < 0 ? 'priceList' : `priceList.${item}`;
    }
    case 'length-left-out':
      return fieldOfProblem(problem.because, prices);
    case 'piece-longer-than-stock':
      return 'priceList';
    case 'no-wage':
      return 'settings.labour.wageUsdPerHour';
    default:
      return undefined;
  }
}

/** What stands in a list of an eave, by its number. */
const innerWords: Readonly<Record<string, (number: number) => string>> = {
  rafters: (number) => `rafter ${number}`,
  obstructions: (number) => `thing ${number} on the plate`,
  wallReadings: (number) => `wall reading ${number}`,
  plateReadings: (number) => `plate reading ${number}`,
};

/** The eave, rafter or cost that an entry belongs to; blank for one of the whole job. */
function ownerWords(path: string, documents: Documents): string {
  const [root, list, index, inner, at] = path.split('.');
  if (list === 'extraCosts')
    return documents.drafts[`design.extraCosts.${index}.description`] === undefined
      ? (documents.design.extraCosts[Number(index)]?.description ?? '')
      : `Extra cost ${Number(index) + 1}`;
  if (list === 'cutting') return index === 'onHand' ? `On hand, row ${Number(inner) + 1}` : '';
  if (list === 'exclusions') return `Not in the price, ${Number(index) + 1}`;
  if (list === 'offer') return offerOwner(index, Number(inner));
  if (list === 'rakes') {
    const rakeId =
      root === 'design'
        ? documents.design.rakes[Number(index)]?.rakeId
        : documents.survey.rakes[Number(index)]?.id;
    return documents.survey.rakes.find((one) => one.id === rakeId)?.name ?? '';
  }
  if (list === 'asBuilt') {
    const built = documents.design.asBuilt[Number(index)];
    const eave = documents.survey.eaves.find((one) => one.id === built?.eaveId)?.name ?? '';
    return `${eave}, as built`;
  }
  if (list !== 'eaves') return '';
  const eaveId =
    root === 'design'
      ? documents.design.eaves[Number(index)]?.eaveId
      : documents.survey.eaves[Number(index)]?.id;
  const eave = documents.survey.eaves.find((one) => one.id === eaveId)?.name ?? '';
  if (at === undefined) return eave;
  const what = innerWords[inner ?? ''];
  return what === undefined ? eave : `${eave}, ${what(Number(at) + 1)}`;
}

const offerLists: Readonly<Record<string, string>> = {
  payments: 'Payment',
  unitPrices: 'Hidden work',
  alternates: 'Choice',
  assumptions: 'What the price rests on',
  scopeTexts: 'What we build',
};

/** The row of an offer's list that an entry belongs to. */
function offerOwner(list: string | undefined, at: number): string {
  const name = offerLists[list ?? ''];
  return name === undefined ? '' : `${name}, ${at + 1}`;
}

/** What an entry of a rake or of a job's boards is called on the screen; undefined for any other entry. */
function labelWords([list, , ...keys]: readonly string[]): readonly string[] | undefined {
  const name =
    list === 'rakes'
      ? rakeEntryName(keys.join('.'))
      : list === 'cutting'
        ? boardEntryName(keys.at(-1) ?? '')
        : undefined;
  return name === undefined ? undefined : [`${name.charAt(0).toLowerCase()}${name.slice(1)}`];
}

function fieldWords(keys: readonly string[]): readonly string[] {
  const listed = [
    'eaves',
    'rakes',
    'asBuilt',
    'extraCosts',
    'exclusions',
    'offer',
    ...Object.keys(offerLists),
    'changes',
    ...Object.keys(innerWords),
  ];
  return keys
    .filter((key) => !/^\d+$/.test(key) && !listed.includes(key))
    .map((key) => names[key] ?? entryWords(key));
}
