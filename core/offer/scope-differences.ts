import { stockName } from '../documents/stock-name.ts';
import type { Design, EaveDesign } from '../eave/design-document.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import { formatLength } from '../units/format-length.ts';

/** Names of what is bought, by the id on the price list. */
type Named = readonly Pick<PriceItem, 'id' | 'description'>[];

/**
 * What one way of building has otherwise than another, in the client's words, each once.
 * @param from - the way that is offered.
 * @param to - the other way.
 * @param priceList - gives panels and vents their names.
 * @returns e.g. `Open rafter tails instead of a level soffit.`; none where both are the same to the client.
 */
export function scopeDifferences(from: Design, to: Design, priceList: Named): readonly string[] {
  const pairs = to.eaves.flatMap((after) => {
    const before = from.eaves.find(({ eaveId }) => eaveId === after.eaveId);
    return before === undefined ? [] : [[before, after] as const];
  });
  const said = pairs.flatMap(([before, after]) => [
    ...overhangWords(before, after),
    ...fasciaWords(before, after),
    ...soffitWords(before, after, priceList),
    ...sheathingWords(before, after, priceList),
  ]);
  return [...new Set([...said, ...rakeWords(from, to), ...extraWords(from, to)])];
}

function overhangWords(before: EaveDesign, after: EaveDesign): readonly string[] {
  return before.overhangIn === after.overhangIn
    ? []
    : [`Overhang of ${formatLength(after.overhangIn)} instead of ${formatLength(before.overhangIn)}.`];
}

function fasciaWords(before: EaveDesign, after: EaveDesign): readonly string[] {
  const [was, is] = [stockName(before.fascia.stock), stockName(after.fascia.stock)];
  const [backWas, backIs] = [backing(before), backing(after)];
  return [
    ...(was === is ? [] : [`Fascia of ${is} instead of ${was}.`]),
    ...(backWas === backIs
      ? []
      : [
          backIs === null
            ? `No ${backWas ?? ''} behind the fascia.`
            : `A ${backIs} behind the fascia${backWas === null ? ', to keep it straight' : ` instead of a ${backWas}`}.`,
        ]),
  ];
}

function backing({ fascia: { subFascia } }: EaveDesign): string | null {
  return subFascia.wanted ? stockName(subFascia.stock) : null;
}

const soffitKinds: Readonly<Record<EaveDesign['soffit']['kind'], string>> = {
  open: 'open rafter tails',
  level: 'a level soffit',
  sloped: 'a soffit along the slope',
};

function soffitWords(before: EaveDesign, after: EaveDesign, items: Named): readonly string[] {
  const [was, is] = [before.soffit, after.soffit];
  const kind = capital(soffitKinds[is.kind]);
  const kinds = was.kind === is.kind ? [] : [`${kind} instead of ${soffitKinds[was.kind]}.`];
  if (is.kind === 'open') return kinds;
  const boards =
    is.itemId === was.itemId || is.itemId === ''
      ? []
      : [
          `Soffit of ${nameOf(items, is.itemId)}${was.itemId === '' || was.kind === 'open' ? '' : ` instead of ${nameOf(items, was.itemId)}`}.`,
        ];
  const hadVents = was.kind !== 'open' && was.ventItemId !== '';
  const vents =
    (is.ventItemId !== '') === hadVents && is.ventItemId === was.ventItemId
      ? []
      : [
          is.ventItemId === ''
            ? 'No vents in the soffit.'
            : `Vents in the soffit: ${nameOf(items, is.ventItemId)}.`,
        ];
  return [...kinds, ...boards, ...vents];
}

const deckKinds: Readonly<Record<EaveDesign['sheathing']['kind'], string>> = {
  panels: 'roof panels',
  planks: 'roof planks',
  none: 'no new roof deck',
};

function sheathingWords(before: EaveDesign, after: EaveDesign, items: Named): readonly string[] {
  const [was, is] = [before.sheathing, after.sheathing];
  if (was.kind === is.kind && was.itemId === is.itemId) return [];
  if (is.kind === 'none') return ['No new roof deck over the overhang.'];
  const name = is.itemId === '' ? '' : ` (${nameOf(items, is.itemId)})`;
  return [`${capital(deckKinds[is.kind])}${name} over the overhang instead of ${deckKinds[was.kind]}.`];
}

function rakeWords(from: Design, to: Design): readonly string[] {
  return to.rakes.flatMap((after) => {
    const before = from.rakes.find(({ rakeId }) => rakeId === after.rakeId);
    const [was, is] = [before !== undefined && before.kind !== 'none', after.kind !== 'none'];
    if (was === is) return [];
    return [is ? 'The gable gets its overhang too.' : 'The gable stays as it is.'];
  });
}

function extraWords(from: Design, to: Design): readonly string[] {
  return to.extraCosts.flatMap(({ id, description, optional }) => {
    const before = from.extraCosts.find((extra) => extra.id === id);
    const [was, is] = [before !== undefined && before.optional !== true, optional !== true];
    if (was === is) return [];
    return [is ? `With: ${description.trim()}.` : `Without: ${description.trim()}.`];
  });
}

function nameOf(items: Named, itemId: string): string {
  return items.find(({ id }) => id === itemId)?.description ?? itemId;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
