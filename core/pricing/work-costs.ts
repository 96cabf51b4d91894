import { Decimal } from 'decimal.js';
import type { ExtraCost } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { TakeoffLine } from '../takeoff/takeoff-types.ts';
import { decimalText, type DecimalText, usd } from '../units/money.ts';
import { type Costed, formatRate, lineTrace, nothingCosted } from './cost-draft.ts';
import type { ShopSettings } from './shop-settings.ts';

/**
 * What an hour of labour costs: wage x (1 + burden).
 * @param labour - wage [$/h] and burden [%].
 * @returns rounded half up to 4 decimals, e.g. $34 and 35 % -> 45.9 (job.md 2.1). [$/h]
 */
export function hourlyCostUsd(labour: ShopSettings['labour']): DecimalText {
  const burden = new Decimal(labour.burdenPercent).div(100).plus(1);
  return decimalText(
    new Decimal(labour.wageUsdPerHour).times(burden).toDecimalPlaces(4, Decimal.ROUND_HALF_UP),
  );
}

/** Cost line of a labour task: hours x cost of an hour. Without a wage it stands at nothing, and the takeoff says so. */
export function labourCosts(settings: ShopSettings, line: TakeoffLine): Costed {
  if (line.need.kind !== 'labour') return nothingCosted;
  const { task, unitHours, rateMark } = line.need;
  const hours = new Decimal(line.need.hours);
  if (hours.lte(0)) return nothingCosted;
  const rate = hourlyCostUsd(settings.labour);
  return {
    drafts: [
      {
        price: null,
        line: {
          id: line.id,
          takeoffLineId: line.id,
          kind: 'labour',
          phase: line.phase,
          description: line.description,
          clientWording: line.clientWording,
          quantity: decimalText(hours),
          unit: 'h',
          unitCostUsd: rate,
          costUsd: usd(hours.times(rate)),
          taxable: line.taxable,
          supplier: '',
          stalePriceOf: null,
          rateMark,
          madeOf: [
            lineTrace(line),
            {
              label:
                rateMark === 'own' ? "Hours for one, the shop's own rate" : 'Hours for one, placeholder rate',
              value: `${unitHours} h`,
              ref: `labour/${task}`,
            },
            {
              label: 'Wage for an hour',
              value: formatRate(settings.labour.wageUsdPerHour),
              ref: 'setting/labour.wageUsdPerHour',
            },
            {
              label: 'Burden on the wage',
              value: `${settings.labour.burdenPercent} %`,
              ref: 'setting/labour.burdenPercent',
            },
          ],
        },
      },
    ],
    lacks: [],
  };
}

/** Cost line of an extra cost that the person entered: quantity x unit cost. */
export function extraCosts(input: Pick<JobInput, 'design'>, line: TakeoffLine): Costed {
  const { need } = line;
  if (need.kind !== 'extra') return nothingCosted;
  const extra = input.design.extraCosts.find(({ id }) => id === need.extraId);
  if (extra === undefined || new Decimal(extra.quantity).lte(0)) return nothingCosted;
  return { drafts: [{ line: extraDraft(extra, line), price: null }], lacks: [] };
}

function extraDraft(extra: ExtraCost, line: TakeoffLine) {
  return {
    id: line.id,
    takeoffLineId: line.id,
    kind: extra.kind,
    phase: line.phase,
    description: extra.description,
    clientWording: line.clientWording,
    quantity: decimalText(extra.quantity),
    unit: extra.unit,
    unitCostUsd: decimalText(extra.unitCostUsd),
    costUsd: usd(new Decimal(extra.quantity).times(extra.unitCostUsd)),
    taxable: extra.taxable,
    supplier: '',
    stalePriceOf: null,
    rateMark: null,
    madeOf: [
      lineTrace(line),
      {
        label: `Entered as ${extra.description}`,
        value: `${extra.quantity} ${extra.unit} at ${formatRate(extra.unitCostUsd)}`,
        ref: `design/extraCosts/${extra.id}`,
      },
    ],
  } as const;
}
