import { Decimal } from 'decimal.js';
import { decimalText } from '../units/money.ts';
import type { JobInput } from '../job/job-file.ts';
import type { TakeoffLine } from './takeoff-types.ts';

/** One line for each cost that the person entered by hand; a quantity of zero is not printed, nor what only an alternate takes in. */
export function extraLines(input: JobInput): readonly TakeoffLine[] {
  return input.design.extraCosts
    .filter((extra) => extra.optional !== true && !new Decimal(extra.quantity).isZero())
    .map(
      (extra): TakeoffLine => ({
        id: `extra-${extra.id}`,
        kind: 'extra',
        phase: extra.phase,
        description: extra.description.trim(),
        clientWording: extra.description.trim(),
        quantity: decimalText(extra.quantity),
        unit: extra.unit,
        taxable: extra.taxable,
        where: 'Whole job',
        madeOf: [
          {
            label: 'Entered by hand in the design',
            value: `${decimalText(extra.quantity)} ${extra.unit}`,
            ref: `design/extraCosts/${extra.id}`,
          },
        ],
        need: { kind: 'extra', extraId: extra.id },
      }),
    );
}
