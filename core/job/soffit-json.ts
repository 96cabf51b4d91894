import type { CoveredEave } from '../takeoff/cover.ts';
import type { SoffitStick } from '../takeoff/soffit.ts';
import { ventsShort } from '../takeoff/vents.ts';
import { cutText } from './cut-text.ts';
import type { Json } from './json.ts';
import { boardJson } from './sheathing-json.ts';

/**
 * The soffits of a job as JSON: panels from the fascia in, ledger, nailers, vents. [in, sq in, SF]
 * @param covered - the eaves with their soffits; those without one are left out.
 */
export function soffitJson(covered: readonly CoveredEave[]) {
  return covered.flatMap(({ layout, soffit }) =>
    soffit === null
      ? []
      : [
          {
            eaveId: layout.eaveId,
            kind: soffit.kind,
            itemId: soffit.item?.id ?? null,
            widthIn: soffit.widthIn,
            leastWidthIn: soffit.leastWidthIn,
            fromIn: soffit.fromIn,
            toIn: soffit.toIn,
            areaSqFt: soffit.areaSqFt,
            sheetWidthIn: soffit.sheet.widthIn,
            sheetLengthIn: soffit.sheet.lengthIn,
            countPanels: soffit.boards.length,
            boards: soffit.boards.map(boardJson),
            ledger: soffit.ledger.map(stickJson),
            nailers: soffit.nailers.map(({ tailMark, ...stick }) => ({ ...stickJson(stick), tailMark })),
            vents: soffit.vents === null ? null : ventsJson(soffit.vents),
          } satisfies Json,
        ],
  );
}

function stickJson({ mark, stationIn, lengthSixteenths }: SoffitStick) {
  return { mark, stationIn, lengthSixteenths, lengthText: cutText(lengthSixteenths) } satisfies Json;
}

function ventsJson(vents: NonNullable<NonNullable<CoveredEave['soffit']>['vents']>) {
  return {
    itemId: vents.item.id,
    kind: vents.kind,
    countVents: vents.count,
    lengthIn: vents.lengthIn,
    spacingIn: vents.spacingIn,
    atticSqFt: vents.area.atticSqFt,
    eachSqIn: vents.eachSqIn,
    wantedSqIn: vents.area.wantedSqIn,
    reachedSqIn: vents.reachedSqIn,
    short: ventsShort(vents),
  } satisfies Json;
}
