import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import type { PriceItem } from '../../core/pricing/price-list.ts';
import { designSchema } from '../../core/eave/design-document.ts';
import { jobInfoSchema, type JobInput } from '../../core/job/job-file.ts';
import { surveySchema } from '../../core/survey/survey-document.ts';
import type { Board, CutItem, CutPlan } from '../../core/cutting/cut-plan-types.ts';
import type { Need, Takeoff, TakeoffLine } from '../../core/takeoff/takeoff-types.ts';
import { decimalText, usd } from '../../core/units/money.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';

/** A takeoff made by hand, for estimates without a house behind them. */
export function takeoffOf(lines: readonly TakeoffLine[], lacks: Takeoff['lacks'] = []): Takeoff {
  return { pieces: [], lines, lacks, labourHours: decimalText(0), crewDays: decimalText(0) };
}

export function takeoffLine(id: string, need: Need, more: Partial<TakeoffLine> = {}): TakeoffLine {
  const kinds = { sheets: 'sheet', planks: 'plank' } as const;
  return {
    id,
    kind: need.kind === 'sheets' || need.kind === 'planks' ? kinds[need.kind] : need.kind,
    phase: 'Framing',
    description: id,
    clientWording: `What the client reads of ${id}`,
    quantity: decimalText(1),
    unit: 'each',
    taxable: need.kind !== 'labour',
    where: '',
    madeOf: [],
    need,
    ...more,
  };
}

export function jobOf(
  priceList: readonly PriceItem[],
  settings: Record<string, unknown> = {},
  design: Record<string, unknown> = {},
): JobInput {
  return {
    asOf: '2026-04-30',
    job: jobInfoSchema.parse({ name: 'By hand' }),
    survey: surveySchema.parse({ version: 1, eaves: [] }),
    design: designSchema.parse({ version: 1, eaves: [], ...design }),
    settings: shopSettingsSchema.parse(settings),
    priceList: [...priceList],
  };
}

/** A board of so many feet with pieces by mark and length [in]. */
export function boardOf(
  number: number,
  itemId: string,
  lengthFt: number,
  priceCents: number,
  pieces: Readonly<Record<string, number>>,
): Board {
  const items: CutItem[] = Object.entries(pieces).map(([mark, lengthIn]) => ({
    mark,
    lengthSixteenths: (lengthIn * 16) as Sixteenths,
  }));
  return {
    number,
    itemId,
    lengthSixteenths: (lengthFt * 192) as Sixteenths,
    priceCents,
    onHand: false,
    items,
    offcutSixteenths: 0 as Sixteenths,
  };
}

export function cutPlanOf(group: string, boards: readonly Board[]): CutPlan {
  const [section = '', ...grade] = group.split(' ');
  const cost = usd(boards.reduce((sum, board) => sum + board.priceCents, 0) / 100);
  return {
    group,
    stock: { section, grade: grade.join(' ') },
    boards,
    costUsd: cost,
    boundUsd: cost,
    gap: 0,
    status: 'optimal',
    proof: 'exact-bound',
    certificate: null,
    tiesProven: true,
    centsPerBoard: 0,
    unmetPins: [],
    yield: 1,
    oneLengthUsd: null,
    oneLengthFt: null,
  };
}
