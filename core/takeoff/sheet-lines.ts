import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import type { Phase } from '../eave/phases.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { RakeLayout } from '../rake/rake-types.ts';
import type { TracePart } from '../trace/trace.ts';
import { packSheets, type SheetPart } from './pack-sheets.ts';
import { hundredths, sumDecimals } from './quantities.ts';
import type { SheetSize } from './sheathing-strip.ts';
import { counted, eaveLabel, idPart, rakeLabel, whereLabels } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/** What is cut from sheets for one use on one eave or rake. */
export type SheetUse = {
  readonly use: 'sheathing' | 'rake-sheathing' | 'soffit' | 'rake-soffit' | 'filler';
  /** Undefined where none is chosen, or the chosen one cannot be bought. */
  readonly item: PriceItem | undefined;
  readonly sheet: SheetSize;
  readonly layout: EaveLayout;
  /** Present for a rake on that eave. */
  readonly rake?: RakeLayout;
  readonly parts: readonly SheetPart[];
  /** Covered, net. [SF] */
  readonly areaSqFt: number;
  readonly trace: readonly TracePart[];
};

type Words = {
  readonly id: string;
  readonly name: string;
  readonly phase: Phase;
  readonly clientWording: string;
};

/** In the order in which the sheets are cut into: a later use takes what an earlier one leaves. */
const usesInOrder = [
  'sheathing',
  'rake-sheathing',
  'soffit',
  'rake-soffit',
  'filler',
] as const satisfies readonly SheetUse['use'][];

const words: Readonly<Record<SheetUse['use'], Words>> = {
  sheathing: {
    id: 'sheathing',
    name: 'Sheathing',
    phase: 'Sheathing and edge',
    clientWording: 'Roof sheathing over the new overhang',
  },
  'rake-sheathing': {
    id: 'rake-sheathing',
    name: 'Rake sheathing',
    phase: 'Sheathing and edge',
    clientWording: 'Roof sheathing over the new overhang at the gable',
  },
  soffit: {
    id: 'soffit',
    name: 'Soffit',
    phase: 'Soffit',
    clientWording: 'Soffit panels under the new overhang',
  },
  'rake-soffit': {
    id: 'rake-soffit',
    name: 'Rake soffit',
    phase: 'Soffit',
    clientWording: 'Soffit panels under the new overhang at the gable',
  },
  filler: {
    id: 'fillers',
    name: 'Filler layers',
    phase: 'Framing',
    clientWording: 'Packing between the old rafters and their new tails',
  },
};

/**
 * One line for each sheet item and use: net square feet, and the sheets that this use opens. What is cut from one item
 * shares its sheets, whatever it is used for.
 * @param uses - of every eave.
 * @param kerfIn - of the saw. [in]
 * @returns lines such as `sheathing-PLY`; a filler layer that fits into what the sheathing leaves asks for 0 sheets.
 */
export function sheetLines(uses: readonly SheetUse[], kerfIn: number): readonly TakeoffLine[] {
  const byItem = Map.groupBy(uses, ({ use, item }) => item?.id ?? `none-${use}`);
  return [...byItem.values()].flatMap((ofItem) => {
    const sheet = ofItem[0]?.sheet;
    if (sheet === undefined) return [];
    const groups = usesInOrder
      .map((use) => ofItem.filter((one) => one.use === use))
      .filter((group) => group.length > 0);
    const sheets = packSheets(
      groups.map((group) => group.flatMap(({ parts }) => parts)),
      sheet,
      kerfIn,
    );
    return groups.flatMap((group, index) => sheetLine(group, sheets[index] ?? 0));
  });
}

function sheetLine(group: readonly SheetUse[], sheets: number): readonly TakeoffLine[] {
  const [first] = group;
  if (first === undefined || group.every(({ parts }) => parts.length === 0)) return [];
  const { id, name, phase, clientWording } = words[first.use];
  const { item, sheet } = first;
  const areas = group.map(({ areaSqFt }) => hundredths(areaSqFt));
  const area = sumDecimals(areas);
  const parts = group.reduce((sum, one) => sum + one.parts.length, 0);
  const bought = sheets === 0 ? 'from what other cuts leave' : counted(sheets, 'sheet');
  return [
    {
      id: `${id}${item === undefined ? '-panels' : `-${idPart(item.id)}`}`,
      kind: 'sheet',
      phase,
      description: `${name} ${item?.description ?? 'panels, none chosen'}, ${bought}`,
      clientWording,
      quantity: decimalText(area),
      unit: 'SF',
      taxable: item?.taxable ?? true,
      where: whereLabels(
        group.map(({ layout, rake }, index) => ({
          label: rake === undefined ? eaveLabel(layout) : rakeLabel(rake),
          amount: `${areas[index] ?? ''} SF`,
        })),
      ),
      madeOf: [
        ...group.flatMap(({ trace }) => trace),
        {
          label: `${counted(parts, 'part')} cut from sheets ${formatLength(sheet.widthIn)} by ${formatLength(sheet.lengthIn)}, ripped first`,
          value: bought,
          ...(item === undefined ? {} : { ref: `price/${item.id}` }),
        },
      ],
      need: { kind: 'sheets', itemId: item?.id ?? '', sheets, areaSqFt: area.toNumber() },
    },
  ];
}
