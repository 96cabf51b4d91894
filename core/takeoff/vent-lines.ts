import { Decimal } from 'decimal.js';
import type { EaveLayout } from '../layout/layout-types.ts';
import type { TracePart } from '../trace/trace.ts';
import { formatLength } from '../units/format-length.ts';
import { decimalText } from '../units/money.ts';
import type { CoveredEave } from './cover.ts';
import { hundredths, hundredthsUp, sumDecimals } from './quantities.ts';
import { counted, eaveLabel, idPart, whereText } from './takeoff-context.ts';
import type { TakeoffLine } from './takeoff-types.ts';
import type { LaidVents } from './vents.ts';

type Vented = { readonly layout: EaveLayout; readonly vents: LaidVents };

/**
 * One line for each kind of vent: how many, or how many feet of strip.
 * @param eaves - the eaves with their soffits, in order.
 * @returns lines such as `vents-STRIP`, none for an eave that needs none.
 */
export function ventLines(eaves: readonly CoveredEave[]): readonly TakeoffLine[] {
  const needed = eaves.flatMap(({ layout, soffit }): readonly Vented[] => {
    const vents = soffit?.vents ?? null;
    return vents === null || vents.count === 0 ? [] : [{ layout, vents }];
  });
  return [...Map.groupBy(needed, ({ vents }) => vents.item.id).values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { item, kind } = first.vents;
    const feet = group.map(({ vents }) => hundredthsUp((vents.lengthIn ?? 0) / 12));
    const lengthFt = decimalText(sumDecimals(feet));
    const count = group.reduce((sum, { vents }) => sum + vents.count, 0);
    const strip = kind === 'strip';
    const byFoot = strip && item.unit === 'LF';
    return [
      {
        id: `vents-${idPart(item.id)}`,
        kind: 'vents',
        phase: 'Soffit',
        description: `${item.description}, ${
          byFoot ? `${lengthFt} LF` : strip ? counted(count, 'piece') : String(count)
        }`,
        clientWording: 'Vents in the new soffit',
        quantity: strip ? lengthFt : decimalText(count),
        unit: strip ? 'LF' : 'each',
        taxable: item.taxable,
        where: whereText(
          group.map(({ layout, vents }, index) => ({
            layout,
            amount: strip ? `${feet[index] ?? ''} LF` : String(vents.count),
          })),
        ),
        madeOf: group.flatMap(ventParts),
        need: { kind: 'vents', itemId: item.id, count, lengthFt: byFoot ? lengthFt : null },
      },
    ];
  });
}

function sqIn(amount: number): string {
  return `${hundredths(new Decimal(amount))} sq in.`;
}

function ventParts({ layout, vents }: Vented): readonly TracePart[] {
  const label = eaveLabel(layout);
  const { area, eachSqIn } = vents;
  return [
    {
      label: `${label}: attic area, for the net free area asked for`,
      value: `${area.atticSqFt} sq ft`,
      ref: 'survey/site.atticAreaSqFt',
    },
    {
      label: `${label}: 1/${area.parts} of it, ${hundredths(area.eaveShare * 100)} % at the eaves, this eave's share by length`,
      value: sqIn(area.wantedSqIn),
      ref: `eave/${layout.eaveId}/lengthIn`,
    },
    {
      label: `${label}: net free area of ${vents.kind === 'strip' ? 'one foot' : 'one vent'}, as its maker states it`,
      value: sqIn(eachSqIn),
      ref: `design/${layout.eaveId}/soffit.ventNetFreeSqIn`,
    },
    {
      label: `${label}: ${vents.lengthIn === null ? counted(vents.count, 'vent') : `${formatLength(vents.lengthIn)} of strip`}`,
      value: `${sqIn(vents.reachedSqIn)} reached`,
      ref: `price/${vents.item.id}`,
    },
  ];
}
