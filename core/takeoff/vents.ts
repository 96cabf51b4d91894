import type { JobInput } from '../job/job-file.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import type { Problem } from '../problems/problem.ts';
import { fail, ok, type Result } from '../result.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';
import { type VentArea, ventAreaOf } from './vent-area.ts';

/** The vents of one eave's soffit. */
export type LaidVents = {
  readonly item: PriceItem;
  readonly area: VentArea;
  /** Net free area of one vent, or of one foot of strip. [sq in] */
  readonly eachSqIn: number;
  /** `strip`: along the soffit, by the foot; `single`: one beside the other. */
  readonly kind: 'strip' | 'single';
  /** Vents, or pieces of strip; 1 of a strip that is sold by the foot. */
  readonly count: number;
  /** Of a strip: what is needed of it, no more than the soffit is long. [in] */
  readonly lengthIn: number | null;
  /** Of single vents: their spacing on centre along the soffit. [in] */
  readonly spacingIn: number | null;
  readonly reachedSqIn: number;
};

/** A strip whose need comes this near to the whole soffit is short of nothing. [sq in] */
const dustSqIn = 1e-6;

/**
 * As many vents, or feet of strip, as reach the net free area that is asked of the eave. A strip ends with the soffit, so it
 * may fall short of it.
 * Worked: 360 sq in. wanted, vents of 26 -> 14, 364 reached; a strip of 9 a foot -> 40 ft, if the soffit is so long.
 * @param eave - the eave with its design.
 * @param input - price list and survey.
 * @param soffitIn - length of the soffit. [in]
 * @returns null where no vent is chosen; or what is missing to count them.
 */
export function laidVents(
  { layout, survey, design, designIndex }: EaveToTakeOff,
  input: Pick<JobInput, 'priceList' | 'survey'>,
  soffitIn: number,
): Result<LaidVents | null, Problem> {
  const { ventItemId, ventNetFreeSqIn: eachSqIn } = design.soffit;
  if (ventItemId === '') return ok(null);
  const lack = (detail: string, field: string): Result<never, Problem> =>
    fail({
      code: 'entry-invalid',
      what: `Vents of ${eaveLabel(layout)} (${layout.name})`,
      detail,
      field,
    });
  const at = `design.eaves.${designIndex}.soffit`;
  const item = input.priceList.find(({ id }) => id === ventItemId);
  if (item === undefined)
    return lack(
      `"${ventItemId}" is not on the price list. Choose another vent in Design.`,
      `${at}.ventItemId`,
    );
  if (item.category !== 'other')
    return lack(
      `"${item.description}" is no vent. Choose one in Design that stands under Other on the price list.`,
      `${at}.ventItemId`,
    );
  if (item.retired)
    return lack(
      `"${item.description}" is not bought any more. Choose another vent in Design.`,
      `${at}.ventItemId`,
    );
  if (eachSqIn <= 0)
    return lack(
      'enter the net free area of one, or of one foot of strip, as its maker states it, in Design.',
      `${at}.ventNetFreeSqIn`,
    );
  const area = ventAreaOf(input.survey, survey);
  if (area === null)
    return lack(
      'how many are needed follows from the level area of the vented attic. Enter it in the survey.',
      'survey.site.atticAreaSqFt',
    );
  const shared = { item, area, eachSqIn };
  const pieceIn = item.lengthIn ?? (item.lengthFt === null ? null : item.lengthFt * 12);
  if (item.unit !== 'LF' && pieceIn === null) {
    const count = Math.ceil(area.wantedSqIn / eachSqIn - dustSqIn);
    return ok({
      ...shared,
      kind: 'single',
      count,
      lengthIn: null,
      spacingIn: count === 0 ? null : soffitIn / count,
      reachedSqIn: count * eachSqIn,
    });
  }
  const lengthIn = Math.min(soffitIn, (area.wantedSqIn / eachSqIn) * 12);
  const byFoot = item.unit === 'LF' || pieceIn === null;
  return ok({
    ...shared,
    kind: 'strip',
    count: byFoot ? Math.min(1, Math.ceil(lengthIn)) : Math.ceil(lengthIn / pieceIn - dustSqIn),
    lengthIn,
    spacingIn: null,
    reachedSqIn: (lengthIn / 12) * eachSqIn,
  });
}

/** Whether vents fall short of the area asked for. */
export function ventsShort({ reachedSqIn, area }: LaidVents): boolean {
  return reachedSqIn < area.wantedSqIn - dustSqIn;
}
