import { Decimal } from 'decimal.js';
import type { RakeDesign } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { EaveLayout } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import { stripText } from '../rake/rake-strip.ts';
import type { RakeLayout, RakeStrip } from '../rake/rake-types.ts';
import type { TracePart } from '../trace/trace.ts';
import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import { itemLackDetail } from './item-lack.ts';
import type { SheetPart } from './pack-sheets.ts';
import { type RakeSoffit, rakeSoffitOf } from './rake-soffit.ts';
import { hundredths, hundredthsUp } from './quantities.ts';
import type { SheetUse } from './sheet-lines.ts';
import { ordinarySheet, panelGapIn, type SheetSize } from './sheathing-strip.ts';
import { counted, idPart, rakeLabel } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/** What covers the new overhang of one rake. */
export type RakeCover =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'panels';
      readonly item: PriceItem | undefined;
      readonly strip: RakeStrip;
      readonly sheet: SheetSize;
      /** Rectangles, their length up the slope. */
      readonly parts: readonly SheetPart[];
    }
  | {
      readonly kind: 'planks';
      readonly item: PriceItem | undefined;
      readonly strip: RakeStrip;
      readonly coverIn: number;
      readonly courses: number;
    };

/** A rake to take off, with its eave's layout, its cover, and what is missing to buy that cover. */
export type CoveredRake = {
  readonly rake: RakeLayout;
  readonly layout: EaveLayout;
  readonly design: RakeDesign;
  readonly cover: RakeCover;
  readonly coverLack: Problem | null;
  /** Null where the rake stays open below. */
  readonly soffit: RakeSoffit | null;
};

/**
 * Decides what covers each rake: the sheet or plank that its design names on the price list; where none is named, the
 * quantity is counted with the ordinary size and the lack is told. Panels lie with their length up the slope, in as many
 * rips side by side as the strip's width asks for; planks lie level, course on course.
 * Worked: a strip of 28-7/8 by 165-11/16 from joints at its foot and 8 ft up -> panels 96 and 69-7/16 long.
 * @param input - price list, and the width that a plank covers. [in]
 * @param rakes - laid out.
 * @param layouts - of the eaves.
 */
export function coverRakes(
  input: JobInput,
  rakes: readonly RakeLayout[],
  layouts: readonly EaveLayout[],
): readonly CoveredRake[] {
  return rakes.flatMap((rake) => {
    const designIndex = input.design.rakes.findIndex(({ rakeId }) => rakeId === rake.rakeId);
    const design = input.design.rakes[designIndex];
    const layout = layouts.find(({ eaveId }) => eaveId === rake.eaveId);
    if (design === undefined || layout === undefined) return [];
    const soffit = rakeSoffitOf(input, rake, designIndex);
    return [{ rake, layout, design, ...coverOf(input, rake, design, designIndex), soffit }];
  });
}

function coverOf(
  input: JobInput,
  rake: RakeLayout,
  design: RakeDesign,
  designIndex: number,
): Pick<CoveredRake, 'cover' | 'coverLack'> {
  const { kind, itemId } = design.sheathing;
  const { strip } = rake;
  if (kind === 'none' || strip === null) return { cover: { kind: 'none' }, coverLack: null };
  const category = kind === 'panels' ? 'sheet' : 'plank';
  const named = input.priceList.find(({ id }) => id === itemId);
  const fitting = named?.category === category ? named : undefined;
  const item = fitting?.retired === true ? undefined : fitting;
  const coverLack: Problem | null =
    item === undefined
      ? {
          code: 'entry-invalid',
          what: `Sheathing of ${rakeLabel(rake)} (${rake.name})`,
          detail: itemLackDetail({ itemId, kind: category, fits: fitting !== undefined, named }),
          field: `design.rakes.${designIndex}.sheathing.itemId`,
        }
      : null;
  if (kind === 'planks') {
    const coverIn =
      (fitting === undefined ? undefined : dressedSection(fitting.section)?.depthIn) ??
      input.settings.plankCoverIn;
    const courses = Math.max(1, Math.ceil((strip.toIn - strip.fromIn) / coverIn - 1e-9));
    return { cover: { kind, item, strip, coverIn, courses }, coverLack };
  }
  const sheet: SheetSize = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  return { cover: { kind, item, strip, sheet, parts: panelParts(strip, sheet.widthIn) }, coverLack };
}

/** Panels between the joints up the slope, in rips side by side, each gap taken off. [in] */
function panelParts(strip: RakeStrip, sheetWidthIn: number): readonly SheetPart[] {
  const { fromIn, toIn, jointsIn } = strip;
  const half = panelGapIn / 2;
  const lengths: number[] = [];
  let startIn = fromIn;
  for (const jointIn of jointsIn) {
    if (jointIn - half > startIn + 1e-6) lengths.push(jointIn - half - startIn);
    startIn = jointIn + half;
  }
  if (toIn > startIn + 1e-6) lengths.push(toIn - startIn);
  const widths: number[] = [];
  for (let leftIn = strip.widthIn; leftIn > 1e-6 && widths.length < 50; leftIn -= sheetWidthIn + panelGapIn)
    widths.push(Math.min(leftIn, sheetWidthIn));
  return lengths.flatMap((lengthIn) => widths.map((widthIn) => ({ lengthIn, widthIn })));
}

/** What the sheathing of a rake is cut from sheets; nothing where planks or nothing cover it. */
export function rakeSheathingUse({ rake, layout, cover }: CoveredRake): readonly SheetUse[] {
  if (cover.kind !== 'panels') return [];
  return [
    {
      use: 'rake-sheathing',
      item: cover.item,
      sheet: cover.sheet,
      layout,
      rake,
      parts: cover.parts,
      areaSqFt: cover.strip.areaSqFt,
      trace: [
        stripPart(rake, cover.strip),
        {
          label: `${rakeLabel(rake)}: ${counted(cover.parts.length, 'panel')} up the slope, end joints on lookouts`,
          value: cover.parts.map(({ lengthIn }) => formatLength(lengthIn)).join(', '),
        },
      ],
    },
  ];
}

/**
 * One line for each plank item that covers rakes, in running feet with waste.
 * @param rakes - with their cover.
 * @param input - for the waste on planks. [%]
 */
export function rakePlankLines(rakes: readonly CoveredRake[], input: JobInput): readonly TakeoffLine[] {
  const planked = rakes.flatMap(({ rake, cover }) => (cover.kind === 'planks' ? [{ rake, cover }] : []));
  const waste = input.settings.plankWastePercent;
  return [...Map.groupBy(planked, ({ cover }) => cover.item?.id ?? '').values()].flatMap((group) => {
    const item = group[0]?.cover.item;
    const runs = group.map(({ rake, cover }) => ({
      rake,
      cover,
      feet: hundredths(new Decimal(cover.courses).times(cover.strip.widthIn).div(12)),
    }));
    const net = runs.reduce((sum, { feet }) => sum.plus(feet), new Decimal(0));
    const lengthFt = hundredthsUp(net.times(new Decimal(waste).plus(100)).div(100));
    const area = runs.reduce((sum, { cover }) => sum.plus(hundredths(cover.strip.areaSqFt)), new Decimal(0));
    return [
      {
        id: `rake-sheathing${item === undefined ? '-planks' : `-${idPart(item.id)}`}`,
        kind: 'plank',
        phase: 'Sheathing and edge',
        description: `Planks at the rake ${item?.description ?? 'none chosen'}, ${lengthFt} LF with waste`,
        clientWording: 'Roof boards over the new overhang at the gable',
        quantity: decimalText(net),
        unit: 'LF',
        taxable: item?.taxable ?? true,
        where: runs.map(({ rake, feet }) => `${rakeLabel(rake)}: ${feet} LF`).join(', '),
        madeOf: [
          ...runs.flatMap(({ rake, cover, feet }): readonly TracePart[] => [
            stripPart(rake, cover.strip),
            {
              label: `${rakeLabel(rake)}: ${counted(cover.courses, 'course')} of ${formatLength(cover.coverIn)} cover`,
              value: `${feet} LF`,
              ...(item === undefined ? { ref: 'setting/plankCoverIn' } : { ref: `price/${item.id}` }),
            },
          ]),
          { label: `Waste, ${waste} %`, value: `${lengthFt} LF to buy`, ref: 'setting/plankWastePercent' },
        ],
        need: { kind: 'planks', itemId: item?.id ?? '', lengthFt, areaSqFt: area.toNumber() },
      } satisfies TakeoffLine,
    ];
  });
}

function stripPart(rake: RakeLayout, strip: RakeStrip): TracePart {
  return {
    label: `${rakeLabel(rake)}: strip across and up the slope, ${hundredths(strip.areaSqFt)} SF`,
    value: stripText(strip),
    ref: `rake/${rake.rakeId}/strip`,
  };
}
