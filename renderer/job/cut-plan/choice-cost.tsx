import { Decimal } from 'decimal.js';
import { dearerBy, type LumberSum, lumberSum } from '../../../core/job/cutting-choices.ts';
import { formatUsd, usd, type Usd } from '../../../core/units/money.ts';
import { useJob } from '../job-context.ts';
import { useTriedSum } from './use-choice-costs.ts';

/** What a choice costs against the same job without it, beside the choice; a moment of nothing until that is known. */
export function ChoiceCost({ id, than }: { readonly id: string; readonly than: string }) {
  const { computation } = useJob();
  const without = useTriedSum(id);
  if (without === undefined || computation.good === null) return null;
  return <span className="choice-cost">{costWords(lumberSum(computation.good.result), without, than)}</span>;
}

/** E.g. `+$4.10 against all lengths`; without proof on either side the figure is marked as not final. */
export function costWords(now: LumberSum, without: LumberSum | null, than: string): string {
  if (without === null || without.unplanned > 0) return `not to be had ${than}`;
  if (now.unplanned > 0) return 'leaves pieces without a board';
  const differenceUsd = dearerBy(now, without);
  const about = now.open.length + without.open.length > 0 ? 'about ' : '';
  return new Decimal(differenceUsd).isZero()
    ? `${about}no dearer than ${than}`
    : `${about}${signedUsd(differenceUsd)} against ${than}`;
}

/** E.g. `+$4.10`, `-$12.00`. */
function signedUsd(amount: Usd): string {
  const value = new Decimal(amount);
  return `${value.isNegative() ? '-' : '+'}${formatUsd(usd(value.abs()))}`;
}
