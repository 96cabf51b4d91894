import { Decimal } from 'decimal.js';
import { z } from 'zod';
import { civilDate } from '../pricing/civil-date-field.ts';
import { decimalField } from '../survey/fields.ts';
import { type Usd, usd } from '../units/money.ts';

/** What a state asks of a home-improvement contract, as the shop looked it up. */
export const stateRuleSchema = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().min(1).max(80),
  /** Most that may be asked for before work begins; where both are set the lesser holds. Null: no limit known. [%, $] */
  depositPercent: decimalField({ least: 0, most: 100 }).nullable().default(null),
  depositUsd: decimalField({ least: 0, most: 1_000_000 }).nullable().default(null),
  /** Business days in which a contract signed at the home may be called off. [d] */
  coolingOffDays: z.int().min(0).max(60).default(3),
  note: z.string().max(500).default(''),
  /** When it was looked up, and whether the shop has checked it itself. */
  asOf: civilDate,
  verified: z.boolean().default(false),
});
export type StateRule = z.infer<typeof stateRuleSchema>;

const asOf = '2026-01-01';

/**
 * What comes with the program: read in explainers of such laws, none held against the law itself. Every one is to be
 * verified by the shop before it relies on it. Cooling-off: 16 CFR 429, three business days for sales at the home of $25 or
 * more (from memory).
 */
export const stateRulesToVerify: readonly StateRule[] = [
  rule('ca', 'California', '10', '1000', 'The lesser of the two.'),
  rule('md', 'Maryland', '33.33', null, 'One third.'),
  rule(
    'ma',
    'Massachusetts',
    '33.33',
    null,
    'One third, or the cost of special-order material if that is more.',
  ),
  rule('me', 'Maine', '33.33', null, 'One third, unless waived in writing.'),
  rule(
    'pa',
    'Pennsylvania',
    '33.33',
    null,
    'One third of contracts over $5,000; special-order material besides.',
  ),
  rule('tn', 'Tennessee', '33.33', null, 'One third, unless bonded or the owner agrees.'),
  rule('none', 'A state without a limit that I know of', null, null, 'Most states have none; ask yours.'),
];

function rule(
  id: string,
  name: string,
  depositPercent: string | null,
  depositUsd: string | null,
  note: string,
): StateRule {
  return { id, name, depositPercent, depositUsd, coolingOffDays: 3, note, asOf, verified: false };
}

/**
 * Most that a rule lets be asked for before work begins.
 * @param totalUsd - of the contract, tax in it. [$]
 * @returns 10 % or $1,000 of $7,570 -> 757.00; null without a limit. [$]
 */
export function depositLimitUsd(stateRule: StateRule | undefined, totalUsd: Usd): Usd | null {
  if (stateRule === undefined) return null;
  const limits = [
    ...(stateRule.depositPercent === null
      ? []
      : [
          new Decimal(totalUsd)
            .times(stateRule.depositPercent)
            .div(100)
            .toDecimalPlaces(2, Decimal.ROUND_DOWN),
        ]),
    ...(stateRule.depositUsd === null ? [] : [new Decimal(stateRule.depositUsd)]),
  ];
  return limits.length === 0 ? null : usd(Decimal.min(...limits));
}
