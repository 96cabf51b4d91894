import { formatLength } from '../units/format-length.ts';
import type { CoveredEave } from './cover.ts';
import { coursesParts, partOf } from './cover-lines.ts';
import type { SheetUse } from './sheet-lines.ts';
import { soffitOf, type SoffitQuestion } from './soffit.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/** The ledger along the wall and the nailers of a level soffit; none where no soffit is counted. */
export function soffitPieces(eave: EaveToTakeOff, input: SoffitQuestion): readonly Piece[] {
  const plan = soffitOf(eave, input);
  if (plan === null) return [];
  const { layout, design } = eave;
  const shared = {
    stock: design.soffit.ledger.stock,
    eaveId: layout.eaveId,
    ref: `design/${layout.eaveId}/soffit.ledger.stock`,
  };
  return [
    ...plan.ledger.map(
      ({ mark, stationIn, lengthSixteenths }): Piece => ({
        ...shared,
        mark,
        use: 'ledger',
        stationIn,
        lengthSixteenths,
        cuts: "square ends; level on the wall, its underside in line with the tails' lowest corners",
      }),
    ),
    ...plan.nailers.map(
      ({ mark, stationIn, lengthSixteenths, tailMark }): Piece => ({
        ...shared,
        mark,
        use: 'soffit-nailer',
        stationIn,
        lengthSixteenths,
        cuts: `square ends; level beside ${tailMark}, from the ${design.soffit.ledger.wanted ? 'ledger' : 'wall'} to the tail's end`,
      }),
    ),
  ];
}

/** The panels of an eave's soffit, cut from sheets. */
export function soffitUse(eave: CoveredEave): readonly SheetUse[] {
  const { layout, soffit: plan } = eave;
  if (plan === null) return [];
  return [
    {
      use: 'soffit',
      item: plan.item,
      sheet: plan.sheet,
      layout,
      parts: plan.boards.map(partOf),
      areaSqFt: plan.areaSqFt,
      trace: [
        {
          label: `${eaveLabel(layout)}: ${plan.kind} soffit, from the wall to the back of the fascia${
            plan.widthIn - plan.leastWidthIn < 1 / 16
              ? ''
              : `, ${formatLength(plan.leastWidthIn)} where it is narrowest`
          }`,
          value: formatLength(plan.widthIn),
          ref: `design/${layout.eaveId}/soffit.kind`,
        },
        {
          label: `${eaveLabel(layout)}: length along the eave`,
          value: formatLength(plan.toIn - plan.fromIn),
          ref: `eave/${layout.eaveId}/lengthIn`,
        },
        ...coursesParts(eave, plan.boards),
      ],
    },
  ];
}
